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
        best: least microseconds of the processor that one call took, ours and the floor's: what
            the code costs where nothing else runs. None where much of it is not this process.
        pieces: how many things of a kind one call deals with.
    """

    name: str
    floor_name: str
    ours: tuple[float, ...]
    floor: tuple[float, ...]
    best: tuple[float, float] | None = None
    pieces: int = 1

    @property
    def ratio(self) -> float:
        """Median of ours over median of the floor."""
        return statistics.median(self.ours) / statistics.median(self.floor)

    @property
    def best_ratio(self) -> float | None:
        """Least processor time of ours over that of the floor."""
        return None if self.best is None or not self.best[1] else self.best[0] / self.best[1]

    @property
    def a_second(self) -> int | None:
        """Pieces in a second of the processor, at best; None for calls that are one piece."""
        if self.best is None or self.pieces == 1 or not self.best[0]:
            return None
        return int(self.pieces * 1_000_000 / self.best[0])

    def document(self) -> dict[str, Json]:
        """Return the row for ``--json``."""
        return {
            "name": self.name,
            "floor": self.floor_name,
            "calls": len(self.ours),
            "ours_us": _spread(self.ours),
            "floor_us": _spread(self.floor),
            "ratio": round(self.ratio, 2),
            "best_cpu_us": None if self.best is None else [round(one, 2) for one in self.best],
            "best_cpu_ratio": None if self.best_ratio is None else round(self.best_ratio, 2),
            "a_second": self.a_second,
        }


def measure(
    name: str,
    ours: Callable[[], object],
    floor_name: str,
    floor: Callable[[], object],
    calls: int,
    pieces: int = 1,
) -> Row:
    """Call both in turn, ``calls`` times each after a tenth of that as warm-up.

    Args:
        name: what the station does.
        ours: does it.
        floor_name: what it is compared with.
        floor: does that.
        calls: of each.
        pieces: how many things of a kind one call deals with.
    """
    for _ in range(max(1, calls // 10)):
        ours()
        floor()
    pairs = [(_clocked(ours), _clocked(floor)) for _ in range(calls)]
    ours_us, floor_us = ([wall for wall, _ in side] for side in zip(*pairs, strict=True))
    best = tuple(min(cpu for _, cpu in side) for side in zip(*pairs, strict=True))
    return Row(name, floor_name, tuple(ours_us), tuple(floor_us), (best[0], best[1]), pieces)


def _clocked(call: Callable[[], object]) -> tuple[float, float]:
    """Microseconds of one call, and of the processor in it."""
    cpu, began = time.process_time_ns(), time.perf_counter_ns()
    call()
    ended, cpu_ended = time.perf_counter_ns(), time.process_time_ns()
    return (ended - began) / 1000, (cpu_ended - cpu) / 1000


def timed(call: Callable[[], object]) -> float:
    """Microseconds of one call."""
    began = time.perf_counter_ns()
    call()
    return (time.perf_counter_ns() - began) / 1000


def _spread(times: tuple[float, ...]) -> dict[str, Json]:
    ordered = sorted(times)
    p99 = ordered[math.ceil(0.99 * len(ordered)) - 1]
    return {"p50": round(statistics.median(ordered), 2), "p99": round(p99, 2)}
