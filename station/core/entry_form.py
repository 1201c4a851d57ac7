"""Canonical bytes of entries that differ in a few values only, written many times as fast.

All bags of a blend share most of what stands in their entries. A form holds the text of what they
share, with gaps for the rest; filled in, it gives byte for byte what
:func:`station.core.journal.canonical` gives.
"""

from __future__ import annotations

from collections.abc import Mapping
from json.encoder import encode_basestring

from station.core.journal import EntryKind, Value, written
from station.core.pack import Moment

WORD, NUMBER, TEXT = '"%s"', "%d", "%s"
"""How a gap is filled: a text without signs that JSON escapes, a whole number, any value's text."""

_HEAD = {"monotonic": WORD, "offset": NUMBER, "seq": NUMBER, "utc": WORD, "who": TEXT, "zone": TEXT}


class EntryForm:
    """The form of one kind of entry of one chain.

    Args:
        chain: site, station and epoch.
        kind: of the entries.
        shared: what all their bodies hold alike.
        gaps: what else stands in a body, and how it is filled in.

    Raises:
        JournalError: ``shared`` holds what the journal cannot keep exactly.
    """

    def __init__(
        self,
        chain: tuple[str, str, int],
        kind: EntryKind,
        shared: Mapping[str, Value],
        gaps: Mapping[str, str],
    ) -> None:
        site, station, epoch = chain
        head: dict[str, Value]
        head = {"v": 1, "site": site, "station": station, "epoch": str(epoch), "kind": str(kind)}
        body = _object(_fixed(shared) | dict(gaps))
        self._text = _object(_fixed(head) | _HEAD | {"body": body})

    def bytes_of(self, seq: int, at: Moment, who: str, values: tuple[str | int, ...]) -> bytes:
        """Return the canonical bytes of an entry.

        Args:
            seq: its number in the epoch.
            at: when.
            who: id of a person, or ``station``.
            values: what goes into the gaps, in the order of their names.
        """
        text = self._text % (
            *values,
            at.monotonic_ns,
            at.offset_minutes,
            seq,
            at.utc.isoformat(timespec="microseconds"),
            encode_basestring(who),
            encode_basestring(at.zone),
        )
        return text.encode()


def _fixed(values: Mapping[str, Value]) -> dict[str, str]:
    return {
        name.replace("%", "%%"): written(value).replace("%", "%%") for name, value in values.items()
    }


def _object(texts: Mapping[str, str]) -> str:
    """An object's text, its members in the order of RFC 8785."""
    return "{" + ",".join(f'"{name}":{texts[name]}' for name in sorted(texts)) + "}"
