"""A second reckoning of heating and cooling, room by room, to hold the program's own against.

Written from the equations and tables of ASHRAE Handbook - Fundamentals 2021, chapters 17, 18 and 27, and from the public
tables named beside the figures; it reads the file as plain data and calls nothing of `checker`. It knows what the
samples use and no more: a word that it does not know is a KeyError.
"""

import re
from typing import Any

import numpy as np
import psychrolib
from CoolProp.CoolProp import PropsSI

psychrolib.SetUnitSystem(psychrolib.SI)

R_IP, U_IP, F_IP, CFM, SEA = 0.1761101838, 5.678263341, 1.730734666, 4.719474432e-4, 101_325.0
STANDARD_AIR = PropsSI("D", "T", 293.15, "P", SEA, "Air")  # kg/m3
NUMBER = re.compile(r"^(-?[\d.]+)\s*(.*)$")
SCALE = {
    "ft2": 0.3048**2, "ft3": 0.3048**3, "cfm": CFM, "ACH50": 1.0, "delta_degF": 1 / 1.8, "%": 0.01, "K": 1.0, "": 1.0,
    "m2": 1.0, "m3": 1.0, "m": 1.0, "L/s": 1e-3, "RSI": 1.0, "W/m2K": 1.0, "mm": 1e-3, "cfm25": CFM,
}  # fmt: skip
INCHES = {"ft": 12.0, "in": 1.0}
FILMS = {"wall": 0.68, "roof": 0.61, "ceiling": 0.61, "floor": 0.92}  # WAC 51-11-0526, still air; in wind 0.17
STUD = {"2x4": 3.5, "2x6": 5.5, "2x10": 9.25, "2x12": 11.25}
FRAMING = {"wall": 0.23, "roof": 0.10}
POINTS = {
    "north": 0, "northeast": 45, "east": 90, "southeast": 135, "south": 180, "southwest": 225, "west": 270, "northwest": 315,
}  # fmt: skip
ABSORPTANCE = {"medium shingles": 0.85, "light metal": 0.50, "dark metal": 0.90}  # Table 8
FF = dict(zip([*POINTS, "sky"], [0.44, 0.21, 0.31, 0.37, 0.47, 0.58, 0.56, 0.46, 0.58], strict=True))  # Table 13
SLF = {  # Table 12 at 20, 25 ... 60 degrees
    0: [2.8, 2.1, 1.4, 1.5, 1.7, 1.0, 0.8, 0.9, 0.8], 45: [1.4, 1.5, 1.6, 1.2, 1.3, 1.3, 0.9, 0.9, 0.8],
    90: [1.2, 1.2, 1.1, 1.1, 1.1, 1.0, 1.0, 0.9, 0.8], 135: [2.1, 1.8, 2.0, 1.7, 1.5, 1.6, 1.4, 1.2, 1.1],
    180: [20.0, 14.0, 6.9, 4.7, 3.3, 2.7, 2.1, 1.7, 1.4],
}  # fmt: skip
IAC = {  # Table 14, shade fully closed
    ("low-e low-solar", "white blinds"): 0.82, ("low-e low-solar", "light drape"): 0.68,
    ("low-e low-solar", "dark drape"): 0.88, ("low-e high-solar", "white blinds"): 0.79,
    ("low-e high-solar", "light drape"): 0.64,
}  # fmt: skip
EDGE = {"vertical 2 ft": ([0, 5, 10, 15], [0.73, 0.58, 0.54, 0.52])}  # WAC 51-11C-61061, Table A106.1
DUCTS = {("attic", "heat pump"): 0.16, ("attic", "cooling"): 0.27}  # Table 6: one story, R-8, 5 % leakage of each side


def thinned(cavity: float) -> float:
    """What the code's U-factors of ceilings (R-30 0.035, R-38 0.030, R-49 0.026, R-60 0.024) leave of loose fill, m2 K/W."""
    one = 0.1761101836823
    kept = np.interp(cavity / one, [0, 30, 38, 49, 60], [0, *(1 / u - 1.67 for u in (0.035, 0.030, 0.026, 0.024))])
    return float(kept) * one

def si(text: Any) -> float:
    """A quantity of the file in SI; `none` is zero."""
    if isinstance(text, int | float):
        return float(text)
    if text == "none":
        return 0.0
    for mark, scale in (("R-", R_IP), ("U-", U_IP)):
        if text.startswith(mark):
            return float(text[2:]) * scale
    if text.endswith("degF") and not text.endswith("delta_degF"):
        return (float(text[:-4]) - 32) / 1.8 + 273.15
    if text.endswith("degC"):
        return float(text[:-4]) + 273.15
    words = text.split()
    if set(words[1::2]) <= set(INCHES):
        return sum(float(a) * INCHES[b] for a, b in zip(words[::2], words[1::2], strict=True)) * 0.0254
    found = NUMBER.match(text)
    assert found is not None, text
    return float(found[1]) * SCALE[found[2]]


