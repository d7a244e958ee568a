"""The sheet of a metal duct is thinner than its size asks for.

Thin sheet drums, bends at the hangers and tears at the screws, in wide flat ducts first. The code's table goes by
the diameter of round duct and the longer side of rectangular duct, up to 20 in; what is larger goes by the SMACNA
standards. Aluminum is thicker than steel.

Take the next gage, or divide a wide duct in two.
"""

from checker.case import CannotJudge, Case, given, path_of, quantity
from checker.design.airway import Run
from checker.quantities.duct_scope import runs
from checker.rule import Finding, Meets, Num, Rule
from checker.sizes import Size

COLUMNS = {"galvanized steel": 0, "lined steel": 0, "aluminum": 1}
INCH = 0.0254
ROUNDING = 0.0005 * INCH  # the table gives thousandths; 0.0157 in sheet is its 0.016


def sheet_runs(case: Case) -> list[Run]:
    """Runs of galvanized steel or aluminum whose thickness is stated or to be decided."""
    told = [run for run in runs(case) if run.thickness is not None or path_of(run, "thickness") in case.design.tbd]
    return [run for run in told if run.material in COLUMNS or path_of(run, "material") in case.design.tbd]


@quantity("length", "by size, up to 1/2 in w.c.")
def least_thickness(case: Case, run: Run) -> float:
    """Thickness that the table asks for. CannotJudge beyond the table."""
    size: Size = case.get(run, "size")
    table = case.limit("metal-duct-thickness")["round" if size.shape == "round" else "rectangular"]
    side = max(size.width, size.height) / INCH
    rows = sorted((float(most), row) for most, row in table.items())
    for most, row in rows:
        if side <= most * (1.0 + 1e-9):
            return float(row[COLUMNS[str(case.get(run, "material"))]]) / 1000.0 * INCH
    raise CannotJudge(f"a duct wider than {rows[-1][0]:g} in goes by the SMACNA standards")


def check(run: Run, thickness: float, least: float) -> Meets | Finding:
    """Compare the sheet with the table."""
    if thickness + ROUNDING >= least:
        return Meets()
    return Finding(
        f"{run.name} is {{material}} of {{thickness}}, thinner than {{least_thickness}} for its size",
        at="thickness",
        help="use sheet of {least_thickness} or more",
        numbers={"material": Num(run.material)},
    )


RULE = Rule(
    code="DUCT-59", name="metal-duct-too-thin", severity="correction", since="0.1",
    over=sheet_runs, needs=(given("thickness"), least_thickness), cites=("metal-duct-thickness",), check=check,
    nothing="no metal duct has its thickness stated", answers=("F09",),
)  # fmt: skip
