"""`Annotated`, at a tenth of the cost: the three hundred of the design's fields would take longer than reading a design.

To a type checker it is `typing.Annotated`; at run time it holds the kind and lets itself be joined with None.
"""

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from typing import Annotated as Annotated
else:

    class Annotated:
        """A field's type with its kind: `Annotated[float, Quantity("length")]`."""

        __slots__ = ("kind", "type")

        def __init__(self, type: Any, kind: Any) -> None:
            self.type = type
            self.kind = kind

        def __class_getitem__(cls, given: tuple[Any, Any]) -> "Annotated":
            return cls(*given)

        def __or__(self, other: None) -> "Annotated":
            """The same: whether a field may be absent is no matter of its kind."""
            return self
