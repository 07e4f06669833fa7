"""What the shelf tells: tastings, the past of a record and its undo, what comes next, pictures in the diary.

Longer than 300 lines because each test is one thing that the same screens tell.
"""

from __future__ import annotations

import re
import time

import pytest
from playwright.sync_api import Page, expect
from tests.phone.conftest import claim, open_colony, worker_ready
from tests.phone.test_photos import take
from tests.phone.test_story import go, online_again, pair
from tests.support.words import any_of, beginning, capital, first_count, labelled, like, text

from broodshelf.model.gauges import DAY_MS

pytestmark = pytest.mark.browser

MODULES = "const at = (name) => import(`/static/${document.body.dataset.build}/signals/${name}.js`);"


def run(page: Page, script: str, argument: object = None) -> object:
    """Run a script with the app's own modules in reach as ``at('actions')``."""
    return page.evaluate(f"async (given) => {{ {MODULES} {script} }}", argument)


CRICKET, MEALWORM = FOODS = tuple(capital(text(f"food-{food}")) for food in ("cricket", "mealworm"))


def was(before: str, field: str, now: str) -> str:
    """What the history says of a field that was changed."""
    return f"{labelled(text(f'history-field-{field}'), now)} {text('history-was', value=before)}"


def ahead(days: int | str) -> re.Pattern[str]:
    """What finds in how many days workers hatch at the latest, or most likely; ``days`` may be a pattern."""
    return re.compile(
        "|".join(
            [
                text("brood-days", low=r"\d+", high=days),
                text("brood-days-about", days=days),
                text("brood-at-latest", days=days),
                text("brood-likely", best=".+", days=days, high=".+"),
            ]
        )
    )


def wait_synced(page: Page) -> None:
    """Wait until the outbox is empty and the screen says so, which it may a moment later."""
    page.wait_for_function(f"async () => {{ {MODULES} return !(await at('rows')).outbox.value.length; }}")
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()


def start_tasting(page: Page) -> None:
    page.get_by_text(text("tasting-title")).click()
    for food in FOODS:
        page.get_by_role("button", name=food, exact=True).click()
    page.get_by_role("button", name=text("tasting-go")).click()
    expect(page.get_by_role("button", name=text("tasting-end"))).to_be_visible()
    wait_synced(page)


def past_of(page: Page, what: str) -> None:
    page.get_by_role("region", name=text("colony-diary")).get_by_role(
        "button", name=re.compile(f"^{re.escape(what)}")
    ).click()
    expect(page.get_by_role("dialog")).to_be_visible()


