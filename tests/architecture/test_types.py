"""The phone's types say what things are: with ``any`` the type checker would look away."""

from __future__ import annotations

import re
from pathlib import Path

PWA = Path(__file__).parents[2] / "pwa"
TYPED = sorted(p for end in ("*.js", "*.d.ts") for p in PWA.rglob(end) if "vendor" not in p.parts)
ANY = re.compile(r"(?:[{<(:|,]|=>)\s*any\s*[\[\]}>),;|]")


def test_no_type_of_the_phone_is_any():
    assert len(TYPED) > 100
    assert [path.relative_to(PWA).as_posix() for path in TYPED if ANY.search(path.read_text("utf-8"))] == []


def test_the_pattern_finds_what_it_is_for():
    for line in (
        "/** @param {any} event */",
        "/** @type {Record<string, any>} */",
        "(made: any) => void, reject",
        "{(id: string) => any}",
        "/** @param {any[]} items */",
        "  args?: any;",
    ):
        assert ANY.search(line), line
    for line in (
        'step="any"',
        "say('brood-any')",
        "safe to call at any time",
        "whether there was any. A look",
    ):
        assert not ANY.search(line), line
