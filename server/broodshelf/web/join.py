"""The modules of the start joined into few files, so that a phone asks for these alone (decision 0022).

Nothing is moved inside a module: each becomes a function that is run at once, in the order in which a browser would
run it, and gives what it exports. Where a module names another of the same file, its line is left out, because what
the other exports has the same name in the whole file. So no two joined modules may export the same name, none may
export a name of the browser's own, and none may import in a circle; ``tests/web/test_join.py`` holds them to it.
"""

from __future__ import annotations

import posixpath
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Final

PAGE: Final = "main.js"
WORKER: Final = "worker.js"
SHARED: Final = "shared.js"
"""What page and worker both need."""
SERVED: Final = "/static/{{build}}/"
"""How the worker names what it imports: it lies elsewhere, and no import map reaches it."""

_FROM: Final = r"""\s*from\s*(?P<mark>['"])(?P<of>[^'"]+)(?P=mark);?"""
_START: Final = r"(?:^|(?<=[;}]))[ \t]*"
"""Where a statement begins: at a line of ours, or in the middle of the only line of a library."""
_IMPORT: Final = re.compile(
    rf"{_START}import\s*(?P<whole>[\w$]+)?\s*,?\s*(?:\{{(?P<names>[^}}]*)\}})?{_FROM}", re.M
)
_PASSED_ON: Final = re.compile(rf"{_START}export\s*\{{(?P<names>[^}}]*)\}}{_FROM}", re.M)
_DECLARED: Final = re.compile(r"^export (?=(?:async )?(?:function\*?|class|const) ([\w$]+))", re.M)
_LISTED: Final = re.compile(rf"{_START}export\s*\{{([^}}]*)\}};?", re.M)
_WHOLE: Final = re.compile(rf"{_START}export default ", re.M)
_LATER: Final = re.compile(r"""\bimport\((['"])(\.[^'"]+)\1\)""")
_UNKNOWN: Final = re.compile(
    r"^[ \t]*(?:import|export)\b(?!\()[^\n]*|^(?:for )?await\b[^\n]*|^const .*= await\b[^\n]*", re.M
)
"""What is left at the top of a module and would not do the same inside a function."""


class JoinError(Exception):
    """A module is written in a way that cannot be joined with others; the text says which and what."""


@dataclass(frozen=True, slots=True)
class Modules:
    """The sources by name, and which module a bare name means: ``{"preact": "vendor/preact.mjs"}``."""

    sources: Mapping[str, str]
    libraries: Mapping[str, str]

    def named(self, module: str, target: str) -> str:
        """Return the name of what ``module`` imports as ``target``."""
        if target.startswith(SERVED):
            return target.removeprefix(SERVED)
        return self.libraries.get(target) or posixpath.normpath(
            posixpath.join(posixpath.dirname(module), target)
        )

    def imported(self, module: str) -> list[str]:
        """Return the names of what a module needs before it can run, in the order of its lines."""
        text = self.sources[module]
        found = [*_IMPORT.finditer(text), *_PASSED_ON.finditer(text)]
        return [self.named(module, match["of"]) for match in sorted(found, key=lambda each: each.start())]

    def in_order(self, entry: str) -> list[str]:
        """Return ``entry`` and what it needs in the order in which browsers run them: each after what it imports.

        https://tc39.es/ecma262/#sec-innermoduleevaluation; raises ``JoinError`` for modules that import each other.
        """
        done: list[str] = []
        under_way: list[str] = []

        def run(module: str) -> None:
            if module in under_way:
                raise JoinError(f"{' → '.join([*under_way, module])}: these import each other in a circle.")
            if module in done:
                return
            under_way.append(module)
            for other in self.imported(module):
                run(other)
            done.append(under_way.pop())

        run(entry)
        return done


