"""The kinds of fault that a design file can have, each with its page of explanation."""

from checker.record import Record


class FaultKind(Record):
    """A kind of fault: a name that states what is wrong, one sentence, and a paragraph on it."""

    name: str
    title: str
    page: str


# Codes are never reused. 01 to 19: reading the text. 20 to 39: making the design of what was read.
FAULTS: dict[str, FaultKind] = {
    "FILE-01": FaultKind(
        "missing-file",
        "There is no file of this name.",
        "The name was taken as it stands, from the folder in which the program was started. Check the "
        "spelling, the capital letters and the folder; a name with spaces needs quotes in a command line.",
    ),
    "FILE-02": FaultKind(
        "is-a-directory",
        "A folder was named where a design file was expected.",
        "One design is one file, so a folder cannot be read as if it were one. Name the file inside the "
        "folder, or give the folder to a command that takes whole folders.",
    ),
    "FILE-03": FaultKind(
        "unreadable-file",
        "The file is there but the system does not let it be read.",
        "The message repeats the system's own reason. Most often the file belongs to another user, is "
        "locked by the program that is writing it, or lies on a drive that has gone away.",
    ),
    "FILE-04": FaultKind(
        "not-text",
        "The file holds bytes or characters that are not text.",
        "A design file is plain text. Zero bytes mean that a drawing, a spreadsheet, a word processor's "
        "document or an archive was named instead. A single control character usually came with a copy "
        "from another program: delete it and type the text again. Lines end with a line feed, with or "
        "without a carriage return before it; a carriage return alone is refused because programs differ "
        "on whether it ends a line.",
    ),
    "FILE-05": FaultKind(
        "not-utf-8",
        "The file is text in another encoding than UTF-8.",
        "Save it again as UTF-8; every editor offers that, with or without a byte order mark. Guessing the "
        "encoding could turn a degree sign or a fraction into another character without anyone noticing, "
        "so it is not tried.",
    ),
    "FILE-06": FaultKind(
        "empty-file",
        "The file says nothing: it is empty, or holds comments only.",
        "The least that a design file says is `design_format`, a title and one section. Nothing can be "
        "judged before that.",
    ),
    "FILE-07": FaultKind(
        "too-large",
        "The file is larger than any design of a house.",
        "Up to 2 MiB of text and 300,000 keys and values are read. The limit is far above the largest real "
        "design and keeps a broken or hostile file from using up the machine. Several houses belong in "
        "several files.",
    ),
    "FILE-08": FaultKind(
        "yaml-syntax",
        "The text is not valid YAML at this place.",
        "Usual causes: a missing space after a colon, a second `: ` on one line, a line that is not aligned "
        "with its neighbors, a quote or bracket that is not closed, an inch mark that ends a quoted value "
        "too early (`\"12\" duct`), or an unquoted value that starts with one of @ ` % * & ! > |. Quote the "
        "value, or align the line. Nothing below such a place can be trusted, so nothing is judged.",
    ),
    "FILE-09": FaultKind(
        "duplicate-key",
        "The same key stands twice in one block.",
        "Many programs silently keep the last of the two, so that the sketch says one thing and the check "
        "another. Here the first one is read, the second is reported with the line of the first, and its "
        "content is left out. Delete one, or give the second thing another name.",
    ),
    "FILE-10": FaultKind(
        "alias-or-anchor",
        "A YAML anchor (`&name`) or alias (`*name`) is used.",
        "They let one value stand for another elsewhere in the file, which hides from a reader of the sketch "
        "what is said of a thing, and lets a few lines grow into millions. Write the value out. If the text "
        "really starts with `&` or `*`, put it in quotes.",
    ),
    "FILE-11": FaultKind(
        "tag",
        "A YAML tag (`!name` or `!!str`) is used.",
        "A tag changes what kind of value follows, and means something in some programs only. The kind of "
        "every value of a design file is fixed by its key, so no tag is ever needed. If the text really "
        "starts with `!`, put it in quotes.",
    ),
    "FILE-12": FaultKind(
        "merge-key",
        "The merge key `<<` is used.",
        "It copies the keys of another block and is no part of YAML 1.2. Write the keys out where they "
        "belong, so that each thing shows what is said of it.",
    ),
    "FILE-13": FaultKind(
        "several-documents",
        "More than one YAML document stands in the file.",
        "A line of three hyphens starts a new document, and it would be a guess which of them is the design. "
        "Nothing is judged. Delete the line, or move what follows it to a file of its own.",
    ),
    "FILE-14": FaultKind(
        "directive",
        "A YAML directive (`%YAML` or `%TAG`) is used.",
        "A design file is always read by the rules of YAML 1.2, so the line could only mislead: `%YAML 1.1` "
        "would turn `no` into a truth value in some programs. Delete the line.",
    ),
    "FILE-15": FaultKind(
        "too-deep",
        "Blocks stand inside each other more than 64 deep.",
        "The deepest place of the design format is below ten. Most often a bracket was opened again and "
        "again without being closed.",
    ),
    "FILE-16": FaultKind(
        "number-trap",
        "The spelling of a number is one that programs read differently.",
        "`012` is ten in some readers of YAML, twelve in others and text in a third kind; `0x1F` and `0o17` "
        "are numbers in another base; `1e999` and `.inf` are no quantity of a house. Write the number in "
        "ordinary decimal digits, or put quotes around it if it is a name or a model number. The value is "
        "left out until then.",
    ),
    "FILE-17": FaultKind(
        "bad-key",
        "A key cannot be used as a name.",
        "Keys name things, and a thing is found by its path, such as `hoods.range-hood.settings.high` or "
        "`accepted[0].rule`. So a key is text of one line, not empty, not longer than 120 characters, and "
        "without `.`, `[` and `]`; a hyphen does in their place. A list or a block cannot be a key. Inside "
        "braces `{a:1}` is one long key: write a space after the colon.",
    ),
    "FILE-18": FaultKind(
        "tab-character",
        "A tab stands where YAML allows spaces only.",
        "Programs show tabs in different widths, so YAML does not let them set how deep a line stands. Set "
        "the editor to insert spaces, two for each step, and replace the tab.",
    ),
    "FILE-19": FaultKind(
        "not-a-mapping",
        "The file as a whole is not a list of keys with values.",
        "A design file is a block of sections, each a key, a colon and what belongs to it: `house:`, "
        "`rooms:` and so on. A file that is one text usually lacks the space after its colons (`a:1`).",
    ),
    "FILE-20": FaultKind(
        "unknown-key",
        "The design format has no such key at this place.",
        "A key that nothing reads would look as if it were checked, so it is refused rather than passed "
        "over. Mostly it is a spelling, a key one level too deep or too shallow, or a word of another "
        "trade; the nearest spelling is offered. Its content is left out and the rest is judged.",
    ),
    "FILE-21": FaultKind(
        "wrong-type",
        "A value is of another kind than this key takes.",
        "For instance a list where one value is expected, a text where there should be a block of keys, or "
        "a word where there should be `yes` or `no`. The message says what was found and what the key "
        "takes. A value that is not known yet may be `tbd` anywhere.",
    ),
    "FILE-22": FaultKind(
        "bad-quantity",
        "A quantity cannot be read, has no unit, or has a unit of another kind.",
        "Quantities carry their unit in the text: `80 cfm`, `6 in`, `7 ft 6 in`, `0.2 in w.c.`. A bare "
        "number is refused where a unit is needed, because twelve inches and twelve feet look alike without "
        "one. A difference of temperatures (`20 delta_degF`) is another kind than a temperature. The message "
        "names the kind that the key takes and shows one way to write it.",
    ),
    "FILE-23": FaultKind(
        "unknown-choice",
        "A word is not among those that this key takes.",
        "Some keys take one of a fixed set of words, so that a rule can tell what is meant. The message "
        "lists them, the nearest first. If none fits the thing on the sketch, leave the key out: rules that "
        "depend on it then ask for it instead of judging by a wrong word.",
    ),
    "FILE-24": FaultKind(
        "unknown-reference",
        "A name refers to a thing that is not in the file.",
        "Things refer to each other by name, as a fan to the opening that it takes its air from. Either the "
        "name is misspelled or the thing is still missing; the nearest name is offered. Rules that follow "
        "the reference cannot judge until it leads somewhere.",
    ),
    "FILE-25": FaultKind(
        "missing-key",
        "A key without which the block says nothing is missing.",
        "Very little is compulsory: `design_format`, a title and one section, and in some blocks the key "
        "that says what the thing is. Everything else may be absent, and a rule that needs it says so by "
        "name. Write `tbd` if the value is known to be missing.",
    ),
    "FILE-26": FaultKind(
        "wrong-format-version",
        "The key `design_format` names a version that this program does not read.",
        "The number says by which edition of the format the file was written, so that the meaning of a key "
        "never changes underneath a design. A higher number needs a newer program; a lower one has to be "
        "brought up to date. Reading it as if it were another version could give a wrong answer, so nothing "
        "is judged.",
    ),
    "FILE-27": FaultKind(
        "section-not-read-yet",
        "The section is part of the format, but this program reads nothing in it yet.",
        "No rule looks at what stands there, so its silence is no approval. The section does no harm and may "
        "stay; the rest of the file is judged.",
    ),
    "FILE-28": FaultKind(
        "acceptance-matches-nothing",
        "An accepted finding is not among the findings.",
        "Either the design was changed and the finding is gone, or the rule or the path is misspelled and "
        "the acceptance never held. An acceptance that is left behind would one day hide a new finding at "
        "the same place: delete it, or correct the rule and the path.",
    ),
    "FILE-29": FaultKind(
        "bad-amendments",
        "The amendments file cannot be used as it stands.",
        "An amendments file states where a jurisdiction or a firm departs from the model code: it overrides, "
        "adds or withdraws requirements by their names in the codebook, each with its source. The message "
        "says which entry is at fault. Limits that cannot be trusted are not applied, and rules that depend "
        "on them do not judge.",
    ),
    "FILE-30": FaultKind(
        "acceptance-expired",
        "The date up to which a finding was accepted has passed.",
        "An acceptance may carry a last day, for instance until a part is delivered or a test is done. After "
        "that day the finding counts again. Resolve it, or have it accepted anew with a reason, a name and a "
        "later date.",
    ),
}  # fmt: skip
