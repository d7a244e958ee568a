"""The equipment is selected by no approved method.

After the loads comes the choice: the code wants it made by ACCA Manual S or another approved method, which reads
the maker's tables at the design temperatures. Picking the next larger size for safety, or by floor area, is none.

Oversized units start and stop, dry the air badly and wear out. Name the method under
`papers.loads.selection_method`, and keep the maker's tables with the packet.
"""

from checker.case import CannotJudge, Case, quantity
from checker.design.controls import LoadsPaper
from checker.quantities.load_methods import equipped, method_words
from checker.rule import Finding, Meets, Rule


@quantity()
def selection_method(case: Case, paper: LoadsPaper) -> str:
    """The method as stated. CannotJudge for one that is not known here."""
    stated = str(case.get(paper, "selection_method"))
    if method_words(stated) is None:
        raise CannotJudge(f"whether `{stated}` is an approved method is for the building official to say")
    return stated


def check(_paper: LoadsPaper, stated: str) -> Meets | Finding:
    """A method of the trade counts, a rule of thumb does not."""
    if method_words(stated):
        return Meets()
    return Finding(
        "the equipment is selected by `{selection_method}`, which is no method that the code names",
        at="selection_method", help="select the equipment by ACCA Manual S from the loads, and name the method on the drawings",
    )


RULE = Rule(
    code="LOAD-02", name="equipment-selected-by-no-method", severity="correction", since="0.1",
    over=equipped, needs=(selection_method,), cites=("equipment-selection-method",), check=check, answers=("H01",),
    nothing="no heating or cooling equipment is shown",
)  # fmt: skip
