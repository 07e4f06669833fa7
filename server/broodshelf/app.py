"""Joining the parts: the only place where settings, clock, database, shell and routes meet."""

from __future__ import annotations

import json
import logging
import time
from collections.abc import Callable

from flask import Flask

from . import migrations
from .care import catalogue
from .errors import DatabaseLost
from .languages.phones_file import phones_files
from .logs import say
from .nudges.channels.addresses import Phone
from .nudges.channels.channel import Channel, Channels
from .nudges.channels.mail.channel import MailChannel
from .nudges.channels.push import vapid
from .nudges.channels.push.channel import PushChannel
from .nudges.channels.push.hosts import PushHosts
from .nudges.channels.push.subscriptions import anybody_listens, listen_with_other_key
from .nudges.nudger import Nudger
from .nudges.outcomes.measures import Measures
from .people.ledger import apply_revocations
from .records import database
from .records.data_folder import make_private
from .records.ended import Revocations, keep_book
from .records.epochs import Marks, notice_restores
from .records.loss import refuse_lost_file, refuse_lost_households
from .records.photo_files import PhotoFiles
from .settings import Settings
from .web import (
    access,
    feed,
    guard,
    headers,
    health,
    journal,
    mail,
    metrics,
    outlooks,
    passes,
    place_files,
    problem,
    push,
    request_log,
    sensors,
    shell_routes,
    sync_routes,
)
from .web import photos as photo_routes
from .web.callers import believe_proxies
from .web.parts import Parts, Pusher
from .web.past_builds import PastBuilds
from .web.probe import Probe
from .web.request_body import SMALL_BODY_BYTES
from .web.shell import Shell, find_folder


def system_clock() -> int:
    """Return the time in ms since 1970 UTC."""
    return time.time_ns() // 1_000_000


def create_app(
    settings: Settings,
    clock: Callable[[], int] = system_clock,
    hosts: PushHosts | None = None,
    push_channel: Channel[Phone] | None = None,
) -> Flask:
    """Make the app. Creates the data folder and keys and brings the database to the present schema.

    ``hosts`` and ``push_channel`` replace the policy of push hosts and the way to phones; tests pass ones that stay on
    this machine. No setting reaches them.
    """
    make_private(settings.data)
    app = Flask("broodshelf", static_folder=None)
    app.config["SQLALCHEMY_DATABASE_URI"] = settings.database_url
    app.config["MAX_CONTENT_LENGTH"] = SMALL_BODY_BYTES
    database.prepare(app)
    marks, revocations = Marks(settings.data / "marks"), Revocations(settings.data / "revoked.jsonl")
    refuse_lost_file(settings.sqlite_file, marks)
    with app.app_context():
        migrations.upgrade(database.db.engine)
        keep_book(app, revocations)
        try:
            with database.reading() as connection:
                refuse_lost_households(connection, marks)
        except DatabaseLost:
            database.db.engine.dispose()
            raise
        with database.writing() as connection:
            for household_id in notice_restores(connection, marks, clock()):
                say("restored database noticed", household_id=household_id)
            apply_revocations(connection, revocations)
            key = vapid.load_or_make(settings.data, in_use=anybody_listens(connection))
            deaf = listen_with_other_key(connection, key.key_id)
    if deaf:
        say(
            "the push key was changed: phones hear nothing until the app is opened on them",
            logging.ERROR,
            phones=deaf,
        )
    hosts = hosts or PushHosts(settings.push_extra_hosts)
    channels = Channels(
        push_channel or PushChannel(hosts, key, settings.vapid_subject),
        key.key_id,
        MailChannel(settings.mail) if settings.mail is not None else None,
    )
    pusher = Pusher(key, hosts, channels, Measures())
    words = json.dumps(catalogue.as_json(), ensure_ascii=False, separators=(",", ":")).encode()
    shell = Shell(find_folder(), {"catalogue.json": words, **phones_files()}, worker_on=settings.worker_on)
    photos = PhotoFiles(settings.data / "photos")
    with app.app_context(), database.reading() as connection:
        photos.sweep(connection, clock())
        probe = Probe(settings.data)
    past_builds = PastBuilds(settings.data / "builds")
    past_builds.keep(shell, clock())
    app.extensions["broodshelf"] = Parts(
        settings, clock, shell, past_builds, photos, marks, revocations, pusher, probe
    )
    app.wsgi_app = believe_proxies(app.wsgi_app, settings.trusted_proxy_hops)  # type: ignore[method-assign]
    request_log.install(app)
    problem.install(app)
    headers.install(app)
    for room in (
        shell_routes, access, passes, sync_routes, photo_routes, outlooks, push, mail, feed, sensors, place_files,
        journal, health, metrics,
    ):  # fmt: skip
        app.register_blueprint(room.blueprint)
    guard.guarded_views(app)
    return app


def create_nudger(app: Flask) -> Nudger:
    """Make the nudger of an app: it ticks in a thread of ``serve`` or in a process of its own."""
    made: Parts = app.extensions["broodshelf"]
    pusher = made.pusher
    return Nudger(
        app,
        pusher.channels,
        public_url=made.settings.public_url,
        clock=made.clock,
        data=made.settings.data,
        measures=pusher.measures,
    )
