"""The doctor names each fault that was made on purpose, and changes nothing."""

from __future__ import annotations

import pytest
from tests.support.households import make_household
from tests.support.mail_server import MailServer
from tests.support.server import Server

from broodshelf.app import create_app
from broodshelf.cli import main
from broodshelf.doctor import examine
from broodshelf.errors import BadSetting
from broodshelf.nudges.tables import nudger_state, subscriptions
from broodshelf.records.database import db, writing
from broodshelf.settings import from_environment

NOW_MS = 1_777_636_800_000


@pytest.fixture
def settings(tmp_path):
    return from_environment({"BROODSHELF_DATA": str(tmp_path / "data"), "BROODSHELF_PORT": "9"})


def started(settings):
    app = create_app(settings, lambda: NOW_MS)
    with app.app_context():
        db.engine.dispose()
    return app


@pytest.fixture
def app(settings, templates):
    """The app of a server that was started once."""
    templates.of_an_app("sqlite", settings.data)
    return started(settings)


def levels(settings, now_ms=NOW_MS):
    return {finding.about: finding.level for finding in examine(settings, now_ms)}


def test_on_an_empty_folder_it_says_what_the_first_start_will_make_and_makes_nothing(settings):
    assert levels(settings) == {
        "data_folder": "look", "database": "look", "public_address": "look", "server": "look",
    }  # fmt: skip
    assert not settings.data.exists()


def test_a_started_server_is_well_but_for_what_does_not_run(settings, app):
    found = levels(settings)
    assert {about for about, level in found.items() if level == "good"} == {
        "data_folder", "disk", "database", "households", "history", "push_key",
    }  # fmt: skip
    assert found["nudger"] == found["server"] == "look"


def test_a_key_that_others_can_read_and_one_that_is_no_key_are_bad(settings, app):
    (settings.data / "vapid.pem").chmod(0o644)
    assert levels(settings)["push_key"] == "bad"
    (settings.data / "vapid.pem").chmod(0o600)
    (settings.data / "vapid.pem").write_text("nonsense")
    assert levels(settings)["push_key"] == "bad"


def test_a_key_that_was_changed_while_phones_listen_is_bad_and_said_at_the_next_start(settings, app, caplog):
    with app.app_context():
        with writing() as connection:
            household_id = make_household(connection)
            connection.execute(
                subscriptions.insert().values(
                    id="s", household_id=household_id, person_id="p", device_id="d", endpoint="https://x", host="x",
                    p256dh="", auth="", key_id="an-older-key-000", created_ms=0, seen_ms=0, failures=0,
                )
            )  # fmt: skip
        db.engine.dispose()
    assert levels(settings)["push_key"] == "bad"
    with caplog.at_level("ERROR", logger="broodshelf"):
        started(settings)
    assert "the push key was changed" in caplog.text

    (settings.data / "vapid.pem").unlink()
    assert levels(settings)["push_key"] == "bad"
    with pytest.raises(BadSetting, match="put it back from the backup"):
        create_app(settings, lambda: NOW_MS)


def test_a_mail_server_is_logged_in_to_and_one_that_is_away_is_bad(tmp_path):
    with MailServer() as server:
        environment = {
            "BROODSHELF_DATA": str(tmp_path), "BROODSHELF_PORT": "9", "BROODSHELF_SMTP_HOST": "127.0.0.1",
            "BROODSHELF_SMTP_PORT": str(server.port), "BROODSHELF_SMTP_SECURITY": "none",
            "BROODSHELF_SMTP_FROM": "shelf@example.org",
        }  # fmt: skip
        assert levels(from_environment(environment))["mail"] == "good"
    assert levels(from_environment(environment))["mail"] == "bad"
    assert server.taken == []


def test_an_older_schema_and_a_damaged_file_are_bad(settings, app):
    with app.app_context():
        with writing() as connection:
            connection.exec_driver_sql("UPDATE alembic_version SET version_num = '0001'")
        db.engine.dispose()
    assert levels(settings)["database"] == "bad"
    for leftover in settings.data.glob("broodshelf.sqlite3*"):
        leftover.write_bytes(b"not a database" * 500)
    assert levels(settings)["database"] == "bad"


def test_a_nudger_that_stands_still_or_ran_in_the_future_is_bad(settings, app):
    with app.app_context():
        with writing() as connection:
            connection.execute(nudger_state.insert().values(name="tick", at_ms=NOW_MS))
        db.engine.dispose()
    assert levels(settings, NOW_MS + 5_000)["nudger"] == "good"
    assert levels(settings, NOW_MS + 3_600_000)["nudger"] == "bad"
    assert levels(settings, NOW_MS - 86_400_000)["nudger"] == "bad"


@pytest.mark.long
def test_the_command_says_so_of_a_running_server(tmp_path, monkeypatch, capsys):
    server = Server(tmp_path)
    server.start()
    try:
        monkeypatch.setenv("BROODSHELF_DATA", str(tmp_path))
        monkeypatch.setenv("BROODSHELF_PUBLIC_URL", server.url)
        status = main(["doctor"])
    finally:
        server.stop()
    said = capsys.readouterr().out

    assert "version" in said and "answers at" in said and "good  clock" in said
    assert (status, "BAD" in said) == (0, False), said


@pytest.mark.parametrize(("hops", "level"), [("0", "look"), ("1", "good")])
def test_an_https_address_without_a_trusted_proxy_is_told(tmp_path, hops, level):
    environment = {
        "BROODSHELF_DATA": str(tmp_path / "none"),
        "BROODSHELF_PUBLIC_URL": "https://127.0.0.1:9",  # nobody listens there
        "BROODSHELF_TRUSTED_PROXY_HOPS": hops,
    }

    assert levels(from_environment(environment))["proxy"] == level


def test_a_role_that_passes_row_level_security_is_told(tmp_path, postgresql_cluster):
    url = postgresql_cluster.new_database()
    own = from_environment({"BROODSHELF_DATA": str(tmp_path / "data"), "BROODSHELF_DATABASE_URL": url})
    started(own)
    free = url.replace("shelf@", "tests@")  # the superuser of the test's own cluster
    as_superuser = from_environment(
        {"BROODSHELF_DATA": str(tmp_path / "data"), "BROODSHELF_DATABASE_URL": free}
    )

    assert levels(own)["database_role"] == "good"
    assert levels(as_superuser)["database_role"] == "look"
