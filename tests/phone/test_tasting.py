"""A tasting: offered, begun, told by the round, the diary and other colonies."""

from __future__ import annotations

import re

import pytest
from playwright.sync_api import Page, expect
from tests.phone.conftest import claim, open_colony, worker_ready
from tests.phone.inside import run, wait_synced
from tests.phone.test_story import go
from tests.support.words import any_of, beginning, capital, like, text

pytestmark = pytest.mark.browser

CRICKET, MEALWORM = FOODS = tuple(capital(text(f"food-{food}")) for food in ("cricket", "mealworm"))


def start_tasting(page: Page) -> None:
    page.get_by_text(text("tasting-title")).click()
    for food in FOODS:
        page.get_by_role("button", name=food, exact=True).click()
    page.get_by_role("button", name=text("tasting-go")).click()
    expect(page.get_by_role("button", name=text("tasting-end"))).to_be_visible()
    wait_synced(page)


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
