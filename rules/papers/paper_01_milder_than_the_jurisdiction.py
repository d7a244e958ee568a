"""The design reckons with a milder climate than the jurisdiction has set.

Loads, snow and frost follow from the design criteria that the jurisdiction fills in for its table. A winter
design temperature that is a few degrees too warm, or a summer one that is too cool, makes every load that is
worked out from it too small, and a plan reviewer sees it first.

The criteria come from an amendments file that the design names in `project.amendments`. Take the
jurisdiction's figure, or say in the papers why the site differs.
"""


from checker.case import Case, Missing, given, quantity
from checker.design.site import Site
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule

DIMENSIONS = {"winter_design": "temperature", "summer_dry_bulb": "temperature", "summer_wet_bulb": "temperature",
              "snow_depth": "length"}  # fmt: skip
FIELDS = {"winter_design": "winter_design", "summer_dry_bulb": "summer_design.dry_bulb",
          "summer_wet_bulb": "summer_design.wet_bulb", "snow_depth": "snow_depth"}  # fmt: skip
MILDER_IF_ABOVE = frozenset({"winter_design"})


class Criterion(Record):
    """One criterion of the jurisdiction and what the design states for it."""

    path: str
    key: str
    of_jurisdiction: float
    site: Site | None


def criteria(case: Case) -> list[Criterion]:
    """The criteria in figures that the jurisdiction has set."""
    stated = case.codebook.criteria
    return [Criterion(f"site.{FIELDS[key]}", key, stated[key], case.design.site) for key in FIELDS if key in stated]


@quantity(source="given in the site section")
def design(case: Case, criterion: Criterion) -> float:
    """What the design states."""
    if criterion.site is None:
        raise Missing(criterion.path)
    return float(given(FIELDS[criterion.key])(case, criterion.site))


def check(criterion: Criterion, design: float) -> Meets | Finding:
    """Compare the two; only the milder side is a finding."""
    dimension = DIMENSIONS[criterion.key]
    numbers = {"design": Num(design, dimension), "jurisdiction": Num(criterion.of_jurisdiction, dimension)}
    above = design > criterion.of_jurisdiction
    milder = above if criterion.key in MILDER_IF_ABOVE else design < criterion.of_jurisdiction
    if not milder:
        return Meets(numbers)
    name = criterion.key.replace("_", " ")
    return Finding(
        f"the design's {name} is {{design}}; the jurisdiction's criteria say {{jurisdiction}}",
        help="work with {jurisdiction}, or state in the papers why this site differs",
        numbers=numbers,
    )


RULE = Rule(
    code="PAPER-01", name="milder-than-the-jurisdiction", severity="caution", since="0.1",
    over=criteria, needs=(design,), cites=("jurisdiction-design-criteria",), check=check,
    nothing="no amendments file states design criteria", answers=(),
)  # fmt: skip
