"""At the indoor humidity in winter, water runs down the window glass.

The inner face of a window is the coldest surface of most rooms. When the indoor humidity is higher than that face
allows at the winter design temperature, glass and frame run with water, sills rot and seals grow mold. Frames and
glass edges are colder than the middle that is reckoned here, so they sweat earlier.

The glass is the weakest that the house states, else the weakest window of the envelope. The humidity is the one that
the design states for winter, else the one that the ventilation leaves. Take better glass, or keep the humidity below
the ceiling by more outdoor air or a core that returns less moisture.
"""

from checker import each
from checker.case import Case, quantity
from checker.design.house import House
from checker.quantities.moist_air import has_frost, winter_design
from checker.quantities.moisture_balance import humidity_against
from checker.quantities.window_glass import ceiling, glazing_u
from checker.rule import Finding, Meets, Num, Rule


@quantity("relative_humidity", "as stated for winter; else what the ventilation leaves")
def room_humidity(case: Case, house: House) -> float:
    """Indoor humidity in winter, at most 100 %."""
    stated = None if house.indoor is None else case.maybe(house.indoor, "winter_humidity")
    if stated is not None:
        return float(stated)
    return min(1.0, humidity_against(case, house, ceiling(case, house) * (1 + 1e-9)))


def check(house: House, highest: float, humidity: float, _u: float, _outdoor: float) -> Meets | Finding:
    """Compare the humidity with the ceiling by the glass."""
    if humidity <= highest * (1 + 1e-9):
        return Meets({"ceiling": Num(highest, "relative_humidity")})
    return Finding(
        "glass of {glazing_u} sweats above {ceiling} relative humidity at {winter_design} outdoors; the rooms have "
        "{room_humidity}",
        at="glazing_u" if house.glazing_u is not None else "",
        help="take glass with a lower U-value, or keep the indoor humidity below {ceiling} in the cold",
    )


RULE = Rule(
    code="VENT-42", name="window-glass-sweats", severity="caution", since="0.1",
    over=each.house, when=has_frost, needs=(ceiling, room_humidity, glazing_u, winter_design),
    cites=("glass-humidity",), check=check,
)  # fmt: skip
