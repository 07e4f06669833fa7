"""Chromium against bad networks, killed servers, closed pages, two tabs and a full disk: each log there, once."""

from __future__ import annotations

import json
import time

import pytest
from playwright.sync_api import Error, Route
from tests.faults.lab import COLONY, kill_while_it_syncs, state, sync, write
from tests.support.fault_proxy import NONE, Fault

pytestmark = pytest.mark.browser

KILLS = 15
FAULTS = {
    "slow": Fault(latency_ms=250),
    "cut before the head": Fault(cut_after=0),
    "cut in the head": Fault(cut_after=90),
    "cut in the body": Fault(cut_after=1200),
    "answer dropped after the commit": Fault(drop_answer=True),
    "half open": Fault(half_open=True),
}

ONE_ROW_A_PAGE = """() => {
  const real = window.fetch;
  window.pages = 0;
  window.fetch = (path, how) => {
    if (path !== '/api/sync') return real(path, how);
    window.pages += 1;
    return real(path, { ...how, body: JSON.stringify({ ...JSON.parse(how.body), limit: 1 }) });
  };
}"""
"""Asks for one row at a time. A route of Playwright's would cost more than the answers that it lets through."""


def test_no_fault_of_the_network_loses_or_doubles_a_log(shelf, tab):
    page = tab()
    written = []
    for name, fault in FAULTS.items():
        # only what never answers is given up early; a busy machine may take its time over all else
        page.evaluate("(ms) => { lab.api.patience.ms = ms; }", 700 if fault.half_open else 60_000)
        texts = [f"{name} {i}" for i in range(5)]
        write(page, *texts)
        written += texts
        shelf.proxy.fault = fault
        said = sync(page)
        shelf.proxy.fault = NONE
        page.evaluate("() => { lab.api.patience.ms = 60_000; }")
        assert said == ("even" if name == "slow" else "ApiProblem offline"), name
        assert name == "slow" or set(state(page)["unsent"]) == set(texts), (
            "nothing leaves the outbox unanswered"
        )
        assert sync(page) == "even", name

    assert shelf.proxy.hits >= len(FAULTS)
    assert shelf.stored() == sorted(written)
    assert set(shelf.operations_per_record()) == {1}
    assert state(page) == {"unsent": [], "rows": sorted(written)}


def test_a_server_killed_at_any_moment_of_a_sync_loses_and_doubles_nothing(shelf, tab):
    page = tab()
    written, committed = kill_while_it_syncs(shelf, page, KILLS)

    assert 0 < committed < KILLS, "kills fell on both sides of the commit"
    assert shelf.stored() == sorted(written)
    assert set(shelf.operations_per_record()) == {1}
    assert state(page) == {"unsent": [], "rows": sorted(written)}


def test_what_the_phone_called_saved_survives_the_page_that_is_killed_while_it_writes(shelf, tab, context):
    saved: list[str] = []
    page = tab()
    page.expose_binding("saved", lambda _source, text: saved.append(text))
    for crash in range(3):
        before = len(saved)
        page.evaluate(
            """([colony, crash]) => { (async () => {
              for (let i = 0; ; i += 1) {
                const text = `crash ${crash} ${i}`;
                await lab.write([text], colony);
                saved(text);
              }
            })(); }""",
            [COLONY, crash],
        )
        while len(saved) < before + 5 + crash:
            page.wait_for_timeout(1)  # lets the binding's messages in; the state waited for is the count
        if crash == 1:
            with pytest.raises(Error):
                page.goto("chrome://crash")  # the renderer dies, no handler runs
        page.close()
        page = tab()
        page.expose_binding("saved", lambda _source, text: saved.append(text))
    unsent = state(page)["unsent"]

    assert set(saved) <= set(unsent)
    assert len(unsent) == len(set(unsent))
    assert sync(page) == "even"
    assert shelf.stored() == sorted(unsent)


@pytest.mark.parametrize("locks", [True, False], ids=["with Web Locks", "without"])
def test_two_tabs_that_write_and_sync_at_once_send_each_log_once(shelf, tab, locks):
    pages = [tab(), tab()]
    for page in pages:
        if not locks:
            page.evaluate("() => Object.defineProperty(navigator, 'locks', { value: undefined })")
    for number, page in enumerate(pages):
        page.evaluate(
            """([colony, number]) => { lab.done = (async () => {
              for (let i = 0; i < 30; i += 1) { await lab.write([`tab ${number} ${i}`], colony); await lab.sync(); }
            })(); }""",
            [COLONY, number],
        )
    for page in pages:
        page.evaluate("() => lab.done")
    assert [sync(page) for page in pages] == ["even", "even"]
    written = sorted(f"tab {number} {i}" for number in (0, 1) for i in range(30))

    assert shelf.stored() == written
    assert set(shelf.operations_per_record()) == {1}
    assert state(pages[0]) == {"unsent": [], "rows": written}


def test_a_lock_that_nobody_gives_back_does_not_stop_the_sync(shelf, tab):
    """Firefox 153 leaves the lock with a page that was left at the moment of asking, until it forgets that page."""
    page, left = tab(), tab()
    left.evaluate(
        """() => new Promise((held) => {
          const held_for_ever = () => { held(); return new Promise(() => undefined); };
          navigator.locks.request(`broodshelf-sync-${lab.store.deviceId}`, held_for_ever);
        })"""
    )
    page.evaluate("() => { lab.api.patience.lock_ms = 200; }")
    write(page, "still sent")

    assert sync(page) == "even"
    assert shelf.stored() == ["still sent"]
    assert state(page) == {"unsent": [], "rows": ["still sent"]}


