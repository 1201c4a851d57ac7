"""Many stations at once against one centre, each in a process of its own."""

from __future__ import annotations

import multiprocessing
import re
import shutil
import statistics
import tempfile
import time
from collections.abc import Sequence
from dataclasses import dataclass
from functools import partial
from multiprocessing.queues import Queue
from multiprocessing.synchronize import Barrier, Event
from pathlib import Path

from station.app.speed.long_record import make_long_record
from station.app.speed.row import timed
from station.store.outlet import JournalOutlet
from station.sync.address import CentreAddress
from station.sync.connection import connect
from station.sync.delivery import Delivery
from station.sync.founding import found
from station.sync.projector import bring_up
from station.sync.questions import Plant
from station.sync.schema import role
from station.sync.sender import Sender

_WAIT_S = 120.0
_A_SITE = 20
"""Stations of one site."""
_SIZES = """
    SELECT c.relname, pg_total_relation_size(c.oid)::int8, pg_indexes_size(c.oid)::int8
    FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
    WHERE n.nspname = 'centre' AND c.relkind = 'r' AND c.relispartition"""


@dataclass(frozen=True, slots=True)
class Fleet:
    """What was measured.

    Args:
        stations: how many sent at once.
        entries: all of theirs.
        seconds: from the first to the last.
        slowest_s, quickest_s: of one station.
        brought_up: entries a second into the tables for questions.
        recall_ms: the recall of a lot that every station used, median of five.
        recalled: bags it found.
        entry_bytes: of table and index for each entry.
        entry_index_bytes: of index alone.
        pack_bytes: of the table of bags for each bag, with its indexes.
    """

    stations: int
    entries: int
    seconds: float
    slowest_s: float
    quickest_s: float
    brought_up: float
    recall_ms: float
    recalled: int
    entry_bytes: float
    entry_index_bytes: float
    pack_bytes: float

    @property
    def rate(self) -> float:
        """Entries a second at the centre."""
        return self.entries / self.seconds


def fleet(config: Path, address: CentreAddress, stations: int, bags: int) -> Fleet:
    """Let stations with a backlog of so many bags each send at once.

    Args:
        config: settings of one station; the others are like it under other names.
        address: of an empty database's owner, who may act as any station.
        stations: 1 or more.
        bags: of each.
    """
    with tempfile.TemporaryDirectory(prefix="packhouse-fleet-") as folder:
        homes = [_record(config, Path(folder), number, bags) for number in range(stations)]
        lot = homes[0][2]
        with connect(address, "station bench", _WAIT_S) as owner:
            found(owner, [names for _, names, _ in homes])
            took, seconds = _all_at_once(address, [(home, names) for home, names, _ in homes])
            started = time.monotonic()
            brought = bring_up(owner)
            up_s = time.monotonic() - started
            plant = Plant(owner)
            reached = plant.recall(lot)
            times = [timed(partial(plant.recall, lot)) for _ in range(5)]
            with owner.within(_WAIT_S):
                sizes = owner.execute(_SIZES).fetchall()
    entry = [row for row in sizes if row[0].startswith("entry_")]
    pack = [row for row in sizes if row[0].startswith("pack_")]
    entries = brought.entries
    return Fleet(
        stations=stations,
        entries=entries,
        seconds=seconds,
        slowest_s=max(took),
        quickest_s=min(took),
        brought_up=entries / up_s,
        recall_ms=statistics.median(times) / 1000,
        recalled=sum(one.bags for one in reached.groups),
        entry_bytes=sum(row[1] for row in entry) / entries,
        entry_index_bytes=sum(row[2] for row in entry) / entries,
        pack_bytes=sum(row[1] for row in pack) / (stations * bags),
    )


def _record(
    config: Path, folder: Path, number: int, bags: int
) -> tuple[Path, tuple[str, str], str]:
    site, station = f"F{number // _A_SITE:03d}", f"S{number % _A_SITE:02d}"
    settings = shutil.copytree(config, folder / f"settings-{number}")
    file = settings / "station.toml"
    text = file.read_text(encoding="utf-8")
    for table, code in (("site", site), ("station", station)):
        text = re.sub(rf'(\[{table}\]\s+code = )"[^"]*"', rf'\g<1>"{code}"', text, count=1)
    file.write_text(text, encoding="utf-8")
    home = folder / f"home-{number}"
    home.mkdir()
    record = make_long_record(settings, home, bags)
    return home, (site, station), record.lot


def _all_at_once(
    address: CentreAddress, what: Sequence[tuple[Path, tuple[str, str]]]
) -> tuple[list[float], float]:
    """Seconds of each, and from the start of all to the end of the last."""
    context = multiprocessing.get_context("spawn")
    ready, go = context.Barrier(len(what) + 1), context.Event()
    answers: Queue[float] = context.Queue()
    processes = [
        context.Process(target=_send, args=(address, home, names, ready, go, answers))
        for home, names in what
    ]
    for process in processes:
        process.start()
    ready.wait(_WAIT_S * 5)
    began = time.monotonic()
    go.set()
    took = [answers.get(timeout=3600) for _ in processes]
    seconds = time.monotonic() - began
    for process in processes:
        process.join()
    return took, seconds


def _send(
    address: CentreAddress,
    home: Path,
    names: tuple[str, str],
    ready: Barrier,
    go: Event,
    answers: Queue[float],
) -> None:
    """One station, in its own process."""
    with (
        JournalOutlet(home) as outlet,
        connect(address, "station", _WAIT_S) as connection,
    ):
        with connection.within(_WAIT_S):
            connection.execute(f'SET ROLE "{role(*names)}"'.encode())
        sender = Sender(outlet, Delivery(connection, *names, _WAIT_S))
        ready.wait(_WAIT_S * 5)
        go.wait()
        began = time.monotonic()
        sender.shake_hands()
        sender.drain()
        answers.put(time.monotonic() - began)
