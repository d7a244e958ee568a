"""What a passive make-up opening passes at the pressure that the house may be drawn down to."""


from checker.case import Case, quantity
from checker.design.fields import Airflow, HousePressure
from checker.physics.makeup_opening import duct_diameter, gross_area, opening_area, stock_diameter
from checker.physics.validity import NoSolution, OutOfRange
from checker.quantities.burners import most_sensitive
from checker.quantities.house_pressure import local_losses, path_of_opening
from checker.quantities.make_up_air import Exhauster, greatest_exhaust, way_if_known, with_record
from checker.quantities.make_up_record import record_of
from checker.quantities.moist_air import air_density
from checker.record import Record


class Capacity(Record):
    """Flow in m3/s that an opening passes at a pressure in Pa."""

    flow: Airflow
    pressure: HousePressure


def with_opening(case: Case) -> list[Exhauster]:
    """The exhausts whose required make-up air comes by an opening or duct of known size."""
    return [device for device in with_record(case) if way_if_known(case, device) in ("opening", None)]


@quantity(source="orifice and duct losses, ASHRAE Handbook - Fundamentals 2021, chapters 16 and 21")
def capacity(case: Case, device: Exhauster) -> Capacity:
    """What its make-up opening passes at what the most sensitive burner bears, or at the rating point of fans."""
    sensitive = most_sensitive(case, case.design)
    highest = float(case.limit("house-drawn-down"))
    pressure = highest if sensitive is None else min(highest, sensitive.limit)
    path = path_of_opening(case, device, record_of(case, device), one_way=False)
    return Capacity(path.flow(pressure), pressure)


@quantity("airflow", "exhaust at its highest setting")
def wanted_flow(case: Case, device: Exhauster) -> float:
    """Make-up air that must come in, m3/s."""
    return greatest_exhaust(case, device)


@quantity("small_area", "orifice equation in the air of the site", "ASHRAE Handbook - Fundamentals 2021, chapter 16")
def area_that_fits(case: Case, device: Exhauster) -> float:
    """Free area that passes the wanted flow at that pressure."""
    pressure = capacity(case, device).pressure
    return opening_area(wanted_flow(case, device), pressure, density=air_density(case, case.design))


@quantity("small_area", "free area / free share of a metal louver or grille")
def face_that_fits(case: Case, device: Exhauster) -> float:
    """Face of a metal louver or grille of unknown free area that passes the wanted flow."""
    return gross_area(area_that_fits(case, device), float(case.limit("metal-louver-free-share")))


@quantity(source="duct losses, ASHRAE Handbook - Fundamentals 2021, chapter 21; stock sizes are common practice")
def duct_that_fits(case: Case, device: Exhauster) -> float | None:
    """Stock diameter, m, that passes the wanted flow at that pressure, by the stated duct's length and elbows.

    None where no duct is stated, or no stock size does it.
    """
    record = record_of(case, device)
    duct = record.duct if record is not None else None
    if duct is None or duct.length is None:
        return None
    flow, pressure = wanted_flow(case, device), capacity(case, device).pressure
    try:
        exact = duct_diameter(
            flow, pressure, duct.length, local_losses(case, duct), density=air_density(case, case.design)
        )
        return stock_diameter(exact, flexible=duct.material == "flexible")
    except (NoSolution, OutOfRange):
        return None
