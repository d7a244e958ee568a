"""A table of the tally as lines of text: numbers right-aligned under their unit, reasons where there is no number."""


from checker.outputs.layout import clean, clipped, width, wrapped
from checker.outputs.tally.cells import BLANK, BROKE, CANNOT, IDLE, KNOWN, NEEDS, Cell, Row, Table, reason
from checker.outputs.tally.looks import decimals_of, unit_in, value_text
from checker.record import Record

COLUMNS = 100
GAP = 2
LEAST_NAME = 10
TALLEST = 5
WORDS = {NEEDS: "needs", CANNOT: "cannot judge", BROKE: "broke"}
NAMED_INLINE = 2
MOST_MARKS = 10


class Run(Record):
    """Neighboring cells from `first` to before `last` that show one text."""

    first: int
    last: int
    text: str


class Below:
    """What stands below the tables of a section, numbered: missing facts, and reasons why something cannot be judged."""

    def __init__(self) -> None:
        self.entries: list[str] = []

    def number(self, entry: str) -> int:
        """The number of an entry, which is added where it is new."""
        if entry not in self.entries:
            self.entries.append(entry)
        return self.entries.index(entry) + 1

    def lines(self) -> list[str]:
        """Missing facts side by side; each reason on lines of its own."""
        numbered = [(f"({place}) ", entry) for place, entry in enumerate(self.entries, 1)]
        facts = [f"{mark}{entry}" for mark, entry in numbered if " " not in entry]
        reasons = [line for mark, entry in numbered if " " in entry for line in wrapped(entry, mark, columns=COLUMNS)]
        return [*packed(facts), *reasons]


def packed(entries: list[str], head: str = "needed ") -> list[str]:
    """Entries side by side, none of them broken."""
    lines: list[str] = []
    for entry in entries:
        if lines and width(lines[-1]) + GAP + width(entry) <= COLUMNS:
            lines[-1] += " " * GAP + entry
        else:
            lines.append((" " * len(head) if lines else head) + entry)
    return lines


