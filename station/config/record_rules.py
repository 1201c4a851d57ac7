"""Where the record's key and its backups lie, as settings."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from station.core.purging import AFTER_USE_BY_YEARS
from station.core.room import RoomRules

_USUAL = RoomRules()
_DAYS_OF_YEAR = 365


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
        keep_years: how long runs are kept after their end before they may be purged.
    """

    key: Path | None = None
    backup: BackupSettings | None = None
    room: RoomRules = _USUAL
    keep_years: int = 5

    def key_of(self, home: Path) -> Path:
        """The key's file for the record in ``home``."""
        return self.key or key_beside(home)


def key_beside(home: Path) -> Path:
    """The usual file of the key: beside the home, outside of it."""
    home = home.absolute()
    return home.with_name(f"{home.name}.key")


def least_keep_years(longest_life_days: int) -> int:
    """Whole years that the runs of a packhouse must be kept at least.

    Two years after the last use-by date: what food law asks of most packhouses for records of a
    batch (from memory: 21 CFR 117.315, two years from the day they were made; SFCR section 90, two
    years), counted here from the use-by date, which is later. Five years is common practice.

    Args:
        longest_life_days: of all products, from the day of packing to the use-by date.
    """
    return AFTER_USE_BY_YEARS + -(-longest_life_days // _DAYS_OF_YEAR)
