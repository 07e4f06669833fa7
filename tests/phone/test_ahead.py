"""Looking ahead on the phone: calculators, what to get, before you go away, and nudges by mail.

Longer than 300 lines because its screens share one larder, one journey and one mail server.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect
from tests.phone.conftest import claim, worker_ready
from tests.support.kept_shelf import KeptShelf
from tests.support.mail_server import MailServer
from tests.support.server import Server
from tests.support.words import any_of, capital, drops_of_sugar_water, labelled, like, text

pytestmark = pytest.mark.browser
ADDRESS = "jo@example.org"


@pytest.fixture
def mail():
    with MailServer() as made:
        yield made


@pytest.fixture
def server_with_mail(tmp_path: Path, claimed_shelf: KeptShelf, mail: MailServer):
    made = Server(claimed_shelf.copy_to(tmp_path / "with-mail"))
    made.settings = {
        "BROODSHELF_SMTP_HOST": "127.0.0.1", "BROODSHELF_SMTP_PORT": str(mail.port),
        "BROODSHELF_SMTP_SECURITY": "none", "BROODSHELF_SMTP_FROM": "shelf@example.org",
    }  # fmt: skip
    made.start()
    yield made
    made.stop()


def answer(page: Page, path: str, body: object) -> None:
    """Let the server's answer to ``path`` be ``body``: for what takes a month to come about."""
    page.context.route(f"**{path}", lambda route: route.fulfill(json=body))


def days_on(page: Page, days: int) -> str:
    """Return the ISO day on the phone's calendar so many days from now."""
    return page.evaluate(
        "(days) => { const day = new Date(); day.setDate(day.getDate() + days);"
        " return `${day.getFullYear()}-${String(day.getMonth() + 1).padStart(2, '0')}"
        "-${String(day.getDate()).padStart(2, '0')}`; }",
        days,
    )


def mix(page: Page, server: Server) -> None:
    page.goto(f"{server.url}/#/larder")
    page.get_by_role("button", name=text("larder-mix")).click()
    page.get_by_role("button", name=text("larder-batch")).click()
    expect(page.get_by_role("heading", name=text("larder-batch-name", percent=25))).to_be_visible()


@pytest.mark.without_worker
def test_a_calculator_is_found_from_the_larder_and_answers_with_its_lines_source_and_limits(phone, server):
    """By hand: 100 mL of 25 % at 1.1036 g/mL are 110.4 g, a quarter of it sugar: 27.6 g."""
    page = phone()
    claim(page, server)
    page.goto(f"{server.url}/#/larder")
    page.get_by_role("link", name=text("calculator-title")).click()
    page.get_by_role("link", name=text("reckon-sugar-water")).click()
    page.get_by_role("button", name=text("calculator-go")).click()

    found = page.get_by_role("region", name=text("calculator-result"))
    expect(found).to_contain_text(text("reckoned-weigh-sugar", g=27.6))
    page.get_by_label(text("calculator-input-ml")).fill("200")
    page.get_by_role("button", name=text("calculator-go")).click()
    expect(found).to_contain_text(text("reckoned-weigh-sugar", g=55.2))
    how = page.get_by_role("region", name=text("calculator-how"))
    expect(how).to_contain_text(text("reckon-source-sugar-water"))
    expect(how).to_contain_text(text("reckon-limits-sugar-water"))


@pytest.mark.without_worker
def test_every_calculator_of_the_server_can_be_drawn_and_answers_its_own_defaults(phone, server):
    page = phone()
    claim(page, server)
    page.goto(f"{server.url}/#/reckon")
    links = page.locator("main li a")
    expect(links.first).to_be_visible()
    hashes = links.evaluate_all("(all) => all.map((each) => each.hash)")

    assert len(hashes) >= 6
    for each in hashes:
        page.goto(f"{server.url}/{each}")
        page.get_by_role("button", name=text("calculator-go")).click()
        expect(page.get_by_role("region", name=text("calculator-result"))).not_to_be_empty()


@pytest.mark.without_worker
def test_ticks_and_choices_reach_the_calculator(phone, server):
    page = phone()
    claim(page, server)
    page.goto(f"{server.url}/#/reckon/prey")
    page.get_by_label(text("calculator-input-prey-food")).select_option(label=capital(text("food-mealworm")))
    page.get_by_role("checkbox", name=text("calculator-input-in-tube")).check()
    page.get_by_role("button", name=text("calculator-go")).click()

    found = page.get_by_role("region", name=text("calculator-result"))
    expect(found).to_contain_text(text("food-mealworm.counted"))
    expect(found).to_contain_text(text("reason-prey-dead-in-tube"))


@pytest.mark.without_worker
def test_what_a_calculator_refuses_is_said_in_its_own_words(phone, server):
    """A room that is warmer than the goal never cools the cup to it."""
    page = phone()
    claim(page, server)
    page.goto(f"{server.url}/#/reckon/cooling")
    page.get_by_label(text("calculator-input-room-c")).fill("35")
    page.get_by_role("button", name=text("calculator-go")).click()

    expect(page.get_by_role("alert")).to_contain_text("room", ignore_case=True)
    expect(page.get_by_role("region", name=text("calculator-result"))).to_have_count(0)


