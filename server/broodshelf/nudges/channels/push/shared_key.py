"""The push key of servers that share a database: sealed in a row, the same for all; ``vapid`` makes and reads it.

Without a secret the key stays in the data folder of the one machine there is, and the row only says so: a second
machine then hears that it needs the secret instead of making a key that half of the phones do not know.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from pathlib import Path
from typing import Final

from cryptography.hazmat.primitives.serialization import Encoding, NoEncryption, PrivateFormat
from sqlalchemy import Connection

from ....errors import BadSetting
from ....languages import told
from ....logs import say
from ....records.home.sealing import Seal
from ....records.home.shared import SharedNotes, put_note
from ....records.home.taking_over import put_away
from .vapid import FILE_NAME, VapidKey, key_in, load_or_make

NAME: Final = "push_key"
SETTING: Final = "BROODSHELF_SECRET"


def load_shared(connection: Connection, data: Path, secrets: Sequence[str], *, in_use: bool) -> VapidKey:
    """Return the push key of all servers of this database; the first one makes it, or brings its own.

    The caller is the only one who starts just now. Raises ``BadSetting`` when the secret is missing or another one,
    and as ``vapid.load_or_make`` does.
    """
    row = SharedNotes(NAME).read(connection)
    sealed = row.get("sealed")
    if not secrets:
        return _in_the_folder(connection, data, row, in_use=in_use)
    seal = Seal(secrets)
    if sealed is None:
        if row and not (data / FILE_NAME).exists():
            raise BadSetting(SETTING, "…", told("setting-key-elsewhere", file=FILE_NAME))
        key = load_or_make(data, in_use=in_use)
        put_note(connection, NAME, _row(key, seal))
        put_away(data, data / FILE_NAME)
        say("the push key lies sealed in the database", key=key.key_id)
        return key
    pem = seal.open(sealed)
    found = key_in(pem.encode()) if pem is not None else None
    if found is None:
        raise BadSetting(SETTING, "…", told("setting-secret-other"))
    if not seal.is_newest(sealed):
        put_note(connection, NAME, _row(found, seal))
        say("the push key is sealed with the new secret")
    return found


def _in_the_folder(connection: Connection, data: Path, row: dict[str, object], *, in_use: bool) -> VapidKey:
    if row.get("sealed") is not None or (row and not (data / FILE_NAME).exists()):
        raise BadSetting(SETTING, "", told("setting-secret-missing"))
    key = load_or_make(data, in_use=in_use)
    put_note(connection, NAME, json.dumps({"key_id": key.key_id}))
    return key


def _row(key: VapidKey, seal: Seal) -> str:
    pem = key.private.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, NoEncryption()).decode()
    return json.dumps({"key_id": key.key_id, "sealed": seal.close(pem)})
