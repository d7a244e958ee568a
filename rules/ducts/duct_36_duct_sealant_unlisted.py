"""Ducts are sealed with a tape or mastic that is not listed for them.

Cloth "duct tape" dries out within a few years and falls off, in an attic sooner. Tape and mastic for ducts are
tested and marked: UL 181A on fibrous glass duct board, UL 181B on metal and flexible duct (181B-FX tape,
181B-M mastic).

Name the marking once for the system with `sealant_listing`, or with the run.
"""

import re

from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.design.airway import Airway
from checker.design.fields import fold
from checker.quantities.duct_sets import DuctSet, below, duct_sets, listed, says_none
from checker.rule import Finding, Meets, Num, Rule

MARK = re.compile(r"181\s*-?\s*([ab])?", re.IGNORECASE)
CLOTH = ("duct tape", "cloth tape", "grey tape", "gray tape", "packing tape")
TESTED = ("tape", "mastic")


def mark_of(case: Case, of: DuctSet, duct: Airway) -> str | None:
    """What marking the tape or mastic of a duct has, from the run or its system; None where nobody says."""
    stated = case.maybe(duct, "sealant_listing")
    if stated is None and MARK.search(duct.sealed or ""):
        stated = duct.sealed
    if stated is None and of.system is not None:
        stated = case.maybe(of.system, "sealant_listing")
    return None if stated is None else str(stated)


def is_wrong(duct: Airway, mark: str | None) -> bool:
    """Whether tape or mastic is surely not the right one."""
    found = MARK.search(mark or "")
    if found is None:
        return mark is not None or any(word in fold(duct.sealed or "") for word in CLOTH)
    letter = (found[1] or "").upper()
    wanted = "A" if duct.material == "duct board" else "B"
    return letter != "" and duct.material is not None and letter != wanted


@quantity()
def unlisted(case: Case, of: DuctSet) -> tuple[Airway, ...]:
    """Ducts whose tape or mastic is not marked for them. Raises Missing where nothing is said."""
    taped = [duct for duct in of.ducts if any(word in fold(duct.sealed or "") for word in TESTED)]
    taped = [duct for duct in taped if not says_none(duct.sealed)]
    if not taped:
        absent = [path_of(duct, "sealed") for duct in of.ducts if path_of(duct, "sealed") in case.design.tbd]
        if absent:
            raise Missing(*absent)
        raise NotApplicable("no tape or mastic is named")
    marks = {duct.path: mark_of(case, of, duct) for duct in taped}
    bad = tuple(duct for duct in taped if is_wrong(duct, marks[duct.path]))
    if not bad and None in marks.values():
        raise Missing(path_of(of.system or taped[0], "sealant_listing"))
    return bad


def check(of: DuctSet, bad: tuple[Airway, ...]) -> Meets | Finding:
    """All tape and mastic is marked for its duct."""
    if not bad:
        return Meets()
    wanted = "UL 181A" if bad[0].material == "duct board" else "UL 181B"
    return Finding(
        "`{sealant}` on {ducts} is not marked {wanted}",
        at=below(of, bad[0], "sealed"),
        help="seal with mastic or tape marked {wanted}",
        numbers={
            "ducts": Num(listed(bad)),
            "sealant": Num(bad[0].sealant_listing or bad[0].sealed or "an unlisted product"),
            "wanted": Num(wanted),
        },
    )


RULE = Rule(
    code="DUCT-36", name="duct-sealant-unlisted", severity="correction", since="0.1",
    over=duct_sets, needs=(unlisted,), cites=("duct-sealants",), check=check, nothing="no duct is drawn",
    answers=("F10",),
)  # fmt: skip
