"""Browser tests find what the app says by its message: no look-up spells out the words, so a changed word breaks none.

A look-up is what a page, an expectation or a phone of another engine is asked for by words. Its literals are held
against the English messages. What a test wrote itself, as the name of a colony, is in none of them.
"""

from __future__ import annotations

import ast
import re
from bisect import bisect_left
from collections.abc import Iterable, Iterator
from functools import cache
from itertools import chain
from pathlib import Path

from fluent.syntax import ast as fluent
from tests.languages.resources import entries
from tests.support.words import capital, text

TESTS = Path(__file__).parents[1]
BROWSER = re.compile(r"\bplaywright\b|\bsupport\.(?:webkit|firefox|chromium)\b")
SOUGHT = {
    "get_by_alt_text", "get_by_label", "get_by_placeholder", "get_by_text", "get_by_title", "select_option",
    "to_contain_text", "to_have_accessible_description", "to_have_accessible_name", "to_have_attribute", "to_have_text",
    "press", "sheet", "shows", "visit",
}  # fmt: skip
"""Calls whose arguments are words of the page; the last four are those of phones without Playwright."""
KEYWORDS = {"has_not_text", "has_text", "label", "name"}
"""Arguments of any call that are such words."""
HANDED_ON = {"any_of", "capital", "compile", "escape", "labelled"}
"""Calls that give on the words that they are given."""
CODE = re.compile(r"[a-z0-9_]*")
"""The value of an option, which is no word."""
GAP = "\ue000"


def test_no_look_up_spells_out_what_the_app_says():
    modules = [
        path for path in TESTS.rglob("*.py") if BROWSER.search(path.read_text()) and path != Path(__file__)
    ]

    assert len(modules) > 30
    assert [
        f"{path.relative_to(TESTS)}:{line} {words}"
        for path in sorted(modules)
        for line, words in spelt_out(path.read_text())
    ] == []


def test_a_look_up_that_spells_out_words_is_found_wherever_they_come_from():
    save, done, claim = (text(each) for each in ("colony-form-save", "round-as-suggested", "start-claim-it"))
    source = f"""
def press_it(page, called):
    page.get_by_role("button", name=called).click()

for words in ("{claim}", "Amber"):
    page.get_by_text(words)
page.get_by_role("button", name="{save}").click()
page.get_by_role("button", name=text("colony-form-save")).click()
page.get_by_role("heading", name="Amber")
expect(page.locator("form")).to_have_text(["Birch", "{save.lower()}"])
page.get_by_text(re.compile("^{done}: (Amber|Birch)$"))
page.get_by_text(f"{text("round-by", who="{{who}}")}")
press_it(page, "{save}")
page.keyboard.press("End")
"""
    found = [line for line, _ in spelt_out(source)]

    assert sorted(found) == [5, 7, 10, 11, 12, 13]


def test_words_are_told_from_what_a_test_wrote_itself():
    assert is_said(text("round-empty-shelf"))
    assert is_said(" ".join(text("round-empty-shelf").split()[:2])), "a beginning"
    assert is_said(" ".join(text("stalled-unfed-1").split()[3:7])), "from the middle"
    assert is_said(capital(text("food-mealworm")))
    assert is_said(text("history-changed", who="Mira")), "with a name in it"
    assert is_said(text("phone-nudges-elsewhere-unheard", who="Jo", phone="iPad"))
    assert not any(
        map(is_said, ("Amber", "Mira", "note 3", "The flies are in the fridge door.", "24 °C", "18:30"))
    )


def spelt_out(source: str) -> Iterator[tuple[int, str]]:
    """Yield the look-ups of a module that spell out what the app says: the line and the words."""
    tree = ast.parse(source)
    functions = [each for each in ast.walk(tree) if isinstance(each, ast.FunctionDef)]
    asked = [*chain.from_iterable(map(sought, ast.walk(tree)))]
    for function in functions:
        names = names_in(chain.from_iterable(map(sought, ast.walk(function))))
        asked += bound_in(function, names)
        if any(each.arg in names for each in function.args.args):
            asked += given_to(function.name, tree)
    for statement in tree.body:
        if not isinstance(statement, (ast.FunctionDef, ast.ClassDef)):
            asked += bound_in(statement, names_in(chain.from_iterable(map(sought, ast.walk(statement)))))
        if isinstance(statement, ast.Assign) and any(
            is_one_of(each, names_in(asked)) for each in statement.targets
        ):
            asked.append(statement.value)
    found = {
        each
        for each in chain.from_iterable(map(parts, asked))
        if isinstance(each, (ast.Constant, ast.JoinedStr))
    }
    yield from sorted((each.lineno, words) for each in found if (words := literal(each)) and any_said(words))


def names_in(expressions: Iterable[ast.expr]) -> set[str]:
    return {each.id for each in chain.from_iterable(map(parts, expressions)) if isinstance(each, ast.Name)}


def sought(node: ast.AST) -> Iterator[ast.expr]:
    """Yield what a call looks up."""
    if isinstance(node, ast.Call):
        called = name_of(node)
        keys = isinstance(node.func, ast.Attribute) and getattr(node.func.value, "attr", "") == "keyboard"
        if called.removeprefix("not_") in SOUGHT and not keys:
            yield from (each for each in node.args if not is_code(each))
        if called not in {"text", "like", "beginning"}:
            yield from (each.value for each in node.keywords if each.arg in KEYWORDS)


