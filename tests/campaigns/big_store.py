"""A record of ten million bags: how long its questions take beside bare SQL in the same file.

`python -m tests.campaigns big-store --full` makes ten million bags (about a quarter of an hour and
17 GB in a temporary folder), the short form 22 000. `python -m tests.campaigns.big_store --packs N
--home DIR` makes N in a folder of your choice and keeps them; `--ask` only asks a folder that is
there. Counted as faults: the list of a lot's bags above three times bare SQL, the rejects of a day
above twice bare SQL, a full recall report of a day above one second, a start above one second.
"""

import argparse
import statistics
import sys
import tempfile
import time
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

from station.app.places import demo_settings
from station.app.speed.long_record import LongRecord, last_of, make_long_record
from station.app.speed.questions import lot_row, rejects_row, start_row
from station.app.speed.row import Row
from station.reports.recall import Scope, recall
from station.reports.recall_csv import recall_csv
from station.reports.recall_pdf import recall_pdf

SHORT, FULL = 22_000, 10_000_000
CALLS = 9
MOST_LOT, MOST_REJECTS, MOST_DAY_S, MOST_START_S = 3.0, 2.0, 1.0, 1.0


def ask(record: LongRecord, say: Callable[[str], None]) -> list[str]:
    """Measure the questions; return what was too slow."""
    faults = []
    for row, most in (
        (lot_row(record, CALLS), MOST_LOT),
        (rejects_row(record, CALLS), MOST_REJECTS),
    ):
        say(_told(row))
        if row.ratio > most:
            faults.append(f"{row.name}: {row.ratio:.2f} times bare SQL, allowed are {most}")
    began = time.perf_counter()
    found = recall([record.home], Scope.DAY, record.day.isoformat(), datetime.now(UTC))  # noqa: TID251  measured
    asked_s = time.perf_counter() - began
    say(f"recall of a day, {found.total.bags} bags: {asked_s:.3f} s")
    recall_pdf(found), recall_csv(found)
    whole_s = time.perf_counter() - began
    say(f"with its paper and table: {whole_s:.3f} s")
    if asked_s > MOST_DAY_S:
        faults.append(f"the recall of a day took {asked_s:.2f} s, allowed are {MOST_DAY_S} s")
    start = start_row(demo_settings(), record, CALLS)
    say(_told(start))
    if statistics.median(start.ours) > MOST_START_S * 1e6:
        faults.append(f"{start.name} took over {MOST_START_S} s")
    return faults


def _told(row: Row) -> str:
    facts = row.document()
    ours, floor = facts["ours_us"], facts["floor_us"]
    return f"{row.name}: {ours} µs, {row.floor_name} {floor} µs, {row.ratio:.2f} times"


def run(full: bool) -> int:
    """Run the campaign; print what was found and return the number of faults."""
    with tempfile.TemporaryDirectory(prefix="big-store-") as folder:
        return _made_and_asked(Path(folder) / "home", FULL if full else SHORT)


def _made_and_asked(home: Path, packs: int, staying: str = "") -> int:
    home.mkdir(parents=True, exist_ok=True)
    began = time.monotonic()
    record = make_long_record(demo_settings(), home, packs, staying=staying)
    print(f"{record.packs:,} bags in {time.monotonic() - began:.0f} s")
    return _told_faults(ask(record, print))


def _told_faults(faults: list[str]) -> int:
    for fault in faults:
        print(fault)
    return len(faults)


def main() -> int:
    """Make a record of any size and keep it, or ask one that is there."""
    parser = argparse.ArgumentParser(prog="python -m tests.campaigns.big_store")
    parser.add_argument("--packs", type=int, default=SHORT)
    parser.add_argument("--home", type=Path, required=True)
    parser.add_argument(
        "--staying", default="", help="code of a component whose lot stays on the line"
    )
    parser.add_argument("--ask", action="store_true", help="only ask the record that is there")
    given = parser.parse_args()
    if given.ask:
        return _told_faults(ask(last_of(demo_settings(), given.home), print))
    return _made_and_asked(given.home, given.packs, given.staying)


if __name__ == "__main__":
    sys.exit(1 if main() else 0)
