"""An export as a file: one JSON document, a folder of CSV files, or a zip of them (docs/export-format.md)."""

from __future__ import annotations

import codecs
import csv
import io
import json
import lzma
import tempfile
import zipfile
import zlib
from collections.abc import Iterable, Iterator, Mapping
from itertools import chain
from pathlib import Path
from typing import Any, Final

from .. import __version__
from ..errors import CannotKeep
from ..languages import Unfit, told, why_of
from ..model.kinds import KINDS
from ..records.epochs import write_whole
from ..records.json_text import mended, read_json
from ..records.photo_files import MOST_BYTES as MOST_BYTES_A_PICTURE
from ..records.types import LAST_MS, is_sha256, is_uuid
from ..sync.envelope import MOST_FIELDS
from .cells import read_cell, write_cell
from .entries import EXPORTED, FORMAT, BadRow, Entry, Export, instant_ms, instant_text

MANIFEST: Final = "manifest.json"
PICTURES: Final = "pictures"
OWN_COLUMNS: Final = ("id", "made_at", "by")
MOST_BYTES: Final = 512 * 1024 * 1024
"""An export of this size is not one: a shelf of 100,000 events takes about 40 MB."""


def write(export: Export, target: Path, at_ms: int, pictures: Iterable[tuple[str, bytes]] = ()) -> None:
    """Write an export, readable by its owner only: JSON for ``.json``, a zip for ``.zip``, else a folder.

    ``pictures``: each with its hash, into a zip or a folder only.
    """
    head = {
        "format": FORMAT,
        "version": __version__,
        "exported_at": instant_text(at_ms),
        "household_id": export.household_id,
    }
    target.parent.mkdir(parents=True, exist_ok=True)
    if target.suffix == ".json":
        whole = {**head, "records": {kind: _rows(export, kind) for kind in EXPORTED}}
        write_whole(target, json.dumps(whole, ensure_ascii=False, indent=1) + "\n")
        return
    tables = {f"{kind}.csv": _table(export, kind) for kind in EXPORTED}
    tables[MANIFEST] = json.dumps(head, indent=1) + "\n"
    if target.suffix == ".zip":
        _write_zip(target, tables, pictures)
    else:
        _write_folder(target, tables, pictures)


def pictures_in(source: Path) -> Iterator[tuple[str, bytes]]:
    """Yield the pictures of an export with their hashes, those of a size that one may have."""
    if source.is_dir():
        for file in sorted((source / PICTURES).glob("*.jpg")):
            if is_sha256(file.stem) and file.is_file() and file.stat().st_size <= MOST_BYTES_A_PICTURE:
                yield file.stem, file.read_bytes()
    elif zipfile.is_zipfile(source):
        with zipfile.ZipFile(source) as archive:
            for member in archive.infolist():
                folder, _, name = member.filename.partition("/")
                named = folder == PICTURES and name.endswith(".jpg") and is_sha256(name.removesuffix(".jpg"))
                if named and member.file_size <= MOST_BYTES_A_PICTURE:
                    yield name.removesuffix(".jpg"), archive.read(member)


def read(source: Path) -> tuple[Export, list[BadRow]]:
    """Read an export of any of the three shapes, and which rows of it cannot be read.

    Raises ``CannotKeep`` when the whole is not an export.
    """
    try:
        if source.is_dir():
            return _from_tables(source, _texts_of(source))
        if zipfile.is_zipfile(source):
            return _from_tables(source, _unzip(source))
        _refuse_huge(source.stat().st_size)
        return _from_json(
            source, read_json(source.read_bytes().removeprefix(codecs.BOM_UTF8), whole_texts=False)
        )
    except (
        OSError,
        ValueError,
        EOFError,
        zipfile.BadZipFile,
        zlib.error,
        lzma.LZMAError,
        RuntimeError,
    ) as error:
        # RuntimeError: zipfile says so of what is encrypted or packed in a way that it does not know
        raise CannotKeep(told("import-not-an-export", path=source, why=why_of(error))) from error


