"""A real SMTP server on loopback that answers by recipient: ``550@…`` is refused for good, ``451@…`` for now."""

from __future__ import annotations

import datetime as dt
import ipaddress
import ssl
from email import message_from_bytes, policy
from email.message import EmailMessage
from pathlib import Path
from types import TracebackType
from typing import Any

from aiosmtpd.controller import Controller
from aiosmtpd.smtp import AuthResult, LoginPassword
from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import NameOID
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


def make_certificate(folder: Path) -> Path:
    """Make a certificate for localhost and 127.0.0.1, with its key, in one PEM file."""
    key = ec.generate_private_key(ec.SECP256R1())
    name = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, "localhost")])
    now = dt.datetime.now(dt.UTC)
    names = [x509.DNSName("localhost"), x509.IPAddress(ipaddress.ip_address("127.0.0.1"))]
    made = (
        x509.CertificateBuilder()
        .subject_name(name)
        .issuer_name(name)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(now - dt.timedelta(1))
        .not_valid_after(now + dt.timedelta(7))
        .add_extension(x509.SubjectAlternativeName(names), critical=False)
        .add_extension(x509.BasicConstraints(ca=True, path_length=None), critical=True)
        .sign(key, hashes.SHA256())
    )
    path = folder / "certificate.pem"
    path.write_bytes(
        made.public_bytes(serialization.Encoding.PEM)
        + key.private_bytes(
            serialization.Encoding.PEM, serialization.PrivateFormat.PKCS8, serialization.NoEncryption()
        )
    )
    return path
