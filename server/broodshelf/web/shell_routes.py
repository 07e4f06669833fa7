"""The addresses of the app shell. Static files carry the build id and never change; the worker is never cached."""

from __future__ import annotations

from collections.abc import Iterable

from flask import Blueprint, Response, request

from ..errors import NotFound
from ..languages import of_accepted, told
from ..languages.phones_file import names_of, phones_file
from ..languages.pseudo import PSEUDO
from ..languages.tags import read_tag
from .compact import ways
from .guard import open_to
from .parts import parts
from .shell import File, make_file

blueprint = Blueprint("shell", __name__)
FOR_EVER = "public, max-age=31536000, immutable"
READ_ANEW = ("gzip",)
"""A file of a past build is read for each request: brotli would cost more than it spares."""


@blueprint.get("/")
@open_to("all")
def index() -> Response:
    """Serve the page, in the language that the browser asks for.

    → the app shell
    """
    language = read_tag(of_accepted(request.headers.get("Accept-Language"))).folder
    return _send(parts().shell.page(language), "no-cache", vary="Accept-Encoding, Accept-Language")


@blueprint.get("/worker.js")
@open_to("all")
def worker() -> Response:
    """Serve the service worker: this address must stay for ever.

    → the script, never cached
    """
    response = _send(parts().shell.worker, "no-cache")
    response.headers["Service-Worker-Allowed"] = "/"
    return response


@blueprint.get("/manifest.webmanifest")
@open_to("all")
def manifest() -> Response:
    """Serve the web app manifest.

    → the manifest
    """
    return _send(parts().shell.manifest, "no-cache")


@blueprint.get("/static/<build>/<path:name>")
@open_to("all")
def static_file(build: str, name: str) -> Response:
    """Serve a file of the present build, or of one that a page may still have open.

    → the file, which never changes
    """
    shell = parts().shell
    present = shell.files.get(name) or shell.parcels.get(name) if build == shell.build else None
    if present is not None:
        return _send(present, FOR_EVER)
    if build == shell.build:
        for part, its_name in names_of(PSEUDO).items():
            if name == its_name:
                return _send(make_file(name, phones_file(PSEUDO, part)), FOR_EVER)
    kept = parts().past_builds.find(build, name)
    if kept is None:
        raise NotFound(told("problem-no-file"))
    return _send(kept, FOR_EVER, READ_ANEW)


def _send(
    file: File, caching: str, offered: Iterable[str] | None = None, *, vary: str = "Accept-Encoding"
) -> Response:
    response = Response(file.body, content_type=file.media_type)
    response.headers["Cache-Control"] = caching
    response.headers["Vary"] = vary
    way = _wanted(ways() if offered is None else offered)
    smaller = file.compressed(way) if way else None
    if way and smaller:
        response.set_data(smaller)
        response.headers["Content-Encoding"] = way
    response.add_etag()
    response.make_conditional(request)  # what a browser holds already is not sent again
    return response


def _wanted(offered: Iterable[str]) -> str | None:
    """Return what the browser likes best of what is offered, the smallest first; None for the body as it is."""
    quality = request.accept_encodings.quality
    best = max(offered, key=quality)
    return best if quality(best) > 0 and quality(best) >= quality("identity") else None