def _rows(export: Export, kind: str) -> list[dict[str, Any]]:
    return [
        {"id": e.id, "made_at": instant_text(e.made_ms or 0), "by": e.by, "set": dict(e.values)}
        for e in export.entries
        if e.kind == kind
    ]


def _table(export: Export, kind: str) -> str:
    names = list(KINDS[kind].fields)
    text = io.StringIO(newline="")
    table = csv.writer(text)
    table.writerow([*OWN_COLUMNS, *names])
    for e in export.entries:
        if e.kind == kind:
            cells = [write_cell(e.values.get(name)) for name in names]
            table.writerow([e.id, instant_text(e.made_ms or 0), e.by or "", *cells])
    return text.getvalue()


def _write_zip(target: Path, tables: Mapping[str, str], pictures: Iterable[tuple[str, bytes]]) -> None:
    with tempfile.TemporaryDirectory(dir=target.parent) as scratch:
        packed = Path(scratch) / "export"
        with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED) as archive:
            for name, text in tables.items():
                archive.writestr(name, _encoded(name, text))
            for sha256, body in pictures:  # packed already
                archive.writestr(f"{PICTURES}/{sha256}.jpg", body, zipfile.ZIP_STORED)
        packed.chmod(0o600)
        packed.replace(target)


def _write_folder(target: Path, tables: Mapping[str, str], pictures: Iterable[tuple[str, bytes]]) -> None:
    if target.exists() and (not target.is_dir() or any(target.iterdir())):
        raise CannotKeep(told("import-folder-full", path=target))
    with tempfile.TemporaryDirectory(dir=target.parent) as scratch:
        made = Path(scratch) / "export"
        made.mkdir(mode=0o700)
        for name, text in tables.items():
            (made / name).write_bytes(_encoded(name, text))
        for sha256, body in pictures:
            (made / PICTURES).mkdir(mode=0o700, exist_ok=True)
            (made / PICTURES / f"{sha256}.jpg").write_bytes(body)
        made.replace(target)


def _encoded(name: str, text: str) -> bytes:
    """Tables begin with a byte order mark: without it some spreadsheets take them for another encoding."""
    return text.encode("utf-8-sig" if name.endswith(".csv") else "utf-8")


def _texts_of(folder: Path) -> dict[str, str]:
    files = [p for p in sorted(folder.iterdir()) if p.name == MANIFEST or p.suffix == ".csv"]
    _refuse_huge(sum(file.stat().st_size for file in files))
    return {file.name: file.read_bytes().decode("utf-8-sig") for file in files}


def _refuse_huge(size: int) -> None:
    if size > MOST_BYTES:
        raise Unfit(told("import-too-big"))


def _unzip(source: Path) -> dict[str, str]:
    with zipfile.ZipFile(source) as archive:
        members = [m for m in archive.infolist() if m.filename == MANIFEST or m.filename.endswith(".csv")]
        _refuse_huge(sum(member.file_size for member in members))
        return {m.filename: archive.read(m).decode("utf-8-sig") for m in members}


def _from_tables(source: Path, texts: Mapping[str, str]) -> tuple[Export, list[BadRow]]:
    if MANIFEST not in texts:
        raise CannotKeep(told("import-no-manifest", path=source, manifest=MANIFEST))
    household_id = _household_id(read_json(texts[MANIFEST].encode("utf-8")))
    tables = (_read_table(kind, texts[f"{kind}.csv"]) for kind in EXPORTED if f"{kind}.csv" in texts)
    return _sorted(household_id, chain.from_iterable(tables))


