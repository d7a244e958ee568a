"""Whether the house stands in a cold climate."""

import re

from checker.case import Case, Missing, either, quantity


@quantity()
def is_cold(case: Case, _node: object) -> bool:
    """By the climate zone, else by the winter design temperature. Raises Missing("site.climate_zone")."""
    site = case.design.site
    if site is None:
        raise Missing("site.climate_zone")

    def by_zone() -> bool:
        zone = re.match(r"\D*(\d)", str(case.get(site, "climate_zone")))
        if zone is None:
            raise Missing("site.climate_zone")
        return bool(int(zone[1]) >= case.limit("cold-climate-zone"))

    def by_winter() -> bool:
        winter = case.maybe(site, "winter_design")
        if winter is None:
            raise Missing("site.winter_design")
        return bool(winter < case.limit("cold-winter-design"))

    return either(by_zone, by_winter)
