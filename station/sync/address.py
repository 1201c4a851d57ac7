"""Where the centre is, and how sure a station is that it is the centre.

libpq by itself does not check whose server answers (PostgreSQL documentation, "SSL Support",
section "Client Verification of Server Certificates"). Here the full check is the usual, and
anything weaker has to be written down as such.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path

import psycopg
from psycopg.conninfo import conninfo_to_dict, make_conninfo

from station.config.sync_settings import SyncSettings
from station.errors import BadInput

_ALLOWED = frozenset({"host", "hostaddr", "port", "dbname", "user"})
_FORM = "postgresql://user@host:port/database, nothing behind it"


class Tls(StrEnum):
    """How the server is checked; libpq's sslmode."""

    FULL = "verify-full"
    """Its certificate comes from the given authority and names its host."""
    AUTHORITY = "verify-ca"
    """Its certificate comes from the given authority, whatever host it names."""
    ENCRYPTED = "require"
    """Nobody listens in; who answers is not checked."""
    OFF = "disable"
    """Neither: for a server on the same machine."""


@dataclass(frozen=True, slots=True)
class CentreAddress:
    """How to reach the centre.

    Args:
        url: ``postgresql://user@host:port/database``, without a password.
        tls: how the server is checked.
        authority: file of the certificate authority; needed for the two checks.
        certificate, key: files the station shows for itself; both or neither.
        password: read from a file, or empty.

    Raises:
        BadInput: the address is none, holds a password, or the check cannot be made.
    """

    url: str
    tls: Tls = Tls.FULL
    authority: Path | None = None
    certificate: Path | None = None
    key: Path | None = None
    password: str = ""

    def __post_init__(self) -> None:
        parts = _parts(self.url)
        if "password" in parts:
            raise BadInput("the centre's address holds a password", "keep it in a file of its own")
        strange = sorted(set(parts) - _ALLOWED)
        if strange:
            raise BadInput(f"the centre's address sets {', '.join(strange)}", f"allowed: {_FORM}")
        lacking = [name for name in ("host", "dbname", "user") if not parts.get(name)]
        if lacking:
            raise BadInput(f"the centre's address names no {lacking[0]}", f"allowed: {_FORM}")
        if self.tls in (Tls.FULL, Tls.AUTHORITY) and self.authority is None:
            raise BadInput(
                f"tls {self.tls} needs the certificate of the authority",
                "name its file, or say openly what is not checked: tls = "
                + " or ".join(f'"{one}"' for one in (Tls.ENCRYPTED, Tls.OFF)),
            )
        for file in (self.authority, self.certificate, self.key):
            if file is not None and not file.is_file():
                raise BadInput(f"{file} is no file", "name the certificate's file in PEM form")
        if (self.certificate is None) is not (self.key is None):
            raise BadInput("a certificate needs its key", "name both files, or neither")

    @property
    def shown(self) -> str:
        """Host and database, for a person."""
        parts = _parts(self.url)
        return f"{parts['host']}:{parts.get('port', '5432')}/{parts['dbname']}"

    def conninfo(self, application: str, wait_s: float) -> str:
        """What libpq is given."""
        extra = {
            "sslmode": str(self.tls),
            "sslrootcert": self.authority,
            "sslcert": self.certificate,
            "sslkey": self.key,
            "password": self.password or None,
        }
        return make_conninfo(
            self.url,
            application_name=application,
            connect_timeout=str(max(1, round(wait_s))),
            gssencmode="disable",
            keepalives_idle="20",
            keepalives_interval="5",
            keepalives_count="3",
            **{name: str(value) for name, value in extra.items() if value is not None},
        )


def address_of(settings: SyncSettings) -> CentreAddress:
    """The centre's address of the settings, with the password read from its file.

    Raises:
        BadInput: a file is missing, or others may read the password.
    """
    secret = settings.password_file
    return CentreAddress(
        url=settings.url,
        tls=Tls(settings.tls),
        authority=settings.authority,
        certificate=settings.certificate,
        key=settings.key,
        password="" if secret is None else read_password(secret),
    )


def read_password(file: Path) -> str:
    """Return the password a file holds on its first line.

    Raises:
        BadInput: it cannot be read, is empty, or others than its owner may read it.
    """
    try:
        lines = file.read_text(encoding="utf-8").splitlines()
        open_to_others = file.stat().st_mode & 0o077
    except (OSError, UnicodeDecodeError) as fault:
        raise BadInput(f"the password file {file} cannot be read", str(fault)) from fault
    if not lines or not lines[0]:
        raise BadInput(f"the password file {file} is empty", "write the password on its first line")
    if open_to_others:
        raise BadInput(f"others may read the password file {file}", "chmod 600 it")
    return lines[0]


def _parts(url: str) -> dict[str, str]:
    if not url.startswith(("postgresql://", "postgres://")):
        raise BadInput(f"{url!r} is no address of a centre", f"allowed: {_FORM}")
    try:
        return {name: str(value) for name, value in conninfo_to_dict(url).items()}
    except psycopg.ProgrammingError as fault:
        raise BadInput(f"{url!r} is no address of a centre", f"allowed: {_FORM}") from fault
