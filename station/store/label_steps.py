"""Labels in the record: may this state follow, who is on the way, and what a copy changes."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from sqlalchemy import Connection, bindparam, select, update

from station.core.journal import Entry
from station.core.label_life import LabelLifeError, may_become, refuse_copy
from station.core.pack import IN_THE_BATCH, LabelState, Quality
from station.line.ports import StoreFault
from station.store.hold_ranges import UnknownFact
from station.store.prepared import Prepared
from station.store.standing import labels_recorded
from station.store.tables import LABEL_OPEN, pack

_Body = Mapping[str, Any]

_LABEL_OF = Prepared(
    select(pack.c.label, pack.c.quality).where(pack.c.serial == bindparam("serial"))
)


def check_label(connection: Connection, serial: str, state: LabelState) -> Quality:
    """Return the quality of a bag whose label may become ``state``.

    Raises:
        StoreFault: the bag is unknown, or its label's state does not allow it.
    """
    row = _LABEL_OF.execute(connection, {"serial": serial}).fetchone()
    if row is None:
        raise StoreFault(f"bag {serial} is not in the record: check the serial")
    try:
        may_become(serial, LabelState(row[0]), state)
    except LabelLifeError as refused:
        raise StoreFault(str(refused)) from refused
    return Quality(row[1])


def check_taken_back(connection: Connection, serial: str) -> None:
    """Pass when a labelled bag may be set aside; a held or released one leaves the count too.

    Raises:
        StoreFault: the bag is unknown or out of the count, or its label is void already.
    """
    quality = check_label(connection, serial, LabelState.VOIDED)
    if quality not in IN_THE_BATCH:
        raise StoreFault(f"bag {serial} is {quality}: only a bag in the count can be set aside")


def on_their_way(connection: Connection) -> tuple[str, ...]:
    """Return the serials of bags whose label was due and has no known fate, oldest first."""
    statement = select(pack.c.id, pack.c.serial).where(
        LABEL_OPEN, pack.c.label.in_((LabelState.SUBMITTED, LabelState.SPOOLED))
    )
    submitted = {(row.id, row.serial) for row in connection.execute(statement)}
    found = sorted({*submitted, *labels_recorded(connection)})
    return tuple(serial for _, serial in found)


class LabelCopies:
    """Applies copies of labels on the writer's connection, inside its transactions."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection

    def reprint(self, entry: Entry) -> None:
        """Count one more copy of a label and send it on its way again.

        Raises:
            UnknownFact: there is no such bag, its label's state allows no copy, or the copy is not
                the next one. So no two labels of a bag ever carry the same mark.
        """
        body: _Body = entry.body
        serial, copy = body["subject"], body["details"]["copy"]
        its = select(pack.c.label, pack.c.copies).where(pack.c.serial == serial)
        row = self._connection.execute(its).one_or_none()
        if row is None:
            raise UnknownFact(f"bag {serial} is not in the record: check the serial")
        try:
            refuse_copy(serial, row.label, row.copies)
        except LabelLifeError as refused:
            raise UnknownFact(str(refused)) from refused
        if copy != row.copies + 1:
            raise UnknownFact(f"the next copy of label {serial} is {row.copies + 1}, not {copy}")
        self._connection.execute(
            update(pack)
            .where(pack.c.serial == serial)
            .values(copies=copy, label=LabelState.SUBMITTED)
        )
