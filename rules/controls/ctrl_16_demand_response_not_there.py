"""The energy papers count a demand responsive thermostat, and the one that is shown cannot do it.

From 2024 a thermostat that the utility can ask to move its set points earns a credit. It must speak one of the
protocols that the chapter names for the kind of equipment, and be able to move by 1, 2, 3 and 4 degF.

Show such a thermostat for the primary heating or cooling, or claim another measure.
"""

from checker.case import Case, Missing, path_of, quantity
from checker.design.controls import ControlPoint
from checker.quantities.energy import energy_paper
from checker.quantities.thermostats import primary_thermostats, switched
from checker.rule import Finding, Meets, Num, Rule

MEASURE = "demand response"
VARIABLE_ONLY = "AHRI 1380"
STEPS = 4
KELVIN = 5.0 / 9.0


def claimed(case: Case) -> list[ControlPoint]:
    """Thermostats of the primary system, where the papers count on one that is demand responsive."""
    if MEASURE not in energy_paper(case).measures:
        return []
    found = primary_thermostats(case)
    if not found:
        raise Missing("controls")
    return found


@quantity()
def stages(case: Case, point: ControlPoint) -> frozenset[str]:
    """The stages of the equipment that a thermostat switches, indoor or outdoor part. Raises Missing."""
    units = switched(case, point)
    if not units:
        raise Missing(path_of(point, "switches"))
    told = [stated for unit in units if (stated := case.maybe(unit, "stages")) is not None]
    return frozenset(told) if told else frozenset((str(case.get(units[0], "stages")),))


@quantity()
def protocol(case: Case, point: ControlPoint) -> str:
    """How the utility can reach a thermostat."""
    return str(case.get(point, "demand_response"))


@quantity()
def lacking_steps(case: Case, point: ControlPoint) -> list[int]:
    """Steps of 1 to 4 degF that a thermostat cannot make; none where it does not say which it can."""
    stated = case.maybe(point, "demand_response_steps")
    return [step for step in range(1, STEPS + 1) if all(abs(each - step * KELVIN) > 1e-3 for each in stated)] if stated else []


def check(point: ControlPoint, spoken: str, stages: frozenset[str], steps: list[int]) -> Meets | Finding:
    """By protocol, then by steps."""
    numbers = {"name": Num(point.name), "protocol": Num(spoken)}
    if spoken == "none":
        return Finding(
            "the papers count a demand responsive thermostat; the utility cannot reach {name}",
            at="demand_response", help="choose a thermostat that the utility can reach, or claim another measure",
            numbers=numbers,
        )  # fmt: skip
    fits = spoken == VARIABLE_ONLY if stages == {"variable speed"} else spoken != VARIABLE_ONLY or "single stage" not in stages
    if not fits:
        wanted = VARIABLE_ONLY if stages == {"variable speed"} else "OpenADR 2.0 or CTA-2045"
        return Finding(
            "{name} answers the utility by {protocol}; for its equipment the credit asks for {wanted}",
            at="demand_response", help="choose a thermostat that speaks {wanted}, or claim another measure",
            numbers={**numbers, "wanted": Num(wanted)},
        )  # fmt: skip
    if steps:
        return Finding(
            "{name} cannot move its set points by {step} for the utility",
            at="demand_response_steps", help="choose a thermostat that moves by 1, 2, 3 and 4 delta_degF",
            numbers={**numbers, "step": Num(steps[0] * KELVIN, "temperature_difference")},
        )  # fmt: skip
    return Meets(numbers)


RULE = Rule(
    code="CTRL-16", name="demand-response-not-there", severity="correction", since="0.1",
    over=claimed, needs=(protocol, stages, lacking_steps), cites=("demand-response-credit",), check=check,
    nothing="the papers count no demand responsive thermostat", answers=("Q15",),
)  # fmt: skip
