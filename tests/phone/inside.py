"""What tests do inside the app: with its own modules, past its screens."""

from __future__ import annotations

from playwright.sync_api import Page, expect
from tests.support.words import text

MODULES = "const at = (name) => import(`/static/${document.body.dataset.build}/signals/${name}.js`);"


def run(page: Page, script: str, argument: object = None) -> object:
    """Run a script with the app's own modules in reach as ``at('actions')``."""
    return page.evaluate(f"async (given) => {{ {MODULES} {script} }}", argument)


def wait_synced(page: Page) -> None:
    """Wait until the outbox is empty and the screen says so, which it may a moment later."""
    page.wait_for_function(f"async () => {{ {MODULES} return !(await at('rows')).outbox.value.length; }}")
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
