"""Writes what is generated from the sources: `python -m checker.generate`; with `--check`, only tells."""

import json
import os
import sys
from collections.abc import Callable

ROOT = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))


def codebook_table() -> str:
    """checker/codebook_table.py, from the codebook's YAML."""
    from checker.codebook_source import read_entries, table_module

    return table_module(read_entries())


def design_schema() -> str:
    """schemas/design.schema.json, from the model."""
    from checker.design.schema import design_schema as schema

    return json.dumps(schema(), indent=1, ensure_ascii=False) + "\n"


PRODUCTS: dict[str, Callable[[], str]] = {
    "checker/codebook_table.py": codebook_table,
    "schemas/design.schema.json": design_schema,
}


def main(arguments: list[str]) -> int:
    """Write every product, or with `--check` name those that differ from their sources."""
    check = "--check" in arguments
    stale = []
    for name, make in PRODUCTS.items():
        path = os.path.join(ROOT, name)
        text = make()
        old = ""
        if os.path.exists(path):
            with open(path, encoding="utf-8") as file:
                old = file.read()
        if old == text:
            continue
        stale.append(name)
        if not check:
            beside = path + ".new"
            with open(beside, "w", encoding="utf-8") as file:
                file.write(text)
            os.replace(beside, path)
    for name in stale:
        print(f"{'differs from its source' if check else 'written'}: {name}")
    return 1 if check and stale else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
