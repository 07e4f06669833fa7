"""Firefox through the same faults: each log there, once."""

from __future__ import annotations

import json

import pytest
from tests.faults.lab import COLONY, DEVICE, LAB, dice
from tests.support.fault_proxy import NONE, Fault

pytestmark = pytest.mark.browser


def test_lost_answers_cuts_and_killed_servers_lose_and_double_nothing_in_firefox(shelf, firefox):
    with firefox.phone() as browser:
        browser.goto(f"{shelf.proxy.url}/worker.js")
        browser.js(f"({LAB})()")
        browser.js(
            f"lab.claim({json.dumps(shelf.server.claim_code())}, {json.dumps(DEVICE)}).then(() => true)"
        )
        colony = json.dumps({"kind": "colony", "id": COLONY, "set": {"name": "Amber"}})
        assert browser.js(f"lab.store.enqueue([{colony}]).then(() => lab.sync())") == "even"
        written = []
        for round_, fault in enumerate((Fault(drop_answer=True), Fault(cut_after=300), NONE)):
            texts = [f"round {round_} {i}" for i in range(20)]
            written += texts
            browser.js(f"lab.write({json.dumps(texts)}, '{COLONY}').then(() => true)")
            shelf.proxy.fault = fault
            timer = shelf.kill_in(dice.uniform(0.005, 0.05)) if fault is NONE else None
            browser.js("lab.sync()")
            shelf.proxy.fault = NONE
            if timer is not None:
                timer.join()
                shelf.server.start()
            assert browser.js("lab.sync()") == "even"
        held = browser.js("lab.rows()")

    assert shelf.stored() == sorted(written) == held
    assert set(shelf.operations_per_record()) == {1}
