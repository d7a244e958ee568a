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


def outcomes_schema() -> str:
    """schemas/outcomes.schema.json, of the JSON report."""
    from checker.outcomes_schema import outcomes_schema as schema

    return json.dumps(schema(), indent=1, ensure_ascii=False) + "\n"


def tally_schema() -> str:
    """schemas/tally.schema.json, of the tally."""
    from checker.tally_schema import tally_schema as schema

    return json.dumps(schema(), indent=1, ensure_ascii=False) + "\n"


def amendments_schema() -> str:
    """schemas/amendments.schema.json, from the codebook's YAML."""
    from checker.codebook_source import read_entries
    from checker.outcomes_schema import amendments_schema as schema

    return json.dumps(schema(read_entries()), indent=1, ensure_ascii=False) + "\n"


def rules_readme() -> str:
    """rules/README.md, from the rules and the reasons for what is not checked."""
    from checker.codebook_source import read_entries
    from checker.judge import FOLDER, rules
    from checker.rules_readme import rules_readme as readme
    from checker.rules_readme import unchecked

    return readme(rules(), read_entries(), unchecked(FOLDER))


def rule_examples() -> str:
    """rules/examples.json, from the case files of the tests."""
    from checker.examples_source import examples

    return json.dumps(examples(), indent=1, ensure_ascii=False) + "\n"


PRODUCTS: dict[str, Callable[[], str]] = {
    "checker/codebook_table.py": codebook_table,
    "schemas/design.schema.json": design_schema,
    "schemas/outcomes.schema.json": outcomes_schema,
    "schemas/tally.schema.json": tally_schema,
    "schemas/amendments.schema.json": amendments_schema,
    "rules/README.md": rules_readme,
    "rules/examples.json": rule_examples,
}


def main(arguments: list[str]) -> int:
    """Write every product, or with `--check` name those that differ from their sources."""
    check = "--check" in arguments
    stale, failed = [], False
    for name, make in PRODUCTS.items():
        path = os.path.join(ROOT, name)
        try:
            text = make()
        except Exception as fault:  # one product that cannot be made leaves the others their turn
            print(f"cannot be made: {name}: {type(fault).__name__}: {fault}", file=sys.stderr)
            failed = True
            continue
        old = ""
        if os.path.exists(path):
            with open(path, encoding="utf-8") as file:
                old = file.read()
        if old == text:
            continue
        stale.append(name)
        if not check:
            beside = f"{path}.{os.getpid()}.new"
            with open(beside, "w", encoding="utf-8") as file:
                file.write(text)
            os.replace(beside, path)
    for name in stale:
        print(f"{'differs from its source' if check else 'written'}: {name}")
    return 1 if failed or (check and stale) else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
