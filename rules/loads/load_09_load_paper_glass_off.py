"""The windows on the load calculation are of other glass than those of the design.

U-value and solar heat gain coefficient decide what windows lose and let in. A sheet that was made with the values
of a catalog, while the window schedule has others, makes loads that are off by more than any other mistake of one line.

Take the figures of the window schedule: those of the whole window with its frame, as the label has them.
"""

from checker.design.controls import LoadsPaper
from checker.quantities.load_paper import Glass, design_glass, stating
from checker.rule import Finding, Meets, Num, Rule


def check(paper: LoadsPaper, own: Glass, gain: float, share: float) -> Meets | Finding:
    """U-value and solar heat gain coefficient, the one that is further off first."""
    if own.shgc is not None and paper.window_shgc is not None and abs(paper.window_shgc - own.shgc) > gain + 1e-9:
        return Finding(
            "the load calculation has windows with a solar heat gain coefficient of {stated}; the design has {own}",
            at="window_shgc", help="take the coefficient of the window schedule",
            numbers={"stated": Num(f"{paper.window_shgc:.2f}"), "own": Num(f"{own.shgc:.2f}")},
        )  # fmt: skip
    if own.u is not None and paper.window_u is not None and abs(paper.window_u - own.u) > share * own.u * (1 + 1e-9):
        return Finding(
            "the load calculation has windows of {stated}; the design has {own} on average",
            at="window_u", help="take the U-values of the window schedule",
            numbers={"stated": Num(paper.window_u, "u_value"), "own": Num(own.u, "u_value")},
        )  # fmt: skip
    return Meets()


RULE = Rule(
    code="LOAD-09", name="load-paper-glass-off", severity="caution", since="0.1",
    over=stating("window_u", "window_shgc"), needs=(design_glass,),
    limits=("paper-gain-tolerance", "paper-glass-tolerance"), check=check, answers=("H16",),
    nothing="the load calculation states no figures of the windows",
)  # fmt: skip
