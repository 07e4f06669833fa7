"""Which room may import which: Python by import-linter, the phone by its import lines."""

from __future__ import annotations

import re
from pathlib import Path

from tests.bench.phone_cost import CHARTS, LABELS

from broodshelf.web.shell import LIBRARIES

ROOT = Path(__file__).parents[2]
PWA = ROOT / "pwa"
MAY_IMPORT = {
    "care": {"care"},
    "database": {"database", "care", "vendor"},
    "sync": {"sync", "database", "care"},
    "signals": {"signals", "sync", "database", "care", "text"},
    "text": {"text"},
    "components": {"components", "signals", "care", "text"},
    "screens": {"screens", "components", "signals", "care", "text", "database"},
    "worker": {"worker", "database", "sync", "care"},
}
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
                    assert there in allowed, f"{path.relative_to(ROOT)} imports {target}"
                else:
                    assert room in BARE_ALLOWED, f"{path.relative_to(ROOT)} imports {target} by its bare name"


def test_what_the_count_of_bytes_leaves_out_is_fetched_by_charts_and_labels_alone():
    """Of all modules only ``lazy.js`` reaches into them, when one of their screens is opened."""
    left_out = CHARTS + LABELS
    reached = {
        (path.relative_to(PWA).as_posix(), there)
        for path in PWA.rglob("*.js")
        for target in imports(path)
        if target[0] != "/" and (there := in_pwa(path, target)).startswith(left_out)
    }

    assert {name for name, _ in reached if not name.startswith(left_out)} == {"screens/lazy.js"}
    assert {there for name, there in reached if name == "screens/lazy.js"} == {
        "screens/charts.js", "screens/labels.js", "screens/at.js",
    }  # fmt: skip
    assert all(any(there.startswith(each) for _, there in reached) for each in left_out)


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
