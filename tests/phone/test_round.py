"""The round and the log sheet: several at once, later, skipped, swiped; the keeper's own interval; a level in mm."""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, expect
from tests.phone.conftest import add_colony, claim, open_colony
from tests.phone.inside import run, wait_synced
from tests.phone.test_story import go
from tests.support.server import Server
from tests.support.words import beginning, drops_of_sugar_water, labelled, like, text

from broodshelf.model.needs import FOOD_NEEDS

pytestmark = [pytest.mark.browser, pytest.mark.without_worker]


def outbox_and_rows(page: Page, kind: str) -> list[dict[str, object]]:
    """What the phone holds of a kind, waiting or synced, as plain values."""
    return page.evaluate(
        """async (kind) => {
          const { rows } = await import(`/static/${document.body.dataset.build}/signals/rows.js`);
          return [...rows.value.values()].filter((row) => row.kind === kind).map((row) => row.set);
        }""",
        kind,
    )


def two_colonies(page: Page, server: Server) -> None:
    claim(page, server)
    go(page, server, "#/colony/new")
    add_colony(page, "Birch")
    go(page, server, "#/round")


def test_several_colonies_are_fed_at_once_and_taken_back_at_once(phone, server):
    page = phone()
    two_colonies(page, server)
    page.get_by_role("button", name=text("round-many")).click()
    page.get_by_role("button", name=text("several-go", count=2)).click()
    done = page.get_by_role("region", name=text("round-done"))
    expect(done.get_by_text(drops_of_sugar_water(1))).to_have_count(2)
    expect(page.get_by_role("img", name=text("round-progress", part=2, whole=4))).to_be_visible()
    page.get_by_role("status").get_by_role("button", name=text("round-undo")).click()

    expect(done.get_by_text(drops_of_sugar_water(1))).to_have_count(0)


