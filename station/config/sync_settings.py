"""How a station reaches the centre, frozen."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from pathlib import Path


@dataclass(frozen=True, slots=True)
class SyncSettings:
    """The way to the centre.

    Args:
        url: ``postgresql://user@host:port/database``, without a password.
        tls: how the server is checked: ``verify-full``, ``verify-ca``, ``require`` or ``disable``.
        authority: file of the certificate authority; None where nothing is checked.
        certificate, key: files the station shows for itself; both or neither.
        password_file: file with its password; None without one.
        patience: how old the backlog may grow before somebody is asked.
        snapshot_key: public key (32 bytes as hex) whose signature snapshots of the centre bear;
            empty where none are taken.
    """

    url: str
    tls: str = "verify-full"
    authority: Path | None = None
    certificate: Path | None = None
    key: Path | None = None
    password_file: Path | None = None
    patience: timedelta = timedelta(hours=24)
    snapshot_key: str = ""
