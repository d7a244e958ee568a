"""A fan's stated power is less than the air that it moves takes.

Airflow times static pressure is the power that goes into the air itself; the motor takes two to ten times that. Where
the stated power is hardly more, or less, one of the three figures belongs to another setting or another point of the
table, and whatever is worked out from them (airflow per watt, the cost of a year) flatters the fan.

Look the three up together in the maker's table. A recovery unit moves two streams with one stated power; even its
larger stream alone is judged here.
"""

from checker.case import Case, Missing, gather, path_of, quantity
from checker.design.fans import Fan, Rating, Setting
from checker.design.hoods import Hood
from checker.physics.fan import efficiency
from checker.rule import Finding, Meets, Num, Rule


def fan_points(case: Case) -> list[Setting | Rating]:
    """Settings and ratings of fans and hoods that state a static pressure and a power."""
    devices: list[Fan | Hood] = [*case.design.fans.values(), *case.design.hoods.values()]
    points: list[Setting | Rating] = [setting for device in devices for setting in device.settings.values()]
    points += [fan.rating for fan in case.design.fans.values() if fan.rating is not None]
    return [each for each in points if case.speaks_of(each, "power") and case.speaks_of(each, "static")]


def has_pressure(case: Case, point: Setting | Rating) -> bool:
    """It moves its air against no pressure."""
    return bool(case.maybe(point, "static") != 0.0)


@quantity("airflow")
def stream(case: Case, point: Setting | Rating) -> float:
    """The larger stream of the point."""
    fields = ("airflow",) if isinstance(point, Rating) else ("airflow", "supply_airflow", "exhaust_airflow")
    known = [float(flow) for field in fields if (flow := case.maybe(point, field)) is not None]
    if not known:
        raise Missing(path_of(point, "airflow"))
    return max(known)


@quantity("share", "airflow x static pressure / power", "definition of a fan's static efficiency")
def power_in_air(case: Case, point: Setting | Rating) -> float:
    """Share of the stated power that the air takes."""
    flow, static, power = gather(
        [lambda: stream(case, point), lambda: float(case.get(point, "static")), lambda: float(case.get(point, "power"))]
    )
    return efficiency(flow, static, power) if power > 0.0 else float("inf")


def check(point: Setting | Rating, share: float, flow: float, most: float) -> Meets | Finding:
    """The share against what a fan of a house can reach."""
    static, power = float(point.static or 0.0), float(point.power or 0.0)
    numbers = {"static": Num(static, "pressure"), "power": Num(power, "power"), "air": Num(flow * static, "power")}
    if share <= most * (1.0 + 1e-9):
        return Meets(numbers)
    return Finding(
        f"{point.up.name} states {{stream}} at {{static}} for {{power}}; the air alone takes {{air}}, and no such fan turns "
        "more than {limit} of its power into it",
        at="power",
        help="take airflow, static pressure and power from one point of the maker's table",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-53", name="fan-power-cannot-move-its-air", severity="caution", since="0.1",
    over=fan_points, when=has_pressure, needs=(power_in_air, stream), limits=("fan-efficiency-most",), check=check,
    nothing="no fan states power and static pressure of one point",
)  # fmt: skip
