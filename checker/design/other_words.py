"""What people call a key by another word: read only when a key is not known.

A word that leads to one key is taken for that key, unless same_keys.OPEN names it; the others say how to write.
"""

from checker.design.fields import fold

IN_SETTING = "it belongs to a setting: `settings: {high: {airflow: 80 cfm, static: 0.25 in w.c., power: 14 W, sound: 0.6 sone}}`"
AS_SETTING = "write it as a setting: `settings: {high: 80 cfm}`; one called `continuous` runs all day"
IN_DUCT = "it belongs to the duct: `duct: {size: 6 in, length: 12 ft, pieces: {elbow-90: 2}}`"
OF_SETTINGS = {
    "airflow | cfm | flow | rate | speed | speeds | high | low | continuous | boost | on": AS_SETTING,
    "power | watts | wattage | sone | sones | sound | noise | static | run | runs | always on | on time | esp": IN_SETTING,
    "duct size | duct length | diameter | length | fittings | elbows | material": IN_DUCT,
    "outlet | exhausts to | terminal | termination | discharge | discharges to | vented to | cap": "to",
    "controls | switch | controlled by | timer | thermostat": "control",
    "backdraft damper | closes": "damper",
    "rooms | serves | space | location of grille": "room",
    "listed | ul | ul listing": "listing",
    "makeup air | make up | mua": "make_up_air",
}
CATEGORY_1 = "category I may be either: write `natural draft` (with a draft hood) or `fan-assisted`"
CATEGORY_2 = "category II is rare: write `natural draft` or `induced draft`, as its instructions say"
OPEN: dict[tuple[str, str], str] = {
    **{("natural draft", word): CATEGORY_1 for word in ("category i", "category 1", "cat i", "cat. i", "cat 1", "i")},
    **{("natural draft", word): CATEGORY_2 for word in ("category ii", "category 2", "cat ii", "cat. ii", "cat 2", "ii")},
    ("natural draft", "none"): "a vent-free appliance is `unvented`; leave out what burns nothing",
    **{("supply", word): "say which way its air goes, `supply`, `exhaust` or `recovery`; `whole_house: yes` says the rest"
       for word in ("whole house", "ventilation", "whole house ventilation", "whole house fan", "continuous ventilation")},
    **{("elbow-90", f"{word} elbow"): "write `elbow-90: {count: 2, made: smooth}`, with its `radius_ratio` where it is known"
       for word in ("long radius", "smooth", "sweep", "stamped", "short radius")},
    **{("elbow-90", f"{word} elbow"): "write `elbow-90: {count: 2, made: segmented, gores: 5}`"
       for word in ("gored", "segmented", "five piece", "5 piece", "adjustable")},
    ("elbow-90", "elbow with vanes"): "write `elbow-90: {count: 2, vanes: yes}`",
    **{("wall unit", word): "what gives off a boiler's heat is no unit of its own: list its rooms in `serves` of the boiler"
       for word in ("hot water baseboard", "hydronic baseboard", "hydronic baseboards", "baseboard radiator", "radiator",
                    "hot water radiator", "panel radiator", "radiant floor", "hydronic radiant floor", "radiant slab")},
    **{("wall unit", word):
       "write two: the heat pump, and the furnace with its own output and `outdoor_unit: heat-pump`"
       for word in ("dual fuel", "dual fuel heat pump", "hybrid heat pump", "dual fuel system", "hybrid")},
    ("vented", "electric"): "write `kind: vented` and `fuel: electric`",
    ("vented", "gas"): "write `kind: vented` and `fuel: gas`",
    ("supply register", "grille"): "say what goes through it: `supply register`, `return grille`, `exhaust grille`",
    **{("vented", word): "an attic outside the insulation is `vented` or `unvented`"
       for word in ("unconditioned", "unheated", "cold", "outside")},
    **{("vented", word): "a closed crawl space is `conditioned` where house air or an exhaust keeps it dry"
       for word in ("sealed", "encapsulated", "closed", "unvented crawl space")},
}  # fmt: skip
"""Words that leave something open, by the first word of the list they were written for, and what to write."""

