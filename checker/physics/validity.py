"""What a formula says when it cannot answer: outside its validity, or no solution exists."""


class OutOfRange(ValueError):  # noqa: N818 - reads as the verdict it becomes
    """An input lies outside the validity of the method that was asked.

    `method` names the formula, `reason` says which input left which range.
    """

    def __init__(self, method: str, reason: str) -> None:
        super().__init__(f"{method}: {reason}")
        self.method = method
        self.reason = reason


class NoSolution(ValueError):  # noqa: N818
    """The equations have no (single) solution for these inputs.

    `method` names the formula or solver, `reason` says why nothing was found.
    """

    def __init__(self, method: str, reason: str) -> None:
        super().__init__(f"{method}: {reason}")
        self.method = method
        self.reason = reason
