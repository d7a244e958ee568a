"""A heat pump is rated below the federal minimum.

Equipment made for sale has a least seasonal efficiency for cooling (SEER2) and heating (HSPF2); the energy chapter
asks for it too. A figure below it is mostly one of an old stock list, or of the older rating procedure whose numbers
are not comparable.

Choose equipment that is rated at the minimum or above, and state the ratings of the combination that is installed.
"""

from checker.case import Case, gather, quantity
from checker.design.equipment import Equipment
from checker.quantities.energy import heat_pumps, ratings_of
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def seasonal(case: Case, unit: Equipment) -> tuple[float, float]:
    """(SEER2, HSPF2); both are asked for where the unit heats and cools."""
    ratings = ratings_of(unit)
    asked = [field for field in ("seer2", "hspf2") if wants(case, unit, field)]
    values = dict(zip(asked, gather([lambda f=f: float(case.get(ratings, f)) for f in asked]), strict=True))  # type: ignore[misc]
    return values.get("seer2", float("inf")), values.get("hspf2", float("inf"))


def wants(case: Case, unit: Equipment, field: str) -> bool:
    """Whether a rating is stated, or to be decided."""
    return case.speaks_of(ratings_of(unit), field)


def check(unit: Equipment, rated: tuple[float, float], table: dict[str, dict[str, float]]) -> Meets | Finding:
    """Compare both with their minimum."""
    row = table["packaged" if unit.kind == "packaged unit" else "split"]
    pairs = (("SEER2", rated[0], float(row["seer2"])), ("HSPF2", rated[1], float(row["hspf2"])))
    low = [pair for pair in pairs if pair[1] < pair[2] * (1 - 1e-9)]
    if not low:
        return Meets()
    word, value, least = low[0]
    numbers = {"unit": Num(unit.name), "word": Num(word), "value": Num(value), "least": Num(least)}
    also = ""
    if len(low) > 1:
        numbers |= {"other": Num(low[1][0]), "second": Num(low[1][1]), "second_least": Num(low[1][2])}
        also = ", and at {second} {other}, below {second_least}"
    return Finding(
        "{unit} is rated at {value} {word}, below the federal minimum of {least}" + also,
        at=f"ratings.{word.lower()}",
        help="choose a heat pump of {least} {word} or more",
        numbers=numbers,
    )


RULE = Rule(
    code="ENER-02", name="heat-pump-below-minimum", severity="correction", since="0.1",
    over=heat_pumps, needs=(seasonal,), limits=("heat-pump-efficiency",), check=check,
    nothing="no heat pump states SEER2 or HSPF2", answers=("H33", "R01", "R05", "R06"),
)  # fmt: skip
