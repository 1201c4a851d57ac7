"""What stations saw when they sent, and whether the centre's tables can be the truth behind it.

Each sending ends in one of two ways for the station: *ok*, the centre acknowledged it, or
*unknown*, the connection was lost before the answer came. Whatever happened in between, afterwards
every entry that was ok is there exactly once with the same hash, every unknown one once or not at
all, nothing is there that was never sent, and each station's entries have no gap.
"""

import threading
from contextlib import contextmanager
from unittest import mock

import psycopg

from station.sync.delivery import Delivery

OK, UNKNOWN = 2, 1


class History:
    """Written by the workers' threads while :meth:`recording`."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._sent: dict[int, dict[int, tuple[int, bytes]]] = {}
        self._checked: dict[int, int] = {}
        self.ok = self.unknown = 0
        """Sendings, by how they ended."""

    @contextmanager
    def recording(self):
        """See every sending of this process."""
        send = Delivery.send

        def seen(delivery, epoch, batch):
            entries = [*batch.good, *(one.entry for one in batch.apart)]
            try:
                mark = send(delivery, epoch, batch)
            except Exception:
                self._note(epoch, entries, UNKNOWN)
                raise
            self._note(epoch, entries, OK)
            return mark

        with mock.patch.object(Delivery, "send", seen):
            yield

    def _note(self, epoch, entries, outcome):
        with self._lock:
            if outcome == OK:
                self.ok += 1
            else:
                self.unknown += 1
            of_epoch = self._sent.setdefault(epoch, {})
            for entry in entries:
                before = of_epoch.get(entry.seq, (0, b""))[0]
                of_epoch[entry.seq] = (max(before, outcome), entry.hash)

    def check(self, connection: psycopg.Connection) -> list[str]:
        """Compare with the centre while nobody sends; returns what cannot be.

        What an earlier check found good is only counted.
        """
        faults = []
        for epoch, sent in self._sent.items():
            start = self._checked.get(epoch, 0)
            (count, most) = connection.execute(
                "SELECT count(*), coalesce(max(seq), 0) FROM centre.entry WHERE epoch = %s",
                (epoch,),
            ).fetchone()
            if count != most:
                faults.append(f"epoch {epoch}: {count} entries up to {most}: a gap, or one twice")
            rows = connection.execute(
                "SELECT seq, hash FROM centre.entry WHERE epoch = %s AND seq > %s", (epoch, start)
            ).fetchall()
            there = {seq: bytes(digest) for seq, digest in rows}
            for seq, (outcome, digest) in sent.items():
                if seq > start and outcome == OK and there.get(seq) != digest:
                    faults.append(f"epoch {epoch}: entry {seq} was acknowledged and is not there")
            for seq, digest in there.items():
                if sent.get(seq, (0, b""))[1] != digest:
                    faults.append(f"epoch {epoch}: entry {seq} is there and was never sent")
            mark = connection.execute(
                "SELECT seq FROM centre.watermark WHERE epoch = %s", (epoch,)
            ).fetchone()
            if mark is None or mark[0] != most:
                faults.append(f"epoch {epoch}: the watermark says {mark}, entries end at {most}")
            self._checked[epoch] = most
            for seq in [seq for seq in sent if seq <= most]:
                del sent[seq]
        known = connection.execute("SELECT DISTINCT epoch FROM centre.watermark").fetchall()
        faults += [f"epoch {one} never sent" for (one,) in known if one not in self._sent]
        return faults
