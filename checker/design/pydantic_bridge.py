"""What pydantic needs to know of the sections; imported only when pydantic asks.

pydantic gives programs the typed design and its JSON Schema (`TypeAdapter(Design)`); it reads by the same
builder as the command line, so the two cannot disagree.
"""

from typing import Any

from checker.design.fields import Node


def core_schema(section: type[Node]) -> Any:
    """A validator that builds a section from plain data; every fault of the data is in its one error."""
    from pydantic_core import PydanticCustomError
    from pydantic_core import core_schema as schemas

    from checker.design.build import build_section

    def read(data: Any) -> Any:
        if isinstance(data, section):
            return data
        node, faults = build_section(section, data)
        if faults:
            told = "; ".join(f"{fault.path or 'design'}: {fault.message} ({fault.help})" for fault in faults)
            raise PydanticCustomError("design", "{told}", {"told": told})
        return node

    return schemas.no_info_plain_validator_function(read)


def json_schema(section: type[Node]) -> dict[str, Any]:
    """The JSON Schema of a section."""
    from checker.design.schema import section_schema

    return section_schema(section)
