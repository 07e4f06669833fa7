"""E-mail as a second channel: the same messages from the same queue, handed to the operator's mail server.

A mail server that took a message has promised to deliver it (RFC 5321, section 4.5.4), as a push service has.
The ``Message-ID`` comes from the delivery, so that a repeat after a crash is the same mail again.
"""

from __future__ import annotations

import contextlib
import datetime as dt
import hashlib
import json
import smtplib
import ssl
from email.message import EmailMessage
from email.utils import format_datetime
from typing import Final
from urllib.parse import urlsplit

from sqlalchemy import Connection, delete, insert

from ..care.wording import say as words
from ..logs import say
from ..records.ids import uuid7
from ..settings import MailSettings
from .answers import Outcome, Refused, RetryLater, Sent
from .sender import Message, Target
from .tables import subscriptions

MAIL: Final = "mail"
"""Host and key id of a mailbox among the subscriptions."""
TIMEOUT_S: Final = 10
LOGIN_WAIT_S: Final = 600
"""A mail server that refuses our login is asked again after ten minutes: somebody has to mend the settings first."""


class MailSender:
    """Sends a nudge to a mailbox. ``trust`` replaces the system's certificates in tests."""

    def __init__(self, settings: MailSettings, public_url: str, trust: ssl.SSLContext | None = None) -> None:
        self._settings, self._public_url = settings, public_url
        self._trust = trust or ssl.create_default_context()

    def send(self, target: Target, message: Message, now_ms: int) -> Outcome:
        """Send and say what came of it; never raises for what a mail server or the network does."""
        address = target.endpoint.removeprefix("mailto:")
        try:
            client = self.connect()
        except smtplib.SMTPAuthenticationError as error:
            return self._said(target, RetryLater("mail_login", LOGIN_WAIT_S, vendor=True), error.smtp_code)
        except (smtplib.SMTPException, OSError) as error:
            return self._said(target, RetryLater("network", vendor=True), type(error).__name__)
        try:
            client.send_message(self._mail(address, message, now_ms), self._settings.sender, [address])
        except smtplib.SMTPRecipientsRefused as error:
            return self._said(target, _read_code(error.recipients[address][0]), "recipient")
        except smtplib.SMTPResponseException as error:
            return self._said(target, _read_code(error.smtp_code), "message")
        except (smtplib.SMTPException, OSError) as error:
            return self._said(target, RetryLater("network", vendor=True), type(error).__name__)
        finally:
            with contextlib.suppress(smtplib.SMTPException, OSError):  # it has the message or not by now
                client.quit()
        return Sent()

    def connect(self) -> smtplib.SMTP:
        """Return a connection that is encrypted and logged in as the settings say. Raises smtplib's errors."""
        s = self._settings
        if s.security == "tls":
            client: smtplib.SMTP = smtplib.SMTP_SSL(s.host, s.port, timeout=TIMEOUT_S, context=self._trust)
        else:
            client = smtplib.SMTP(s.host, s.port, timeout=TIMEOUT_S)
        try:
            if s.security == "starttls":
                client.starttls(context=self._trust)
            if s.user:
                client.login(s.user, s.password)
        except BaseException:
            client.close()
            raise
        return client

    def _mail(self, address: str, message: Message, now_ms: int) -> EmailMessage:
        """Make the mail from the payload that a phone would get: its title, its lines, its address."""
        payload = json.loads(message.body)
        told, inner = payload["notification"], payload["broodshelf"]
        mail = EmailMessage()
        mail["From"] = self._settings.sender
        mail["To"] = address
        mail["Subject"] = " ".join(str(told["title"]).split())
        mail["Date"] = format_datetime(dt.datetime.fromtimestamp(now_ms // 1000, dt.UTC))
        name = hashlib.sha256(str(inner["delivery_id"]).encode()).hexdigest()[:32]
        mail["Message-ID"] = f"<{name}@{urlsplit(self._public_url).hostname}>"
        mail["Auto-Submitted"] = "auto-generated"  # RFC 3834: no out-of-office answers
        lines = str(told["body"]).split(" · ")
        mail.set_content("\n".join([*lines, "", str(told["navigate"]), "", words("nudge", "mail_foot")]))
        return mail

    def _said(self, target: Target, outcome: Outcome, why: object) -> Outcome:
        say("mail not taken", mailbox=target.mark, reason=getattr(outcome, "reason", None), why=why)
        return outcome


def listen_by_mail(
    connection: Connection, household_id: str, person_id: str, address: str, now_ms: int
) -> None:
    """Let a confirmed mailbox hear a person's nudges, in place of any other of theirs."""
    forget_mailbox(connection, household_id, person_id)
    connection.execute(
        insert(subscriptions).values(
            id=uuid7(now_ms),
            household_id=household_id,
            person_id=person_id,
            device_id=uuid7(now_ms),
            endpoint=f"mailto:{address}",
            host=MAIL,
            p256dh="",
            auth="",
            key_id=MAIL,
            created_ms=now_ms,
            seen_ms=now_ms,
            failures=0,
        )
    )


def forget_mailbox(connection: Connection, household_id: str, person_id: str) -> None:
    """Send no more mail to a person."""
    s = subscriptions.c
    connection.execute(
        delete(subscriptions).where(s.household_id == household_id, s.person_id == person_id, s.host == MAIL)
    )


def _read_code(code: int) -> Outcome:
    """Return what an SMTP reply means (RFC 5321, section 4.2.1): 4yz later, 5yz not this way."""
    if code == 421:
        return RetryLater("smtp_421", vendor=True)
    if 400 <= code < 500:
        return RetryLater(f"smtp_{code}")
    return Refused(f"smtp_{code}", suspect=True)
