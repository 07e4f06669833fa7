"""The addresses of the app shell. Static files carry the build id and never change; the worker is never cached."""

from __future__ import annotations

from flask import Blueprint, Response, request

from ..errors import NotFound
from .parts import parts
from .shell import File

blueprint = Blueprint("shell", __name__)
FOR_EVER = "public, max-age=31536000, immutable"


@blueprint.get("/")
def index() -> Response:
    """Serve the page."""
    return _send(parts().shell.index, "no-cache")


@blueprint.get("/worker.js")
def worker() -> Response:
    """Serve the service worker: this address must stay for ever."""
    response = _send(parts().shell.worker, "no-cache")
    response.headers["Service-Worker-Allowed"] = "/"
    return response


@blueprint.get("/manifest.webmanifest")
def manifest() -> Response:
    """Serve the web app manifest."""
    return _send(parts().shell.manifest, "no-cache")


@blueprint.get("/static/<build>/<path:name>")
def static_file(build: str, name: str) -> Response:
    """Serve a file of the present build, or of one that a page may still have open."""
    shell = parts().shell
    found = shell.files.get(name) if build == shell.build else parts().past_builds.find(build, name)
    if found is None:
        raise NotFound("This file is not part of a build that is kept here; reload the app.")
    return _send(found, FOR_EVER)


def _send(file: File, caching: str) -> Response:
    compress = file.gzipped is not None and "gzip" in request.headers.get("Accept-Encoding", "")
    response = Response(file.gzipped if compress else file.body, content_type=file.media_type)
    response.headers["Cache-Control"] = caching
    response.headers["Vary"] = "Accept-Encoding"
    if compress:
        response.headers["Content-Encoding"] = "gzip"
    return response
