"""An exhaust is led through a building cavity or a gypsum duct instead of a duct.

Stud and joist cavities leak on all sides: the moist air ends in the wall. The code keeps cavities and gypsum for
return air, and exhaust ducts follow the same rules of construction.

The usual cause is an old chase that is handy. Put a metal duct into it, sealed, from the fan to the terminal.
"""

from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.quantities.exhaust_duct import exhaust_line
from checker.quantities.exhaust_end import exhausts
from checker.quantities.local_exhaust import Exhauster
from checker.rule import Finding, Meets, Num, Rule

NO_DUCT = ("framing cavity", "gypsum")


def of_stated_material(case: Case) -> list[Exhauster]:
    """Exhausts of whose duct any material is stated or left open."""
    found = []
    for device in exhausts(case):
        try:
            sections = exhaust_line(case, device).sections
        except (Missing, NotApplicable):
            continue
        if any(each.material is not None or path_of(each, "material") in case.design.tbd for each in sections):
            found.append(device)
    return found


@quantity()
def materials(case: Case, device: Exhauster) -> tuple[str, ...]:
    """What the duct is made of, section by section."""
    return tuple(str(case.get(section, "material")) for section in exhaust_line(case, device).sections)


def check(device: Exhauster, materials: tuple[str, ...]) -> Meets | Finding:
    """No section may be a cavity."""
    wrong = next((each for each in materials if each in NO_DUCT), "")
    numbers = {"name": Num(device.name), "material": Num(wrong or materials[0])}
    if not wrong:
        return Meets(numbers)
    return Finding(
        "the exhaust of {name} runs in a {material} duct, which is for return air only",
        help="run a sealed metal duct from the fan to the terminal", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-37", name="exhaust-duct-of-building-cavity", severity="correction", since="0.1",
    over=of_stated_material, needs=(materials,), cites=("exhaust-duct-construction",), check=check,
    nothing="no material of an exhaust duct is stated", answers=("B35",),
)  # fmt: skip
