"""Signing out, being signed out, and coming in again: the way in is open, and nothing that was logged is lost."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect
from tests.phone.conftest import claim
from tests.phone.inside import run
from tests.phone.test_story import go, pair
from tests.support.node_tests import run_node_tests
from tests.support.server import Server
from tests.support.words import text

HAS = "await (await at('sync')).syncNow(); return Boolean((await at('rows')).rows.value.get(given));"


def test_the_apps_own_modules_on_a_disk_in_memory():
    run_node_tests(Path(__file__).with_name("run_coming_in.mjs"))


@pytest.mark.browser
@pytest.mark.without_worker
def test_a_phone_that_was_signed_out_says_so_and_comes_in_again_by_any_way(phone, server):
    keeper, other = phone(), phone()
    claim(keeper, server)
    pair(other, keeper, server)
    sign_out_other(keeper)
    run(other, "await (await at('sync')).syncNow();")
    ended = other.get_by_role("alert").filter(has_text=text("frame-banner-ended-device-revoked"))
    ended.get_by_role("link", name=text("frame-banner-sign-in")).click()
    other.get_by_role("button", name=text("start-back")).click()  # a home screen's app has no other way back
    expect(other.get_by_role("heading", name=text("round-title"))).to_be_visible()
    pair(other, keeper, server, "#/join")

    expect(other.get_by_text(text("saving-synced"))).to_be_visible()
    expect(ended).to_have_count(0)


@pytest.mark.browser
@pytest.mark.without_worker
def test_what_was_not_sent_is_told_to_whom_comes_next_given_as_a_file_and_sent_when_its_keeper_is_back(
    phone, server, tmp_path
):
    keeper, other = phone(), phone()
    claim(keeper, server)
    pair(other, keeper, server)
    suggested = other.get_by_role("button", name=text("round-as-suggested")).first
    expect(suggested).to_be_visible()  # the shelf has come: what is cut off now is only what is written next
    other.route("**/api/sync", lambda route: route.abort())
    suggested.click()
    expect(other.get_by_text(text("saving-waiting", count=1))).to_be_visible()
    said = sign_out(other, server)
    other.unroute("**/api/sync")
    left = other.get_by_text(text("house-left", who="Mira", count=1))
    expect(left).to_be_visible()
    pair(other, keeper, server, who="Ben")
    go(other, server, "#/settings")
    with other.expect_download() as download:
        left.get_by_role("button", name=text("house-export")).click()
    download.value.save_as(tmp_path / "kept.json")
    sign_out(other, server)
    pair(other, keeper, server)
    done = other.get_by_role("region", name=text("round-done"))

    assert said == text("house-leave-unsent", count=1)
    (kept,) = json.loads((tmp_path / "kept.json").read_text())["entries"]
    expect(done).to_contain_text(text("saving-state-synced"))
    assert run(keeper, HAS, kept["op"]["id"])
    expect(left).to_have_count(0)


@pytest.mark.browser
@pytest.mark.without_worker
def test_a_phone_that_signed_out_begins_before_the_door_when_it_is_opened_again(phone, server):
    page = phone()
    claim(page, server)
    sign_out(page, server)
    page.reload()

    expect(page.get_by_role("button", name=text("start-join-one"))).to_be_visible()


def sign_out(page: Page, server: Server) -> str:
    """Sign a phone out at House; return what it asked before."""
    asked = []
    go(page, server, "#/settings")
    page.once("dialog", lambda dialog: (asked.append(dialog.message), dialog.accept()))
    page.get_by_role("button", name=text("house-sign-out"), exact=True).last.click()
    expect(page.get_by_role("button", name=text("start-join-one"))).to_be_visible()
    return asked[0]


def sign_out_other(keeper: Page) -> None:
    """End the session of the keeper's only other phone, at House."""
    keeper.reload()  # where the other one was let in: it stands there since
    keeper.once("dialog", lambda dialog: dialog.accept())
    with keeper.expect_response("**/revoke"):
        keeper.get_by_role("listitem").get_by_role("button", name=text("house-sign-out")).click()
