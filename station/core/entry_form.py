"""Canonical bytes of entries that differ in a few values only, written many times as fast.

All bags of a blend share most of what stands in their entries. A form holds the text of what they
share, with gaps for the rest; filled in, it gives byte for byte what
:func:`station.core.journal.canonical` gives.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from functools import lru_cache

from station.core.journal import EntryKind, Value, written
from station.core.pack import Moment

_GAP = "\0"  # JSON escapes it, so no text of an entry has it
WORD, TEXT = f'"{_GAP}"', _GAP
"""How a gap is filled: with a text without signs that JSON escapes, with a value as JSON has it."""

_HEAD = {"monotonic": WORD, "seq": TEXT, "utc": WORD}


class EntryForm:
    """The form of one kind of entry of one chain.

    Args:
        chain: site, station and epoch.
        kind: of the entries.
        who: id of a person, or ``station``.
        zone, offset: the clock's zone and minutes from UTC.
        shared: what all their bodies hold alike.
        gaps: what else stands in a body, and how it is filled in.

    Raises:
        JournalError: ``shared`` holds what the journal cannot keep exactly.
    """

    def __init__(
        self,
        chain: tuple[str, str, int],
        kind: EntryKind,
        who: str,
        zone: str,
        offset: int,
        shared: Mapping[str, Value],
        gaps: Mapping[str, str],
    ) -> None:
        site, station, epoch = chain
        head: dict[str, Value] = {
            "v": 1,
            "site": site,
            "station": station,
            "epoch": str(epoch),
            "kind": str(kind),
            "who": who,
            "zone": zone,
            "offset": offset,
        }
        body = _object(_fixed(shared) | dict(gaps))
        between = _object(_fixed(head) | _HEAD | {"body": body}).split(_GAP)
        self._parts = [part for text in between for part in (text, "")][:-1]

    def bytes_of(self, seq: int, utc: str, monotonic_ns: int, values: tuple[str, ...]) -> bytes:
        """Return the canonical bytes of an entry.

        Args:
            seq: its number in the epoch.
            utc: its time, as :func:`utc_of` gives it.
            monotonic_ns: the machine's steady count then.
            values: what goes into the gaps, in the order of their names.
        """
        parts = self._parts.copy()
        parts[1::2] = (*values, str(monotonic_ns), str(seq), utc)
        return "".join(parts).encode()


def utc_of(at: Moment) -> str:
    """The time in UTC as an entry has it, to the microsecond."""
    # What at.utc.isoformat("T", "microseconds") gives, without asking the zone twice.
    return f"{_day(at.utc.date())}T{at.utc.time().isoformat('microseconds')}+00:00"


_day = lru_cache(maxsize=8)(date.isoformat)


def _fixed(values: Mapping[str, Value]) -> dict[str, str]:
    return {name: written(value) for name, value in values.items()}


def _object(texts: Mapping[str, str]) -> str:
    """An object's text, its members in the order of RFC 8785."""
    return "{" + ",".join(f'"{name}":{texts[name]}' for name in sorted(texts)) + "}"