WORDS: dict[str, dict[str, str]] = {
    "Project": {
        "edition | code edition | irc | building code": "code", "name": "title", "rev": "revision",
        "standard | ashrae | 62 2": "ventilation_standard", "author | designer | by": "drawn_by", "phase | status": "stage",
    },
    "Site": {
        "zone | climate | cz": "climate_zone", "altitude": "elevation", "snow": "snow_depth", "lat": "latitude",
        "design temp | design temperature | heating design | winter | outdoor design | 99 %": "winter_design",
        "cooling design | summer": "summer_design", "hdd | hdd65 | degree days": "heating_degree_days",
        "cdd": "cooling_degree_days", "wsf": "weather_factor", "location | city | county | address | town": "place",
        "electricity price | fuel price": "prices",
    },
    "House": {
        "area | size | conditioned area | conditioned floor area | sqft | square feet | living area": "floor_area",
        "beds | bedroom": "bedrooms", "conditioned volume": "volume", "people | persons | residents": "occupants",
        "blower door | ach50 | leakage | air leakage | tightness | air tightness | infiltration | cfm50": "airtightness",
        "ventilation | ventilation strategy | ventilation system | system": "strategy",
        "floors | storeys | levels": "stories", "ceiling | ceilings": "ceiling_height", "tested": "airtightness_is",
        "units | dwellings": "dwelling_units", "garage": "attached_garage", "window u | u value | glazing": "glazing_u",
    },
    "Room": {
        "type | kind": "use", "area | size": "floor_area", "windows": "window", "doors": "door", "floor | storey": "level",
        "fan | exhaust fan": "say it under the fan: `room: bath`", "height": "ceiling_height", "open": "open_to",
        "heat load | heat loss": "heating_load", "heat gain": "cooling_load", "fresh air | ventilation": "outdoor_air",
        "undercut | transfer": "it belongs to the door: `door: {width: 30 in, undercut: 3/4 in}`",
    },
    "Door": {"gap": "undercut", "grille | transfer grille | transfer | jumper": "transfer_area"},
    "Window": {"openable | operable | operable area | opening": "openable_area", "area | glazing": "glazed_area"},
    "Fan": {
        **OF_SETTINGS, "type": "the keys are `role` (supply, exhaust, recovery) and `kind` (in-line, ceiling)",
        "intake | source | draws from": "from", "merv": "filter", "standard | rated | certified | hvi": "rating",
        "sre | efficiency | effectiveness": "it belongs to `recovery: {sensible: 75 %, at: 32 degF}`",
        "exhaust to | exhausts": "`to` lists both ends of a recovery unit: `to: [living, bedroom, stale-air-exhaust]`",
        "ducts | runs": "one duct goes under `duct`, a network under the section `ducts`",
        "frost control | defrost": "it belongs to `recovery: {frost_control: recirculating defrost}`",
        "supply airflow | exhaust airflow": "it belongs to a setting: `settings: {continuous: {supply_airflow: 70 cfm}}`",
        "whole house ventilation | whole house fan | whole building": "whole_house", "hangs | mounted": "location",
    },
    "Hood": {
        **OF_SETTINGS, "type": "mount", "fuel | range | cooktop | stove": "cooking", "height": "mounting_height",
        "recirculates | ductless": "recirculating", "location": "room", "kind | mounting": "mount",
    },
    "Setting": {
        "cfm | flow | rate": "airflow", "watts": "power", "sones | noise": "sound", "pressure | esp | sp": "static",
        "continuous | always on | mode": "run", "duty | minutes | run time | duty cycle": "on_time",
        "supply | supply air": "supply_airflow", "exhaust | exhaust air": "exhaust_airflow",
        "control | timer": "it belongs to the fan or hood: `control: timer`",
    },
    "Rating": {"cfm": "airflow", "esp | pressure": "static", "hvi | test | certified by | certified | listed": "standard"},
    "Recovery": {
        "sre | efficiency": "sensible", "ase | effectiveness": "apparent", "latent | lrmt | ltr": "moisture",
        "defrost | frost": "frost_control", "temperature": "at",
        "total | total recovery": "the keys are `sensible` (without moisture) and `moisture`",
    },
    "Capacity": {
        "capacity | nominal | output": "rated", "design": "at_design", "min | minimum": "least",
        "table": "points",
    },
    "Assembly": {
        "type": "kind", "stud | studs | joist | joists | rafter | rafters | framing size": "framing", "u value | u factor": "u",
        "r value": "`r` is that of the whole with its framing; the insulation alone is `cavity` or `continuous`",
        "continuous insulation | exterior insulation | rigid insulation": "continuous",
        "framing factor | framing fraction": "framing_share", "cavity insulation": "cavity",
        "insulation": "the keys are `cavity`, between the framing or as loose fill, and `continuous`, across it",
    },
    "Surface": {
        "facing | orientation | direction": "faces", "construction": "assembly", "gross area": "area",
        "size": "write its area, `area: 120 ft2`",
    },
    "Glazing": {"u value | u factor": "u", "low e": "it belongs to the glass: `glass: low-e low-solar` or `low-e high-solar`"},
    "Fenestration": {
        "type | window type": "glazing", "qty | quantity | number | how many": "count", "facing | orientation | direction": "faces",
        "u value | u factor": "u", "width": "write both in one: `size: 36x60 in`",
    },
    "OutsideDoor": {
        "facing | orientation | direction": "faces", "type": "kind", "u value | u factor": "u",
        "size": "write its area, `area: 20 ft2`", "glazing | shgc": "a glazed door belongs to `windows`",
    },
    "BelowGradeWall": {"depth below grade": "depth", "r value": "insulation", "area": "the keys are `length` and `depth`"},
    "Slab": {
        "exposed edge | exposed perimeter | edge length": "perimeter",
        "edge insulation | perimeter insulation": "say how much and where: `insulation: R-10` and `insulated: vertical 2 ft`",
        "r value": "insulation", "depth below grade": "depth",
    },
    "Prices": {"electric | power | kwh": "electricity", "gas | natural gas | propane | oil | heating oil | lp": "fuel"},
    "Control": {"type | kind": "by", "manual | manual override": "override", "setpoint": "humidity_high"},
    "OutdoorAirDuct": {"cfm | flow": "airflow", "timer": "control", "duty | on time | run time": "fan_share", "from": "opening"},
    "Equipment": {
        "measured | as built": "commissioning", "type": "kind",
        "cfm | flow": "airflow", "esp | static | external static": "available_static", "model": "notes",
        "btu | btuh | capacity | tons | output": "the keys are `heating` and `cooling`",
        "input": "the capacity counts, `heating: 57000 Btu/h`: input times efficiency",
        "heating capacity | heat output": "heating", "cooling capacity": "cooling", "rated airflow": "airflow",
        "backup heat | auxiliary heat | aux heat | supplemental heat": "backup", "rating": "ratings",
        "rooms | rooms served": "serves", "room": "the keys are `location`, where it stands, and `serves`",
        "fresh air": "outdoor_air",
        "afue | seer | seer2 | eer | eer2 | hspf | hspf2 | cop | efficiency | sound":
            "it belongs to the ratings: `ratings: {seer2: 16, hspf2: 9}`",
        "drain pan | pan | condensate | drain": "it belongs to the section `condensate`: `condensate: {drain: {from: coil}}`",
    },
    "OverflowDrain": {"to | ends | end": "say `conspicuous: yes` where it ends in sight, such as above a window"},
    "CondensateDrain": {
        "diameter | pipe": "size", "fall | pitch": "slope", "ends | drains to | discharge": "to",
        "overflow | safety | float switch": "secondary", "p trap": "trap",
    },
    "RefrigerantLine": {
        "line length": "length", "lift": "rise", "vapor | gas": "suction", "type": "refrigerant",
        "liquid line": "liquid", "suction line | gas line": "suction",
    },
    "Papers": {"selection | equipment | equipment selection | manual s": "selections", "load calculation": "loads"},
    "Ratings": {"sound | noise | sound pressure": "sound_level", "power level | lw": "sound_power"},
    "Siting": {"pan heater | base pan heater | drain pan heater": "base_heater", "under": "below", "property line": "to_lot_line"},
    "Electrical": {"mca": "least_ampacity", "mocp | mop | max fuse": "greatest_overcurrent", "breaker | fuse": "overcurrent",
                   "wire ampacity": "conductor_ampacity", "disconnect": "disconnect_in_sight"},
    "LoadsPaper": {
        "cooling | total | total cooling": "cooling_total", "sensible | sensible cooling": "cooling_sensible",
        "latent | latent cooling": "cooling_latent", "heat loss | heating load": "heating",
        "outdoor winter | winter design": "winter_outdoor", "outdoor summer | summer design": "summer_outdoor",
        "indoor winter": "winter_indoor", "indoor summer": "summer_indoor", "people": "occupants",
        "heat gain | cooling load": "the keys are `cooling_sensible`, `cooling_latent` and `cooling_total`",
    },
    "Dryer": {"closet": "in_closet", "location": "room", "type": "kind",
              "cfm | flow": "airflow", "vent": "duct", "termination | terminal | outlet": "to"},
    "Burner": {"type": "kind", "vent | venting | flue": "draft", "btu | btuh | rating": "input", "room": "location"},
    "MakeUpAir": {
        "cfm | flow | rate": "airflow", "intake | from": "opening", "area | free area | size": "opening_area",
        "type": "damper", "heated | warmed | tempering": "tempered", "interlocked": "interlock", "makeup fan": "fan",
        "access": "damper_access", "note | notes | drawing": "drawing_note", "to | location": "room",
    },
    "DuctSystem": {
        "cfm | flow": "airflow", "fan | unit | equipment | air handler | blower": "mover", "branches | ducts": "runs",
        "registers | grilles | supplies | returns": "outlets", "components | pressure drops": "losses", "method": "design_method",
        "friction rate": "declared_friction_rate", "tel | total effective length": "declared_total_effective_length",
        "asp | available static": "declared_available_static", "return | return location": "return_from",
        "area served | floor area": "floor_area_served", "supply temp": "supply_temperature",
        "size | length | material | insulation | location | pieces":
            "it belongs to a run: `runs: {trunk: {from: slim-duct, size: 8 in, length: 12 ft}}`",
    },
    "Outlet": {
        "cfm | flow": "airflow", "type": "kind", "drop": "pressure_drop", "location": "room", "face": "size",
        "distance | wall distance": "distance_to_wall",
    },
    "DuctLeakage": {"outside | outdoors": "to_outdoors", "test stage | when": "stage", "result | measured | is": "tested"},
    "Filter": {
        "rating": "merv", "location | where | position": "place", "cfm | flow": "airflow", "face": "face_area", "type": "merv",
        "drop | pressure drop | clean | clean drop | initial drop | initial resistance": "drop_clean",
        "final | final drop | dirty | loaded | final resistance": "drop_final", "for | fan | unit | equipment": "serves",
        "accessible": "access", "sealed": "box_sealed", "rated at | rated airflow": "at",
    },
    "Opening": {
        "type": "kind", "distance | distances | clearance | clearances | separation": "clear_of",
        "position | coordinates": "at", "above grade | elevation": "height_over_grade", "mesh": "screen", "side": "wall",
        "up": "it belongs to the position: `at: {east: 8 ft, north: 0 ft, up: 5 ft}`; `height_over_grade` alone will do",
        "property line | lot line": "to_lot_line", "louver | louvre | hood | weatherproof": "hooded",
    },
    "Test": {"date | when": "on", "tester": "by"}, "Commissioning": {"date | when": "on", "esp | pressure": "static"},
    "Cooking": {"output | btu | btuh": "input"},
    "Airway": {
        "diameter": "size", "type | kind": "material", "insulated": "insulation", "fittings | elbows": "pieces",
        "where | runs": "location", "jacket": "vapor_jacket",
    },
    "VentilationWorksheet": {"rate | required": "required_rate", "area": "floor_area"},
    "ControlPoint": {"type": "kind", "controls | for": "switches", "room | place": "location"},
}  # fmt: skip


def known_as(section: type, key: str) -> str:
    """Help for a key that is known by another word in a section (or one it is made of); "" where there is none."""
    word = fold(key)
    for each in section.__mro__:
        for words, name in WORDS.get(each.__name__, {}).items():
            if word in words.split(" | "):
                return f"the key is `{name}`" if " " not in name else name
    return ""


def open_word(first: str, written: str) -> str:
    """Help for a word that leaves something open in the list that begins with a word; "" where there is none."""
    return OPEN.get((first, written), "")
