"""An entry as its row keeps it, held to what stands beside its bytes."""

from __future__ import annotations

from station.core.journal import Entry, JournalError
from station.store import journal as j
from station.store.damage import Damage


def entry_of(kept: j.Kept, owner: tuple[str, str] | None) -> Entry:
    """Read the entry of a row that is not empty.

    Args:
        kept: the row.
        owner: site and station of the record; None where it names none.

    Raises:
        Damage: the bytes are no entry, of another row, or of another station.
    """
    seq = kept.stored.seq
    try:
        entry = j.read_entry(kept.stored.canonical)
    except JournalError as fault:
        raise Damage(seq, f"entry {seq}: {fault}") from fault
    if (entry.epoch, entry.seq, str(entry.kind)) != (kept.epoch, seq, kept.kind):
        raise Damage(seq, f"entry {seq} stands under another epoch, number or kind than its own")
    if (entry.site, entry.station) != owner:
        raise Damage(
            seq, f"entry {seq} was written by station {entry.station} at site {entry.site}"
        )
    return entry
