"""The inner face of window glass on the winter design day, and the humidity that it bears."""

from functools import partial

from checker.case import Case, gather, quantity
from checker.physics.moisture import humidity_ceiling
from checker.quantities.airtightness import house_of
from checker.quantities.cold_surfaces import is_heated
from checker.quantities.envelope_parts import of_window
from checker.quantities.moist_air import indoor_winter, winter_design, worked_out


@quantity("u_value", "as stated for the house; else the highest of the windows of the envelope")
def glazing_u(case: Case, _node: object) -> float:
    """U-value of the weakest window glass; for the windows of an envelope that of the whole window."""
    house, envelope = house_of(case), case.design.envelope
    stated = case.maybe(house, "glazing_u")
    if stated is not None or envelope is None:
        return float(case.get(house, "glazing_u"))
    windows = [window for window in envelope.windows.values() if is_heated(case, window)]
    if not windows:
        return float(case.get(house, "glazing_u"))
    return max(gather([partial(of_window, case, window, "u") for window in windows]))


@quantity("relative_humidity", "p_sat(glass) / p_sat(room), glass = room - U x 0.13 x (room - outdoor)", "ISO 13788")
def ceiling(case: Case, node: object) -> float:
    """Indoor humidity at which the inner face of the glass reaches the dew point."""
    room, outdoor = indoor_winter(case, node).temperature, winter_design(case, node)
    transmittance = glazing_u(case, node)
    return worked_out(lambda: humidity_ceiling(room, outdoor, transmittance))
