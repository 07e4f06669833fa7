"""The phone's types of records and of the catalogue's rows, written by ``python -m tests.support.phone_types``.

The file is for people and for the type checker; phones do not get it.
"""

from __future__ import annotations

import dataclasses
import inspect
import re
import types
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any, Final, Literal, NotRequired, Union, get_args, get_origin, get_type_hints, is_typeddict

from broodshelf.care.catalogue import rows
from broodshelf.model import needs, tasks
from broodshelf.model.kinds import KINDS, SERVER, FieldSpec, forms, plan, words

PATH: Final = Path(__file__).parents[2] / "pwa" / "kinds.d.ts"
HEAD: Final = """\
// What a record of each kind and a row of each table holds, as server/broodshelf/model and care/catalogue say.
// Written by `python -m tests.support.phone_types`; a test fails when it is stale.
"""
TAIL: Final = """
/** A field of some kind. */
export type FieldName = { [k in Kind]: keyof FieldsOf[k] }[Kind];

/** What a record of a kind holds: its fields, and none of another kind. Of several kinds each field may be read. */
export type Fields<K extends Kind = Kind> = {
  [k in K]: FieldsOf[k] & { [name in Exclude<FieldName, keyof FieldsOf[k]>]?: undefined };
}[K];

/** What an operation sets of a record, by its kind. */
export type ChangeOf<K extends Kind = Kind> = { [k in K]: { kind: k; set: Partial<Fields<k>> } }[K];
"""
WORDS: Final = {
    get_args(each): name
    for module in (words, needs, tasks, rows)
    for name, each in vars(module).items()
    if get_origin(each) is Literal
}
"""The name of each list of words that fields choose from."""
ROWS: Final = (needs.NeedRow, needs.FaultRow, tasks.TaskRow)
"""The rows of tables that the phone gets with the catalogue."""
TEXTS: Final = {"Day": forms.Day, "Instant": forms.Instant, "WallTime": forms.WallTime, "Zone": forms.Zone}
"""Texts of a form that TypeScript does not know, by the name that says it."""
PLAIN: Final = {
    str: "string",
    int: "number",
    float: "number",
    bool: "boolean",
    Any: "unknown",
    type(None): "null",
}
MOST: Final = 120
"""Characters of a line, as everywhere."""
GROUPS: Final = {"register": "ThingKind", "event": "EventKind", "derived": "DerivedKind"}


def phone_types() -> str:
    """Return the file as it has to be."""
    text = HEAD + "".join(f"\n{block}" for block in _blocks()) + TAIL
    return "".join(map(_fitted, text.splitlines(keepends=True)))


def _fitted(line: str) -> str:
    """Return a line that says one of many words, with a word a line where it is too long."""
    if len(line.rstrip()) <= MOST:
        return line
    indent = " " * (len(line) - len(line.lstrip()) + 2)
    before, said = re.split("(?<=[=:]) ", line.rstrip(), maxsplit=1)
    return f"{before}\n" + "".join(f"{indent}| {word}\n" for word in said.split(" | "))


def _blocks() -> Iterator[str]:
    for name, form in TEXTS.items():
        yield f"/** {_first_line(form)} */\nexport type {name} = string;\n"
    yield "".join(f"export type {name} = {_union(each)};\n" for each, name in WORDS.items())
    for shape in _shapes(plan):
        yield _suggested() if shape is plan.Suggested else _interface(shape, _shape_lines(shape))
    for row in ROWS:
        yield _interface(row, [f"{name}: {_of_hint(hint)};" for name, hint in get_type_hints(row).items()])
    for shape in _shapes(rows):
        yield _interface(shape, _shape_lines(shape))
    parts = dict.fromkeys(part for kind in KINDS.values() for part in kind.parts)
    for part in parts:
        kind = next(kind for kind in KINDS.values() if part in kind.parts)
        yield _interface(part, _part_lines(part, kind.fields))
    for group, name in GROUPS.items():
        yield f"export type {name} = {_union(kind.name for kind in KINDS.values() if kind.group == group)};\n"
    yield f"export type Kind = {' | '.join(GROUPS.values())};\n"
    lines = [f"{kind.name}: {' & '.join(part.__name__ for part in kind.parts)};" for kind in KINDS.values()]
    yield _braces("/** The fields of a record by its kind. */\nexport interface FieldsOf", lines)


def _shapes(module: types.ModuleType) -> list[type]:
    return [
        each for each in vars(module).values() if is_typeddict(each) and each.__module__ == module.__name__
    ]