def test_without_a_connection_the_calculators_say_so_and_the_mixer_of_the_larder_works(phone, server):
    page = phone()
    claim(page, server)
    worker_ready(page)
    page.context.set_offline(True)
    page.goto(f"{server.url}/#/reckon")

    expect(page.get_by_text(text("part-needs-server"))).to_be_visible()
    page.get_by_role("link", name=text("frame-nav-larder")).click()
    page.get_by_role("button", name=text("larder-mix")).click()
    expect(page.get_by_role("dialog")).to_contain_text(
        like("larder-recipe", sugar_g=10, water_ml=30)
    )  # 30 mL weigh 29.9 g; a third of it
    page.get_by_role("button", name=text("larder-batch")).click()
    expect(page.get_by_role("heading", name=text("larder-batch-name", percent=25))).to_be_visible()
    page.context.set_offline(False)


def test_a_connection_that_goes_while_a_calculator_is_filled_in_takes_nothing_away(phone, server):
    page = phone()
    claim(page, server)
    page.goto(f"{server.url}/#/reckon/sugar_water")
    page.get_by_label(text("calculator-input-ml")).fill("200")
    page.context.set_offline(True)
    expect(page.get_by_text(text("saving-offline"), exact=True)).to_be_visible()
    page.get_by_role("button", name=text("calculator-go")).click()

    expect(page.get_by_role("alert")).to_contain_text(text("part-needs-server"))
    page.context.set_offline(False)
    page.get_by_role("button", name=text("calculator-go")).click()
    expect(page.get_by_role("region", name=text("calculator-result"))).to_contain_text(
        text("reckoned-weigh-sugar", g=55.2)
    )


@pytest.mark.without_worker
def test_the_larder_tells_what_to_get_and_what_spoils_first_and_changes_with_the_lots(phone, server):
    """A new colony has nothing in the house; 30 mL of water with sugar is far more than it drinks in a week."""
    page = phone()
    claim(page, server)
    page.goto(f"{server.url}/#/larder")
    section = page.get_by_role("region", name=text("larder-get-title"))
    sugar = section.get_by_role("listitem").filter(
        has=page.get_by_role("heading", name=text("reckon-sugar-water"))
    )
    expect(sugar).to_contain_text(text("larder-get-today"))
    mix(page, server)

    expect(sugar).to_contain_text(like("larder-get-by"))
    expect(section).to_contain_text(text("larder-get-spoils"))
    expect(section).to_contain_text(like("reason-larder-spoils"))
    expect(section).not_to_contain_text(re.compile(r"\d{4}-\d\d-\d\d"))


@pytest.mark.without_worker
def test_a_batch_shows_what_the_feedings_logged_have_left_of_it(phone, server):
    page = phone()
    claim(page, server)
    mix(page, server)
    batch = page.get_by_role("region", name=text("larder-lots")).locator(
        "article", has_text=text("larder-batch-name", percent=25)
    )
    expect(batch).to_contain_text("36 mL")
    expect(page.get_by_role("region", name=text("larder-get-title"))).to_contain_text(
        text("larder-get-spoils")
    )  # the plan knows it
    page.goto(f"{server.url}/#/round")
    page.get_by_role(
        "button", name=labelled(text("round-as-suggested"), "Amber", drops_of_sugar_water(1))
    ).click()
    page.goto(f"{server.url}/#/larder")

    expect(batch).to_contain_text(
        any_of(*(text("larder-by-logs", left=left, whole="36 mL") for left in (35.9, 36)))
    )


def test_without_a_connection_the_larder_has_no_outlook_and_makes_no_noise_about_it(phone, server):
    page = phone()
    claim(page, server)
    mix(page, server)
    worker_ready(page)
    expect(page.get_by_text(text("saving-synced"))).to_be_visible()
    page.context.set_offline(True)
    page.reload()

    expect(page.get_by_role("heading", name=text("larder-batch-name", percent=25))).to_be_visible()
    expect(page.get_by_text(text("saving-offline"))).to_be_visible()
    expect(page.get_by_role("region", name=text("larder-get-title"))).to_have_count(0)
    expect(page.get_by_role("alert")).to_have_count(0)
    page.context.set_offline(False)


