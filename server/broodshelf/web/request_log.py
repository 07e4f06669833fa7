"""One log line a request: method, route, status, milliseconds. The address itself may hold a secret."""

from __future__ import annotations

import time

from flask import Flask, Response, g, request

from ..logs import say


def install(app: Flask) -> None:
    """Log every request but the health checks."""

    @app.before_request
    def _start() -> None:
        g.started = time.perf_counter()

    @app.after_request
    def _log(response: Response) -> Response:
        route = request.url_rule.rule if request.url_rule else "unknown"
        if route not in ("/healthz", "/readyz"):
            took_ms = round((time.perf_counter() - g.started) * 1000, 1) if "started" in g else None
            device = g.actor.device_id[:13] if "actor" in g else None
            say(
                "request",
                method=request.method,
                route=route,
                status=response.status_code,
                ms=took_ms,
                device=device,
            )
        return response
