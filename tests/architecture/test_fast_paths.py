"""What exists only for speed names the benchmark that pays for it, and that benchmark is there."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).parents[2]
SERVER = ROOT / "server" / "broodshelf"
NAMED = re.compile(r"tests\.bench\.(\w+)")
NOT_FOR_A_BENCHMARK = {
    "web/compact.py _minified": "apps of one process, as tests make them, minify the phone's files once",
}
ON_THE_PHONE = ("components/slices.js", "care/lists.js", "signals/rows.js", "database/open.js")


def test_whatever_is_kept_for_speed_names_a_benchmark_that_there_is():
    unnamed, known = [], set()
    for path, kept, told in kept_answers():
        name = f"{path.relative_to(SERVER).as_posix()} {kept.name}"
        known.add(name)
        if name not in NOT_FOR_A_BENCHMARK and not NAMED.search(told):
            unnamed.append(name)

    assert unnamed == [], "measure it, then name tests.bench.… beside it; or take it away"
    assert NOT_FOR_A_BENCHMARK.keys() <= known


def test_modules_that_are_there_for_speed_name_theirs():
    folders = [SERVER / "records" / "quick"]
    modules = [path for folder in folders for path in folder.glob("*.py") if path.name != "__init__.py"]
    modules += [SERVER / "sync" / "quick_texts.py", SERVER / "care/colony/census/remembered.py"]
    modules += [ROOT / "pwa" / name for name in ON_THE_PHONE]

    assert [path.name for path in modules if not NAMED.search(path.read_text("utf-8"))] == []


def test_every_benchmark_that_code_names_is_there():
    sources = [*SERVER.rglob("*.py"), *(ROOT / "pwa").rglob("*.js")]
    named = {
        name
        for path in sources
        if "vendor" not in path.parts
        for name in NAMED.findall(path.read_text("utf-8"))
    }

    assert named
    assert sorted(name for name in named if not (ROOT / "tests" / "bench" / f"{name}.py").exists()) == []


def kept_answers() -> Iterator[tuple[Path, ast.FunctionDef, str]]:
    """Functions whose answers are kept by their arguments, each with what its module and it say of that.

    A function without arguments is read or made once; that is no way around work that would be done again.
    """
    for path in sorted(SERVER.rglob("*.py")):
        text = path.read_text("utf-8")
        tree, lines = ast.parse(text), text.splitlines()
        for each in ast.walk(tree):
            if isinstance(each, ast.FunctionDef) and any(keeps(one, each) for one in each.decorator_list):
                head = lines[each.decorator_list[0].lineno - 1 : each.lineno]
                yield path, each, "\n".join([ast.get_docstring(tree) or "", *head])


def keeps(decorator: ast.expr, function: ast.FunctionDef) -> bool:
    name = decorator.func if isinstance(decorator, ast.Call) else decorator
    if not isinstance(name, ast.Name):
        return False
    asked = [*function.args.args, *function.args.kwonlyargs]
    return name.id == "lru_cache" or (name.id == "cache" and bool(asked))


def test_a_kept_answer_without_a_word_would_be_found():
    tree = ast.parse(
        "@cache\ndef once(): ...\n@cache\ndef each(a): ...\n@lru_cache(maxsize=4)\ndef some(a): ..."
    )
    found = [each.name for each in tree.body if any(keeps(one, each) for one in each.decorator_list)]

    assert found == ["each", "some"]
