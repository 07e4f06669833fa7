"""A whole evening of nudging in structured log lines: no endpoint, address, key, token or message in them."""

from __future__ import annotations

import io
import json
import logging

from tests.nudges.push_service import PushService
from tests.nudges.support import BrowserKeys, Shelf, ms, real_channels
from tests.support.mail_server import MailServer

from broodshelf import logs
from broodshelf.nudges.channels.mail.channel import MailChannel
from broodshelf.nudges.channels.mail.mailboxes import listen_by_mail
from broodshelf.records.database import writing
from broodshelf.settings import MailSettings


def test_log_lines_are_json_and_hold_no_secret_whatever_goes_wrong(
    shelf: Shelf, tmp_path, monkeypatch, caplog
):
    lines = io.StringIO()
    handler = logging.StreamHandler(lines)
    handler.setFormatter(logs._JsonLines())
    monkeypatch.setattr(logs.logger, "handlers", [handler])
    caplog.set_level("DEBUG", logger="broodshelf")
    keys = BrowserKeys()
    with PushService() as service, MailServer() as server:
        mira = shelf.person("Mira", listens=False)
        colony_id = shelf.colony(mira, "Secret name")
        for number, path in enumerate(
            ("ok", "status/410", "status/403", "retry/60", "redirect/307", "reset")
        ):
            phone = shelf.person(f"k{number}", listens=False)
            shelf.listen(phone, service.url(f"/{path}/very-secret-path"), keys)
            with writing() as connection:
                address = f"{'550' if number else 'very-secret-path'}@example.org"
                listen_by_mail(connection, shelf.id, phone.person_id, address, shelf.now_ms)
        shelf.log(mira, "fault", {"colony_id": colony_id, "fault": "leak"})
        mail = MailChannel(MailSettings("127.0.0.1", server.port, "none", "shelf@example.org"))
        nudger = shelf.new_nudger(real_channels(tmp_path, mail))
        for seconds in range(0, 1200, 100):  # two of them ask for pauses of the whole service
            nudger.tick(ms("2026-05-01T12:00") + seconds * 1000)
            nudger.finish()
        nudger.close()
        tokens = {taken.headers["Authorization"].partition("t=")[2][:40] for taken in service.taken}
    written = lines.getvalue()
    events = {json.loads(line)["event"] for line in written.splitlines()}
    secrets = (
        "very-secret-path",
        "Secret name",
        "@example.org",
        keys.as_json["p256dh"],
        keys.as_json["auth"],
        *tokens,
    )

    assert {"nudges made", "push not taken", "mail not taken", "phone no longer listens"} <= events
    assert tokens
    assert [secret for secret in secrets if secret in written] == []
