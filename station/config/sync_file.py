"""``[sync]`` of station.toml: the way to the centre; the table may be missing."""

from __future__ import annotations

import re
from datetime import timedelta
from pathlib import Path
from typing import Annotated

from station.config.check import check_table
from station.config.faults import Faults
from station.config.fields import Rule, one_of, printable, refused, whole
from station.config.settings import Shape
from station.config.sync_settings import SyncSettings
from station.config.toml_file import Table

KEY = "sync"
_CHECKED = ("verify-full", "verify-ca")
_URL = re.compile(r"postgres(ql)?://[^\s:@/?#]+@[^\s@/?#]+/[^\s@/?#]+")
_HEX = re.compile(r"[0-9a-f]{64}", re.ASCII)


def _url(text: str) -> str:
    if not _URL.fullmatch(text):
        raise refused("has another form")
    return text


def _key(text: str) -> str:
    if not _HEX.fullmatch(text):
        raise refused("has another form")
    return text


_FILE = printable(300)


class _Table(Shape):
    """``[sync]``."""

    centre: Annotated[
        str, Rule("postgresql://user@host:port/database, no password and nothing behind it", _url)
    ]
    tls: Annotated[str, one_of("verify-full", "verify-ca", "require", "disable")] = "verify-full"
    authority: Annotated[str, _FILE] | None = None
    certificate: Annotated[str, _FILE] | None = None
    key: Annotated[str, _FILE] | None = None
    password_file: Annotated[str, _FILE] | None = None
    alarm_hours: Annotated[int, whole(1, 720, "hours")] = 24
    snapshot_key: Annotated[
        str, Rule("64 digits 0-9 a-f, as `station centre key` prints it", _key)
    ] = ""


def read_sync(table: Table, file: str, faults: Faults) -> SyncSettings | None:
    """Return ``[sync]``; None where there is none, or after noting what is wrong with it.

    Files that are no absolute path lie beside the settings.
    """
    if KEY not in table:
        return None
    given = check_table(_Table, table, KEY, file, faults)
    if given is None:
        return None
    if given.tls in _CHECKED and given.authority is None:
        faults.add(
            file,
            f"{KEY}.authority",
            f'is missing, and tls = "{given.tls}" checks the server by it',
            'the file of the authority\'s certificate; or tls = "require" (the server is not '
            'checked) or "disable" (nothing is)',
        )
        return None
    if (given.certificate is None) is not (given.key is None):
        faults.add(file, f"{KEY}.certificate", "and key go together", "both, or neither")
        return None

    def beside(text: str | None) -> Path | None:
        return None if text is None else (faults.folder / Path(text).expanduser()).absolute()

    return SyncSettings(
        url=given.centre,
        tls=given.tls,
        authority=beside(given.authority),
        certificate=beside(given.certificate),
        key=beside(given.key),
        password_file=beside(given.password_file),
        patience=timedelta(hours=given.alarm_hours),
        snapshot_key=given.snapshot_key,
    )
