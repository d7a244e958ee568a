"""Records behave as named tuples do."""

import pickle
from typing import NamedTuple

import pytest

from checker.record import Record


class Ours(Record):
    """A record with defaults."""

    place: str
    flow: float = 1.0
    shares: tuple[float, ...] = ()

    @property
    def doubled(self) -> float:
        return 2.0 * self.flow


class Theirs(NamedTuple):
    place: str
    flow: float = 1.0
    shares: tuple[float, ...] = ()


class Inherited(Ours):
    """Adds nothing but a method."""

    def named(self) -> str:
        return f"{self.place}!"


CALLS = [
    (("attic",), {}),
    (("attic", 2.0), {}),
    (("attic", 2.0, (0.5,)), {}),
    (("attic",), {"shares": (1.0,)}),
    ((), {"place": "attic", "flow": 3.0}),
]
WRONG_CALLS = [
    ((), {}),
    (("attic", 1.0, (), 4), {}),
    (("attic",), {"place": "cellar"}),
    (("attic",), {"size": 3}),
]


@pytest.mark.parametrize(("given", "named"), CALLS)
def test_made_as_a_named_tuple_is(given: tuple[object, ...], named: dict[str, object]) -> None:
    ours, theirs = Ours(*given, **named), Theirs(*given, **named)  # type: ignore[arg-type]

    assert tuple(ours) == tuple(theirs)
    assert (ours.place, ours.flow, ours.shares) == (theirs.place, theirs.flow, theirs.shares)
    assert ours._replace(flow=9.0) == theirs._replace(flow=9.0)
    assert ours._asdict() == theirs._asdict()
    assert repr(ours) == repr(theirs).replace("Theirs", "Ours")


@pytest.mark.parametrize(("given", "named"), WRONG_CALLS)
def test_wrong_calls_are_refused(given: tuple[object, ...], named: dict[str, object]) -> None:
    with pytest.raises(TypeError):
        Theirs(*given, **named)  # type: ignore[arg-type]
    with pytest.raises(TypeError):
        Ours(*given, **named)  # type: ignore[arg-type]


def test_read_only_hashable_and_kept_by_pickle() -> None:
    made = Ours("attic", 2.0)

    with pytest.raises(AttributeError):
        made.flow = 3.0  # type: ignore[misc]
    with pytest.raises(AttributeError):
        made.size = 3.0  # type: ignore[attr-defined]
    with pytest.raises(ValueError, match="size"):
        made._replace(size=3.0)  # type: ignore[call-arg]
    assert hash(made) == hash(Ours("attic", 2.0))
    assert pickle.loads(pickle.dumps(made)) == made
    assert made.doubled == 4.0


def test_a_subclass_keeps_the_fields() -> None:
    made = Inherited("attic", flow=3.0)

    assert (made.named(), made.doubled, made._fields) == ("attic!", 6.0, Ours._fields)


def test_taken_apart_and_matched() -> None:
    place, flow, _ = Ours("attic")
    match Ours("attic", 5.0):
        case Ours(place=where, flow=amount):
            assert (where, amount) == ("attic", 5.0)

    assert (place, flow) == ("attic", 1.0)
