"""What sending to the centre costs beside bare COPY of the same entries."""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from functools import partial
from pathlib import Path

from station.app.speed.long_record import make_long_record
from station.app.speed.row import Row, timed
from station.store.outlet import JournalOutlet
from station.sync.address import CentreAddress
from station.sync.batch import ROWS, SIZE
from station.sync.connection import connect
from station.sync.delivery import Delivery
from station.sync.floor import BareTable
from station.sync.founding import found
from station.sync.schema import role
from station.sync.sender import Sender

_WAIT_S = 30.0
_WARM_UP = 5


def sending_rows(
    config: Path, address: CentreAddress, names: tuple[str, str], pieces: int
) -> Iterator[Row]:
    """Bring the same entries to the centre and into two bare tables, piece by piece by turns.

    Args:
        config: settings whose lots are counted from the day.
        address: of an empty database's owner, who may act as a station too.
        names: site and station of the settings.
        pieces: how many pieces of 500 entries are measured.
    """
    with (
        tempfile.TemporaryDirectory(prefix="packhouse-sending-") as folder,
        connect(address, "station bench", _WAIT_S) as owner,
        connect(address, "station bench", _WAIT_S) as connection,
    ):
        found(owner, [names])
        with connection.within(_WAIT_S):
            connection.execute(f'SET ROLE "{role(*names)}"'.encode())
        record = make_long_record(config, Path(folder), ROWS * (pieces + _WARM_UP))
        with JournalOutlet(record.home) as outlet:
            copied, kept = BareTable(owner, "bare_copy"), BareTable(owner, "bare_conflict")
            sender = Sender(outlet, Delivery(connection, *names, _WAIT_S))
            sender.shake_hands()
            (span,) = outlet.epochs()
            key, after, ours = (*names, span.epoch), 0, sender.pieces()
            times: list[tuple[float, float, float]] = []
            for _ in range(pieces + _WARM_UP):
                entries = outlet.after(span, after, ROWS, SIZE)
                after = entries[-1].seq
                times.append(
                    (
                        timed(partial(next, ours)),
                        timed(partial(copied.copy, key, entries)),
                        timed(partial(kept.copy_on_conflict, key, entries)),
                    )
                )
    sent, copy, conflict = (tuple(one[place] for one in times[_WARM_UP:]) for place in range(3))
    name = f"bring {ROWS} entries to the centre"
    yield Row(name, "bare COPY of them", sent, copy)
    yield Row(name, "bare COPY, then ON CONFLICT", sent, conflict)
