"""Which room may import which: Python by import-linter, the phone by its import lines."""

from __future__ import annotations

import ast
import posixpath
import re
import sys
from pathlib import Path

from broodshelf.web.parcels import CHARTS, LABELS
from broodshelf.web.shell import LIBRARIES

ROOT = Path(__file__).parents[2]
PWA = ROOT / "pwa"
MAY_IMPORT = {
    "care": {"care"},
    "counting": {"counting"},
    "words": {"words", "vendor"},
    "database": {"database", "care", "words", "vendor"},
    "sync": {"sync", "database", "care", "words"},
    "signals": {"signals", "sync", "database", "care", "words"},
    "components": {"components", "signals", "care", "words"},
    "screens": {"screens", "components", "counting", "signals", "care", "words", "database"},
    "worker": {"worker", "database", "sync", "care", "words"},
}
VOICE = {"voice.js", "language.js"}
"""What the rooms of the worker may take of the words: it speaks no language, and must not fetch what does."""
TYPES = {"answers.d.ts", "kinds.d.ts", "messages.d.ts"}
"""What records hold and messages say, for the type checker alone: comments name it, and no phone gets it."""
BARE_ALLOWED = {"signals", "components", "screens"}
IMPORT = re.compile(
    r"""^\s*(?:import|export)\b[^'"();]*?from\s*['"]([^'"]+)|^\s*import\s*['"]([^'"]+)|\bimport\(['"]([^'"]+)""",
    re.M,
)


def imports(path: Path) -> list[str]:
    return [match[1] or match[2] or match[3] for match in IMPORT.finditer(path.read_text())]


def test_phone_rooms_import_only_what_lies_below_them():
    for room, allowed in MAY_IMPORT.items():
        files = list((PWA / room).rglob("*.js"))
        assert files, room
        for path in files:
            for target in imports(path):
                if target.startswith("."):
                    there = (path.parent / target).resolve().relative_to(PWA).parts[0]
                    assert there in allowed | TYPES, f"{path.relative_to(ROOT)} imports {target}"
                    if there == "words" and room in {"database", "sync", "worker"}:
                        assert posixpath.basename(target) in VOICE, (
                            f"{path.relative_to(ROOT)} imports {target}"
                        )
                else:
                    assert room in BARE_ALLOWED, f"{path.relative_to(ROOT)} imports {target} by its bare name"


def test_the_parcel_of_charts_and_labels_is_opened_by_their_screens_alone():
    """Of all modules only these three reach into them, when one of their screens is opened."""
    left_out = CHARTS + LABELS
    reached = {
        (path.relative_to(PWA).as_posix(), there)
        for path in PWA.rglob("*.js")
        for target in imports(path)
        if target[0] != "/" and (there := in_pwa(path, target)).startswith(left_out)
    }

    assert {(name, there) for name, there in reached if not name.startswith(left_out)} == {
        ("screens/colony.js", "screens/charts.js"),
        ("screens/plan.js", "screens/brood.js"),
        ("screens/welcome.js", "screens/brood.js"),
        ("screens/places.js", "screens/place-chart.js"),
        ("components/sensors.js", "components/place-file.js"),
        ("screens/app.js", "screens/labels.js"),
        ("screens/app.js", "screens/at.js"),
        ("screens/growth.js", "components/picture.js"),
    }
    lazily = re.compile(r"lazy\(\(\) => import\('\./(?:brood|charts|labels|at)\.js'\)")
    assert len(lazily.findall((PWA / "screens/colony.js").read_text())) == 1
    assert len(lazily.findall((PWA / "screens/plan.js").read_text())) == 1
    assert len(lazily.findall((PWA / "screens/app.js").read_text())) == 2
    assert all(any(there.startswith(each) for _, there in reached) for each in left_out)


def test_no_module_of_the_phone_imports_itself_by_way_of_others():
    """Also where a part is fetched late: a circle is two modules that should be one, or three that should be two."""
    there = {
        path: {(path.parent / t).resolve() for t in imports(path) if t[0] == "."}
        for path in PWA.rglob("*.js")
    }
    reached = {path: set(targets) for path, targets in there.items()}
    while True:
        further = {
            path: far.union(*(reached.get(each, set()) for each in far)) for path, far in reached.items()
        }
        if further == reached:
            break
        reached = further

    assert [path.relative_to(PWA).as_posix() for path, far in reached.items() if path in far] == []


def in_pwa(path: Path, target: str) -> str:
    """Return which file of the phone an import line of ``path`` means."""
    return LIBRARIES.get(target) or (path.parent / target).resolve().relative_to(PWA).as_posix()


def most_lines(path: Path) -> int:
    """Return how long a module may be: where markup stands, one element a line, more fits into one thought."""
    return 450 if path.is_relative_to(PWA / "screens") or path.is_relative_to(PWA / "components") else 300


def test_no_module_is_longer_than_three_hundred_lines_or_a_screen_450_without_saying_why():
    sources = [*ROOT.glob("server/**/*.py"), *PWA.glob("**/*.js"), *PWA.glob("**/*.css")]
    long = {
        path.relative_to(ROOT).as_posix(): text.count("\n")
        for path in sources
        if "vendor" not in path.parts and (text := path.read_text()).count("\n") > most_lines(path)
        and "Longer than 300 lines because" not in text
    }  # fmt: skip

    assert long == {}


def test_the_ground_floor_needs_nothing_but_python_and_itself():
    """What every room speaks may depend on no package and on no room, or one of them would come along everywhere."""
    floor = ROOT / "server/broodshelf/model"
    for path in floor.rglob("*.py"):
        depth = len(path.relative_to(floor).parts)
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.ImportFrom) and node.level:
                assert node.level <= depth, f"{path.name}:{node.lineno} reaches out of the ground floor"
            elif isinstance(node, ast.Import | ast.ImportFrom):
                names = [a.name for a in node.names] if isinstance(node, ast.Import) else [node.module or ""]
                for name in names:
                    package = name.partition(".")[0]
                    assert package in sys.stdlib_module_names, f"{path.name}:{node.lineno} imports {name}"
