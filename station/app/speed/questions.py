"""What the questions of a long record cost beside bare SQL on the same file."""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from pathlib import Path

from drivers.port import PortSettings
from station.app.assembly import Station
from station.app.places import packhouse
from station.app.speed.long_record import LongRecord, make_long_record
from station.app.speed.row import Row, measure
from station.store.bare_questions import newest_bag, packs_of_lot, rejects_on
from station.store.queries import rejects_of_day
from station.store.recall import reach_of_lot


def question_rows(config: Path, bags: int, calls: int) -> Iterator[Row]:
    """Make a record of so many bags and measure its questions."""
    with tempfile.TemporaryDirectory(prefix="packhouse-speed-") as folder:
        record = make_long_record(config, Path(folder), bags)
        yield lot_row(record, calls)
        yield rejects_row(record, calls)
        yield start_row(config, record, calls)


def lot_row(record: LongRecord, calls: int) -> Row:
    """From a lot to the list of its bags."""
    return measure(
        f"list the bags of a lot among {record.packs}",
        lambda: reach_of_lot(record.home, record.lot),
        "the same rows by bare SQL",
        lambda: packs_of_lot(record.home, record.lot),
        calls,
    )


def rejects_row(record: LongRecord, calls: int) -> Row:
    """The rejects of a day."""
    return measure(
        f"list a day's rejects among {record.packs}",
        lambda: rejects_of_day(record.home, record.day),
        "the same rows by bare SQL",
        lambda: rejects_on(record.home, record.day),
        calls,
    )


def start_row(config: Path, record: LongRecord, calls: int) -> Row:
    """The start of a station on its record, up to where its threads would begin, and its stop."""
    house = packhouse(config)

    def start() -> None:
        station = Station(house, record.home, PortSettings("none"), record.home / "labels")
        station.store.close()

    return measure(
        f"start on a record of {record.packs}",
        start,
        "open it and ask for its newest bag",
        lambda: newest_bag(record.home),
        calls,
    )