@pytest.mark.without_worker
def test_a_tasting_needs_two_foods_and_is_not_offered_while_a_colony_settles(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    page.get_by_text(text("tasting-title")).click()
    page.get_by_role("button", name=CRICKET, exact=True).click()
    page.get_by_role("button", name=text("tasting-go")).click()
    expect(page.get_by_text(text("tasting-pick"))).to_be_visible()
    colony_id = page.url.rpartition("/")[2]
    run(page, "await (await at('actions')).keep('colony', { condition: 'settling' }, given);", colony_id)

    expect(
        page.get_by_text(text("tasting-not-now", state=text("colony-condition-settling").lower()))
    ).to_be_visible()
    expect(page.get_by_role("button", name=text("tasting-go"))).to_have_count(0)


@pytest.mark.without_worker
def test_a_tasting_is_offered_by_the_round_and_tells_what_was_taken(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    start_tasting(page)
    expect(page.get_by_text(any_of(*(like("tasting-next", food=food) for food in FOODS)))).to_be_visible()
    go(page, server, "#/round")
    protein = page.get_by_role("article").filter(has_text=text("need-protein"))
    protein.get_by_role("button", name=text("round-as-suggested")).click()
    expect(page.get_by_role("region", name=text("round-done"))).to_contain_text(any_of(*FOODS))
    wait_synced(page)
    open_colony(page, server)
    diary = page.get_by_role("region", name=text("colony-diary"))
    expect(diary).to_contain_text(text("tasting-part", name=", ".join(FOODS)))
    page.get_by_role("button", name=text("event-kind-check"), exact=True).click()
    page.get_by_role("button", name=text("event-outcome-all")).click()
    expect(page.get_by_role("dialog")).to_have_count(0)
    wait_synced(page)

    expect(page.get_by_text(text("tasting-offers", count=1))).to_be_visible()
    page.get_by_text(text("part-table")).click()
    first, second = page.get_by_role("row").all_inner_texts()[1:]
    # one of one taken, with the flat prior of an unknown food: its share lies above that of the other
    assert float(re.findall(r"(\d+) %", first)[0]) > float(re.findall(r"(\d+) %", second)[0])
    assert re.findall(r"\t(\d)\t", f"{first}\n{second}") == ["1", "0"]

    page.get_by_role("button", name=text("tasting-end")).click()
    page.get_by_text(text("tasting-earlier")).click()
    expect(
        page.get_by_text(any_of(*(text("tasting-tally", food=food, taken=1, checked=1) for food in FOODS)))
    ).to_be_visible()
    page.get_by_role("status").get_by_role("button", name=text("round-undo")).click()
    expect(page.get_by_role("button", name=text("tasting-end"))).to_be_visible()


@pytest.mark.without_worker
def test_a_tasting_shows_what_another_colony_of_the_species_took(phone, server):
    page = phone()
    claim(page, server)
    run(
        page,
        """const { keep } = await at('actions');
           const colony_id = await keep('colony', { name: 'Juniper', species_code: 'lasius_niger' });
           const foods = { food_codes: ['cricket', 'mealworm'], started_on: '2026-01-01' };
           const tasting_id = await keep('tasting', { name: 'Spring', colony_ids: [colony_id], ...foods });
           const happened_at = new Date(Date.now() - 86400000).toISOString();
           const seen = { colony_id, happened_at, need: 'protein' };
           const cricket = { ...seen, food_code: 'cricket', amount: 1, unit: 'piece', tasting_id };
           for (let i = 0; i < 6; i += 1) {
             const feeding_id = await keep('feeding', cricket);
             await keep('check', { ...seen, feeding_id, outcome: 'all' });
           }""",
    )
    wait_synced(page)
    open_colony(page, server)
    start_tasting(page)

    expect(
        page.get_by_text(like("tasting-taken")).filter(
            has_text=text("tasting-offers-and-likes", count=0, others=1)
        )
    ).to_be_visible()
    expect(page.get_by_text(text("tasting-not-offered"))).to_have_count(2)


@pytest.mark.without_worker
def test_a_feeding_logged_by_hand_counts_for_the_tasting_if_its_food_is_tasted(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    start_tasting(page)
    page.get_by_role("button", name=text("event-kind-feeding"), exact=True).click()
    sheet = page.get_by_role("dialog")
    sheet.get_by_role("button", name=text("log-more")).click()
    sheet.get_by_role("button", name=capital(text("food-egg")), exact=True).click()
    expect(sheet.get_by_text(text("tasting-here"))).to_have_count(0)
    sheet.get_by_role("button", name=MEALWORM, exact=True).click()
    expect(sheet.get_by_text(text("tasting-here"))).to_be_visible()
    sheet.get_by_role("button", name=text("log-go")).click()

    expect(page.get_by_role("region", name=text("colony-diary"))).to_contain_text(beginning("tasting-part"))


def test_a_plan_made_before_the_tasting_counts_for_it_when_several_are_logged_at_once(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    worker_ready(page)
    page.context.set_offline(True)  # so the plan stays the one that knows of no tasting
    colony_id = page.url.rpartition("/")[2]
    run(
        page,
        "const { tasks } = (await at('rows')).planOf(given).set;"
        " const food = tasks.find((task) => task.need === 'protein').portion.food_code;"
        " await (await at('tastings')).startTasting(given, 'Two', [food, 'egg']);",
        colony_id,
    )
    go(page, server, "#/round")
    page.get_by_role("button", name=text("round-many")).click()
    page.get_by_role("group", name=text("several-what")).get_by_role(
        "button", name=text("need-protein")
    ).click()
    page.get_by_role("button", name=text("several-go", count=1)).click()
    page.context.set_offline(False)
    open_colony(page, server)

    expect(page.get_by_role("region", name=text("colony-diary"))).to_contain_text(
        text("tasting-part", name="Two")
    )


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
      await openStore().setMeta({ last_made_ms: 0 });
      await openStore().enqueue([{ kind: 'colony', id: given[0], set: { queens: given[1] } }], Date.now() - given[2]);
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
      await openStore().setMeta({ last_made_ms: 0 }); // as if this phone had made nothing since
      await openStore().enqueue(given.changes, Date.now() - given.age_ms);
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


def test_the_days_until_the_next_workers_run_down(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    open_colony(page, server)
    about = page.get_by_role("region", name=text("brood-next")).locator("p.soft").first
    expect(about).to_contain_text(ahead(r"\d+"))
    days = next(int(each) for each in ahead(r"(\d+)").search(about.inner_text()).groups() if each)
    page.context.set_offline(True)
    page.clock.set_fixed_time(time.time() + 3 * 86_400)
    page.reload()

    expect(about).to_contain_text(ahead(days - 3))


@pytest.mark.without_worker
def test_a_picture_opens_large_and_stands_in_the_diary(phone, server, picture):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    take(page, picture)
    expect(page.get_by_role("region", name=text("colony-diary")).locator("img")).to_have_count(1)
    page.get_by_role("button", name=beginning("photo-large")).click()
    sheet = page.get_by_role("dialog")
    expect(sheet.get_by_role("img", name=beginning("photo-of", name="Amber"))).to_be_visible()
    sheet.get_by_role("button", name=text("photo-remove")).click()
    expect(page.get_by_role("region", name=text("photo-title")).locator("img")).to_have_count(0)
    page.get_by_role("status").get_by_role("button", name=text("round-undo")).click()
    expect(page.get_by_role("region", name=text("photo-title")).locator("img")).to_have_count(1)
    online_again(page)
