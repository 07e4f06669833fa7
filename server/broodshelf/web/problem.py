"""Every failure as application/problem+json (RFC 9457), built in one place."""

from __future__ import annotations

import json
import uuid

from flask import Flask, Response, request
from werkzeug.exceptions import HTTPException

from ..errors import BadRequest, NotFound, Problem, TooLarge
from ..languages import ENGLISH, say, told
from ..logs import say_failure
from ..records.trouble import trouble_of
from .parts import asked_language

_BY_STATUS: dict[int, type[Problem]] = {400: BadRequest, 404: NotFound}


def install(app: Flask) -> None:
    """Answer our own problems, werkzeug's errors and anything unforeseen with one body."""
    app.register_error_handler(Problem, answer)
    app.register_error_handler(HTTPException, _from_http)
    app.register_error_handler(Exception, _unforeseen)


def answer(problem: Problem) -> Response:
    """Return the response for a problem."""
    response = _response(problem.body(asked_language() or ENGLISH), problem.status)
    if problem.retry_after_s is not None:
        response.headers["Retry-After"] = str(problem.retry_after_s)
    return response


def _from_http(error: HTTPException) -> Response:
    status = error.code or 500
    if status == 413:
        return answer(TooLarge(told("problem-too-many-bytes", most=request.max_content_length or 0)))
    known = _BY_STATUS.get(status)
    if known is not None:
        return answer(known())
    body = {
        "type": "about:blank",
        "title": error.name,
        "status": status,
        "detail": error.description or error.name,
        "code": error.name.lower().replace(" ", "_"),
    }
    response = _response(body, status)
    if status == 405 and error.get_response().headers.get("Allow"):
        response.headers["Allow"] = error.get_response().headers["Allow"]
    return response


def _unforeseen(error: Exception) -> Response:
    trouble = trouble_of(error)
    if trouble is not None:
        say_failure("the store failed", error, code=trouble.problem_code)
        return answer(trouble)
    reference, language = uuid.uuid4().hex[:12], asked_language()
    say_failure(
        "unforeseen error",
        error,
        reference=reference,
        route=request.url_rule.rule if request.url_rule else "unknown",
    )
    return _response(
        {
            "type": "urn:broodshelf:problem:failed",
            "title": say(language, Problem.title_id()),
            "status": 500,
            "detail": say(language, "problem-unforeseen", {"reference": reference}),
            "code": "failed",
            "reference": reference,
        },
        500,
    )


def _response(body: dict[str, object], status: int) -> Response:
    text = json.dumps(body, ensure_ascii=False)
    return Response(text.encode("utf-8", "replace"), status, content_type="application/problem+json")
