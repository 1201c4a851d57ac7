"""Whether one bag may stand for a reject that was topped up or weighed again."""

from __future__ import annotations

from pathlib import Path

from station.core.dispositions import DispositionError
from station.core.reject_ledger import LedgerRow
from station.store.queries import trace_pack


def check_into(home: Path, row: LedgerRow, into: str) -> None:
    """Pass when the new bag says on its label all that the reject could hold.

    Args:
        home: folder of the record.
        row: the reject.
        into: serial of the new bag.

    Raises:
        BadInput: no such bag.
        DispositionError: another product, a lot that is not listed, or a later use-by date.
    """
    new = trace_pack(home, into)
    if new.run.product != row.product:
        raise DispositionError(
            f"bag {into} is {new.run.name}, bag {row.serial} is {row.name}: it cannot stand for it"
        )
    listed = {(one.component, one.code) for one in new.lots}
    missing = [use.lot for use in row.lots if (use.component, use.lot) not in listed]
    if missing:
        raise DispositionError(
            f"bag {into} does not list lot {', '.join(missing)}, which bag {row.serial} may hold: "
            "rework it instead, so that its lots go on"
        )
    if new.record.draft.use_by > row.use_by:
        raise DispositionError(
            f"bag {into} has use-by {new.record.draft.use_by}, bag {row.serial} {row.use_by}: the "
            "earlier date must stand on the new bag"
        )
