"""Certificates for tests, made anew each time."""

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import NameOID


def _name(text: str) -> x509.Name:
    return x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, text)])


@dataclass(frozen=True)
class Pem:
    certificate: bytes
    key: bytes


class Authority:
    """Signs certificates of hosts and stations."""

    def __init__(self, name: str = "an authority") -> None:
        self._name, self._key = _name(name), ec.generate_private_key(ec.SECP256R1())
        self.pem = self._sign(self._name, self._key, None, 30, authority=True)

    def issue(self, name: str, host: str = "", days: int = 30) -> Pem:
        """A certificate and its key; past its end where ``days`` is negative."""
        key = ec.generate_private_key(ec.SECP256R1())
        secret = key.private_bytes(
            serialization.Encoding.PEM,
            serialization.PrivateFormat.PKCS8,
            serialization.NoEncryption(),
        )
        return Pem(self._sign(_name(name), key, host or None, days, authority=False), secret)

    def _sign(self, name, key, host, days, authority):
        now = datetime.now(UTC)  # noqa: TID251  certificates are checked against the real day
        builder = (
            x509.CertificateBuilder()
            .subject_name(name)
            .issuer_name(self._name)
            .public_key(key.public_key())
            .serial_number(x509.random_serial_number())
            .not_valid_before(now - timedelta(days=60))
            .not_valid_after(now + timedelta(days=days))
            .add_extension(x509.BasicConstraints(ca=authority, path_length=None), critical=True)
        )
        if host is not None:
            names = x509.SubjectAlternativeName([x509.DNSName(host)])
            builder = builder.add_extension(names, critical=False)
        signed = builder.sign(self._key, hashes.SHA256())
        return signed.public_bytes(serialization.Encoding.PEM)
