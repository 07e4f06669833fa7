"""Handing a letter to the operator's mail server.

A mail server that took a message has promised to deliver it (RFC 5321, section 4.5.4), as a push service has.
"""

from __future__ import annotations

import contextlib
import smtplib
import ssl
from functools import cache
from typing import Final

from ....logs import say
from ....settings import MailSettings
from ..addresses import Mailbox
from ..channel import Delivery
from ..outcome import Outcome, Refused, RetryLater, Sent
from .rendering import render

TIMEOUT_S: Final = 10
LOGIN_WAIT_S: Final = 600
"""A mail server that refuses our login is asked again after ten minutes: somebody has to mend the settings first."""


class MailChannel:
    """Brings messages to mailboxes. ``trust`` replaces the system's certificates in tests."""

    def __init__(self, settings: MailSettings, trust: ssl.SSLContext | None = None) -> None:
        self._settings = settings
        self._trust = trust or _trusted()

    def send(self, to: Mailbox, delivery: Delivery, now_ms: int) -> Outcome:
        """Send and say what came of it; never raises for what a mail server or the network does."""
        letter = render(delivery, self._settings.sender, to.address, now_ms)
        try:
            client = self.connect()
        except smtplib.SMTPAuthenticationError as error:
            return _said(to, RetryLater("mail_login", LOGIN_WAIT_S, vendor=True), error.smtp_code)
        except (smtplib.SMTPException, OSError) as error:
            return _said(to, RetryLater("network", vendor=True), type(error).__name__)
        try:
            client.send_message(letter, self._settings.sender, [to.address])
        except smtplib.SMTPRecipientsRefused as error:
            return _said(to, _read_code(error.recipients[to.address][0]), "recipient")
        except smtplib.SMTPResponseException as error:
            return _said(to, _read_code(error.smtp_code), "message")
        except (smtplib.SMTPException, OSError) as error:
            return _said(to, RetryLater("network", vendor=True), type(error).__name__)
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


@cache
def _trusted() -> ssl.SSLContext:
    """Whose certificates are believed; one reading of them serves a process."""
    return ssl.create_default_context()


def _read_code(code: int) -> Outcome:
    """Return what an SMTP reply means (RFC 5321, section 4.2.1): 4yz later, 5yz not this way."""
    if code == 421:
        return RetryLater("smtp_421", vendor=True)
    if 400 <= code < 500:
        return RetryLater(f"smtp_{code}")
    return Refused(f"smtp_{code}", suspect=True)


def _said(to: Mailbox, outcome: Outcome, why: object) -> Outcome:
    say("mail not taken", mailbox=to.mark, reason=getattr(outcome, "reason", None), why=why)
    return outcome
