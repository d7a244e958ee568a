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


Place = tuple[str, str]  # module as imported, name in it


def names_in(file: Path) -> dict[Place, set[Place]]:
    """For each name that a file defines at its top, what it names of the program's own modules."""
    tree, module = parsed(file), ".".join(file.relative_to(ROOT).with_suffix("").parts)
    imported, modules = dict[str, Place](), dict[str, str]()
    for node in ast.walk(tree):
        if isinstance(node, ast.ImportFrom) and (node.module or "").partition(".")[0] in ("checker", "rules"):
            for each in node.names:
                whole = f"{node.module}.{each.name}"
                if (ROOT / f"{whole.replace('.', '/')}.py").exists():
                    modules[each.asname or each.name] = whole
                else:
                    imported[each.asname or each.name] = (str(node.module), each.name)
    own: dict[str, ast.stmt] = {}
    for statement in tree.body:
        if isinstance(statement, ast.FunctionDef | ast.ClassDef):
            own[statement.name] = statement
        elif isinstance(statement, ast.Assign | ast.AnnAssign):
            targets = statement.targets if isinstance(statement, ast.Assign) else [statement.target]
            own |= {each.id: statement for target in targets for each in ast.walk(target) if isinstance(each, ast.Name)}
    known = {name: (module, name) for name in own} | imported
    found: dict[Place, set[Place]] = {}
    for name, statement in own.items():
        named = {each.id for each in ast.walk(statement) if isinstance(each, ast.Name)} - {name}
        found[module, name] = {known[each] for each in named & set(known)} | {
            (modules[each.value.id], each.attr)
            for each in ast.walk(statement)
            if isinstance(each, ast.Attribute) and isinstance(each.value, ast.Name) and each.value.id in modules
        }
    return found


def program() -> dict[Place, set[Place]]:
    """What every name of rules, quantities and formulas names in turn."""
    folders = ("checker/quantities", "checker/physics", "rules")
    files = [file for folder in folders for file in sorted((ROOT / folder).rglob("*.py"))]
    return {place: named for file in files for place, named in names_in(file).items()}


def reached(graph: dict[Place, set[Place]], start: Place) -> set[Place]:
    """Everything that a name leads to."""
    seen, waiting = set[Place](), [start]
    while waiting:
        place = waiting.pop()
        if place not in seen and place in graph:
            seen.add(place)
            waiting += graph[place]
    return seen
