"""QA finds and settles every planted fault of a simulated week on the station's pages.

`python -m tests.campaigns quality-week --full` makes a week of 60 000 bags (a quarter of an hour)
and settles it; the short form, 300 bags, is what `tests/station/screens/test_quality_week.py` runs
on each commit. `python -m tests.campaigns.quality_week --home DIR --made FILE` settles a week that
`station week --home DIR --json > FILE` made; the record in DIR is changed by it.
"""

import argparse
import json
import os
import sys
import tempfile
import time
from datetime import date
from decimal import Decimal
from pathlib import Path

from PySide6.QtWidgets import QApplication

from station.app.places import demo_settings
from station.app.week.make import Week
from station.app.week.plan import LEAST_BAGS, Planted, RunPlan, plan_week
from station.app.week.tally import Count, Plant, WeekMade
from station.config.load import load
from station.core.journal import EntryKind
from station.screens.theme import register_fonts
from station.store.facts import facts
from tests.station.screens.week_rig import WeekRig
from tests.station.screens.week_settled import Settled, settle_week

SHORT, FULL = LEAST_BAGS, 60_000
ENDS = date(2026, 11, 20)


def faults_of(settled: Settled, week: WeekMade) -> list[str]:
    """What is not as it should be after the week was settled."""
    reported, shown = settled.after
    wrong = {
        f"week, report and pages differ: {settled.before}": len(set(settled.before)) != 1,
        f"report and pages differ at the end: {settled.after}": reported != shown,
        f"not found: {set(Planted) - set(settled.found)}": set(settled.found) != set(Planted),
        f"bags: {reported}": reported.packs != week.whole.bags,
        f"rejects: {reported}": reported.rejects != week.whole.rejects + settled.bags,
        f"labels: {reported}": reported.labels != week.whole.labels,
        f"grams: {reported}": reported.grams != week.whole.grams - settled.dumped,
        f"still open: {settled.left}": bool(settled.left),
        f"still on the release list: {settled.list}": bool(settled.list),
    }
    return [words for words, is_so in wrong.items() if is_so]


def settle(home: Path, week: WeekMade) -> int:
    """Settle a week that lies in a folder; print what was seen and return the number of faults."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    application = QApplication.instance() or QApplication([])
    assert application is not None
    register_fonts()
    last = max(one.at.utc for one in facts(home, (EntryKind.SCALE_CHECK,), newest=1))
    rig, began = WeekRig(home, last), time.monotonic()
    try:
        settled = settle_week(rig, week, lambda words: print(words, flush=True))
    finally:
        rig.close()
    print(f"settled in {time.monotonic() - began:.0f} s; at the end {settled.after[-1]}")
    found = faults_of(settled, week)
    print(*found, sep="\n")
    return len(found)


def run(full: bool) -> int:
    """Make a week and settle it; return the number of faults."""
    with tempfile.TemporaryDirectory(prefix="quality-week-") as folder:
        home, house = Path(folder) / "home", load(demo_settings(), ENDS)
        began = time.monotonic()
        week = Week(house, home, plan_week(house, FULL if full else SHORT, 1, ENDS), seed=1).make()
        print(f"{week.whole.bags:,} bags in {time.monotonic() - began:.0f} s")
        return settle(home, week)


def week_of(home: Path, made: dict) -> WeekMade:
    """The week as the verb told it."""

    def count(told: dict) -> Count:
        grams = Decimal(told["good_kg"]) * 1000
        return Count(
            told["packs"], told["good"], told["rejects"], told["labels"], told["labels_voided"],
            grams,
        )  # fmt: skip

    def plant(told: dict) -> Plant:
        at = RunPlan(date.fromisoformat(told["day"]), told["product"], 0, "", told["run"] - 1)
        return Plant(
            Planted(told["fault"]), at, told["first"], told["last"], told["bags"], told["what"],
            told["name"],
        )  # fmt: skip

    return WeekMade(
        home,
        tuple(date.fromisoformat(day) for day in made["days"]),
        tuple(made["runs"]),
        count(made["totals"]),
        {code: count(told) for code, told in made["products"].items()},
        tuple(plant(told) for told in made["planted"]),
    )


def main() -> int:
    """Settle a week that was made before."""
    parser = argparse.ArgumentParser(prog="python -m tests.campaigns.quality_week")
    parser.add_argument("--home", type=Path, required=True)
    parser.add_argument("--made", type=Path, required=True)
    given = parser.parse_args()
    return 1 if settle(given.home, week_of(given.home, json.loads(given.made.read_text()))) else 0


if __name__ == "__main__":
    sys.exit(main())
