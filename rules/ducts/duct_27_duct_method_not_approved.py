"""Ducts or return openings are sized by no approved method.

The code wants ducts designed by the trade's duct manual (ACCA Manual D), by the appliance maker's instructions,
or by another method that the building official approves; return and transfer openings likewise. A rule of thumb
such as so many square inches for each ton is none of them. From 2024 the energy chapter names the duct manual alone
for ducts of heating and cooling.

Name the method on the drawings, and keep its worksheet with the packet.
"""


from checker.case import CannotJudge, Case, Missing, NotApplicable, quantity
from checker.design.ducts import DuctSystem
from checker.quantities.duct_scope import comfort_systems
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule

NO_METHOD = ("thumb", "by eye", "guess", "by feel", "experience", "none", "not designed", "per ton", "usual practice")
METHODS = (
    "manual d", "acca", "ashrae", "smacna", "maker", "manufacturer", "instruction", "engineer", "static regain",
    "equal friction", "62.2", "approved",
)  # fmt: skip


MANUAL = ("manual d", "man d", "acca")
OFFICIAL = ("engineer", "approved")


class Sizing(Record):
    """What was sized, and the field that says how."""

    path: str
    name: str
    system: DuctSystem
    field: str


def sizings(case: Case) -> list[Sizing]:
    """The ducts of each system of equipment, and its returns where their own method is stated."""
    found = []
    for system in comfort_systems(case):
        found.append(Sizing(f"{system.path}.design_method", f"ducts of {system.name}", system, "design_method"))
        if system.sizing_basis_of_returns is not None:
            path = f"{system.path}.sizing_basis_of_returns"
            found.append(Sizing(path, f"returns of {system.name}", system, "sizing_basis_of_returns"))
    return found


@quantity()
def is_manual_alone(case: Case, sizing: Sizing) -> bool:
    """Whether the edition takes the duct manual and nothing else for these ducts."""
    try:
        case.codebook.require("duct-manual")
    except (Missing, NotApplicable):
        return False
    return sizing.field == "design_method"


@quantity()
def method(case: Case, sizing: Sizing) -> str:
    """The method as stated on the system, else on the duct worksheet. CannotJudge for one that is not known here."""
    stated = case.maybe(sizing.system, sizing.field)
    papers = case.design.papers
    if stated is None and papers is not None and papers.ducts is not None:
        stated = case.maybe(papers.ducts, "method")
    if stated is None:
        raise Missing(sizing.path)
    words = stated.lower()
    official = is_manual_alone(case, sizing) and any(word in words for word in OFFICIAL)
    if any(word in words for word in (MANUAL if official else METHODS + NO_METHOD)):
        return str(stated)
    raise CannotJudge(f"whether `{stated}` is an approved method is for the building official to say")


def check(sizing: Sizing, stated: str, manual: bool) -> Meets | Finding:
    """A named method counts, a rule of thumb does not."""
    numbers = {"what": Num(sizing.name)}
    words = stated.lower()
    if any(word in words for word in MANUAL) or (not manual and any(word in words for word in METHODS)):
        return Meets(numbers)
    if any(word in words for word in METHODS):
        return Finding(
            "the {what} are sized by `{method}`; since 2024 the energy chapter takes the duct manual alone",
            help="size them by ACCA Manual D, and say so on the drawings",
            numbers=numbers,
        )
    return Finding(
        "the {what} are sized by `{method}`, which is no method that the code names",
        help="size them by ACCA Manual D or the maker's instructions, and say so on the drawings",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-27", name="duct-method-not-approved", severity="correction", since="0.1",
    over=sizings, needs=(method, is_manual_alone), cites=("duct-design-method", "return-sizing-method"),
    check=check, answers=("F01", "F35"), nothing="no duct system of heating or cooling equipment is described",
)  # fmt: skip
