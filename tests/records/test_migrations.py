"""The migrations lead to the tables that the code declares, on both databases."""

from __future__ import annotations

import json

import pytest
from alembic import command
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from alembic.util import CommandError
from flask import Flask
from sqlalchemy import text

from broodshelf import migrations
from broodshelf.records import database


@pytest.fixture(params=["sqlite", "postgresql"])
def empty_app(request, tmp_path):
    """An app on an empty database, before any migration."""
    app = Flask("bare")
    app.config["SQLALCHEMY_DATABASE_URI"] = (
        f"sqlite:///{tmp_path / 'm.sqlite3'}"
        if request.param == "sqlite"
        else request.getfixturevalue("postgresql_cluster").new_database()
    )
    database.prepare(app)
    return app


def test_migrations_and_tables_agree(empty_app):
    with empty_app.app_context():
        migrations.upgrade(database.db.engine)
        migrations.upgrade(database.db.engine)  # a second start changes nothing
        with database.reading() as connection:
            assert compare_metadata(MigrationContext.configure(connection), database.metadata) == []
        database.db.engine.dispose()


def test_a_database_of_a_newer_version_is_served_where_machines_share_it_and_else_refused(empty_app):
    with empty_app.app_context():
        engine = database.db.engine
        migrations.upgrade(engine)
        with database.writing() as connection:
            connection.execute(text("UPDATE alembic_version SET version_num = '9999'"))

        if engine.dialect.name == "postgresql":
            migrations.upgrade(engine)
        else:
            with pytest.raises(CommandError, match="9999"):
                migrations.upgrade(engine)
        engine.dispose()


def test_a_log_from_before_the_topics_gets_its_topics_and_task_keys(empty_app):
    logged = {
        "a": ("feeding", {"need": "protein", "task_key": "protein:start"}, "protein", "protein:start"),
        "b": ("check", {"outcome": "all"}, "", None),
        "c": ("fault", {"fault": "leak"}, "open", None),
        "d": ("fault", {"fault": "leak", "resolved_at": "2026-05-01T12:00:00Z"}, "", None),
        "e": ("later", {"need": "sugar"}, "", None),
    }
    with empty_app.app_context():
        engine = database.db.engine
        command.upgrade(migrations.config(engine), "0003")
        with database.writing() as connection:
            connection.execute(text("INSERT INTO households VALUES ('h', 5, 'e', 0, 0)"))
            for number, (name, (record_kind, values, _topic, _key)) in enumerate(logged.items()):
                connection.execute(
                    text(
                        "INSERT INTO records (household_id, id, kind, rev, gone, happened_ms, made_ms, fields, stamps)"
                        " VALUES ('h', :id, :kind, :rev, false, 1, 1, :fields, '{}')"
                    ),
                    {"id": name, "kind": record_kind, "rev": number, "fields": json.dumps(values)},
                )
        migrations.upgrade(engine)
        with database.reading() as connection:
            rows = connection.execute(text("SELECT id, topic, task_key FROM records ORDER BY id")).all()
        engine.dispose()

    assert [tuple(row) for row in rows] == [(name, topic, key) for name, (_, _, topic, key) in logged.items()]


def test_a_message_from_before_knows_the_host_of_its_phone(empty_app):
    with empty_app.app_context():
        engine = database.db.engine
        command.upgrade(migrations.config(engine), "0005")
        with database.writing() as connection:
            connection.execute(text("INSERT INTO households VALUES ('h', 5, 'e', 0, 0)"))
            for phone, host in (("p", "push.example"), ("q", "mail")):
                connection.execute(
                    text(
                        "INSERT INTO push_subscriptions (id, household_id, person_id, device_id, endpoint, host,"
                        " p256dh, auth, key_id, created_ms, seen_ms, failures)"
                        " VALUES (:phone, 'h', 'm', :phone, 'e', :host, '', '', 'k', 1, 1, 0)"
                    ),
                    {"phone": phone, "host": host},
                )
                connection.execute(
                    text(
                        "INSERT INTO deliveries (id, subscription_id, state, wake_ms, attempts, short, made_ms,"
                        " useless_ms)"
                        " VALUES (:phone, :phone, 'waiting', 1, 0, false, 1, 2)"
                    ),
                    {"phone": phone},
                )
        migrations.upgrade(engine)
        with database.reading() as connection:
            found = connection.execute(text("SELECT id, host FROM deliveries ORDER BY id")).all()
        engine.dispose()

    assert [tuple(row) for row in found] == [("p", "push.example"), ("q", "mail")]


