"""The energy certificate of the finished house leaves out what it must state.

The certificate tells later owners, raters and reviewers what is in the walls and what was measured: insulation,
windows, tests of house and ducts, efficiencies; from 2021 also the code edition and the path of compliance, from 2024
the additional measures.

Have the builder complete it and post it in the utility room or where the furnace stands.
"""

from checker.case import Case
from checker.design.certificate import EnergyCertificate
from checker.quantities.certificate import blank_certificate, certificate_of, left_out
from checker.rule import Finding, Meets, Num, Rule


def of_the_finished_house(case: Case) -> list[EnergyCertificate]:
    """The certificate, once the house is built; an empty one where the papers hold none."""
    project = case.design.project
    if project is None or project.stage != "as-built":
        return []
    return [certificate_of(case) or blank_certificate()]


def check(_certificate: EnergyCertificate, lacking: list[str]) -> Meets | Finding:
    """Everything must be there."""
    if not lacking:
        return Meets()
    more = ", and {more} more" if len(lacking) > 1 else ""
    return Finding(
        f"the energy certificate leaves out {{item}}{more}",
        help="have the builder complete the certificate and post it",
        numbers={"item": Num(lacking[0]), "more": Num(len(lacking) - 1)},
    )


RULE = Rule(
    code="CTRL-11", name="energy-certificate-incomplete", severity="correction", since="0.1",
    over=of_the_finished_house, needs=(left_out,), cites=("energy-certificate",), check=check,
    nothing="the house is not built yet", answers=("Q09",),
)  # fmt: skip
