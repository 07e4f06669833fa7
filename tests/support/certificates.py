"""Certificates that sign themselves, for servers of tests on this machine."""

from __future__ import annotations

import datetime as dt
import ipaddress
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import NameOID


def make_certificate(
    folder: Path, name: str = "localhost", *, begins_in_days: float = -1, ends_in_days: float = 7
) -> Path:
    """Make a certificate for a name and for 127.0.0.1, with its key, in one PEM file; return the file."""
    key = ec.generate_private_key(ec.SECP256R1())
    whose = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, name)])
    now = dt.datetime.now(dt.UTC)
    names: list[x509.GeneralName] = [x509.DNSName(name)]
    if name == "localhost":
        names.append(x509.IPAddress(ipaddress.ip_address("127.0.0.1")))
    made = (
        x509.CertificateBuilder()
        .subject_name(whose)
        .issuer_name(whose)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(now + dt.timedelta(days=begins_in_days))
        .not_valid_after(now + dt.timedelta(days=ends_in_days))
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
