"""Which room may import which: Python by import-linter, the phone by its import lines."""

from __future__ import annotations

import re
from pathlib import Path

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


def test_no_module_is_longer_than_three_hundred_lines_without_saying_why():
    sources = [*ROOT.glob("server/**/*.py"), *PWA.glob("**/*.js"), *PWA.glob("**/*.css")]
    long = {
        path.relative_to(ROOT).as_posix(): text.count("\n")
        for path in sources
        if "vendor" not in path.parts and (text := path.read_text()).count("\n") > 300
        and "Longer than 300 lines because" not in text
    }  # fmt: skip

    assert long == {}
