"""JSON that is put together from texts, because an encoder would take many times as long over rows and answers.

What a row's columns hold is JSON already, or needs no quoting. The first pull and the push of ``tests.bench.sync_cost``
pay for it: of an answer it saves nine tenths of the time, a few milliseconds of 1,000 logs.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any, Final

ID_LENGTH: Final = 36


def answer_text(answer: Mapping[str, Any]) -> str:
    """Return the JSON of an answer; most are plain and need no encoder."""
    if answer["verdict"] == "applied" and not answer["conflicts"] and "made_ms" not in answer:
        return f'{{"op_id":"{answer["op_id"]}","verdict":"applied","rev":{answer["rev"]},"conflicts":[]}}'
    return json.dumps(answer, ensure_ascii=False, separators=(",", ":"))


def _quoted(written_by: str | None) -> str:
    return (
        f'"{written_by}"' if written_by and len(written_by) == ID_LENGTH else json.dumps(written_by or None)
    )


def row_text(row: Any, shown: str, more: str = "") -> str:
    """Return a row of the feed with the fields that are ``shown``, which are JSON already."""
    by = _quoted(row.person_id)
    head = f'{{"id":"{row.id}","kind":"{row.kind}","rev":{row.rev},"by":{by},"made_ms":{row.made_ms}'
    return f'{head}{more},"set":{shown}}}'


def whole_row_text(row: Any) -> str:
    """Return a row with all that a phone needs to offer it after a restore: its device and when each field was set.

    ``stamps`` names the fields that were set again since the record was made; of most records none was.
    """
    device = _quoted(row.device_id)
    first = f"{row.made_ms},{device}]"
    more = f',"device":{device}'
    if row.stamps.count(first) != row.stamps.count("["):
        later = {
            name: [at_ms, by]
            for name, (_rev, at_ms, by) in json.loads(row.stamps, strict=False).items()
            if (at_ms, by) != (row.made_ms, row.device_id)
        }
        more += f',"stamps":{json.dumps(later, separators=(",", ":"))}'
    return row_text(row, row.fields, more)