def is_code(node: ast.expr) -> bool:
    return (
        isinstance(node, ast.Constant)
        and isinstance(node.value, str)
        and CODE.fullmatch(node.value) is not None
    )


def parts(node: ast.expr) -> Iterator[ast.expr]:
    """Yield the literals and names that an argument is made of, without what a call is given that says a message."""
    if isinstance(node, (ast.Constant, ast.Name)):
        yield node
    elif isinstance(node, ast.JoinedStr):
        yield node
        yield from chain.from_iterable(
            parts(each.value) for each in node.values if isinstance(each, ast.FormattedValue)
        )
    elif isinstance(node, ast.Call):
        if name_of(node) in HANDED_ON:
            yield from chain.from_iterable(map(parts, node.args))
    elif isinstance(node, (ast.List, ast.Tuple, ast.IfExp, ast.BinOp, ast.Starred)):
        yield from chain.from_iterable(
            parts(each) for each in ast.iter_child_nodes(node) if isinstance(each, ast.expr)
        )


def name_of(call: ast.Call) -> str:
    return str(getattr(call.func, "attr", getattr(call.func, "id", "")))


def bound_in(scope: ast.AST, names: set[str]) -> Iterator[ast.expr]:
    """Yield what these names stand for in a function, or in a statement of the module."""
    for node in ast.walk(scope):
        if isinstance(node, (ast.For, ast.comprehension)) and is_one_of(node.target, names):
            yield node.iter
        elif isinstance(node, ast.Assign) and any(is_one_of(each, names) for each in node.targets):
            yield node.value
        elif isinstance(node, ast.Call) and names & parametrized(node):
            yield from node.args[1:]


def parametrized(call: ast.Call) -> set[str]:
    """Return the names of the arguments that a call of ``parametrize`` gives a test; of another call none."""
    first = call.args[0] if name_of(call) == "parametrize" else None
    return set(re.findall(r"\w+", str(getattr(first, "value", "")))) if first else set()


def given_to(function: str, tree: ast.AST) -> Iterator[ast.expr]:
    """Yield what a function is given that looks up a parameter of its own."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and name_of(node) == function:
            yield from node.args
            yield from (each.value for each in node.keywords)


def is_one_of(target: ast.expr, names: set[str]) -> bool:
    return any(isinstance(each, ast.Name) and each.id in names for each in ast.walk(target))


def literal(node: ast.expr) -> str:
    """Return the words that stand in a literal, with a figure for each gap."""
    if isinstance(node, ast.JoinedStr):
        return "".join(literal(each) if isinstance(each, ast.Constant) else "0" for each in node.values)
    return node.value if isinstance(node, ast.Constant) and isinstance(node.value, str) else ""


def any_said(words: str) -> bool:
    """Whether words, or a run of words between what a pattern is made of, are the app's."""
    in_pattern = re.split(r"[\\^$|()\[\]*+?]+", words) if re.search(r"[\\^$|(]", words) else []
    return any(map(is_said, [words, *in_pattern]))


def is_said(words: str) -> bool:
    """Whether words are a message of the app, its beginning, two words of it and more, or it with its gaps filled."""
    sought = plain(words).strip(" :;,.·“”()")
    if not re.search(r"[^\W\d_]{2}", sought):
        return False
    said, begun, gaps = messages()
    at = bisect_left(begun, sought)
    if at < len(begun) and re.match(rf"{re.escape(sought)}(?!\w)", begun[at]):
        return True
    if " " in sought and re.search(rf"(?<!\w){re.escape(sought)}(?!\w)", said):
        return True
    return any(piece in sought and pattern.match(sought) for piece, pattern in gaps)


@cache
def messages() -> tuple[str, list[str], list[tuple[str, re.Pattern[str]]]]:
    """Return all that is said in one text, how each message begins, in order, and a pattern of each that has gaps.

    A pattern comes with a piece of what it finds. It is of a message with two words and more around its gaps, or with
    some before the first.
    """
    forms = {
        plain(form)
        for _, entry in entries("en")
        for pattern in (entry.value, *(each.value for each in entry.attributes))
        if pattern is not None
        for form in forms_of(pattern)
    }
    gaps = []
    for form in (each for each in forms if GAP in each):
        fixed = [each for each in form.split(GAP) if re.search(r"[^\W\d_]{2}", each)]
        if len(re.findall(r"[^\W\d_]{2,}", form)) > 1 or (fixed and not form.startswith(GAP)):
            found = "".join(
                ".+" if each == GAP else re.escape(each) for each in re.split(f"({GAP})", form.strip(" ."))
            )
            gaps.append((max(fixed, key=len).strip(" ."), re.compile(f"{found}$")))
    return "\n".join(forms), sorted(each.partition(GAP)[0] for each in forms), gaps


def forms_of(pattern: fluent.Pattern) -> Iterator[str]:
    """Yield each way to say a pattern, with a gap for whatever is put in."""
    found = [""]
    for element in pattern.elements:
        if isinstance(element, fluent.TextElement):
            found = [begun + element.value for begun in found]
        elif isinstance(element.expression, fluent.SelectExpression):
            ways = [*chain.from_iterable(forms_of(each.value) for each in element.expression.variants)]
            found = [begun + way for begun in found for way in ways]
        else:
            found = [begun + GAP for begun in found]
    yield from found


def plain(words: str) -> str:
    """Return words in small letters, with one space between them: browsers' look-ups see no difference."""
    return re.sub(r"\s+", " ", words).strip().lower()