class Grid:
    """A table under way, with the footnotes that it refers to."""

    def __init__(self, table: Table, system: str, below: "Below") -> None:
        self.table = table
        self.system = system
        self.below = below
        self.units = [unit_in(column, system) for column in table.columns]
        self.decimals = [
            decimals_of(column, [row.cells[place] for row in table.rows], system)
            for place, column in enumerate(table.columns)
        ]
        self.widths = [self.least_width(place) for place in range(len(table.columns))]
        self.names = max(width(clean(name)) for name in [table.head, *(row.name for row in table.rows)])
        self.gap = GAP
        for row in table.rows:
            self.runs(row)  # makes room for the reasons
        if sum(self.widths) + GAP * len(self.widths) + self.names > COLUMNS:
            self.gap = 1
        self.spread_titles()

    def least_width(self, place: int) -> int:
        """Width of a column by its title, its unit, its values, and reasons that stand alone."""
        words = [*self.table.columns[place].title.split(" "), self.units[place]]
        texts = [self.text(row.cells[place], place) for row in self.table.rows]
        return max(map(width, [*words, *texts]))

    def spread_titles(self) -> None:
        """Wider columns where titles then take fewer lines and the table still fits a page."""
        titles = [column.title for column in self.table.columns]
        for height in range(1, TALLEST):
            wide = [fitting(title, least, height) for title, least in zip(titles, self.widths, strict=True)]
            if sum(wide) + self.gap * len(wide) + self.names <= COLUMNS:
                self.widths = wide
                return

    def text(self, found: Cell, place: int) -> str:
        """The text of a cell that is not a reason."""
        if found.state == KNOWN:
            return clean(value_text(found, self.table.columns[place], self.decimals[place], self.system))
        return "-" if found.state == IDLE else ""

    def runs(self, row: Row) -> list[Run]:
        """The cells of a row, neighbors with the same reason as one."""
        found: list[Run] = []
        place = 0
        while place < len(row.cells):
            each, last = row.cells[place], place + 1
            if each.state in (KNOWN, BLANK, IDLE):
                found.append(Run(place, last, self.text(each, place)))
            else:
                while last < len(row.cells) and said(row.cells[last]) == said(each):
                    last += 1
                found.append(Run(place, last, self.reason_text(each, place, last)))
            place = last
        return found

    def reason_text(self, found: Cell, first: int, last: int) -> str:
        """A reason in the room that its cells have, else its word with the numbers of footnotes."""
        if found.state == NEEDS:
            inline = clean(reason(found, NAMED_INLINE))
            fits = width(inline) <= self.room(first, last)
            text = inline if fits else f"needs {spans([self.below.number(path) for path in found.missing])}"
        else:
            text = f"{WORDS[found.state]} ({self.below.number(f'{WORDS[found.state]}: {clean(found.reason)}')})"
        self.widths[last - 1] += max(0, width(text) - self.room(first, last))
        return text

    def room(self, first: int, last: int) -> int:
        """Width of neighboring columns."""
        return sum(self.widths[first:last]) + self.gap * (last - first - 1)

    def lines(self) -> list[str]:
        """The head and the rows."""
        rows = [(row, self.runs(row)) for row in self.table.rows]
        name_width = self.name_width()
        lines = self.head(name_width)
        summed = False
        for row, runs in rows:
            if row.sums and not summed:
                lines.append("-" * (name_width + sum(self.widths) + self.gap * len(self.widths)))
            summed = row.sums
            first, *rest = name_lines(row.name, name_width)
            cells = "".join(" " * self.gap + aligned(run.text, self.room(run.first, run.last)) for run in runs)
            lines += [(clipped(first, name_width).ljust(name_width) + cells).rstrip(), *(f"  {part}" for part in rest)]
        return lines

    def name_width(self) -> int:
        """Width of the names: what is left of a line, or what they need."""
        left = COLUMNS - sum(self.widths) - self.gap * len(self.widths)
        return min(self.names, max(LEAST_NAME, left))

    def head(self, name_width: int) -> list[str]:
        """The titles of the columns, above their units."""
        titles = [
            wrapped(column.title, columns=wide)
            for column, wide in zip(self.table.columns, self.widths, strict=True)
        ]
        height = max(map(len, titles))
        stacked = [[""] * (height - len(title)) + title for title in titles]
        parts = [[title[level] for title in stacked] for level in range(height)]
        parts += [self.units] if any(self.units) else []
        names = [""] * (len(parts) - 1) + [self.table.head]
        return [self.head_line(name.ljust(name_width), cells) for name, cells in zip(names, parts, strict=True)]

    def head_line(self, name: str, cells: list[str]) -> str:
        """One line of the head."""
        right = [" " * self.gap + aligned(part, wide) for part, wide in zip(cells, self.widths, strict=True)]
        return f"{name}{''.join(right)}".rstrip()


def spans(numbers: list[int]) -> str:
    """Numbers with runs of three and more drawn together: `1, 4-7`; of very many the first and how many more."""
    parts: list[list[int]] = []
    for number in sorted(numbers):
        if parts and parts[-1][-1] == number - 1:
            parts[-1].append(number)
        else:
            parts.append([number])
    words = [f"{part[0]}-{part[-1]}" if len(part) > 2 else ", ".join(map(str, part)) for part in parts]
    text = ", ".join(words)
    return text if len(text) <= MOST_MARKS else f"{numbers[0]} + {len(numbers) - 1}"


def name_lines(name: str, columns: int) -> list[str]:
    """A name in as many lines as it needs, broken at its hyphens where it is too long."""
    name = clipped(name, 2 * COLUMNS)
    if width(name) > columns:
        name = name.replace("-", "- ")
    return [line.replace("- ", "-") for line in wrapped(name, columns=columns)]


def fitting(title: str, least: int, height: int) -> int:
    """The least width at which a title takes no more than so many lines."""
    return next(wide for wide in range(least, COLUMNS + least) if len(wrapped(title, columns=wide)) <= height)


def said(found: Cell) -> tuple[str, tuple[str, ...], str]:
    """What makes two cells give the same reason."""
    return found.state, found.missing, found.reason


def aligned(text: str, wide: int) -> str:
    """A text at the right end of its room."""
    return " " * (wide - width(text)) + text