@dataclass(slots=True)
class Joined:
    """A file made of modules."""

    modules: Modules
    others: Mapping[str, Mapping[str, str]] = field(default_factory=dict)
    """What other files export, as ``exported``, by the address that this one imports them from."""
    members: list[str] = field(default_factory=list)
    exported: dict[str, str] = field(default_factory=dict)
    """Which module each exported name comes from."""
    _needed: dict[str, str] = field(default_factory=dict)
    """Which module each imported name was last needed by."""
    _parts: list[str] = field(default_factory=list)

    def add(self, module: str) -> None:
        """Add a module after those that it imports.

        Raises ``JoinError`` for what is not known here at the top of a module, and for a name that two export.
        """
        text = self.modules.sources[module]
        renamed = list(self._imports(module, text))
        text = _PASSED_ON.sub("", _IMPORT.sub("", text))
        text = _LATER.sub(lambda match: f"import('./{self.modules.named(module, match[2])}')", text)
        names = {match[1]: match[1] for match in _DECLARED.finditer(text)}
        for match in _LISTED.finditer(text):
            names |= {name: local for local, name in _pairs(match[1])}
        text, wholes = _WHOLE.subn(f"const {_whole(module)} = ", _LISTED.sub("", _DECLARED.sub("", text)))
        if wholes:
            names[_whole(module)] = _whole(module)
        if unknown := _UNKNOWN.search(text):
            raise JoinError(
                f"{module}: {unknown[0].strip()!r} at the top of a module cannot be joined with others."
            )
        taken = [self.exported, *self.others.values()]
        for name in names:
            for held in taken:
                if name in held:
                    raise JoinError(f"{held[name]} and {module} both export {name}; rename one.")
        self.exported |= dict.fromkeys(names, module)
        self.members.append(module)
        self._parts.append(_run("\n".join([*renamed, text.strip()]), names))

    def text(self) -> str:
        """Return the file. Raises ``JoinError`` where a name is imported that nobody exports."""
        heads = []
        found = set(self.exported)
        for address, held in self.others.items():
            names = sorted(set(held) & set(self._needed))
            found.update(names)
            heads.append(f"import {{ {', '.join(names)} }} from '{address}';")
        if missing := sorted(set(self._needed) - found):
            raise JoinError(f"{self._needed[missing[0]]} imports {missing[0]}, which is not there.")
        return "\n".join([*heads, *self._parts])

    def _imports(self, module: str, text: str) -> Iterator[str]:
        """Note what a module imports; yield a line for each name that is another one inside it."""
        for match in _PASSED_ON.finditer(text):
            if any(name != local for local, name in _pairs(match["names"])):
                raise JoinError(f"{module}: {match[0]!r} passes on under another name, which is not joined.")
        for match in _IMPORT.finditer(text):
            names = [*_pairs(match["names"] or "")]
            if match["whole"]:
                names.append((_whole(self.modules.named(module, match["of"])), match["whole"]))
            for name, local in names:
                self._needed[name] = module
                if name != local:
                    yield f"const {local} = {name};"


def join_start(sources: Mapping[str, str], libraries: Mapping[str, str]) -> dict[str, Joined]:
    """Return the files that page and worker start from, by name: what both need, and what each needs besides."""
    modules = Modules(sources, libraries)
    page, worker = modules.in_order(PAGE), modules.in_order(WORKER)
    shared = Joined(modules)
    for module in page:
        if module in worker:
            shared.add(module)
    found = {SHARED: shared}
    for entry, members, address in ((PAGE, page, f"./{SHARED}"), (WORKER, worker, f"{SERVED}{SHARED}")):
        found[entry] = Joined(modules, {address: shared.exported})
        for module in members:
            if module not in shared.members:
                found[entry].add(module)
    return found


def _run(body: str, names: Mapping[str, str]) -> str:
    """Return a module as a function that is run at once. It cannot wait: what is loaded later would wait for it."""
    if not names:
        return f"(() => {{\n{body}\n}})();"
    given = ", ".join(name if name == local else f"{name}: {local}" for name, local in names.items())
    return f"export const {{ {', '.join(names)} }} = (() => {{\n{body}\nreturn {{ {given} }};\n}})();"


def _pairs(names: str) -> Iterator[tuple[str, str]]:
    """Yield ``(first, second)`` of each ``first as second``, and a name without another one twice."""
    for each in names.split(","):
        first, _, second = (part.strip() for part in each.partition(" as "))
        if first:
            yield first, second or first


def _whole(module: str) -> str:
    """Return the name in the joined file of what a module exports without one."""
    return "whole_" + re.sub(r"\W", "_", posixpath.basename(module).partition(".")[0])
