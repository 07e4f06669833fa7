"""WebKit: the app starts, logs, and opens again with the server stopped, without push, sync events or storage API."""

from __future__ import annotations

import pytest
from selenium.webdriver.common.by import By
from selenium.webdriver.support.ui import WebDriverWait
from tests.support.webkit import webkit
from tests.support.words import text

pytestmark = [
    pytest.mark.browser,
    # selenium's own WebKitGTK driver still calls itself the old way
    pytest.mark.filterwarnings("ignore:setting remote_server_addr:DeprecationWarning"),
]


def test_webkit_logs_with_the_server_stopped_and_sends_it_when_it_is_back(new_server):
    with webkit() as browser:
        wait = WebDriverWait(browser, 30)

        def shows(text: str) -> bool:
            return wait.until(lambda b: text in b.execute_script("return document.body.innerText"))

        def press(name: str) -> None:
            path = f"//button[normalize-space()='{name}' or starts-with(@aria-label, '{name}')]"
            button = wait.until(lambda b: b.find_elements(By.XPATH, path))[0]
            # the driver scrolls it to the lower edge, where the bar of the screens lies over it
            browser.execute_script("arguments[0].scrollIntoView({ block: 'center' })", button)
            button.click()

        browser.get(f"{new_server.url}/#/claim/{new_server.claim_code()}")
        wait.until(lambda b: b.find_elements(By.NAME, "person"))[0].send_keys("Mira")
        press(text("start-claim-it"))
        wait.until(lambda b: b.find_elements(By.NAME, "name"))[0].send_keys("Amber")
        press(text("colony-form-add"))
        assert shows(text("welcome-plan"))
        assert shows(text("saving-synced"))
        browser.execute_async_script(
            "const done = arguments[0]; navigator.serviceWorker.ready.then(() =>"
            " navigator.serviceWorker.controller ? done() :"
            " navigator.serviceWorker.addEventListener('controllerchange', () => done(), {once: true}))"
        )
        new_server.kill()
        browser.get(f"{new_server.url}/#/round")
        browser.refresh()
        assert shows(text("round-title"))
        press(text("round-as-suggested"))
        assert shows(text("saving-waiting", count=1))
        browser.refresh()
        assert shows(text("saving-waiting", count=1))
        new_server.start()
        browser.execute_script("window.dispatchEvent(new Event('online'))")

        assert shows(text("saving-synced"))