def test_all_that_is_eaten_can_be_given_to_several_also_leaves(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    leaf_cutters = {"species_code": "atta", "stage": "growing", "condition": "well"}
    run(
        page,
        "await (await at('actions')).keep('colony', given.set, given.id);",
        {"set": leaf_cutters, "id": page.url.rpartition("/")[2]},
    )
    wait_synced(page)
    go(page, server, "#/round")
    page.get_by_role("button", name=text("round-many")).click()
    asked = page.get_by_role("group", name=text("several-what")).get_by_role("button")
    expect(asked).to_have_text([text(f"need-{need}") for need in (*FOOD_NEEDS, "water", "glance")])
    asked.filter(has_text=text("need-leaves")).click()
    page.get_by_role("button", name=text("several-go", count=1)).click()

    expect(
        page.get_by_role("region", name=text("round-done"))
        .get_by_role("listitem")
        .filter(has_text=text("food-leaves.counted", n=1))
    ).to_have_count(1)


def test_the_icon_of_the_app_counts_what_is_due_now(phone, server):
    page = phone()
    page.add_init_script(
        """window.badge = null;
        navigator.setAppBadge = async (due) => { window.badge = due; };
        navigator.clearAppBadge = async () => { window.badge = 0; };"""
    )
    claim(page, server)
    go(page, server, "#/round")
    now = page.get_by_role("region", name=text("round-now")).get_by_role("article")
    expect(now).not_to_have_count(0)
    due = now.count()
    expect_badge(page, due)
    now.first.get_by_role("button", name=text("round-as-suggested")).click()

    expect_badge(page, due - 1)


def expect_badge(page: Page, due: int) -> None:
    page.wait_for_function("(due) => window.badge === due", arg=due)


def test_a_colony_left_out_of_several_gets_nothing(phone, server):
    page = phone()
    two_colonies(page, server)
    page.get_by_role("button", name=text("round-many")).click()
    page.get_by_role("button", name="Birch:").click()
    page.get_by_role("button", name=text("several-go", count=1)).click()

    fed = (
        page.get_by_role("region", name=text("round-done"))
        .get_by_role("listitem")
        .filter(has_text=text("food-sugar-water"))
    )
    expect(fed).to_have_count(1)
    expect(fed).to_contain_text("Amber")


def test_a_colony_that_is_no_longer_kept_is_not_among_several(phone, server):
    page = phone()
    two_colonies(page, server)
    run(
        page,
        """const [{ keep }, { rowsOf }] = await Promise.all([at('actions'), at('rows')]);
        await keep('colony', { condition: 'dead' }, rowsOf('colony').find((row) => row.set.name === 'Birch').id);""",
    )
    page.get_by_role("button", name=text("round-many")).click()
    page.get_by_role("group", name=text("several-what")).get_by_role(
        "button", name=text("need-water")
    ).click()

    expect(page.get_by_role("group", name=text("several-who")).get_by_role("button")).to_have_text(
        [labelled("Amber", text("several-water"))]
    )


def test_a_log_that_is_tapped_twice_is_logged_once(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    page.get_by_role("button", name=text("event-kind-note"), exact=True).click()
    page.get_by_label(text("log-note"), exact=True).fill("First larvae.")
    twice = "(button) => { button.click(); button.click(); }"
    page.get_by_role("button", name=text("log-keep-note")).evaluate(twice)
    expect(page.get_by_role("dialog")).to_have_count(0)
    wait_synced(page)

    assert [note["text"] for note in outbox_and_rows(page, "note")] == ["First larvae."]


def test_a_task_put_off_to_tomorrow_leaves_now_and_one_skipped_keeps_its_reason(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/round")
    now = page.get_by_role("region", name=text("round-now"), exact=True)
    expect(now.get_by_role("article")).to_have_count(2)
    now.get_by_role("button", name=labelled(text("round-later"), drops_of_sugar_water(1))).click()
    page.get_by_role("button", name=text("later-tomorrow")).click()
    expect(now.get_by_role("article")).to_have_count(1)
    now.get_by_role("button", name=beginning("part-labelled", label=text("round-later"))).click()
    page.get_by_role("button", name=text("later-why-still-food")).click()
    page.get_by_role("button", name=text("later-go")).click()

    expect(now).to_have_count(0)
    expect(page.get_by_text(like("round-next-at"))).to_be_visible()
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    assert sorted(str(each.get("why")) for each in outbox_and_rows(page, "later")) == ["None", "still food"]


def test_the_keepers_own_interval_rules_over_the_plan_until_it_is_cleared(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    plan = page.get_by_role("region", name=text("colony-plan"))
    plan.get_by_text(beginning("part-labelled", label=text("need-sugar"))).click()
    plan.get_by_role("button", name=text("plan-set")).first.click()
    plan.get_by_role("button", name=text("part-more", label=text("plan-own"))).click()
    plan.get_by_role("button", name=text("plan-keep")).click()
    expect(plan.get_by_text(text("plan-every", days=5)).first).to_be_visible()
    plan.get_by_role("button", name=text("plan-clear")).click()

    expect(plan.get_by_text(text("plan-every", days=5))).to_have_count(0)


def test_the_keepers_own_days_and_a_pause_rule_over_the_plan_until_they_are_cleared(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    plan = page.get_by_role("region", name=text("colony-plan"))
    plan.locator("summary", has_text=text("need-sugar")).click()
    plan.get_by_role("button", name=text("plan-rhythm-open")).first.click()
    sheet = page.get_by_role("dialog")
    for day in ("Monday", "Thursday"):
        sheet.get_by_role("button", name=day).click()
    sheet.get_by_label(text("plan-rhythm-hour")).fill("18:30")
    sheet.get_by_role("button", name=text("colony-form-save")).click()
    expect(plan.get_by_text(text("plan-rhythm-at", days="Monday, Thursday", hour="18:30"))).to_be_visible()
    expect(plan.get_by_text(text("reason-interval-chosen"))).to_be_visible()
    plan.get_by_role("button", name=text("plan-rhythm-open")).first.click()
    sheet.get_by_label(text("plan-rhythm-until")).fill("2099-03-01")
    sheet.get_by_role("button", name=text("colony-form-save")).click()
    expect(
        plan.get_by_text(
            like("part-labelled", label=text("need-sugar"), value=beginning("plan-rhythm-paused"))
        )
    ).to_be_visible()
    expect(plan.locator("summary", has_text=text("need-sugar"))).to_have_count(0)
    rule = outbox_and_rows(page, "rule")[0]
    assert (rule["need"], rule["weekdays"], rule["at"]) == ("sugar", [0, 3], "18:30")
    plan.locator("div.card", has_text=text("need-sugar")).get_by_role("button").click()
    sheet.get_by_role("button", name=text("plan-clear")).click()

    expect(plan.locator("summary", has_text=text("need-sugar"))).to_be_visible()
    assert outbox_and_rows(page, "rule") == []


def test_a_water_level_typed_in_mm_is_logged_in_mm(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    page.get_by_role("button", name=text("event-kind-water"), exact=True).click()
    page.get_by_label(text("log-mm")).fill("37,5")
    page.get_by_role("button", name=text("log-read")).click()
    expect(page.get_by_role("region", name=text("colony-diary"))).to_contain_text(
        text("event-read-mm", mm=37.5)
    )

    assert [each["level_mm"] for each in outbox_and_rows(page, "water")] == [37.5]


def test_the_level_follows_a_finger_on_the_drawn_tube(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    page.get_by_role("button", name=text("event-kind-water"), exact=True).click()
    level = page.get_by_role("slider", name=text("log-level"))
    level.hover()  # waits until the sheet has risen and stands still
    box = level.bounding_box()
    assert box
    page.mouse.move(box["x"] + box["width"] / 2, box["y"] + box["height"] * 0.2)
    page.mouse.down()
    expect(level).to_have_attribute("aria-valuetext", text("event-reading-full"))
    page.mouse.move(box["x"] + box["width"] / 2, box["y"] + box["height"] * 0.9, steps=5)
    page.mouse.up()

    expect(level).to_have_attribute("aria-valuetext", text("event-reading-empty"))


def test_a_refused_origin_stops_the_feeding_but_what_happened_can_be_logged(phone, server):
    page = phone()
    claim(page, server)
    open_colony(page, server)
    page.get_by_role("button", name=text("event-kind-feeding"), exact=True).click()
    page.get_by_label(text("log-from")).select_option("home_cockroach")
    expect(page.get_by_role("alert")).to_contain_text(text("log-stop-refuse"))
    expect(page.get_by_role("button", name=text("log-go"))).to_have_count(0)
    page.get_by_role("button", name=text("log-despite")).click()
    expect(page.get_by_role("dialog")).to_have_count(0)

    assert [each["despite"] for each in outbox_and_rows(page, "feeding")] == [["home_cockroach"]]


def test_a_swipe_to_the_right_does_what_the_button_does_and_a_short_one_nothing(phone, server):
    page = phone()
    claim(page, server)
    go(page, server, "#/round")
    task = page.get_by_role("article").filter(has_text=drops_of_sugar_water(1))
    task.hover()  # waits until it stands still
    box = task.bounding_box()
    assert box
    finger = page.context.new_cdp_session(page)

    def swipe(px: int) -> None:
        x, y = box["x"] + 40, box["y"] + 20
        finger.send("Input.dispatchTouchEvent", {"type": "touchStart", "touchPoints": [{"x": x, "y": y}]})
        for part in (0.25, 0.5, 0.75, 1):
            point = {"x": x + px * part, "y": y}
            finger.send("Input.dispatchTouchEvent", {"type": "touchMove", "touchPoints": [point]})
        finger.send("Input.dispatchTouchEvent", {"type": "touchEnd", "touchPoints": []})

    swipe(60)
    swipe(150)
    expect(task).to_have_count(0)

    expect(
        page.get_by_role("region", name=text("round-done"))
        .get_by_role("listitem")
        .filter(has_text=text("food-sugar-water"))
    ).to_have_count(1)
