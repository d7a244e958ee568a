"""The house gets damper in winter than the design assumes.

Insulation of cold ducts, window glass and walls is chosen for an indoor humidity. When the ventilation cannot keep
it as low as that, surfaces sweat that look dry on paper.

The steady humidity is worked out from about 3 kg of water a day for each person and the outdoor air that fans bring
about all day, with air leakage where it matters. More than ten points above the stated humidity is reported; drier
air harms none of those surfaces. Raise the outdoor air, or state the humidity that is to be expected.
"""

from checker import each
from checker.case import Case, NotApplicable, given, quantity
from checker.design.house import House
from checker.quantities.moist_air import has_frost, people
from checker.quantities.moisture_balance import humidity_against, outdoor_air
from checker.rule import Finding, Meets, Num, Rule


def is_assumed(case: Case, house: House) -> bool:
    """The design states no indoor humidity for winter, or the winter is without frost."""
    return has_frost(case, house) and house.indoor is not None and case.maybe(house.indoor, "winter_humidity") is not None


@quantity("relative_humidity")
def kept_humidity(case: Case, house: House) -> float:
    """Winter humidity that the ventilation leaves, against the one that is assumed.

    Raises NotApplicable where the air is too damp altogether.
    """
    assert house.indoor is not None
    assumed = float(case.get(house.indoor, "winter_humidity"))
    kept = humidity_against(case, house, (assumed + float(case.limit("humidity-tolerance"))) * (1 + 1e-9))
    if kept > float(case.limit("winter-humidity-most")) * (1 + 1e-9):
        raise NotApplicable("the air is too damp altogether, of which another rule speaks")
    return kept


def check(
    _house: House, assumed: float, kept: float, _flow: float, _people: int, tolerance: float
) -> Meets | Finding:
    """Compare the two humidities."""
    if kept <= (assumed + tolerance) * (1 + 1e-9):
        return Meets()
    return Finding(
        "{outdoor_air} of outdoor air for {people} people leaves {shown} relative humidity on the winter design day; "
        "the design assumes {winter_humidity}",
        at="indoor.winter_humidity",
        help="raise the outdoor air that runs all day, or judge cold ducts and glass at {shown}",
        numbers={"shown": Num(min(kept, 1.0), "relative_humidity")},
    )


RULE = Rule(
    code="VENT-43", name="humidity-above-assumed", severity="caution", since="0.1",
    over=each.house, when=is_assumed, needs=(given("indoor.winter_humidity"), kept_humidity, outdoor_air, people),
    limits=("humidity-tolerance",), check=check,
)  # fmt: skip
