"""The three honest answers of a quantity or rule that has no number to give."""


class Missing(Exception):  # noqa: N818
    """Values that the design does not state, by path."""

    def __init__(self, *paths: str) -> None:
        super().__init__(", ".join(paths))
        self.paths = tuple(dict.fromkeys(paths))


class CannotJudge(Exception):  # noqa: N818
    """A value is outside the range of the method; the text says which."""


class NotApplicable(Exception):  # noqa: N818
    """The question does not arise here; the text says why."""
