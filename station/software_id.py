"""Which software this is: its version, and a hash over the modules that make a weight a record.

The hash is SHA-256 over the lines that ``sha256sum`` prints for the files of :data:`RELEVANT`, in
the order of their paths, so that anybody can work it out with that command alone. It tells a change
of these modules; who can change them can change this one too. Practice of guides on software of
measuring instruments (WELMEC 7.2, OIML D 31; from memory): version and checksum, shown on command.
"""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from functools import cache
from importlib.metadata import version
from pathlib import Path

RELEVANT = (
    "drivers/frames",
    "drivers/link.py",
    "drivers/link_items.py",
    "drivers/parity.py",
    "drivers/port.py",
    "drivers/steady.py",
    "drivers/zero_gate.py",
    "labels/content.py",
    "labels/net_quantity.py",
    "labels/readback.py",
    "labels/rules",
    "station/access",
    "station/clock.py",
    "station/config",
    "station/core",
    "station/line",
    "station/software_id.py",
    "station/store",
)
"""Files, and folders with all their Python files: from the scale's bytes to the durable record."""

SHORT = 12
"""Digits of the hash that stand beside the version where there is little room."""


@dataclass(frozen=True, slots=True)
class SoftwareId:
    """What the software is.

    Args:
        version: of the installed station.
        digest: 64 hex digits.
        files: how many files it was worked out from.
    """

    version: str
    digest: str
    files: int

    def __str__(self) -> str:
        return f"{self.version} {self.digest[:SHORT]}"


@cache
def software_id() -> SoftwareId:
    """The software as it lies on the disk when this is first asked."""
    root = Path(__file__).resolve().parents[1]
    found = relevant_files(root)
    return SoftwareId(version("pack-line-station"), digest_of(root, found), len(found))


def relevant_files(root: Path) -> tuple[str, ...]:
    """Paths of the files, from ``root``, in their order.

    Raises:
        FileNotFoundError: one of :data:`RELEVANT` is not there.
    """
    found: set[str] = set()
    for name in RELEVANT:
        place = root / name
        files = [place] if place.is_file() else sorted(place.rglob("*.py"))
        if not files:
            raise FileNotFoundError(place)
        found.update(file.relative_to(root).as_posix() for file in files)
    return tuple(sorted(found))


def digest_of(root: Path, files: tuple[str, ...]) -> str:
    """The hash over files as 64 hex digits."""
    whole = hashlib.sha256()
    for name in files:
        one = hashlib.sha256((root / name).read_bytes()).hexdigest()
        whole.update(f"{one}  {name}\n".encode())
    return whole.hexdigest()
