"""Nudges by mail, through a real SMTP server on loopback."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from sqlalchemy import select
from tests.nudges.support import KEY_ID, URL, Shelf, ms
from tests.support.mail_server import PASSWORD, USER, MailServer
from tests.support.server import free_port

from broodshelf.nudges.channels.addresses import Mailbox
from broodshelf.nudges.channels.channel import Channels, Delivery
from broodshelf.nudges.channels.mail.channel import MailChannel
from broodshelf.nudges.channels.mail.mailboxes import forget_mailbox, listen_by_mail
from broodshelf.nudges.channels.outcome import Outcome, Refused, RetryLater, Sent
from broodshelf.nudges.channels.push.subscriptions import anybody_listens, listen_with_other_key
from broodshelf.nudges.messages import Item, Message, of_code, of_round, of_test
from broodshelf.nudges.nudger import Nudger
from broodshelf.nudges.tables import deliveries
from broodshelf.people import mail
from broodshelf.records.database import reading, writing
from broodshelf.settings import MailSettings

NOW_MS = ms("2026-05-01T12:00")
FROM = "shelf@example.org"
ROUND = "2026-05-04T18:30"


@pytest.fixture
def server() -> Iterator[MailServer]:
    with MailServer() as made:
        yield made


def channel_to(port: int) -> MailChannel:
    return MailChannel(MailSettings("127.0.0.1", port, "none", FROM))


def send(
    channel: MailChannel, to: str, message: Message | None = None, delivery_id: str = "a-delivery"
) -> Outcome:
    delivery = Delivery(delivery_id, message or of_test(URL), 3600, True, "t")
    return channel.send(Mailbox(to), delivery, NOW_MS)


@pytest.mark.parametrize(
    ("to", "outcome"),
    [
        ("mira@example.org", Sent()),
        ("550@example.org", Refused("smtp_550", suspect=True)),
        ("451@example.org", RetryLater("smtp_451")),
        ("421@example.org", RetryLater("smtp_421", vendor=True)),
    ],
)
def test_what_a_mail_servers_reply_means(server, to, outcome):
    assert send(channel_to(server.port), to) == outcome


def test_a_server_that_is_away_or_hangs_up_is_tried_again_later(server):
    assert send(channel_to(free_port()), "mira@example.org") == RetryLater("network", vendor=True)
    server.hang_up_after_data = True
    assert send(channel_to(server.port), "mira@example.org") == RetryLater("network", vendor=True)


def test_a_repeat_is_the_same_mail_again_and_no_other_is(server):
    for delivery_id in ("one", "one", "two"):
        send(channel_to(server.port), "mira@example.org", delivery_id=delivery_id)
    ids = [mail["Message-ID"] for mail in server.taken]

    assert ids[0] == ids[1] != ids[2]
    assert "one" not in ids[0]  # the delivery's id is a secret


def test_the_mail_has_a_line_for_each_thing_and_cannot_be_given_other_headers(server):
    title = "Protein for Ämber\r\nBcc: elsewhere@example.org"
    lines = ("Ämber: 2 crickets", "Birch · left: 1 fly")  # a keeper may name a colony so
    send(channel_to(server.port), "mira@example.org", Message(title, lines, f"{URL}/#/settings"))
    [mail] = server.taken

    assert mail["Subject"] == "Protein for Ämber Bcc: elsewhere@example.org"
    assert mail["Bcc"] is None
    assert (mail["To"], mail["From"], mail["Auto-Submitted"]) == ("mira@example.org", FROM, "auto-generated")
    written = mail.get_content().splitlines()
    assert written[:2] == ["Ämber: 2 crickets", "Birch · left: 1 fly"]
    assert f"{URL}/#/settings" in written


def test_a_long_round_is_in_the_mail_to_its_last_line(server):
    """A phone shows six lines of twenty and says how many more; a mailbox has room."""
    items = [Item(f"o{n}", f"c{n}", f"Colony {n}", "protein", "protein:start") for n in range(20)]
    send(channel_to(server.port), "mira@example.org", of_round(items, "n", URL))
    written = server.taken[0].get_content().splitlines()

    assert [line.partition(":")[0] for line in written[:20]] == [f"Colony {n}" for n in range(20)]
    assert f"{URL}/#/round?nudge=n" in written


def test_encryption_and_login_are_used_and_a_wrong_password_waits_for_the_operator(tmp_path, caplog):
    with MailServer(tmp_path, tls=True) as server:
        good, bad = (
            MailSettings("localhost", server.port, "starttls", FROM, USER, word)
            for word in (PASSWORD, "other")
        )
        sent = send(MailChannel(good, server.trust), "mira@example.org")
        with caplog.at_level("INFO", logger="broodshelf"):
            refused = send(MailChannel(bad, server.trust), "mira@example.org")
            distrusted = send(MailChannel(good), "mira@example.org")

        assert sent == Sent()
        assert refused == RetryLater("mail_login", 600, vendor=True)
        assert distrusted == RetryLater("network", vendor=True)  # a certificate that nobody vouches for
        assert len(server.taken) == 1
    lines = " ".join(f"{record.getMessage()} {getattr(record, 'values', '')}" for record in caplog.records)
    assert lines.count("mail not taken") == 2
    assert "mira@" not in lines
    assert "other" not in lines
    assert PASSWORD not in repr(good)


def nudger_to(shelf: Shelf, port: int) -> Nudger:
    return shelf.new_nudger(Channels(shelf.notebook, KEY_ID, channel_to(port)))


def nudger_with_mail(shelf: Shelf, server: MailServer) -> Nudger:
    return nudger_to(shelf, server.port)


def by_mail(shelf: Shelf, person_id: str, address: str = "mira@example.org") -> None:
    with writing() as connection:
        listen_by_mail(connection, shelf.id, person_id, address, shelf.now_ms)


def tick(shelf: Shelf, nudger: Nudger, at: str) -> None:
    nudger.tick(ms(at))
    nudger.finish()


def test_a_nudge_goes_to_phone_and_mailbox_once_each(shelf: Shelf, server: MailServer):
    mira = shelf.person("Mira")
    shelf.colony(mira)
    by_mail(shelf, mira.person_id)
    nudger = nudger_with_mail(shelf, server)
    for at in (ROUND, "2026-05-04T18:30:05"):
        tick(shelf, nudger, at)
    nudger.close()

    assert shelf.notebook.titles == ["Protein for Amber"]
    assert [mail["Subject"] for mail in server.taken] == ["Protein for Amber"]
    assert shelf.delivery_states() == ["sent", "sent"]


def test_a_person_without_a_phone_is_reached_by_mail(shelf: Shelf, server: MailServer):
    mira = shelf.person("Mira", listens=False)
    shelf.colony(mira)
    by_mail(shelf, mira.person_id)
    nudger = nudger_with_mail(shelf, server)
    tick(shelf, nudger, ROUND)
    nudger.close()

    assert len(server.taken) == 1


def test_a_mail_server_that_is_away_delays_no_phone_and_gets_the_mail_when_it_is_back(shelf: Shelf):
    mira = shelf.person("Mira")
    shelf.colony(mira)
    by_mail(shelf, mira.person_id)
    server = MailServer()
    nudger = nudger_with_mail(shelf, server)
    tick(shelf, nudger, ROUND)
    assert shelf.notebook.titles == ["Protein for Amber"]
    assert sorted(shelf.delivery_states()) == ["sent", "waiting"]
    with server:
        tick(shelf, nudger, "2026-05-04T18:31:30")
    nudger.close()

    assert len(server.taken) == 1
    assert shelf.delivery_states() == ["sent", "sent"]


def test_what_was_done_meanwhile_is_not_mailed(shelf: Shelf):
    mira = shelf.person("Mira", listens=False)
    colony_id = shelf.colony(mira)
    by_mail(shelf, mira.person_id)
    server = MailServer()
    nudger = nudger_with_mail(shelf, server)
    tick(shelf, nudger, ROUND)
    shelf.at("2026-05-04T18:31").log(mira, "feeding", {"colony_id": colony_id, "need": "protein"})
    with server:
        tick(shelf, nudger, "2026-05-04T18:32")
    nudger.close()

    assert server.taken == []
    assert shelf.delivery_states() == ["dropped"]


def test_without_a_mail_server_a_mailbox_reaches_nobody(shelf: Shelf):
    mira = shelf.person("Mira", listens=False)
    shelf.colony(mira)
    by_mail(shelf, mira.person_id)

    assert shelf.at(ROUND).tick() == []
    assert shelf.delivery_states() == []
    assert shelf.occurrences()[0] == ("2026-05-04", "18:30", "missed")


def test_mail_that_waits_when_the_operator_turns_it_off_is_given_up(shelf: Shelf):
    mira = shelf.person("Mira", listens=False)
    shelf.colony(mira)
    by_mail(shelf, mira.person_id)
    nudger = nudger_to(shelf, free_port())
    tick(shelf, nudger, ROUND)
    nudger.close()
    shelf.at("2026-05-04T18:32").tick()
    with reading() as connection:
        assert connection.scalar(select(deliveries.c.outcome)) == "mail_off"


def test_a_mailbox_is_no_phone_and_one_a_person(shelf: Shelf):
    mira = shelf.person("Mira", listens=False)
    by_mail(shelf, mira.person_id)
    by_mail(shelf, mira.person_id, "new@example.org")
    with reading() as connection:
        assert not anybody_listens(connection)  # the push key is not in use
        assert listen_with_other_key(connection, "any") == 0
    assert shelf.endpoints() == ["mailto:new@example.org"]
    with writing() as connection:
        forget_mailbox(connection, shelf.id, mira.person_id)
    assert shelf.endpoints() == []


def test_an_address_that_refuses_for_long_while_others_work_is_no_longer_called_confirmed(
    shelf: Shelf, server: MailServer
):
    """What was not done is told both every day; ten refusals in seven days are too many."""
    keepers = {to: shelf.person(to, listens=False).person_id for to in ("552@example.org", "a@example.org")}
    with writing() as connection:
        for to, person_id in keepers.items():
            code = mail.ask(connection, shelf.id, person_id, to, shelf.now_ms)
            mail.confirm(connection, shelf.id, person_id, code, shelf.now_ms)
            listen_by_mail(connection, shelf.id, person_id, to, shelf.now_ms)
    shelf.colony(shelf.person("Mira", listens=False))
    nudger = nudger_with_mail(shelf, server)
    for day in range(4, 17):
        tick(shelf, nudger, f"2026-05-{day:02}T18:30")
    nudger.close()
    with reading() as connection:
        confirmed = {told["address"]: told["confirmed"] for told in mail.addresses(connection, shelf.id)}

    assert confirmed == {"552@example.org": False, "a@example.org": True}
    assert shelf.endpoints() == ["mailto:a@example.org"]


def test_the_mail_with_a_code_shows_it_in_the_subject(server):
    send(channel_to(server.port), "mira@example.org", of_code("K7RX-2MWD", URL))

    assert server.taken[0]["Subject"] == "K7RX-2MWD is your code"