def _read_table(kind: str, text: str) -> Iterator[Entry | BadRow]:
    name = f"{kind}.csv"
    rows = csv.reader(io.StringIO(text, newline=""), strict=True)
    try:
        heading = next(rows, [])
        _check_heading(kind, heading)
        for number, row in enumerate(rows, 2):
            if any(row):
                yield _read_row(kind, f"{name} row {number}", heading, row)
    except csv.Error as error:
        raise CannotKeep(told("import-no-csv", path=name, line=rows.line_num, why=str(error))) from error


def _check_heading(kind: str, heading: list[str]) -> None:
    unknown = [h for h in heading if h not in OWN_COLUMNS and h not in KINDS[kind].fields]
    if unknown or "id" not in heading or len(set(heading)) != len(heading):
        if unknown:
            raise CannotKeep(told("import-unknown-column", path=f"{kind}.csv", column=unknown[0]))
        raise CannotKeep(told("import-double-column", path=f"{kind}.csv"))


def _read_row(kind: str, where: str, heading: list[str], row: list[str]) -> Entry | BadRow:
    if len(row) != len(heading):
        return BadRow(where, told("import-cells", cells=len(row), columns=len(heading)))
    own, values = {}, {}
    for name, cell in zip(heading, row, strict=True):
        if name in OWN_COLUMNS:
            own[name] = cell
        elif cell or KINDS[kind].fields[name].required:
            try:
                values[name] = read_cell(cell, KINDS[kind].fields[name])
            except ValueError as error:
                return BadRow(where, told("import-field", field=name, why=why_of(error)))
    return _entry(where, kind, {**own, "by": own.get("by") or None, "set": values})


def _from_json(source: Path, whole: Any) -> tuple[Export, list[BadRow]]:
    household_id = _household_id(whole)
    records = whole.get("records")
    if not isinstance(records, dict):
        raise CannotKeep(told("import-no-records", path=source))
    unknown = sorted(records.keys() - set(EXPORTED))
    if unknown:
        raise CannotKeep(told("import-unknown-kind", path=source, kind=unknown[0]))
    return _sorted(
        household_id,
        (
            _entry(f"{kind} {number}", kind, row)
            for kind in EXPORTED
            for number, row in enumerate(_list(records.get(kind, []), kind), 1)
        ),
    )


def _sorted(household_id: str, rows: Iterable[Entry | BadRow]) -> tuple[Export, list[BadRow]]:
    entries: list[Entry] = []
    bad: list[BadRow] = []
    for row in rows:
        if isinstance(row, Entry):
            entries.append(row)
        else:
            bad.append(row)
    return Export(household_id, tuple(entries)), bad


def _list(rows: object, kind: str) -> Iterable[object]:
    if not isinstance(rows, list):
        raise CannotKeep(told("import-not-a-list", kind=kind))
    return rows


def _entry(where: str, kind: str, row: object) -> Entry | BadRow:
    if not isinstance(row, dict) or not isinstance(row.get("set"), dict):
        return BadRow(where, told("import-no-record"))
    by, made_at = row.get("by"), row.get("made_at")
    if not is_uuid(row.get("id")) or not (by is None or is_uuid(by)):
        return BadRow(where, told("import-no-uuid"))
    try:
        made_ms = instant_ms(str(made_at)) if made_at else None
    except ValueError as error:
        return BadRow(where, told("import-field", field="made_at", why=why_of(error)))
    if made_ms is not None and not 0 <= made_ms <= LAST_MS:
        return BadRow(where, told("import-field", field="made_at", why=told("import-year")))
    if len(row["set"]) > MOST_FIELDS:
        return BadRow(where, told("import-many-fields", most=MOST_FIELDS))
    return Entry(where, kind, str(row["id"]), made_ms, by, mended(row["set"]))


def _household_id(head: Any) -> str:
    if not isinstance(head, dict) or not is_uuid(head.get("household_id")):
        raise Unfit(told("import-nameless"))
    if head.get("format") != FORMAT:
        raise Unfit(told("import-format", format=head.get("format"), known=FORMAT))
    return str(head["household_id"])
