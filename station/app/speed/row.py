"""One measured pair: what the station does, and the least that could do it."""

from __future__ import annotations

import math
import statistics
import time
from collections.abc import Callable
from dataclasses import dataclass

from station.cli.answer import Json


@dataclass(frozen=True, slots=True)
class Row:
    """A pair measured turn by turn, so that a busy machine hurts both alike.

    Args:
        name: what the station does.
        floor_name: what it is compared with.
        ours, floor: microseconds of each call.
    """

    name: str
    floor_name: str
    ours: tuple[float, ...]
    floor: tuple[float, ...]

    @property
    def ratio(self) -> float:
        """Median of ours over median of the floor."""
        return statistics.median(self.ours) / statistics.median(self.floor)

    def document(self) -> dict[str, Json]:
        """Return the row for ``--json``."""
        return {
            "name": self.name,
            "floor": self.floor_name,
            "calls": len(self.ours),
            "ours_us": _spread(self.ours),
            "floor_us": _spread(self.floor),
            "ratio": round(self.ratio, 2),
        }


def measure(
    name: str, ours: Callable[[], object], floor_name: str, floor: Callable[[], object], calls: int
) -> Row:
    """Call both in turn, ``calls`` times each after a tenth of that as warm-up."""
    for _ in range(max(1, calls // 10)):
        ours()
        floor()
    pairs = [(timed(ours), timed(floor)) for _ in range(calls)]
    return Row(name, floor_name, tuple(one for one, _ in pairs), tuple(two for _, two in pairs))


def timed(call: Callable[[], object]) -> float:
    """Microseconds of one call."""
    began = time.perf_counter_ns()
    call()
    return (time.perf_counter_ns() - began) / 1000


def _spread(times: tuple[float, ...]) -> dict[str, Json]:
    ordered = sorted(times)
    p99 = ordered[math.ceil(0.99 * len(ordered)) - 1]
    return {"p50": round(statistics.median(ordered), 2), "p99": round(p99, 2)}
