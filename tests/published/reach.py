"""Which functions of checker.physics the rules and quantities reach, directly or by way of others."""

import ast
from pathlib import Path

ROOT = Path(__file__).parents[2]
PHYSICS = ROOT / "checker" / "physics"
Name = tuple[str, str]  # module, function


def parsed(file: Path) -> ast.Module:
    """A source file as a tree."""
    return ast.parse(file.read_text(encoding="utf-8"))


def taken(tree: ast.Module) -> set[Name]:
    """What a file imports from the formulas, by name or as `module.name`."""
    found, modules = set[Name](), dict[str, str]()
    for node in ast.walk(tree):
        if isinstance(node, ast.ImportFrom) and node.module == "checker.physics":
            modules |= {each.asname or each.name: each.name for each in node.names}
        elif isinstance(node, ast.ImportFrom) and (node.module or "").startswith("checker.physics."):
            found |= {(str(node.module).rpartition(".")[2], each.name) for each in node.names}
    for node in ast.walk(tree):
        if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name) and node.value.id in modules:
            found.add((modules[node.value.id], node.attr))
    return found


def calls() -> dict[Name, set[Name]]:
    """For each function and class of the formulas, what it names of them."""
    found: dict[Name, set[Name]] = {}
    for file in PHYSICS.glob("*.py"):
        tree = parsed(file)
        own = [node for node in tree.body if isinstance(node, ast.FunctionDef | ast.ClassDef)]
        known = {name: (module, name) for module, name in taken(tree)} | {node.name: (file.stem, node.name) for node in own}
        for node in own:
            names = {each.id for each in ast.walk(node) if isinstance(each, ast.Name)}
            found[file.stem, node.name] = {known[name] for name in names & set(known)}
    return found


def unreached() -> list[str]:
    """Public functions of the formulas that nothing outside of them leads to, as `module.name`."""
    graph = calls()
    outside = [file for folder in ("checker", "rules") for file in (ROOT / folder).rglob("*.py") if file.parent != PHYSICS]
    waiting = [name for file in outside for name in taken(parsed(file)) if name in graph]
    seen: set[Name] = set()
    while waiting:
        name = waiting.pop()
        if name not in seen:
            seen.add(name)
            waiting += [each for each in graph[name] if each in graph]
    functions = {
        (file.stem, node.name)
        for file in PHYSICS.glob("*.py") for node in parsed(file).body
        if isinstance(node, ast.FunctionDef) and not node.name.startswith("_")
    }  # fmt: skip
    return sorted(".".join(name) for name in functions - seen)
