"""What a first visit costs, as the line carries it: bodies and the headers of both ways."""

from __future__ import annotations

import pytest
from playwright.sync_api import expect
from tests.phone.conftest import worker_ready
from tests.support.counting_proxy import CountingProxy
from tests.support.server import Server

from broodshelf.web.join import SHARED

pytestmark = pytest.mark.browser

MOST_BODIES_B = 153_700 + 16_500
"""The second: counting on pictures, in a parcel of its own. The first:
all that is downloaded with brotli, with the modules of the first screen once more in their parcel."""
MOST_HEADERS_B = 90_000
"""Some 80 answers with about 440 bytes each, and requests of about 500, over HTTP/1.1 (HTTP/2 packs them)."""


def test_a_first_visit_asks_for_each_file_once_and_for_most_of_them_in_parcels(phone, tmp_path):
    server = Server(tmp_path / "counted")
    with CountingProxy(server.port) as proxy:
        server.settings = {"BROODSHELF_PUBLIC_URL": proxy.url}
        server.start()
        try:
            page = phone()
            page.goto(proxy.url)
            expect(page.get_by_role("heading").first).to_be_visible()
            worker_ready(page)
            asked = {
                address: times for address, times in proxy.asked.items() if address.startswith("/static/")
            }
            here = f"/static/{server.build()}/"
        finally:
            server.stop()

    # what the worker needs too is looked at anew: 304
    assert {address for address, times in asked.items() if times > 1} <= {here + SHARED}
    assert {f"{here}parcels/screens.txt", f"{here}parcels/charts-and-labels.txt"} <= asked.keys()
    assert f"{here}parcels/counting.txt" in asked
    assert f"{here}screens/settings.js" not in asked
    assert proxy.received - proxy.heads <= MOST_BODIES_B
    assert proxy.heads + proxy.sent <= MOST_HEADERS_B
