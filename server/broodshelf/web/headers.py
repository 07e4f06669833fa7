"""Security headers on every response, and the guard of unsafe methods."""

from __future__ import annotations

from http import HTTPStatus

from flask import Flask, Response, current_app, request

from ..errors import NotAllowed
from ..languages import told
from .guard import Guarded
from .parts import parts

SAFE_METHODS = frozenset({"GET", "HEAD", "OPTIONS"})


def install(app: Flask) -> None:
    """Put the guard before and the headers after every request."""
    app.before_request(refuse_foreign_origins)
    app.after_request(add_headers)


def refuse_foreign_origins() -> None:
    """Let only our own pages change anything: by Fetch Metadata, else by Origin."""
    if request.method in SAFE_METHODS:
        return
    site = request.headers.get("Sec-Fetch-Site")
    origin = request.headers.get("Origin")
    if site == "same-origin" and origin in (None, parts().settings.public_url):
        return
    if site is None and origin is not None and origin == parts().settings.public_url:
        return
    if site is None and origin is None and _is_for_sensors():
        return
    raise NotAllowed(
        told("problem-foreign-origin", url=parts().settings.public_url),
        code="foreign_origin",
    )


def _is_for_sensors() -> bool:
    """A sensor is no browser: it says neither, and what lets it in is no cookie but a header."""
    view = current_app.view_functions.get(request.endpoint or "")
    return isinstance(view, Guarded) and view.door.who == "sensor"


def add_headers(response: Response) -> Response:
    """Set what browsers need to keep other sites and scripts out."""
    made = parts()
    headers = response.headers
    headers["Content-Security-Policy"] = "default-src 'none'"
    headers["X-Content-Type-Options"] = "nosniff"
    headers["Referrer-Policy"] = "no-referrer"
    headers["Cross-Origin-Resource-Policy"] = "same-origin"
    if made.settings.secure:
        headers["Strict-Transport-Security"] = "max-age=31536000"
    if not _is_part_of_a_page(response):
        _add_headers_of_a_page(response)
    if request.path.startswith("/api/"):
        headers["Cache-Control"] = "no-store"
    return response


def _is_part_of_a_page(response: Response) -> bool:
    """Whether this is a file that pages are made of. The rules of the page hold for it, and it may do nothing alone."""
    return request.endpoint == "shell.static_file" and response.status_code < HTTPStatus.BAD_REQUEST


def _add_headers_of_a_page(response: Response) -> None:
    headers = response.headers
    headers["Content-Security-Policy"] = (
        f"default-src 'none'; script-src 'self' '{parts().shell.import_map_hash}'; style-src 'self'; "
        "img-src 'self' blob: data:; connect-src 'self'; manifest-src 'self'; worker-src 'self'; font-src 'self'; "
        "form-action 'self'; frame-ancestors 'none'; base-uri 'none'; object-src 'none'"
    )
    headers["Cross-Origin-Opener-Policy"] = "same-origin"
    headers["Permissions-Policy"] = "camera=(self), geolocation=(), microphone=(), payment=(), usb=()"
