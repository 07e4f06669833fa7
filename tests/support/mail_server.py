"""A real SMTP server on loopback that answers by recipient: ``550@…`` is refused for good, ``451@…`` for now."""

from __future__ import annotations

import ssl
from email import message_from_bytes, policy
from email.message import EmailMessage
from pathlib import Path
from types import TracebackType
from typing import Any

from aiosmtpd.controller import Controller
from aiosmtpd.smtp import AuthResult, LoginPassword
from tests.support.certificates import make_certificate
from tests.support.server import free_port

USER, PASSWORD = "shelf", "a password"  # of this test server only


class MailServer:
    """``with MailServer() as server``: ``server.taken`` holds what arrived. ``tls``: wants STARTTLS and a login."""

    def __init__(self, folder: Path | None = None, *, tls: bool = False) -> None:
        self.taken: list[EmailMessage] = []
        self.hang_up_after_data = False
        self.trust: ssl.SSLContext | None = None
        options: dict[str, Any] = {}
        if tls:
            assert folder is not None
            certificate = make_certificate(folder)
            context = ssl.create_default_context(ssl.Purpose.CLIENT_AUTH)
            context.load_cert_chain(certificate)
            self.trust = ssl.create_default_context(cafile=str(certificate))
            options = {
                "tls_context": context, "require_starttls": True, "auth_required": True, "authenticator": self._login,
            }  # fmt: skip
        self.port = free_port()
        self.controller = Controller(self, hostname="127.0.0.1", port=self.port, **options)

    async def handle_RCPT(self, _server, _session, envelope, address, _options) -> str:  # noqa: N802 - its name
        status = address.partition("@")[0]
        if status.isdigit():
            return f"{status} as asked"
        envelope.rcpt_tos.append(address)
        return "250 OK"

    async def handle_DATA(self, server, _session, envelope) -> str:  # noqa: N802 - its name
        mail = message_from_bytes(envelope.content, policy=policy.default)
        assert isinstance(mail, EmailMessage)
        self.taken.append(mail)
        if self.hang_up_after_data:
            server.transport.close()
        return "250 taken"

    def _login(self, _server, _session, _envelope, _mechanism, data) -> AuthResult:
        good = isinstance(data, LoginPassword) and (data.login, data.password) == (
            USER.encode(),
            PASSWORD.encode(),
        )
        return AuthResult(success=good, handled=False)

    def __enter__(self) -> MailServer:
        self.controller.start()
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, tb: TracebackType | None
    ) -> None:
        self.controller.stop()