@pytest.mark.without_worker
def test_before_a_journey_each_colony_says_what_to_top_up_and_a_pass_for_the_visits_is_filled_in(
    phone, server
):
    page = phone()
    claim(page, server)
    page.goto(f"{server.url}/#/handover")
    leave, back = days_on(page, 1), days_on(page, 61)
    page.get_by_label(text("holiday-leave")).fill(leave)
    page.get_by_label(text("holiday-back")).fill(back)
    page.get_by_role("button", name=text("holiday-go")).click()

    amber = page.get_by_role("listitem").filter(has=page.get_by_role("heading", name="Amber"))
    expect(amber).to_contain_text(like("holiday-visit"))
    expect(amber).to_contain_text(text("holiday-top-up"))
    expect(amber).to_contain_text(like("portion-drop", food=text("food-sugar-water.of")))
    expect(amber).to_contain_text(like("reason-lasts-too-short", need=text("need-sugar")))
    page.get_by_text(text("holiday-travel")).click()
    expect(page.get_by_text(like("travel-travel-warmth"))).to_be_visible()

    page.get_by_role("button", name=text("holiday-pass")).click()
    expect(page.get_by_label(text("handover-who"), exact=True)).to_be_focused()
    expect(page.get_by_label(text("handover-first"))).to_have_value(leave)
    expect(page.get_by_label(text("handover-last"))).to_have_value(back)
    page.get_by_label(text("handover-who"), exact=True).fill("Jo")
    page.get_by_label(text("look-degrees")).select_option("f")
    page.get_by_role("button", name=text("handover-go")).click()
    made = page.get_by_role("article").filter(has=page.get_by_role("heading", name="Jo"))
    expect(made).to_contain_text("Amber")
    told = page.evaluate(
        "async () => (await import(`/static/${document.body.dataset.build}/signals/rows.js`)).rowsOf('pass')[0].set"
    )
    assert told["degrees"] == "f"
    assert "volumes" not in told, "what is left open is as the phone of the stand-in"


@pytest.mark.without_worker
def test_a_journey_that_ends_before_it_begins_is_refused_in_words(phone, server):
    page = phone()
    claim(page, server)
    page.goto(f"{server.url}/#/handover")
    page.get_by_label(text("holiday-leave")).fill(days_on(page, 9))
    page.get_by_label(text("holiday-back")).fill(days_on(page, 2))
    page.get_by_role("button", name=text("holiday-go")).click()

    expect(page.get_by_role("alert")).to_contain_text(text("problem-holiday-days"))


@pytest.mark.without_worker
def test_a_persons_address_gets_a_code_counts_once_it_is_typed_in_and_can_be_taken_away(
    phone, server_with_mail, mail
):
    page = phone()
    claim(page, server_with_mail)
    page.goto(f"{server_with_mail.url}/#/settings")
    mine = page.get_by_role("form", name="Mira")
    mine.get_by_label(text("house-mail-address")).fill(ADDRESS)
    mine.get_by_role("button", name=text("house-mail-send")).click()
    expect(mine).to_contain_text(text("house-mail-asked"))
    [sent] = mail.taken
    assert sent["To"] == ADDRESS

    mine.get_by_label(text("house-mail-code")).fill("BBBB-BBBB")
    mine.get_by_role("button", name=text("house-mail-confirm")).click()
    expect(mine.get_by_role("alert")).to_have_text(text("problem-mail-code-wrong"))
    mine.get_by_label(text("house-mail-code")).fill(sent["Subject"].split()[0])
    mine.get_by_role("button", name=text("house-mail-confirm")).click()
    expect(mine).to_contain_text(text("house-mail-comes"))

    mine.get_by_role("button", name=text("house-mail-remove")).click()
    expect(mine.get_by_label(text("house-mail-address"))).to_be_visible()
    expect(mine).not_to_contain_text(ADDRESS)


@pytest.mark.without_worker
def test_an_address_that_the_mail_server_refuses_is_said_beside_it(phone, server_with_mail, mail):
    page = phone()
    claim(page, server_with_mail)
    page.goto(f"{server_with_mail.url}/#/settings")
    mine = page.get_by_role("form", name="Mira")
    mine.get_by_label(text("house-mail-address")).fill(
        "550@example.org"
    )  # this test server answers it with 550
    mine.get_by_role("button", name=text("house-mail-send")).click()

    expect(mine.get_by_role("alert")).to_contain_text(like("house-mail-not-sent"))
    assert mail.taken == []


@pytest.mark.without_worker
def test_a_server_without_mail_shows_nothing_of_it(phone, server):
    page = phone()
    claim(page, server)
    with page.expect_response("**/api/mail"):
        page.goto(f"{server.url}/#/settings")

    expect(page.get_by_role("heading", name=text("house-hours"))).to_be_visible()
    expect(page.get_by_role("region", name=text("house-mail-title"))).to_have_count(0)


@pytest.mark.without_worker
def test_keepers_see_which_phones_of_others_have_fallen_silent(phone, server):
    page = phone()
    claim(page, server)
    phones = [
        {"id": "a", "name": "Android phone", "person": "Jo", "why": "unheard"},
        {"id": "b", "name": "iPad", "person": None, "why": "unseen"},
    ]
    answer(page, "/api/push/health", {"devices": [], "silent_elsewhere": phones})
    page.goto(f"{server.url}/#/settings")

    expect(
        page.get_by_text(text("phone-nudges-elsewhere-unheard", who="Jo", phone="Android phone"))
    ).to_be_visible()
    expect(page.get_by_text(like("phone-nudges-elsewhere-unseen", phone="iPad"))).to_be_visible()
