"""The loads are worked out by no approved method.

The code wants heating and cooling equipment sized from loads by the trade's manual (ACCA Manual J) or another
approved method. A figure for each square foot, or the size of the old unit, is none: in a tight and well
insulated house it gives two or three times what is needed.

Have the loads worked out, name the method under `papers.loads.method`, and put the calculation into the packet.
"""

from checker.case import CannotJudge, Case, quantity
from checker.design.controls import LoadsPaper
from checker.quantities.load_methods import equipped, method_words
from checker.rule import Finding, Meets, Rule


@quantity()
def load_method(case: Case, paper: LoadsPaper) -> str:
    """The method as stated. CannotJudge for one that is not known here."""
    stated = str(case.get(paper, "method"))
    if method_words(stated) is None:
        raise CannotJudge(f"whether `{stated}` is an approved method is for the building official to say")
    return stated


def check(_paper: LoadsPaper, stated: str) -> Meets | Finding:
    """A method of the trade counts, a rule of thumb does not."""
    if method_words(stated):
        return Meets()
    return Finding(
        "the loads rest on `{load_method}`, which is no method that the code names",
        at="method", help="work the loads out by ACCA Manual J, and name the method on the drawings",
    )


RULE = Rule(
    code="LOAD-01", name="loads-by-no-method", severity="correction", since="0.1",
    over=equipped, needs=(load_method,), cites=("load-calculation-method",), check=check, answers=("H01",),
    nothing="no heating or cooling equipment is shown",
)  # fmt: skip
