"""Joining the parts: the only place where settings, clock, database, shell and routes meet."""

from __future__ import annotations

import json
import logging
import time
from collections.abc import Callable

from flask import Flask
from sqlalchemy import Connection

from .care import catalogue
from .errors import BroodshelfError
from .languages.phones_file import phones_files
from .logs import say
from .nudges.channels.addresses import Phone
from .nudges.channels.channel import Channel, Channels
from .nudges.channels.mail.channel import MailChannel
from .nudges.channels.push import vapid
from .nudges.channels.push.channel import PushChannel
from .nudges.channels.push.hosts import PushHosts
from .nudges.channels.push.shared_key import load_shared
from .nudges.channels.push.subscriptions import anybody_listens, listen_with_other_key
from .nudges.channels.push.vapid import VapidKey
from .nudges.channels.unsubscribing import unsubscribe
from .nudges.nudger import Nudger
from .nudges.outcomes.measures import Measures
from .people.senders import Senders
from .people.settling import Witness, settle
from .records import database
from .records.data_folder import make_private
from .records.ended import Revocations, erased_among
from .records.epochs import Marks
from .records.home.alone import alone
from .records.home.ending import keep_book
from .records.home.folder import ENDINGS, in_folder
from .records.home.shared import in_database
from .records.home.taking_over import take_over
from .records.loss import refuse_lost_file
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
from .web.readiness import Readiness
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
    marks = Marks(settings.data / "marks", on_the_disk=not settings.shares)
    revocations = Revocations(settings.data / ENDINGS)
    refuse_lost_file(settings.sqlite_file, marks)
    home = in_database(revocations) if settings.shares else in_folder(settings.data, revocations)
    witness = Witness(marks, revocations, home.endings, unsubscribe)
    keep_book(app, home.endings)
    photos, past_builds = PhotoFiles(home.pictures), PastBuilds(home.builds)
    shell = Shell(find_folder(), {"catalogue.json": _words(), **phones_files()}, worker_on=settings.worker_on)
    with app.app_context():
        try:
            with alone(database.db.engine):
                settle(database.db.engine, witness, clock())
                with database.writing() as connection:
                    key = _push_key(connection, settings)
                    deaf = listen_with_other_key(connection, key.key_id)
                if settings.shares:
                    take_over(settings.data)
                with database.reading() as connection:
                    photos.sweep(connection, clock())
                    erased = erased_among(home.endings.all_of(connection))
                for household_id in erased:  # which a restored backup brought along once more
                    photos.forget(household_id)
                    marks.forget(household_id)
                past_builds.keep(shell, clock())
        except BroodshelfError:
            database.db.engine.dispose()
            raise
        probe = Probe(settings.data)
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
    app.extensions["broodshelf"] = Parts(
        settings, clock, shell, past_builds, photos, home, witness, pusher, probe, Readiness(), Senders()
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


def _push_key(connection: Connection, settings: Settings) -> VapidKey:
    in_use = anybody_listens(connection)
    if settings.shares:
        return load_shared(connection, settings.data, settings.secrets, in_use=in_use)
    return vapid.load_or_make(settings.data, in_use=in_use)


def _words() -> bytes:
    return json.dumps(catalogue.as_json(), ensure_ascii=False, separators=(",", ":")).encode()


def create_nudger(app: Flask) -> Nudger:
    """Make the nudger of an app: it ticks in a thread of ``serve`` or in a process of its own."""
    made: Parts = app.extensions["broodshelf"]
    pusher = made.pusher
    return Nudger(
        app,
        pusher.channels,
        public_url=made.settings.public_url,
        clock=made.clock,
        home=made.home,
        measures=pusher.measures,
    )
