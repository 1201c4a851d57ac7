"""The charts of a batch record: fills in order, their spread, chance of passing, the knee."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from itertools import pairwise

from reportlab.graphics.shapes import Drawing

from station.core.pack import IN_THE_BATCH
from station.line.fill_target import knee_of
from station.reports.batch import BatchRecord
from station.reports.paper import ACT, EDGE, INK, MUTED, STOP
from station.reports.plot import Level, Plot

_BARS = 40
_DASHED, _DOTTED = (4.0, 2.5), (1.2, 2.0)
_MANY = 400
"""From so many bags on their dots are small."""
_THIN = 1500
"""More dots than these on one chart hide each other; every so many is drawn."""


def fills_chart(record: BatchRecord) -> Drawing:
    """Net of the bags in order, with limits, running mean and weighted average."""
    charts, limits = record.figures.charts, record.figures.limits
    unit = limits.nominal.unit
    levels = _levels(record)
    low = min(*charts.nets, float(limits.t1.amount))
    high = max(*charts.nets, float(record.run.window.upper.amount))
    room = 0.06 * (high - low)
    count = len(charts.nets)
    plot = Plot(
        (0.0, float(count + 1)), (low - room, high + room), ("bag of the batch", f"net, {unit}")
    )
    plot.ticks()
    every = max(1, count // _THIN)
    order = range(0, count, every)
    size = 1.6 if count > _MANY else 3.0
    plot.dots([n + 1 for n in order], [charts.nets[n] for n in order], EDGE, size)
    for level in levels:
        if low - room <= level.value <= high + room:
            plot.level(level)
    for place in _changes(record):
        plot.upright(Level(place, "", MUTED, _DOTTED))
    bags = [float(n + 1) for n in order]
    if charts.averages:
        plot.line(bags, [charts.averages[n].value for n in order], MUTED, 0.9)
    plot.line(bags, [charts.running_mean[n] for n in order], ACT, 1.8)
    return plot.finished()


def spread_chart(record: BatchRecord) -> Drawing:
    """How many bags have which net, with T2, T1, nominal, target and upper limit."""
    charts, limits = record.figures.charts, record.figures.limits
    unit = limits.nominal.unit
    window = record.run.window
    low = min(*charts.nets, float(limits.t1.amount))
    high = max(*charts.nets, float(window.upper.amount))
    width = _bar_width(charts.nets, high - low)
    counted = Counter(round(net / width) for net in charts.nets)
    room = 0.04 * (high - low) + width
    plot = Plot(
        (low - room, high + room),
        (0.0, 1.06 * max(counted.values())),
        (f"net, {unit}", "bags"),
        height_mm=52,
    )
    plot.ticks()
    for place, bags in sorted(counted.items()):
        plot.bar((place - 0.5) * width, (place + 0.5) * width, bags, EDGE)
    for step, level in enumerate(_levels(record)):
        if low - room <= level.value <= high + room:
            plot.upright(level, step % 2)
    return plot.finished()


def growth_chart(record: BatchRecord) -> Drawing:
    """The chance to pass the official test as the batch grew."""
    bags, passing = record.growth.bags, record.growth.passing
    lowest = min(0.88, min(passing) - 0.02)
    plot = Plot((0.0, float(bags[-1])), (lowest, 1.0), ("bags", "chance to pass"), height_mm=42)
    plot.ticks()
    plot.level(Level(0.99, "safe: 0.99", MUTED, _DASHED))
    plot.level(Level(0.90, "thin: 0.90", MUTED, _DOTTED))
    plot.line([float(n) for n in bags], passing, ACT, 1.8)
    plot.dots([float(n) for n in bags], passing, ACT, 3.0)
    return plot.finished()


def knee_chart(record: BatchRecord) -> Drawing:
    """The lowest mean over the spread, with where the run is and where the proposal would be."""
    advice, limits = record.advice, record.figures.limits
    assert advice is not None
    unit, nominal = limits.nominal.unit, float(limits.nominal.amount)
    knee = knee_of(limits)
    marks = [("now", advice.spread, advice.mean)]
    if advice.proposal is not None:
        marks.append(("proposed", advice.proposal.spread, advice.proposal.mean))
    widest = max(1.35 * knee.spread, *(1.4 * spread for _, spread, _ in marks))
    curve = [point for point in knee.curve if point.spread <= widest]
    highest = max(*(point.mean for point in curve), *(mean for _, _, mean in marks))
    lowest = min(nominal, *(mean for _, _, mean in marks))
    room = max(0.12 * (highest - lowest), 0.03 * float(limits.tolerable.amount))
    plot = Plot(
        (0.0, widest),
        (lowest - room, highest + room),
        (f"spread of the fills, {unit}", f"mean net, {unit}"),
        height_mm=52,
    )
    plot.ticks()
    plot.upright(Level(knee.spread, "knee", MUTED, _DOTTED))
    plot.level(Level(nominal, "nominal", INK, _DASHED))
    plot.line([point.spread for point in curve], [point.mean for point in curve], INK, 1.6)
    for words, spread, mean in marks:
        plot.ring(spread, mean, words, ACT if words == "proposed" else INK, solid=words != "now")
    return plot.finished()


def _changes(record: BatchRecord) -> list[float]:
    """Between which good bags a new blend begins."""
    good = [bag for bag in record.bags if bag.quality in IN_THE_BATCH]
    return [n + 1.5 for n, (one, other) in enumerate(pairwise(good)) if one.blend != other.blend]


def _levels(record: BatchRecord) -> tuple[Level, ...]:
    limits, window = record.figures.limits, record.run.window
    return (
        Level(float(limits.t2.amount), "T2", STOP, _DOTTED),
        Level(float(limits.t1.amount), "T1", STOP, _DASHED),
        Level(float(limits.nominal.amount), "nominal", INK, None, 1.0),
        Level(float(window.target.amount), "target", ACT, _DASHED),
        Level(float(window.upper.amount), "upper", INK, _DOTTED),
    )


def _bar_width(nets: Sequence[float], span: float) -> float:
    """Bars as wide as a whole number of the steps the nets were read in."""
    step = min((b - a for a, b in pairwise(sorted(set(nets)))), default=(span or 1.0) / _BARS)
    return step * max(1, round(span / step / _BARS))