BEFORE_THE_HOUSEHOLD_CAME_FIRST = """
INSERT INTO households VALUES ('h', 5, 'e', 0, 0), ('g', 7, 'e', 0, 0);
INSERT INTO devices VALUES ('p', 'h', 'm', NULL, 'keeper', 'phone', 't', 1, 1, NULL);
INSERT INTO devices VALUES ('q', 'g', 'm', NULL, 'keeper', 'phone', 'u', 1, 1, NULL);
INSERT INTO pass_secrets VALUES ('s', 'h', 'a', 'b', 1);
INSERT INTO feed_tokens VALUES ('f', 'h', NULL, 'c', 1, 2);
INSERT INTO feed_events VALUES ('f', 'k', '2026-05-01', '08:00', 1, 0, NULL);
INSERT INTO pairings VALUES ('r', 'd', 'e', 'p', 'phone', 1, 2, 'h', 'm', NULL);
INSERT INTO claim_codes VALUES ('x', 'h', 'm', 1, 2, NULL);
INSERT INTO occurrences VALUES
 ('o', 'h', 'colony', 'c', 'water', '2026-05-01', '08:00', 'k', false, false, 1, 1, 'sent', 1, 1, NULL, NULL);
INSERT INTO push_subscriptions (id, household_id, person_id, device_id, endpoint, host, p256dh, auth, key_id,
 created_ms, seen_ms, failures) VALUES ('w', 'h', 'm', 'p', 'e', 'x', '', '', 'k', 1, 1, 0),
 ('v', 'g', 'm', 'q', 'e', 'x', '', '', 'k', 1, 1, 0);
INSERT INTO nudges VALUES ('n', 'h', 'm', '2026-05-01', '08:00', 1, false, 1);
INSERT INTO nudge_items VALUES ('n', 'o', 0, '{}');
INSERT INTO deliveries (id, nudge_id, subscription_id, state, attempts, short, made_ms, useless_ms, host)
 VALUES ('1', 'n', 'w', 'sent', 1, false, 1, 2, 'x'), ('2', 'n', 'v', 'sent', 1, false, 1, 2, 'x'),
 ('3', NULL, 'v', 'sent', 1, false, 1, 2, 'x');
INSERT INTO records (household_id, id, kind, rev, gone, made_ms, fields, stamps) VALUES
 ('h', 'h', 'household', 1, false, 1, '{"name": "Shelf"}', '{}'),
 ('h', 'i', 'household', 2, false, 1, '{"name": "Second"}', '{}'),
 ('h', 'm', 'person', 3, false, 1, '{"name": "Mira"}', '{}');
"""
KEPT = {
    "devices": [("h", "p"), ("g", "q")],
    "pass_secrets": [("h", "s")],
    "feed_tokens": [("h", "f")],
    "feed_events": [("h", "f")],
    "occurrences": [("h", "o")],
    "push_subscriptions": [("h", "w"), ("g", "v")],
    "nudges": [("h", "n")],
    "nudge_items": [("h", "n")],
    "deliveries": [("h", "1"), ("g", "3")],  # the second told another household's person of this one's round
}


def test_what_a_household_had_is_kept_when_keys_begin_with_it_and_what_crossed_households_is_not(empty_app):
    with empty_app.app_context():
        engine = database.db.engine
        command.upgrade(migrations.config(engine), "0006")
        with database.writing() as connection:
            for statement in BEFORE_THE_HOUSEHOLD_CAME_FIRST.split(";\n"):
                if statement.strip():
                    connection.exec_driver_sql(statement)
        migrations.upgrade(engine)
        with database.reading() as connection:
            for name, keys in KEPT.items():
                table = database.metadata.tables[name]
                key = [column.name for column in table.primary_key][:2]
                found = connection.execute(text(f"SELECT {', '.join(key)} FROM {name}")).all()
                assert sorted(map(tuple, found)) == sorted(keys), name
            doors = [
                connection.scalar(text(f"SELECT for_household FROM {name}"))
                for name in ("pairings", "claim_codes")
            ]
            of_itself = connection.execute(
                text("SELECT id, gone, rev FROM records WHERE kind = 'household' ORDER BY id")
            ).all()
            rev = connection.scalar(text("SELECT rev FROM households WHERE id = 'h'"))
        engine.dispose()

    assert doors == ["h", "h"]
    assert [tuple(row) for row in of_itself] == [("h", False, 1), ("i", True, 6)]
    assert rev == 6


def test_an_occurrence_from_before_knows_what_its_task_is_about_and_plans_are_made_anew(empty_app):
    with empty_app.app_context():
        engine = database.db.engine
        command.upgrade(migrations.config(engine), "0009")
        with database.writing() as connection:
            connection.exec_driver_sql("INSERT INTO households VALUES ('h', 5, 'e', 0, 0)")
            connection.exec_driver_sql("INSERT INTO plan_times VALUES ('h', 'c', 9)")
            for id_, key in (("a", "water_look:start"), ("b", "fault:f1"), ("c", "rest_fits:rest_frost")):
                connection.exec_driver_sql(
                    "INSERT INTO occurrences (household_id, id, subject_kind, subject_id, need, local_date, slot,"
                    " task_key, urgent, follows, due_ms, at_ms, state, steps, told_ms)"
                    f" VALUES ('h', '{id_}', 'colony', 'c', 'water', '2026-05-01', '{id_}', '{key}',"
                    " false, false, 1, 1, 'sent', 1, 1)"
                )
        migrations.upgrade(engine)
        with database.reading() as connection:
            found = connection.execute(
                text("SELECT task_what, task_about FROM occurrences ORDER BY id")
            ).all()
            held_until = connection.scalar(text("SELECT valid_until_ms FROM plan_times"))
        engine.dispose()

    assert [tuple(row) for row in found] == [
        ("water_look", "start"), ("fault", "f1"), ("rest_fits", "rest_frost")
    ]  # fmt: skip
    assert held_until == 0
