"""Where the record's key and its backups lie, as settings."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from station.core.room import RoomRules

_USUAL = RoomRules()


@dataclass(frozen=True, slots=True)
class BackupSettings:
    """Backups the station makes by itself.

    Args:
        folder: absolute folder on another disk than the record's.
        every_hours: from one to the next.
        keep: how many of the newest stay.
    """

    folder: Path
    every_hours: int = 6
    keep: int = 28


@dataclass(frozen=True, slots=True)
class RecordSettings:
    """How the record is proved and kept.

    Args:
        key: absolute file of the key that signs heads of the journal; None for beside the home.
        backup: None where the station makes no backups by itself.
        room: when what is done about a disk that fills up.
    """

    key: Path | None = None
    backup: BackupSettings | None = None
    room: RoomRules = _USUAL

    def key_of(self, home: Path) -> Path:
        """The key's file for the record in ``home``."""
        return self.key or key_beside(home)


def key_beside(home: Path) -> Path:
    """The usual file of the key: beside the home, outside of it."""
    home = home.absolute()
    return home.with_name(f"{home.name}.key")
