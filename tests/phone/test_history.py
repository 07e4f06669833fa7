"""The past of a record and its undo, and what went and comes back."""

from __future__ import annotations

import re

import pytest
from playwright.sync_api import Page, expect
from tests.phone.conftest import claim, open_colony, worker_ready
from tests.phone.inside import run, wait_synced
from tests.phone.test_story import go, pair
from tests.support.words import beginning, first_count, labelled, text

from broodshelf.model.gauges import DAY_MS

pytestmark = pytest.mark.browser


def was(before: str, field: str, now: str) -> str:
    """What the history says of a field that was changed."""
    return f"{labelled(text(f'history-field-{field}'), now)} {text('history-was', value=before)}"


def past_of(page: Page, what: str) -> None:
    page.get_by_role("region", name=text("colony-diary")).get_by_role(
        "button", name=re.compile(f"^{re.escape(what)}")
    ).click()
    expect(page.get_by_role("dialog")).to_be_visible()


@pytest.mark.without_worker
def test_a_colonys_history_says_who_changed_what_and_brings_a_value_back(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    colony_id = page.url.rpartition("/")[2]
    run(
        page,
        "await (await at('actions')).keep('colony', { name: 'Birch', stage: 'growing' }, given);",
        colony_id,
    )
    wait_synced(page)
    page.get_by_role("button", name=text("colony-past")).click()
    newest = page.get_by_role("dialog").get_by_role("listitem").first
    expect(newest).to_contain_text(text("history-changed", who="Mira"))
    expect(newest).to_contain_text(was("Amber", "name", "Birch"))
    expect(newest).to_contain_text(was(text("colony-stage-nanitics"), "stage", text("colony-stage-growing")))
    expect(page.get_by_role("dialog").get_by_role("listitem").last).to_contain_text(
        text("history-made", who="Mira")
    )
    newest.get_by_role("button", name=text("history-bring", value="Amber")).click()

    expect(page.get_by_role("dialog").get_by_text(was("Birch", "name", "Amber"))).to_be_visible()
    expect(page.get_by_role("button", name=text("history-bring", value="Amber"))).to_have_count(0)
    page.get_by_role("button", name=text("frame-close")).click()
    expect(page.get_by_role("heading", name="Amber", exact=True)).to_be_visible()
    wait_synced(page)


def test_a_value_that_lost_to_another_phone_is_in_the_history_and_can_be_brought_back(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    colony_id = page.url.rpartition("/")[2]
    other = phone()
    pair(other, page, server)
    wait_synced(other)
    page.context.set_offline(True)
    enqueue = """const { openStore } = await at('session');
      const { reload } = await at('rows');
      const { syncNow } = await at('sync');
      const change = { kind: 'colony', id: given[0], set: { queens: given[1] } };
      await Promise.all([
        openStore().setMeta({ last_made_ms: 0 }), // as if this phone had made and heard nothing since
        openStore().enqueue([change], Date.now() - given[2]),
      ]);
      await reload();
      await syncNow();"""
    run(page, enqueue, [colony_id, 3, 3_600_000])  # an hour before the other phone's, and sent after it
    run(other, enqueue, [colony_id, 2, 0])
    wait_synced(other)
    page.context.set_offline(False)
    page.evaluate("() => window.dispatchEvent(new Event('online'))")
    expect(page.get_by_text(text("saving-attention", count=1))).to_be_visible()
    open_colony(page, server)
    page.get_by_role("button", name=text("colony-past")).click()
    expect(
        page.get_by_text(text("history-not-stood", field=text("history-field-queens"), value="3"))
    ).to_be_visible()
    page.get_by_role("button", name=text("history-bring", value="3")).click()
    expect(page.get_by_text(was("2", "queens", "3"))).to_be_visible()


def test_the_history_says_that_it_needs_a_connection_and_a_log_not_sent_has_none(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    open_colony(page, server)
    page.context.set_offline(True)
    past_of(page, beginning("event-counted"))
    expect(page.get_by_text(text("part-needs-server"))).to_be_visible()
    page.context.set_offline(False)
    page.get_by_role("button", name=text("history-again")).click()
    expect(page.get_by_role("dialog")).to_contain_text(
        labelled(text("history-field-workers-coarse"), text("event-coarse-few"))
    )
    page.get_by_role("button", name=text("frame-close")).click()
    page.context.set_offline(True)
    past_of(page, beginning("event-counted"))
    expect(page.get_by_text(text("history-offline"))).to_be_visible()
    page.get_by_role("button", name=text("frame-close")).click()
    colony_id = page.url.rpartition("/")[2]
    run(page, "await (await at('actions')).log('note', { colony_id: given, text: 'Eggs?' });", colony_id)
    past_of(page, "Eggs?")
    expect(page.get_by_text(text("history-unsent"))).to_be_visible()


@pytest.mark.without_worker
def test_what_went_is_listed_at_the_end_of_the_shelf_and_comes_back_whole(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    colony_id = page.url.rpartition("/")[2]
    page.get_by_role("button", name=labelled(text("diary-void"), beginning("event-counted"))).click()
    expect(page.get_by_text(text("saving-taken-back"))).to_be_visible()
    wait_synced(page)
    run(page, "await (await at('actions')).remove('colony', given);", colony_id)
    wait_synced(page)
    go(page, server, "#/shelf")
    page.get_by_role("link", name=text("history-gone-link")).click()
    rows = page.get_by_role("main").get_by_role("listitem")
    expect(rows).to_have_count(2)
    expect(rows.first).to_contain_text("Amber")
    expect(rows.last).to_contain_text(first_count())
    rows.first.get_by_role("button", name=text("history-gone-take-back")).click()
    expect(rows).to_have_count(1)
    rows.first.get_by_role("button", name=text("history-gone-take-back")).click()
    expect(page.get_by_text(text("history-gone-none"))).to_be_visible()
    open_colony(page, server)

    expect(page.get_by_role("region", name=text("colony-diary"))).to_contain_text(first_count())
    wait_synced(page)  # and nothing needs attention


def test_what_went_says_offline_that_it_needs_a_connection(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    page.context.set_offline(True)
    go(page, server, "#/gone")

    expect(page.get_by_text(text("part-needs-server"))).to_be_visible()


@pytest.mark.without_worker
def test_a_log_whose_colony_came_back_after_all_is_sent_again(phone, server):
    page = phone()
    claim(page, server)
    late = [run(page, "return crypto.randomUUID();") for _ in range(2)]
    late = [f"{made[:14]}7{made[15:]}" for made in late]
    enqueue = """
      const { openStore } = await at('session');
      const { reload } = await at('rows');
      const { syncNow } = await at('sync');
      await Promise.all([
        openStore().setMeta({ last_made_ms: 0 }), // as if this phone had made and heard nothing since
        openStore().enqueue(given.changes, Date.now() - given.age_ms),
      ]);
      await reload();
      await syncNow();"""
    note = {
        "kind": "note",
        "id": late[1],
        "set": {
            "colony_id": late[0],
            "text": "Carried to the sill",
            "happened_at": "2026-09-01T12:00:00.000+02:00",
        },
    }
    run(page, enqueue, {"changes": [note], "age_ms": 31 * DAY_MS})  # past the server's patience of 30 days
    page.get_by_role("link", name=text("saving-attention", count=1)).click()
    expect(
        page.get_by_role("heading", name=text("attention-title"))
    ).to_be_visible()  # no tasks of the round any more
    card = page.get_by_role("article")
    expect(card).to_contain_text(text("attention-code-parent-missing"))
    colony = {"kind": "colony", "id": late[0], "set": {"name": "Cedar"}}
    run(page, enqueue, {"changes": [colony], "age_ms": 0})
    card.get_by_role("button", name=text("attention-again")).click()

    expect(page.get_by_text(text("attention-none"))).to_be_visible()
    go(page, server, f"#/colony/{late[0]}")
    expect(page.get_by_role("region", name=text("colony-diary"))).to_contain_text("Carried to the sill")