def _suggested() -> str:
    """Return the type of a change that a plan suggests: which fields it sets follows from its kind."""
    kinds = _of_hint(get_type_hints(plan.Suggested)["kind"])
    return f"{_comment(plan.Suggested)}\nexport type Suggested = ChangeOf<{kinds}>;\n"


def _interface(part: type, lines: list[str]) -> str:
    return _braces(f"{_comment(part)}\nexport interface {part.__name__}", lines)


def _comment(part: type) -> str:
    said = inspect.cleandoc(part.__doc__ or "").replace("``", "`").splitlines()
    return (
        f"/** {said[0]} */"
        if len(said) == 1
        else "\n".join(["/**", *(f" * {s}".rstrip() for s in said), " */"])
    )


def _braces(before: str, lines: list[str]) -> str:
    return "".join([f"{before} {{\n", *(f"  {line}\n" for line in lines), "}\n"])


def _part_lines(part: type, specs: Mapping[str, FieldSpec]) -> list[str]:
    hints = get_type_hints(part)
    made = []
    for field in dataclasses.fields(part):
        spec = specs[field.name]
        needed = field.default is dataclasses.MISSING
        type_ = _of_form(spec.form, hints[field.name]) + ("" if needed else " | null")
        made += _about(spec)
        made.append(f"{field.name}{'' if needed else '?'}: {type_};")
    return made


def _of_form(form: forms.Form, hint: Any) -> str:
    match form:
        case forms.Choice(choice):
            return _one_of(choice)
        case forms.ListOf(each):
            return f"Array<{_of_form(each, get_args(forms.taken_apart(hint)[0])[0])}>"
        case forms.TableOf(choice):
            return f"Partial<Record<{_one_of(choice.words)}, number>>"
        case forms.Day() | forms.Instant() | forms.WallTime() | forms.Zone():
            return type(form).__name__
    return _of_hint(forms.taken_apart(hint)[0])


def _one_of(choice: tuple[str, ...]) -> str:
    return WORDS.get(choice) or _union(choice)


def _about(spec: FieldSpec) -> list[str]:
    """Return what a type cannot say: the ends and the unit, what an id names, that only the server writes it."""
    each = spec.form.each if isinstance(spec.form, forms.ListOf) else spec.form
    said = []
    if isinstance(each, forms.NUMBERS):
        said.append(f"{each.low} to {each.high} {each.unit}".strip())
    if isinstance(each, forms.Text):
        said.append(f"at most {each.most} characters")
    if isinstance(each, forms.Ref):
        said.append(f"of a {each.kind}")
    if isinstance(each, forms.Sha256):
        said.append(_first_line(forms.Sha256))
    if spec.writers == SERVER and not isinstance(spec.form, forms.Whatever):
        said.append("written by the server")
    return [f"/** {'; '.join(said)} */"] if said else []


def _first_line(form: type[forms.Form]) -> str:
    return str(form.__doc__).splitlines()[0].rstrip(".").replace("``", "`")


def _shape_lines(shape: type) -> list[str]:
    made = []
    for name, hint in get_type_hints(shape, include_extras=True).items():
        optional = get_origin(hint) is NotRequired or not shape.__total__
        inner = get_args(hint)[0] if get_origin(hint) is NotRequired else hint
        made.append(f"{name}{'?' if optional else ''}: {_of_hint(inner)};")
    return made


def _of_hint(hint: Any) -> str:
    if hint in PLAIN:
        return PLAIN[hint]
    origin, args = get_origin(hint), get_args(hint)
    if origin is Literal:
        return _one_of(args)
    if origin in (Union, types.UnionType):
        return " | ".join(map(_of_hint, args))
    if origin is list or (origin is tuple and args[-1] is Ellipsis):
        return f"Array<{_of_hint(args[0])}>"
    if origin is tuple:
        return f"[{', '.join(map(_of_hint, args))}]"
    if origin in (dict, Mapping) and get_origin(args[0]) is Literal:  # whoever asks may not find every word
        return f"Partial<Record<{_of_hint(args[0])}, {_of_hint(args[1])}>>"
    if origin in (dict, Mapping):
        return f"Record<{_of_hint(args[0])}, {_of_hint(args[1])}>"
    return str(hint.__name__)


def _union(words: Any) -> str:
    return " | ".join(f"'{word}'" for word in words)


if __name__ == "__main__":
    PATH.write_text(phone_types(), "utf-8")
