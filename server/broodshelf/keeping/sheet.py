"""A keeper's own table: which column is which field, then every row an entry or a named fault.

The mapping is a TOML file (docs/export-format.md shows one) or options of the command. Ids follow from the
rows' contents, so the same table twice adds nothing.
"""

from __future__ import annotations

import csv
import datetime as dt
import io
import json
import tomllib
import uuid
import zoneinfo
from collections import Counter, defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, Final

from sqlalchemy import Connection

from ..errors import CannotKeep
from ..languages import Unfit, told, told_of, why_of
from ..model.kinds import KINDS, FieldSpec, forms, required_fields
from ..records.store import read_kind
from ..records.types import is_uuid
from .cells import read_flag, read_number
from .entries import BadRow, Entry

MAPPABLE: Final = tuple(
    name
    for name, kind in KINDS.items()
    if kind.group != "derived" and name not in {"household", "person", "pass"}
)
_KEYS: Final = {"kind", "columns", "values", "constants", "date_format", "decimal_comma"}
_ROW_SPACE: Final = uuid.UUID("0c1f3a86-6a55-5d0b-8b0f-3f6f6f0a5e21")

Names = Mapping[str, Mapping[str, Sequence[str]]]
"""For each kind: a record's name, number or id in lower case, and the ids that bear it."""


@dataclass(frozen=True, slots=True)
class SheetMapping:
    """What a table's columns mean: field by column heading, words for a field's choices, fixed fields."""

    kind: str
    columns: Mapping[str, str]
    values: Mapping[str, Mapping[str, Any]] = field(default_factory=dict)
    constants: Mapping[str, Any] = field(default_factory=dict)
    date_format: str | None = None
    decimal_comma: bool = False

    def __post_init__(self) -> None:
        if self.kind not in MAPPABLE:
            raise CannotKeep(told("mapping-kind", kind=self.kind, kinds=", ".join(MAPPABLE)))
        given = {*self.columns, *self.constants, *self.values}
        known = {n for n, spec in KINDS[self.kind].fields.items() if "keeper" in spec.writers and n != "gone"}
        if unknown := sorted(given - known):
            raise CannotKeep(
                told("mapping-no-field", kind=self.kind, field=unknown[0], fields=", ".join(sorted(known)))
            )
        if missing := sorted(required_fields(KINDS[self.kind]) - {*self.columns, *self.constants}):
            raise CannotKeep(told("mapping-needs", kind=self.kind, fields=missing))


def read_mapping(path: Path) -> SheetMapping:
    """Read a mapping file; raise ``CannotKeep`` naming what is wrong in it."""
    try:
        table = tomllib.loads(path.read_text("utf-8"))
    except (OSError, ValueError) as error:
        raise CannotKeep(told("mapping-unreadable", path=path, why=why_of(error))) from error
    if unknown := sorted(table.keys() - _KEYS):
        raise CannotKeep(told("mapping-unknown", path=path, name=unknown[0], names=", ".join(sorted(_KEYS))))
    inner = [table.get("columns", {}), table.get("constants", {}), table.get("values", {})]
    if not all(isinstance(part, dict) for part in [*inner, *_parts(inner[2])]):
        raise CannotKeep(told("mapping-tables", path=path))
    if not all(isinstance(value, (str, int, float)) for value in inner[1].values()):
        raise CannotKeep(told("mapping-constants", path=path))
    if not isinstance(table.get("date_format", ""), str):
        raise CannotKeep(told("mapping-date-format", path=path))
    return SheetMapping(**{"kind": "", "columns": {}, **table})


def _parts(table: object) -> list[object]:
    return list(table.values()) if isinstance(table, dict) else []


def names_on_shelf(connection: Connection, household_id: str) -> Names:
    """Return by which names a table may speak of this household's records."""
    names: dict[str, dict[str, list[str]]] = defaultdict(lambda: defaultdict(list))
    for kind in {spec.refers_to for k in KINDS.values() for spec in k.fields.values() if spec.refers_to}:
        for record in read_kind(connection, household_id, kind):
            spoken = {record.values.get("name"), record.values.get("number"), record.id} - {None, ""}
            for name in spoken:
                names[kind][str(name).casefold()].append(record.id)
    return names


