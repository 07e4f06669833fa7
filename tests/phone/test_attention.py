"""What needs a person: two phones that met, and a log that the server refused, mended and sent again."""

from __future__ import annotations

import pytest
from playwright.sync_api import expect
from tests.phone.conftest import claim, worker_ready
from tests.phone.test_story import go, online_again, pair
from tests.support.words import like, text

pytestmark = pytest.mark.browser


def rename(page, name):
    page.get_by_role("button", name=text("colony-change")).click()
    page.get_by_role("textbox", name=text("colony-form-name"), exact=True).fill(name)
    page.get_by_role("button", name=text("colony-form-save")).click()
    expect(page.get_by_role("heading", name=name, exact=True)).to_be_visible()


def test_two_phones_that_renamed_one_colony_see_it_and_can_bring_theirs_back(phone, server):
    mine = phone()
    claim(mine, server)
    other = phone()
    pair(other, mine, server)
    for page in (mine, other):
        go(page, server, "#/shelf")
        page.get_by_role("link", name="Amber").click()
        expect(page.get_by_role("button", name=text("colony-change"))).to_be_visible()
    mine.context.set_offline(True)
    rename(mine, "Mine")
    rename(other, "Theirs, later")
    expect(other.get_by_text(text("saving-synced"))).to_be_visible()
    mine.context.set_offline(False)
    mine.evaluate("() => window.dispatchEvent(new Event('online'))")
    mine.get_by_role("link", name=text("saving-attention", count=1)).click()
    card = mine.get_by_role("article").filter(has_text=text("attention-met", name="Theirs, later"))
    expect(card).to_contain_text(text("attention-theirs"))
    expect(card).to_contain_text("Mira “Theirs, later”")
    card.get_by_role("button", name=text("attention-bring")).click()
    expect(mine.get_by_text(text("saving-synced"))).to_be_visible()
    other.evaluate("() => window.dispatchEvent(new Event('online'))")

    expect(other.get_by_role("heading", name="Mine", exact=True)).to_be_visible()


def test_a_refused_log_is_shown_with_its_reason_mended_and_sent(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    page.context.set_offline(True)
    colony_id = page.url.rpartition("/")[2]
    page.evaluate(
        """async (colony) => {
          const build = document.body.dataset.build;
          const { keep } = await import(`/static/${build}/signals/actions.js`);
          await keep('colony', { queens: -3 }, colony);
        }""",
        colony_id,
    )
    page.context.set_offline(False)
    page.evaluate("() => window.dispatchEvent(new Event('online'))")
    page.get_by_role("link", name=text("saving-attention", count=1)).click()
    expect(page.get_by_text(text("refused-number", low=0, high=1000))).to_be_visible()
    page.get_by_label(text("history-field-queens")).fill("1")
    page.get_by_role("button", name=text("attention-mend")).click()

    expect(page.get_by_text(text("attention-none"))).to_be_visible()
    online_again(page)


def test_mending_a_record_sends_again_what_was_refused_for_lack_of_it(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    page.context.set_offline(True)
    page.evaluate(
        """async () => {
          const build = document.body.dataset.build;
          const { openStore } = await import(`/static/${build}/signals/session.js`);
          const { inTransaction } = await import(`/static/${build}/database/open.js`);
          const colony = crypto.randomUUID(), note = crypto.randomUUID();
          const store = openStore();
          await store.enqueue([
            { kind: 'colony', id: colony, set: { name: 'Slate', queens: -3 } },
            { kind: 'note', id: note,
              set: { colony_id: colony, happened_at: new Date().toISOString(), text: 'first eggs' } },
          ]);
          await inTransaction(store.name, ['outbox'], 'readwrite', async (tx) => {
            const answer = { code: 'parent_missing', args: { missing: colony } };
            for (const entry of await tx.objectStore('outbox').getAll())
              if (entry.op.id === note) await tx.objectStore('outbox').put({ ...entry, state: 'rejected', answer });
          });
        }"""
    )
    page.context.set_offline(False)
    page.evaluate("() => window.dispatchEvent(new Event('online'))")
    page.get_by_role("link", name=text("saving-attention", count=2)).click()
    page.get_by_label(text("history-field-queens")).fill("1")
    page.get_by_role("article").filter(has=page.get_by_label(text("history-field-queens"))).get_by_role(
        "button", name=text("attention-mend")
    ).click()

    expect(page.get_by_text(text("attention-none"))).to_be_visible()
    go(page, server, "#/shelf")
    page.get_by_role("link", name="Slate").click()
    expect(page.get_by_text("first eggs")).to_be_visible()


@pytest.mark.without_worker
def test_what_a_nudge_opens_begins_with_its_one_tap(phone, server):
    page = phone()
    claim(page, server)
    page.goto(f"{server.url}/#/round?nudge=019dd000-0000-7000-8000-000000000001")
    first = page.get_by_role("main").locator("button, a").first
    expect(first).to_have_text(like("round-all"))
    first.click()
    expect(page.get_by_role("region", name=text("round-done")).get_by_role("listitem")).not_to_have_count(0)
    expect(first).not_to_have_text(like("round-all", colony="Amber"))
