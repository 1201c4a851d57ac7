"""What a purge must not change: everything that stays, compared before it commits."""

from __future__ import annotations

from collections.abc import Sequence

from sqlalchemy import Connection

from station.errors import EnvironmentFault

_VIEWS = {
    "run": "SELECT uid, entry_id, started_at, ended_at FROM run WHERE {kept_run}",
    "bag": "SELECT p.serial, p.epoch, p.number, p.entry_id, p.net_ug, p.verdict, p.quality,"
    " p.rejected, p.reason, p.label, p.copies, b.code, b.production_day, b.use_by"
    " FROM pack p JOIN blend b ON b.id = p.blend_id WHERE {kept_bag}",
    "lot": "SELECT * FROM lot",
    "held range": "SELECT hold, epoch, first, last, released FROM hold_range",
    "fact that still counts": "SELECT kind, key, entry_id FROM standing WHERE kind <> 'label'",
    "case or pallet": "SELECT u.sscc, u.kind, u.bags, u.net_ug, u.undone, u.label, u.copies,"
    " p.sscc AS pallet, s.number AS shipment FROM unit u LEFT JOIN unit p ON p.id = u.pallet_id"
    " LEFT JOIN shipment s ON s.id = u.shipment_id",
    "bags of a case": "SELECT u.sscc, c.head, c.first, c.last, c.undone FROM case_span c"
    " JOIN unit u ON u.id = c.unit_id",
    "shipment": "SELECT number, customer, reference, state FROM shipment",
    "decision": "SELECT d.serial, d.result, d.into_serial, d.who FROM disposition d"
    " JOIN pack p ON p.serial = d.serial JOIN blend b ON b.id = p.blend_id WHERE {kept_bag}",
    "block": "SELECT epoch, number, root FROM tree_block",
}
"""Each table by what names its rows, without row numbers, which are given anew."""


class Before:
    """What was there, kept aside inside the transaction.

    Args:
        connection: inside the transaction, before anything is taken out.
        runs: row numbers of the runs that go.
    """

    def __init__(self, connection: Connection, runs: Sequence[int]) -> None:
        gone = f"({', '.join(map(str, runs))})"
        for number, view in enumerate(_VIEWS.values()):
            left = view.format(kept_run=f"id NOT IN {gone}", kept_bag=f"b.run_id NOT IN {gone}")
            connection.exec_driver_sql(f"DROP TABLE IF EXISTS temp.kept_{number}")
            connection.exec_driver_sql(f"CREATE TEMP TABLE kept_{number} AS {left}")

    def compare(self, connection: Connection) -> None:
        """Compare it with what is there now; what the purge itself added is not held against it.

        Raises:
            EnvironmentFault: something that stays was changed; names it.
        """
        for number, (what, view) in enumerate(_VIEWS.items()):
            now = view.format(kept_run="1", kept_bag="1")
            lost = f"SELECT * FROM kept_{number} EXCEPT {now}"
            new = f"{now} EXCEPT SELECT * FROM kept_{number}"
            for words, statement in (("would be lost or changed", lost), ("would be new", new)):
                found = connection.exec_driver_sql(f"{statement} LIMIT 1").first()
                if found is not None and not (what == "block" and statement is new):
                    raise EnvironmentFault(
                        f"nothing was purged: {what} {found[0]} {words}",
                        "keep the record as it is and report this: a purge takes whole runs and "
                        "changes nothing else",
                    )
            connection.exec_driver_sql(f"DROP TABLE temp.kept_{number}")
