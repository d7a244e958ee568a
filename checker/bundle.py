"""All our compiled modules in one file, so that hundreds of short modules cost little to start.

The file lies where Python keeps compiled code (`__pycache__`) and is used only while every source file has the
time and size it was made from. Where it cannot be written, Python imports module by module as usual.
"""

import marshal
import os
import sys
from collections.abc import Callable
from importlib import import_module
from importlib.machinery import ModuleSpec
from types import CodeType, ModuleType
from typing import Any, TypeVar

from checker import __version__

ROOT = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
PACKAGES = ("checker", "rules")
Stamp = list[tuple[str, int, int]]
Data = TypeVar("Data")


class Bundle:
    """Finds and runs modules from the bundle."""

    def __init__(self, codes: dict[str, tuple[str, bytes]], stamp: Stamp) -> None:
        self.codes = codes
        self.stamp = stamp

    def find_spec(self, name: str, path: object = None, target: object = None) -> ModuleSpec | None:
        """The spec of one of our modules; None for any other."""
        found = self.codes.get(name)
        if found is None:
            return None
        file = os.path.join(ROOT, found[0])
        package = file.endswith("__init__.py")
        spec = ModuleSpec(name, self, origin=file, is_package=package)  # type: ignore[arg-type]
        spec.has_location = True
        if package:
            spec.submodule_search_locations = [os.path.dirname(file)]
        return spec

    def create_module(self, spec: ModuleSpec) -> None:
        """Python makes the module as usual."""

    def exec_module(self, module: ModuleType) -> None:
        """Run the module's code."""
        exec(marshal.loads(self.codes[module.__name__][1]), module.__dict__)


    def load(self, name: str) -> ModuleType | None:
        """A leaf module, run at once: for hundreds of rules Python's own way of finding costs more than they do."""
        found = self.codes.get(name)
        if found is None:
            return None
        module = ModuleType(name)
        module.__file__ = os.path.join(ROOT, found[0])
        module.__package__ = name.rpartition(".")[0]
        sys.modules[name] = module
        try:
            exec(marshal.loads(found[1]), module.__dict__)
        except BaseException:
            del sys.modules[name]
            raise
        return module


def module_of(name: str) -> ModuleType:
    """A module of ours by name: from the bundle if one is in use."""
    loaded = sys.modules.get(name)
    first = sys.meta_path[0]
    if loaded is None and isinstance(first, Bundle):
        loaded = first.load(name)
    return loaded if loaded is not None else import_module(name)


def use() -> None:
    """Import our modules from the bundle from now on; make it first if it is absent or stale."""
    if sys.dont_write_bytecode:
        return
    folder = os.path.join(ROOT, "checker", "__pycache__")
    path = os.path.join(folder, f"bundle.{sys.implementation.cache_tag}")
    stamp = installed(ROOT) or stamp_of(ROOT)
    codes: dict[str, tuple[str, bytes]] | None = read(path, stamp)
    if codes is None:
        codes = compiled(stamp_of(ROOT))
        write(folder, path, stamp, codes)
    sys.meta_path.insert(0, Bundle(codes, stamp))


def kept(name: str, make: Callable[[], Data]) -> Data:
    """Plain data worked out from our modules, kept beside the bundle for as long as that is fresh."""
    first = sys.meta_path[0]
    if not isinstance(first, Bundle):
        return make()
    folder = os.path.join(ROOT, "checker", "__pycache__")
    path = os.path.join(folder, f"{name}.{sys.implementation.cache_tag}")
    data: Data | None = read(path, first.stamp)
    if data is None:
        data = make()
        write(folder, path, first.stamp, data)
    return data


def installed(root: str) -> Stamp:
    """Time and size of the list of installed files, where pip keeps one: files change only with it. Else empty."""
    path = os.path.join(root, f"airtally-{__version__}.dist-info", "RECORD")
    try:
        facts = os.stat(path)
    except OSError:
        return []
    return [(path, facts.st_mtime_ns, facts.st_size)]


def stamp_of(root: str) -> Stamp:
    """Path, time and size of every source file."""
    stamp: Stamp = []
    folders = [os.path.join(root, package) for package in PACKAGES]
    while folders:
        with os.scandir(folders.pop()) as entries:
            for entry in entries:
                if entry.name.endswith(".py"):
                    facts = entry.stat()
                    stamp.append((entry.path[len(root) + 1 :], facts.st_mtime_ns, facts.st_size))
                elif entry.is_dir() and entry.name.isidentifier() and not entry.name.startswith("__"):
                    folders.append(entry.path)
    return sorted(stamp)


def read(path: str, stamp: Stamp) -> Any:
    """What was written for these sources; None if nothing was."""
    try:
        with open(path, "rb") as file:
            made_from, data = marshal.load(file)
    except (OSError, ValueError, EOFError, TypeError):
        return None
    return data if made_from == stamp else None


def compiled(stamp: Stamp) -> dict[str, tuple[str, bytes]]:
    """Every module's code, by module name."""
    codes = {}
    for file, _, _ in stamp:
        name = file.removesuffix(".py").replace(os.sep, ".").removesuffix(".__init__")
        with open(os.path.join(ROOT, file), "rb") as source:
            code: CodeType = compile(source.read(), os.path.join(ROOT, file), "exec", dont_inherit=True)
        codes[name] = (file, marshal.dumps(code))
    return codes


def write(folder: str, path: str, stamp: Stamp, data: Any) -> None:
    """Write the bundle beside and put it in place at once; a folder that can't be written is no fault."""
    beside = f"{path}.{os.getpid()}"
    try:
        os.makedirs(folder, exist_ok=True)
        with open(beside, "wb") as file:
            marshal.dump((stamp, data), file)
        os.replace(beside, path)
    except OSError:
        return
