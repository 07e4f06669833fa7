"""How a record's field is described: what its value looks like, who may write it, what it refers to.

A kind is a dataclass (``house``, ``colonies``, ``larder``, ``log``, ``plan``). The annotation of a field says its type,
and in ``Annotated`` its form and, where that is not its kind's rule, who writes it::

    bore_mm: Annotated[float, Number(3, 200, "mm")] | None = None

A field without a default is one that a new record needs. A ``Literal`` and a ``bool`` are their own form.
"""

from __future__ import annotations

import types
from collections.abc import Iterator, Mapping
from dataclasses import MISSING, dataclass, field, fields, replace
from typing import Annotated, Any, Final, Literal, Union, get_args, get_origin, get_type_hints

from .writers import Writers

Group = Literal["register", "event", "derived"]
Scope = Literal["colony", "household"]


class Form:
    """What the values of a field look like."""

    __slots__ = ()


@dataclass(frozen=True, slots=True)
class Text(Form):
    """At most so many characters."""

    most: int


@dataclass(frozen=True, slots=True)
class Choice(Form):
    """One of these words. ``why``: what whoever gives another one is told."""

    words: tuple[str, ...]
    why: str | None = None


@dataclass(frozen=True, slots=True)
class Number(Form):
    """A finite number from ``low`` to ``high``, both included, in ``unit``."""

    low: float
    high: float
    unit: str = ""


@dataclass(frozen=True, slots=True)
class WholeNumber(Form):
    """A whole number from ``low`` to ``high``, both included, in ``unit``."""

    low: int
    high: int
    unit: str = ""


@dataclass(frozen=True, slots=True)
class Flag(Form):
    """True or false."""


@dataclass(frozen=True, slots=True)
class Day(Form):
    """A day of the calendar in the household's zone, e.g. ``2026-05-01``."""


@dataclass(frozen=True, slots=True)
class Instant(Form):
    """An ISO 8601 instant with its UTC offset, e.g. ``2026-05-01T18:30:00.000+02:00``."""


@dataclass(frozen=True, slots=True)
class WallTime(Form):
    """A time on the household's clock, ``HH:MM``."""


@dataclass(frozen=True, slots=True)
class Zone(Form):
    """An IANA time zone."""


@dataclass(frozen=True, slots=True)
class Sha256(Form):
    """A SHA-256 in lower-case hexadecimal."""


@dataclass(frozen=True, slots=True)
class Ref(Form):
    """The id of a record of this kind.

    ``awaited``: an operation that names a record that the server does not have is deferred until it comes.
    """

    kind: str
    awaited: bool = True


@dataclass(frozen=True, slots=True)
class ListOf(Form):
    """A list of at most so many values of a form; none of them is null."""

    each: Form
    most: int


@dataclass(frozen=True, slots=True)
class TableOf(Form):
    """For each of some words a value."""

    words: Choice
    each: Number


@dataclass(frozen=True, slots=True)
class Whatever(Form):
    """Any JSON: only for what the server writes itself. The annotation says what it is."""


TEXTS: Final = (Text, Choice, Day, Instant, WallTime, Zone, Sha256, Ref)
"""The forms whose values are texts."""
NUMBERS: Final = (Number, WholeNumber)

DayText = Annotated[str, Day()]
InstantText = Annotated[str, Instant()]
WallTimeText = Annotated[str, WallTime()]
LanguageTag = Annotated[str, Text(12)]
"""A language that this server does not have is English to it; a newer one may know more."""


@dataclass(frozen=True, slots=True)
class FieldSpec:
    """One field of a kind: the form of its values, who writes it, whether a new record needs it."""

    form: Form
    writers: Writers
    required: bool = False
    refers_to: str | None = field(init=False)
    """The kind of the record that has to be there before this field can name it."""

    def __post_init__(self) -> None:
        target = self.form.kind if isinstance(self.form, Ref) and self.form.awaited else None
        object.__setattr__(
            self, "refers_to", target
        )  # kept, as every field of every operation is asked for it


@dataclass(frozen=True, slots=True)
class Kind:
    """A kind of record: its group and its fields by name. ``scope`` says whether it belongs to a colony.

    ``parts``: the dataclasses that describe it, in the order of the fields.
    """

    name: str
    group: Group
    fields: Mapping[str, FieldSpec]
    scope: Scope
    parts: tuple[type, ...]


def kind_of(name: str, group: Group, *parts: type, writers: Writers, scope: Scope = "household") -> Kind:
    """Return the kind that these dataclasses describe together; ``writers`` holds where a field says nothing."""
    specs = {field: spec for part in parts for field, spec in _specs(part, writers)}
    if group == "derived":  # nobody but the server makes one, and it is not asked for anything
        specs = {field: replace(spec, required=False) for field, spec in specs.items()}
    return Kind(name, group, specs, scope, parts)


def _specs(part: type, writers: Writers) -> Iterator[tuple[str, FieldSpec]]:
    hints = get_type_hints(part, include_extras=True)
    for each in fields(part):
        bare, said = taken_apart(hints[each.name])
        form = next((each for each in said if isinstance(each, Form)), None) or _own_form(bare)
        writes = next((each for each in said if isinstance(each, frozenset)), writers)
        required = each.default is MISSING and each.default_factory is MISSING
        yield each.name, FieldSpec(form, writes, required)


def taken_apart(hint: Any) -> tuple[Any, tuple[Any, ...]]:
    """Return an annotation without ``None``, and what ``Annotated`` says beside it, the outermost last."""
    if get_origin(hint) is Annotated:
        inner, *said = get_args(hint)
        bare, more = taken_apart(inner)
        return bare, (*more, *said)
    if get_origin(hint) in (Union, types.UnionType):
        others = [each for each in get_args(hint) if each is not type(None)]
        if len(others) == 1:
            return taken_apart(others[0])
    return hint, ()


def _own_form(bare: Any) -> Form:
    if get_origin(bare) is Literal:
        return Choice(get_args(bare))
    return Flag() if bare is bool else Whatever()
