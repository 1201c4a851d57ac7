"""What a headless demo answers: counts from the store, proof of the journal, latencies."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path

from station.cli.answer import Json
from station.core.journal import EntryKind
from station.core.pack import LabelState
from station.line.listeners import Timing
from station.store.answers import Summary
from station.store.facts import facts
from station.store.queries import summary
from station.store.verify import verify


@dataclass(frozen=True, slots=True)
class DemoSummary:
    """Figures of a demo. Bags and labels are counted in the store and the folder, not in memory.

    Args:
        home: folder of the record.
        labels: folder of the label files.
        day: production day of the bags.
        before: what the record held when the demo began; it may have been used before.
        read_back_equal: labels whose bar codes read back equal before they were handed over.
        began: when the first run was asked for.
        seconds: from the first run's start to the last run's end.
        timings: one for each labelled bag.
    """

    home: Path
    labels: Path
    day: date
    before: Summary
    read_back_equal: int
    began: datetime
    seconds: float
    timings: Sequence[Timing]

    def judged(self) -> tuple[dict[str, Json], bool]:
        """Return the figures for ``--json``, times in s and ms, and whether the demo holds.

        It holds when each bag has one label that read back equal, and the journal is whole. The
        record is counted and verified once for both.
        """
        now = summary(self.home)
        report = verify(self.home)
        printed = self._printed()
        packs = now.good - self.before.good
        applied = [record.labels.get(LabelState.APPLIED, 0) for record in (now, self.before)]
        figures: dict[str, Json] = {
            "home": str(self.home),
            "day": self.day.isoformat(),
            "packs": packs,
            "rejects": now.rejects - self.before.rejects,
            "runs": now.runs - self.before.runs,
            "scale_checks": self._made(EntryKind.SCALE_CHECK),
            "empty_bags": self._made(EntryKind.EMPTY_BAG),
            "labels": printed,
            "labels_applied": applied[0] - applied[1],
            "read_back_equal": self.read_back_equal,
            "duplicate_serials": now.duplicate_serials,
            "journal_whole": report.whole,
            "journal_entries": report.entries,
            "seconds": _rounded(self.seconds),
            "packs_per_s": _rounded(packs / self.seconds if self.seconds else 0.0),
            "latency_ms": {
                "stable_to_durable": _quantiles([one.durable - one.stable for one in self.timings]),
                "stable_to_label": _quantiles([one.labelled - one.stable for one in self.timings]),
            },
        }
        holds = (
            printed == self.read_back_equal == len(self.timings)
            and now.duplicate_serials == 0
            and report.whole
        )
        return figures, holds

    def _made(self, kind: EntryKind) -> int:
        return len(facts(self.home, (kind,), since=self.began))

    def _printed(self) -> int:
        serials = {one.serial for one in self.timings}
        return sum((self.labels / f"{serial}.pdf").is_file() for serial in serials)


def _quantiles(nanoseconds: Sequence[int]) -> dict[str, Json]:
    """Nearest-rank quantiles in milliseconds; null without any."""
    ordered = sorted(nanoseconds)

    def at(share: float) -> Json:
        if not ordered:
            return None
        return _rounded(ordered[math.ceil(share * len(ordered)) - 1] / 1e6)

    return {"p50": at(0.50), "p99": at(0.99)}


def _rounded(value: float) -> float:
    return round(value, 3)
