"""What comes between the app and its server: requests are cut off, or somebody else answers them.

For pages with a worker. Chromium lets requests past Playwright's ``route`` where the worker took the page over shortly
before, and nobody is told when that is over.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from typing import Any

from playwright.sync_api import Page

STEP_BETWEEN = """({ path, told, arrives }) => {
  const real = window.fetch;
  window.metBetween = [];
  window.stepAside = () => { window.fetch = real; };
  window.fetch = async (address, how) => {
    if (!address.startsWith(path)) return real(address, how);
    window.metBetween.push(arrives ? (await real(address, how)).status : null);
    if (!told) throw new TypeError('cut off by a test');
    return Response.json(told, { status: told.status, headers: { 'Content-Type': 'application/problem+json' } });
  };
}"""


@contextmanager
def between(
    page: Page, path: str, told: Mapping[str, Any] | None = None, *, arrives: bool = False
) -> Iterator[None]:
    """Cut off what a page sends to addresses that begin with ``path``, or tell it a problem in the server's place.

    ``arrives``: the server gets the request and takes it; its answer is lost. The end waits until there was one.
    """
    page.evaluate(STEP_BETWEEN, {"path": path, "told": told, "arrives": arrives})
    yield
    page.wait_for_function("() => window.metBetween.length")
    page.evaluate("() => window.stepAside()")
    assert {*page.evaluate("() => window.metBetween")} == {200 if arrives else None}