def read_sheet(
    path: Path, mapping: SheetMapping, household_id: str, zone: zoneinfo.ZoneInfo, names: Names
) -> tuple[list[Entry], list[BadRow]]:
    """Read a table in CSV (comma, semicolon or tab; UTF-8); its first row are the headings.

    Raises ``CannotKeep`` when the whole cannot be read or lacks a mapped column.
    """
    try:
        text = path.read_bytes().decode("utf-8-sig")
        first = text.partition("\n")[0]
        delimiter = max(",;\t", key=first.count)
        rows = list(csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True))
    except (OSError, UnicodeDecodeError, csv.Error) as error:
        raise CannotKeep(told("mapping-no-table", path=path, why=str(error))) from error
    heading = [cell.strip() for cell in rows[0]] if rows else []
    for name in mapping.columns.values():
        if heading.count(name) != 1:
            raise CannotKeep(
                told(
                    "mapping-columns", path=path, n=heading.count(name), name=name, columns=", ".join(heading)
                )
            )
    entries: list[Entry] = []
    bad: list[BadRow] = []
    seen: Counter[str] = Counter()
    for number, row in enumerate(rows[1:], 2):
        if not any(cell.strip() for cell in row):
            continue
        cells = dict(zip(heading, (cell.strip() for cell in row), strict=False))
        if len(row) > len(heading):
            bad.append(BadRow(f"row {number}", told("import-cells", cells=len(row), columns=len(heading))))
            continue
        try:
            values = _values(cells, mapping, zone, names)
        except ValueError as error:
            bad.append(BadRow(f"row {number}", told_of(error)))
            continue
        content = json.dumps([household_id, mapping.kind, values], sort_keys=True)
        seen[content] += 1
        row_id = str(uuid.uuid5(_ROW_SPACE, f"{content}{seen[content]}"))
        entries.append(Entry(f"row {number}", mapping.kind, row_id, None, None, values))
    return entries, bad


def _values(
    cells: Mapping[str, str], mapping: SheetMapping, zone: zoneinfo.ZoneInfo, names: Names
) -> dict[str, Any]:
    values = dict(mapping.constants)
    specs = KINDS[mapping.kind].fields
    for name, column in mapping.columns.items():
        cell = cells.get(column, "")
        if not cell:
            continue
        try:
            values[name] = _value(cell, name, specs[name], mapping, zone, names)
        except ValueError as error:
            raise Unfit(told("import-field", field=column, why=why_of(error))) from None
    return values


def _value(
    cell: str, name: str, spec: FieldSpec, mapping: SheetMapping, zone: zoneinfo.ZoneInfo, names: Names
) -> Any:
    own = {str(word).casefold(): meant for word, meant in mapping.values.get(name, {}).items()}
    if cell.casefold() in own:
        return own[cell.casefold()]
    form = spec.form
    if spec.refers_to is not None:
        return _named(cell, spec.refers_to, names)
    if isinstance(form, forms.Instant):
        return _moment(cell, mapping.date_format, zone).isoformat(timespec="milliseconds")
    if isinstance(form, forms.Day):
        return _moment(cell, mapping.date_format, zone).date().isoformat()
    if isinstance(form, forms.Flag):
        return read_flag(cell)
    if isinstance(form, forms.NUMBERS):
        return read_number(cell.replace(",", ".") if mapping.decimal_comma else cell)
    if isinstance(form, forms.Choice):
        return _choice(cell, form.words)
    if isinstance(form, forms.TEXTS):
        return cell
    raise Unfit(told("mapping-no-lists"))


def _named(cell: str, kind: str, names: Names) -> str:
    found = names.get(kind, {}).get(cell.casefold(), ())
    if not found and is_uuid(cell):
        return cell
    if not found:
        raise Unfit(told("mapping-nobody", kind=kind, name=cell))
    if len(found) > 1:
        raise Unfit(told("mapping-several", kind=kind, name=cell))
    return found[0]


def _moment(cell: str, date_format: str | None, zone: zoneinfo.ZoneInfo) -> dt.datetime:
    """Read a day or an instant on the household's wall clock; a day alone means noon."""
    try:
        if date_format is None:
            read = dt.datetime.fromisoformat(cell)
            timed = len(cell) > len("2026-05-01")
        else:
            read = dt.datetime.strptime(cell, date_format)  # noqa: DTZ007 - the zone follows
            timed = any(code in date_format for code in ("%H", "%I", "%X", "%c"))
    except ValueError:
        raise Unfit(told("mapping-no-date", text=cell, format=date_format or "2026-05-01 18:30")) from None
    if not timed:
        read = read.replace(hour=12)
    return read if read.tzinfo is not None else read.replace(tzinfo=zone)


def _choice(cell: str, options: Sequence[str]) -> str:
    """Return the choice that a cell means, whatever its case."""
    word = cell.casefold().replace(" ", "_").replace("-", "_")
    if word in options:
        return word
    raise Unfit(told("mapping-none-of", text=cell, options=", ".join(options)))