class Reckoning:
    """Heating and cooling of a house, W: by part of the envelope (path), by room, and of the whole."""

    def __init__(self, data: dict[str, Any]) -> None:
        self.data, self.site, self.house, self.envelope = data, data["site"], data["house"], data["envelope"]
        indoor, summer = self.house["indoor"], self.site["summer_design"]
        self.winter_in, self.winter_out = si(indoor["winter_temperature"]), si(self.site["winter_design"])
        self.summer_in, self.summer_out = si(indoor["summer_temperature"]), si(summer["dry_bulb"])
        self.dt, self.range = self.summer_out - self.summer_in, si(summer["daily_range"])
        self.pressure = psychrolib.GetStandardAtmPressure(si(self.site["elevation"]))
        # standard air: dry, 20 C, of the sea level's density thinned with the pressure of the site
        density = STANDARD_AIR * self.pressure / SEA
        self.sensible, self.latent = density * PropsSI("C", "T", 293.15, "P", SEA, "Air"), density * 2.501e6
        self.rooms = list(data["rooms"])
        height = si(self.house["ceiling_height"]) if "ceiling_height" in self.house else 0.0
        volumes = [
            si(room["volume"]) if "volume" in room
            else si(room["floor_area"]) * (si(room["ceiling_height"]) if "ceiling_height" in room else height)
            for room in data["rooms"].values()
        ]  # fmt: skip
        self.volume = dict(zip(self.rooms, np.array(volumes) / sum(volumes), strict=True))
        self.heating, self.cooling = self.parts()

    # the envelope

    def u_value(self, surface: dict[str, Any]) -> float:
        """Chapter 27: layers in series, cavity beside framing in parallel."""
        name, faces = surface["assembly"], surface["faces"]
        made = self.envelope["assemblies"][name]
        if not isinstance(made, dict):
            return si(made)
        kind = made.get("kind") or next(word for word in FILMS if word in name)
        across = (FILMS[kind] + (0.17 if faces in POINTS or faces == "sky" else FILMS[kind])) * R_IP
        across += sum(si(layer) for layer in made["layers"].values())
        cavity = si(made.get("cavity", 0))
        if kind == "ceiling":
            return float(1 / (across + (cavity if made.get("raised_heel") else thinned(cavity))))
        if made["framing"] == "masonry":
            return float(1 / (across + cavity))
        share = si(made.get("framing_share", FRAMING[kind]))
        path = np.array([cavity, STUD[made["framing"]] * 1.25 * R_IP]) + across
        return float(np.array([1 - share, share]) @ (1 / path))

    def area(self, window: dict[str, Any]) -> float:
        one = si(window["area"]) if "area" in window else float(np.prod(self.sides(window)))
        return one * window.get("count", 1)

    def sides(self, window: dict[str, Any]) -> tuple[float, float]:
        """Width and height of a window given by its size in inches, m."""
        width, height = window["size"].removesuffix(" in").split("x")
        return float(width) * 0.0254, float(height) * 0.0254

    def net(self, surface: dict[str, Any]) -> float:
        """Less the windows and doors of the same room that face the same way."""
        every = [*self.section("windows").values(), *self.section("doors").values()]
        holes = sum(self.area(each) for each in every if (each["room"], each["faces"]) == (surface["room"], surface["faces"]))
        return si(surface["area"]) - holes

    def section(self, name: str) -> dict[str, Any]:
        found = self.envelope.get(name) or {}
        return {} if found == "none" else found

    def beyond(self, faces: str) -> float:
        """Winter temperature on the other side, K; a garage by its heat balance where its shell is given."""
        shell = self.section("buffers").get(faces, {})
        if "winter_temperature" in shell:
            return si(shell["winter_temperature"])
        if "outside_area" not in shell:
            return self.winter_out
        inward = sum(self.u_value(each) * self.net(each) for each in self.section("surfaces").values() if each["faces"] == faces)
        inward += sum(si(each["u"]) * si(each["area"]) for each in self.section("doors").values() if each["faces"] == faces)
        outward = si(shell["outside_area"]) * si(shell["outside_u"])
        outward += self.sensible * si(shell["volume"]) * shell["air_changes"] / 3600
        return float(np.average([self.winter_in, self.winter_out], weights=[inward, outward]))

    def opaque(self, kind: str, faces: str, shaded: bool) -> float:
        """K by which U A is multiplied: OFt dT + OFb + OFr DR, Table 7."""
        stated = self.section("buffers").get(faces, {}).get("summer_temperature")
        if stated is not None:
            return si(stated) - self.summer_in
        roof = ABSORPTANCE[self.envelope["roof"]]
        if faces == "attic":
            row = (0.62, 14.3 * roof - 4.5, -0.19)
        elif kind == "roof":
            row = (1.0, 38.3 * roof - 7.0, -0.36)
        else:
            row = (1.0, 8.2 if faces in POINTS and not shaded else 0.0, -0.36)
        return float(np.dot(row, [self.dt, 1.0, self.range]))

    def sun(self, window: dict[str, Any]) -> float:
        """Irradiance that reaches the glass, W/m2: the equations of Tables 9 and 10, screens, overhang."""
        faces, latitude = window["faces"], float(self.site["latitude"])
        if faces == "sky":
            total = float(np.polyval([-0.1806, 10.20, 816.2], latitude))
            diffuse = 170.0
        else:
            angle = min(POINTS[faces], 360 - POINTS[faces])
            phi = angle / 180
            total = float(np.polyval([3191.0, -5143.0, 0.0, 1240.0, 423.5], phi))
            total += 35.25 * phi * latitude + 0.1427 * phi * latitude**2
            total += -12.89 * latitude - 0.6172 * latitude**2 + 0.7802 * latitude**2 / (1 + phi)
            diffuse = 356.3 - 37.73 * phi**2 + 0.3022 * phi * latitude - 115.9 * latitude**0.25 / (1 + phi)
        shadow = 0.0
        if "overhang" in window and faces != "sky":
            line = np.interp(latitude, np.arange(20, 61, 5), SLF[angle])
            shadow = line * si(window["overhang"]["depth"]) - si(window["overhang"]["drop"])
            height = si(window["height"]) if "height" in window else self.sides(window)[1]
            shadow = float(np.clip(shadow / height, 0, 1))
        screen = {"outside": 0.64, "none": 1.0}[window.get("screen", "none")]
        diffuse = min(float(total), diffuse)
        return float(screen * (diffuse + (1 - shadow) * (total - diffuse)))

    def ground(self, part: dict[str, Any]) -> float:
        """Conductance to the ground surface, W/K: chapter 18, means over depth and width by integration."""
        k, depth = 1.4, si(part["depth"])
        resistance = 0.259 + si(part["insulation"])
        if "length" in part:  # arcs of pi z / 2 through the soil, each strip of the wall for itself
            strips = (np.arange(20_000) + 0.5) * depth / 20_000
            return float(np.mean(1 / (resistance + np.pi * strips / 2 / k)) * si(part["length"]) * depth)
        across = (np.arange(20_000) + 0.5) * si(part["width"]) / 2 / 20_000
        return float(np.mean(1 / (resistance + np.pi * (depth / 2 + across) / k)) * si(part["area"]))

    def parts(self) -> tuple[dict[str, float], dict[str, float]]:
        """Every part of the envelope by its path."""
        heat, cool = {}, {}
        winter = self.winter_in - self.winter_out
        for name, part in self.section("surfaces").items():
            ua = self.u_value(part) * self.net(part)
            made = self.envelope["assemblies"][part["assembly"]]
            kind = made.get("kind", "") if isinstance(made, dict) else ""
            heat[f"surfaces.{name}"] = ua * (self.winter_in - self.beyond(part["faces"]))
            cool[f"surfaces.{name}"] = ua * self.opaque(kind, part["faces"], bool(part.get("shaded")))
        for name, part in self.section("doors").items():
            ua = si(part["u"]) * si(part["area"])
            heat[f"doors.{name}"] = ua * (self.winter_in - self.beyond(part["faces"]))
            cool[f"doors.{name}"] = ua * self.opaque("door", part["faces"], part.get("shaded") in ("yes", True))
        for name, part in self.section("windows").items():
            kind = self.envelope["glazing"][part["glazing"]]
            heat[f"windows.{name}"] = si(kind["u"]) * self.area(part) * winter
            shade = part.get("shade", "none")
            passes = 1.0 if shade == "none" else (1 + IAC[kind["glass"], shade]) / 2  # half closed
            glass = si(kind["u"]) * (self.dt - 0.46 * self.range) + self.sun(part) * kind["shgc"] * passes * FF[part["faces"]]
            cool[f"windows.{name}"] = glass * self.area(part)
        surface = si(self.site["annual_mean"]) - 10.0  # continental
        for section in ("below_grade_walls", "slabs"):
            for name, part in self.section(section).items():
                path = f"{section}.{name}"
                if "depth" in part:
                    heat[path], cool[path] = self.ground(part) * (self.winter_in - surface), 0.0
                    continue
                steps, factors = EDGE.get(part.get("insulated", "none"), ([0, 1], [0.73, 0.73]))
                edge = np.interp(si(part["insulation"]) / R_IP, steps, factors) * F_IP
                heat[path] = edge * si(part["perimeter"]) * winter
                cover = part.get("covering")
                cool[path] = 0.0 if cover is None else min(0.0, 1.9 - 1.4 / (si(cover) + 0.12)) * si(part["area"])
        return heat, cool

    # the air

    def leak(self, drive: tuple[float, float], difference: float) -> float:
        """Equations 8 to 10: leakage area at 4 Pa times the driving force of wind and stack, m3/s."""
        flow = si(self.house["airtightness"]) * si(self.house["volume"]) / 3600 * (4 / 50) ** 0.65
        area = flow / np.sqrt(2 * 4 / STANDARD_AIR)
        return float(area * 1e4 * (drive[0] + si(self.house["height"]) * abs(difference) * drive[1]) * 1e-6)

    def fans(self) -> tuple[float, float, dict[str, Any] | None]:
        """Outdoor air supplied plainly and through recovery, m3/s, and the fan that does it."""
        for fan in self.data["fans"].values():
            if fan["role"] in ("supply", "recovery"):
                flow = si(fan["settings"]["continuous"]["airflow"])
                return (flow, 0.0, fan) if fan["role"] == "supply" else (0.0, flow, fan)
        return 0.0, 0.0, None

    def air(self, drive: tuple[float, float], difference: float) -> tuple[dict[str, float], float]:
        """Outdoor air of each room as if it were not recovered, m3/s; and that of the house for its moisture."""
        supplied, recovered, fan = self.fans()
        plain = max(supplied, self.leak(drive, difference) + supplied / 2)  # equations 12 to 14
        reached = [name for name in (fan["to"] if fan else []) if name in self.rooms] or self.rooms
        share = {name: self.volume[name] / sum(self.volume[each] for each in reached) for name in reached}
        back, damp = (si(fan["recovery"][key]) for key in ("sensible", "moisture")) if fan and recovered else (0.0, 0.0)
        rooms = {
            name: (plain - supplied) * self.volume[name] + share.get(name, 0.0) * (supplied + recovered * (1 - back))
            for name in self.rooms
        }
        return rooms, plain + recovered * (1 - damp)

    def room_loads(self) -> tuple[dict[str, dict[str, float]], dict[str, dict[str, float]]]:
        """By room: envelope, air, gains and ducts, W, of heating and of cooling."""
        winter = self.winter_in - self.winter_out
        heating_air, _ = self.air((51.0, 0.35), winter)
        cooling_air, _ = self.air((25.0, 0.38), self.dt)
        lived_in = [
            name for name, room in self.data["rooms"].items() if room["use"] in ("kitchen", "living", "dining", "family room")
        ]
        gain = 136 + 2.2 * si(self.house["floor_area"]) + 22 * self.house["occupants"]
        heat, cool = {}, {}
        for name in self.rooms:
            own = [path for path in self.heating if self.part(path)["room"] == name]
            heat[name] = {
                "envelope": sum(self.heating[path] for path in own), "air": self.sensible * heating_air[name] * winter,
            }  # fmt: skip
            cool[name] = {
                "envelope": sum(self.cooling[path] for path in own), "air": self.sensible * cooling_air[name] * self.dt,
                "gains": 0.0,
            }  # fmt: skip
            if name in lived_in:
                cool[name]["gains"] = gain * self.volume[name] / sum(self.volume[each] for each in lived_in)
            if any(name in each.get("serves", []) for each in self.in_the_attic()):
                heat[name]["ducts"] = DUCTS["attic", "heat pump"] * sum(heat[name].values())
                cool[name]["ducts"] = DUCTS["attic", "cooling"] * sum(cool[name].values())
        return heat, cool

    def in_the_attic(self) -> list[dict[str, Any]]:
        """Units whose ducts run in the attic."""
        ducts = self.data.get("ducts") or {}
        outside = [name for name, each in ducts.items() if any("attic" in run.get("location", "") for run in each["runs"].values())]
        return [self.data["equipment"][name] for name in outside]

    def part(self, path: str) -> dict[str, Any]:
        section, name = path.split(".")
        found: dict[str, Any] = self.envelope[section][name]
        return found

    def moisture(self) -> float:
        """Latent load, W: outdoor air by its humidity ratio, people and appliances."""
        summer, indoor = self.site["summer_design"], self.house["indoor"]
        outdoor = psychrolib.GetHumRatioFromTWetBulb(self.summer_out - 273.15, si(summer["wet_bulb"]) - 273.15, self.pressure)
        inside = psychrolib.GetHumRatioFromRelHum(self.summer_in - 273.15, si(indoor["summer_humidity"]), self.pressure)
        _, flow = self.air((25.0, 0.38), self.dt)
        people = 20 + 0.22 * si(self.house["floor_area"]) + 12 * self.house["occupants"]
        return float(max(0.0, self.latent * flow * (outdoor - inside)) + people)
