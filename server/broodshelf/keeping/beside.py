"""What a backup and a restore do where everything lies in a shared database: a restore must not take it back, too."""

from __future__ import annotations

from sqlalchemy import inspect

from ..records.database import opened, writing
from ..records.ended import Revocations
from ..records.home.folder import ENDINGS, KEPT_FILE, NoteFile
from ..records.home.shared import SharedEndings, SharedNotes
from ..records.home.tables import endings, server_notes
from ..records.home.taking_over import set_pictures_aside
from ..settings import Settings


def note_backup(settings: Settings, made_ms: int) -> None:
    """Remember that a backup was made."""
    if not settings.shares:
        NoteFile(settings.data / KEPT_FILE).note(backup_ms=made_ms)
        return
    with opened(settings.database_url) as engine:
        if inspect(engine).has_table(server_notes.name):  # not in one that was never started since it came up
            SharedNotes("kept").note(backup_ms=made_ms)


def remember(settings: Settings) -> None:
    """Before a restore: what was ended and when a backup was made go into this machine's files, pictures are set aside.

    The start after it brings all of it back. With SQLite they lie in the data folder and stay there.
    """
    if not settings.shares:
        return
    with opened(settings.database_url) as engine:
        if not inspect(engine).has_table(endings.name):
            return
        with writing() as connection:
            SharedEndings(Revocations(settings.data / ENDINGS)).agree(connection)
            set_pictures_aside(connection)
        NoteFile(settings.data / KEPT_FILE).note(**SharedNotes("kept").read())
