"""The design file as a typed, read-only model; one module per section of the file."""

from checker.design.annotated import Annotated
from checker.design.combustion import Burner
from checker.design.condensate import CondensateDrain
from checker.design.controls import Acceptance, ControlPoint, Papers
from checker.design.ducts import DuctSystem
from checker.design.envelope import Envelope
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.design.fields import Node, Whole, listed, named, record, said
from checker.design.filters import Filter
from checker.design.hoods import Dryer, Hood
from checker.design.house import House
from checker.design.openings import Opening
from checker.design.outdoor_heat import OutdoorHeat
from checker.design.project import Project
from checker.design.refrigerant import RefrigerantLine
from checker.design.rooms import Room
from checker.design.site import Site

FORMAT = 1
NOT_READ_YET = ("fuel_gas", "hot_water", "hydronics")


@record
class Design(Node):
    """A whole design file."""

    design_format: Annotated[int, Whole()] | None = said("format of this file: always 1; compulsory", 1)
    project: Project | None = said("what this is and which code it is held against; compulsory for its title")
    site: Site | None = said("climate, elevation, snow, prices")
    house: House | None = said("size, people, airtightness")
    rooms: dict[str, Room] = named("rooms by name")
    envelope: Envelope | None = said("walls, roofs, floors, windows of each room, for the loads")
    equipment: dict[str, Equipment] = named("heating and cooling equipment by name")
    fans: dict[str, Fan] = named("fans and recovery units by name")
    hoods: dict[str, Hood] = named("kitchen hoods by name")
    dryers: dict[str, Dryer] = named("clothes dryers by name")
    ducts: dict[str, DuctSystem] = named("duct systems by name")
    filters: dict[str, Filter] = named("filters by name")
    openings: dict[str, Opening] = named("outdoor openings and what they must keep away from, by name")
    combustion: dict[str, Burner] = named("appliances that burn fuel, by name; `none` if nothing burns")
    refrigerant: dict[str, RefrigerantLine] = named("refrigerant lines by name, or by the indoor unit that they serve")
    condensate: dict[str, CondensateDrain] = named("condensate drains by name, or by the unit that they drain")
    controls: dict[str, ControlPoint] = named("thermostats, switches, interlocks by name")
    outdoor_heat: dict[str, OutdoorHeat] = named("snow melting, deicing, heat tracing, patio heat by name, or `none`")
    papers: Papers | None = said("worksheets, drawing notes, tests")
    accepted: list[Acceptance] = listed("findings accepted by a person, with a reason")

    tbd = frozenset[str]()
    stated_none = frozenset[str]()
    hourly = frozenset[str]()  # shares of time that were written per hour
