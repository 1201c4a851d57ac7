"""Which state of a label may follow which, and the labels that are on their way."""

from __future__ import annotations

from sqlalchemy import Connection, bindparam, select

from station.core.pack import LabelState, Quality
from station.line.ports import StoreFault
from station.store.prepared import Prepared
from station.store.tables import LABEL_OPEN, pack

_MAY_BECOME = {
    LabelState.NONE: (),
    LabelState.VOIDED: (),
    LabelState.APPLIED: (LabelState.IN_DOUBT, LabelState.VOIDED),
}
"""Label states that allow only some others; the ones not listed allow all but ``none``."""

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
    label, quality = LabelState(row[0]), Quality(row[1])
    allowed = _MAY_BECOME.get(label, tuple(LabelState)[1:])
    if state not in allowed:
        raise StoreFault(
            f"the label of bag {serial} is {label} and cannot become {state}: allowed is "
            f"{', '.join(allowed) or 'nothing more'}"
        )
    return quality


def on_their_way(connection: Connection) -> tuple[str, ...]:
    """Return the serials of bags whose label was due and has no known fate, oldest first."""
    statement = (
        select(pack.c.serial)
        .where(LABEL_OPEN, pack.c.label != LabelState.IN_DOUBT)
        .order_by(pack.c.id)
    )
    return tuple(connection.execute(statement).scalars())
