"""Fresh air is drawn out again where it comes in.

Where all of the outdoor air enters the space that everything exhausts from, it goes straight across the
ceiling to the grille, and the bedrooms beyond their doors keep their old air, although every flow on the
drawing is right. The same happens when both sides of a recovery unit are joined to one return duct.

Let the air in at the bedrooms and take it out at the baths and the kitchen, or join only one side of the unit
to the return.
"""

from checker.case import Case
from checker.design.fans import Fan
from checker.quantities.fresh_air import short_circuit
from checker.quantities.whole_house import running
from checker.rule import Finding, Meets, Rule


def supply_fans(case: Case) -> list[Fan]:
    """Supply and recovery fans that run all day or by a timer."""
    return [
        part.device for part in running(case, case.design) if part.supplies and isinstance(part.device, Fan)
    ]


def check(_fan: Fan, fact: str) -> Meets | Finding:
    """Nothing may be short-circuited."""
    if not fact:
        return Meets()
    return Finding(
        fact if fact.startswith("outdoor") else f"fresh air goes straight to the exhaust: {fact}",
        at="to",
        help="let the air in at the bedrooms and draw it out at the baths and kitchen",
    )


RULE = Rule(
    code="VENT-32", name="fresh-air-drawn-out-again", severity="caution", since="0.1",
    over=supply_fans, needs=(short_circuit,), cites=("fresh-air-to-bedrooms",), check=check,
    nothing="no supply fan or recovery unit runs all day",
)  # fmt: skip