def test_an_answer_that_the_other_tab_has_overtaken_puts_nothing_older_back(shelf, tab):
    slow, quick = tab(), tab()
    for page in (slow, quick):
        page.evaluate("() => Object.defineProperty(navigator, 'locks', { value: undefined })")
    write(slow, "first")

    def overtaken(route: Route) -> None:
        answer = route.fetch()
        quick.evaluate(
            """async () => {
              const entry = (await lab.store.unsent()).find((each) => each.op.set.text === 'first');
              await lab.store.enqueue([{ kind: 'note', id: entry.op.id, set: { text: 'second' } }]);
            }"""
        )
        assert sync(quick) == "even"
        route.fulfill(response=answer)

    slow.route("**/api/sync", overtaken, times=1)
    assert sync(slow) == "even"

    assert shelf.stored() == ["second"]
    assert state(slow) == {"unsent": [], "rows": ["second"]}


def test_a_full_disk_is_said_at_once_and_nothing_is_half_written(shelf, tab, context):
    cdp = context.new_cdp_session(context.new_page())
    cdp.send("Storage.overrideQuotaForOrigin", {"origin": shelf.proxy.url, "quotaSize": 400_000})
    page = tab()
    write(page, "before")
    said = page.evaluate(
        """(colony) => lab.write(Array.from({ length: 300 }, (_, i) => `too much ${i} ` + 'x'.repeat(3900)), colony)
          .then(() => 'saved', (error) => error.name)""",
        COLONY,
    )
    kept = state(page)["unsent"]
    cdp.send("Storage.overrideQuotaForOrigin", {"origin": shelf.proxy.url})
    write(page, "after")

    assert said == "NotSaved"
    assert kept == ["before"]
    assert sync(page) == "even"
    assert shelf.stored() == ["after", "before"]


def test_thirty_days_offline_and_a_thousand_logs_come_back_in_one_go(shelf, tab, context):
    page = tab()
    context.set_offline(True)
    page.evaluate(
        """async (colony) => {
          const day = 86400000, start = Date.now() - 30 * day;
          for (let at = 0; at < 30; at += 1) {
            const texts = Array.from({ length: at < 10 ? 34 : 33 }, (_, i) => `day ${at} ${i}`);
            await lab.write(texts, colony, start + at * day);
          }
        }""",
        COLONY,
    )
    assert sync(page) == "ApiProblem offline"
    assert len(state(page)["unsent"]) == 1000
    context.set_offline(False)
    before = shelf.proxy.requests
    took_ms = page.evaluate(
        "async () => { const t = performance.now(); await lab.sync(); return performance.now() - t; }"
    )
    after = state(page)

    assert after["unsent"] == []
    assert shelf.stored() == after["rows"]
    assert len(after["rows"]) == 1000
    assert shelf.proxy.requests - before <= 3
    assert took_ms < 10_000, "1,000 logs in less than 10 s on SQLite (a public target)"


def test_the_journal_forgets_after_thirty_days_a_few_pages_with_each_answer(tab):
    """A page is what one answer acknowledged, however much that is."""
    page = tab()
    now_ms, day_ms = time.time() * 1000, 86_400_000
    old = [[f"old {i}", f"as old {i}"] for i in range(60)]
    for texts, days_ago in ((old, 40), ([["young"]], 20)):
        page.clock.set_fixed_time((now_ms - days_ago * day_ms) / 1000)
        for together in texts:
            write(page, *together)
            assert sync(page) == "even"
    old = [text for together in old for text in together]
    assert sorted(page.evaluate("() => lab.journal()")) == sorted([*old, "young"])

    page.clock.set_fixed_time(now_ms / 1000)
    left = []
    for _ in range(2):
        assert sync(page) == "even"
        left.append(len(page.evaluate("() => lab.journal()")))
    page.clock.set_fixed_time((now_ms + 365 * day_ms) / 1000)  # a wrong clock forgets nothing
    assert sync(page) == "even"

    assert left == [21, 1]
    assert page.evaluate("() => lab.journal()") == ["young"]


def test_a_first_pull_goes_on_for_as_many_pages_as_there_are(shelf, tab):
    page = tab()
    texts = [f"note {i}" for i in range(230)]
    write(page, *texts)
    assert sync(page) == "even"
    page.evaluate("() => lab.store.setMeta({ cursor: null })")
    page.evaluate(ONE_ROW_A_PAGE)

    assert sync(page) == "even"
    assert page.evaluate("() => pages") > len(texts)
    assert state(page)["rows"] == sorted(texts)


def test_a_server_that_promises_more_but_brings_nothing_new_is_not_asked_for_ever(tab):
    page = tab()
    write(page, "hm")
    answers: list[bool] = []

    def the_same_again(route: Route) -> None:
        assert len(answers) < 10, "asked for ever"
        answers.append(True)
        epoch = json.loads(route.request.post_data or "")["epoch"]
        answer = {"epoch": epoch, "cursor": "c", "more": True, "reset": False, "schema": 1, "server_time": 0}
        route.fulfill(json={**answer, "answers": [], "rows": [], "gone": [], "pass": None})

    page.route("**/api/sync", the_same_again)

    assert sync(page) == "even"
    assert len(answers) == 2
    assert state(page)["unsent"] == ["hm"]
