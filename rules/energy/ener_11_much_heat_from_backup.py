"""A good part of the winter's heat comes from resistance backup.

Below the balance point each unit of heat that the compressor lacks is bought at full price. Over a winter of
temperature bins the share can be worked out from the maker's table and the load line, which here falls to nothing
at 65 degF; cycling below the least capacity is counted.

A heat pump that keeps more of its capacity in the cold, or less load, lowers it. Hold the cost of the larger unit
against the electricity that it saves.
"""

from checker.case import Case, quantity
from checker.physics.heat_pump import SeasonalEnergy
from checker.quantities.energy import season, with_tables
from checker.quantities.equipment import Group
from checker.quantities.heat_pump import helped_by_fuel
from checker.rule import Finding, Meets, Num, Rule


def is_electric(case: Case, group: Group) -> bool:
    """Its backup burns fuel."""
    return not helped_by_fuel(case, group.units[0])


@quantity("share", "heat of the backup / heat of the winter")
def backup_share(case: Case, group: Group) -> float:
    """Share of the winter's heat that the compressor does not give."""
    energy = season(case, group)
    return energy.backup / energy.heat


def check(group: Group, share: float, energy: SeasonalEnergy, most: float) -> Meets | Finding:
    """Compare the share with what is worth a look."""
    numbers = {
        "unit": Num(group.name),
        "performance": Num(round(energy.performance, 2)),
        "alone": Num(round((energy.heat - energy.backup) / energy.compressor, 2) if energy.compressor else 0.0),
    }
    if share <= most * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{unit} leaves {backup_share} of the winter's heat to resistance backup: each kWh gives {performance} kWh of heat, "
        "where the compressor alone would give {alone}",
        at="heating",
        help="look at a heat pump that keeps more capacity in the cold; {performance} against {alone} is what it is worth",
        numbers=numbers,
    )


RULE = Rule(
    code="ENER-11", name="much-heat-from-backup", severity="note", since="0.1",
    over=with_tables, when=is_electric, needs=(backup_share, season), limits=("backup-share",), cites=("no-load-temperature",),
    check=check, nothing="no single heat pump has a performance table",
)  # fmt: skip
