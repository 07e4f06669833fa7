"""What lies in a database that servers share comes out into the data folder, for a move to SQLite (``records.home``).

The other way needs nothing here: the first start on PostgreSQL takes over what the folder has.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Final

from sqlalchemy import Connection, select

from ..errors import BadSetting
from ..languages import told
from ..nudges.channels.push.shared_key import NAME, SETTING
from ..nudges.channels.push.vapid import FILE_NAME
from ..records.ended import Revocation, Revocations
from ..records.epochs import write_whole
from ..records.home.folder import ENDINGS, KEPT_FILE, PICTURES, FolderPictures, NoteFile
from ..records.home.sealing import Seal
from ..records.home.tables import endings, pictures, server_notes
from ..settings import Settings

AT_ONCE: Final = 20
NO_END: Final = 2**62


def bring_out(source: Connection, settings: Settings) -> int:
    """Write pictures, endings, notes and the push key of a shared database into the data folder; return the pictures.

    What is there stays. Raises ``BadSetting`` for a key that is sealed with another secret.
    """
    count = _bring_pictures(source, settings.data)
    e = endings.c
    ended = source.execute(select(e.what, e.household_id, e.ended_id, e.at_ms).order_by(e.at_ms))
    file = Revocations(settings.data / ENDINGS)
    known = set(file.read())
    file.add_all(entry for row in ended if (entry := Revocation(*row)) not in known)
    texts = {row.name: row.text for row in source.execute(select(server_notes))}
    NoteFile(settings.data / KEPT_FILE).note(**json.loads(texts.get("kept", "{}")))
    sealed = json.loads(texts.get(NAME, "{}")).get("sealed")
    if sealed is not None and not (settings.data / FILE_NAME).exists():
        pem = Seal(settings.secrets).open(sealed) if settings.secrets else None
        if pem is None:
            raise BadSetting(SETTING, "…", told("setting-secret-other"))
        write_whole(settings.data / FILE_NAME, pem)
    return count


def _bring_pictures(source: Connection, data: Path) -> int:
    folder, count = FolderPictures(data / PICTURES), 0
    for row in source.execute(select(pictures).execution_options(yield_per=AT_ONCE)):
        if not folder.has(row.household_id, row.sha256):
            folder.put(row.household_id, row.sha256, bytes(row.drawn), NO_END)
        count += 1
    return count
