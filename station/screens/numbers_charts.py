"""The three charts of the numbers: the knee a target lies at, weights over time, their spread."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from itertools import pairwise, zip_longest

from station.core.mass import Mass
from station.core.metrology.charts import ChartLimits, mean_limits
from station.line.fill_target import Advice, knee_of
from station.line.numbers import FillCharts, RunFigures
from station.screens.numbers_words import estimate
from station.screens.theme import Palette
from station.screens.widgets.chart import Chart, Mark, Strokes, Table

_CLOSE = 0.045
"""Levels closer than this share of a chart's height have one name together."""
_FINE = 6
"""Decimals of an estimate."""


class TargetChart(Chart):
    """The lowest mean over the spread, with where the run is and where the proposal would be."""

    def __init__(self, palette: Palette) -> None:
        super().__init__(palette, "spread of the fills", "mean net")

    def show_figures(self, figures: RunFigures, advice: Advice | None) -> None:
        """Draw a run's limits and, once it is worked out, its advice."""
        self.clear()
        limits = figures.limits
        knee, unit = knee_of(limits), limits.nominal.unit
        self.name_axes(f"spread of the fills, {unit}", f"mean net, {unit}")
        nominal, tolerable = float(limits.nominal.amount), float(limits.tolerable.amount)
        spreads = [point.spread for point in knee.curve]
        means = [point.mean for point in knee.curve]
        marks = _places(advice)
        most_across = max([1.35 * knee.spread, *(1.7 * mark.spread for mark in marks)])
        shown = [mean for at, mean in zip(spreads, means, strict=True) if at <= most_across]
        most_up = max([*shown, *(mark.mean for mark in marks)])
        least_up = min([nominal, *(mark.mean for mark in marks)])
        room = max(0.14 * (most_up - least_up), 0.05 * tolerable)
        self.show_range((-0.02 * most_across, most_across), (least_up - room, most_up + 1.6 * room))
        self.level(nominal, "nominal", Strokes.DASHED, place=0.02)
        self.level(knee.spread, "knee", Strokes.DOTTED, upright=True, place=0.96)
        self.line(spreads, means, thick=2.0)
        highest = max((mark.mean for mark in marks), default=0.0)
        for mark in marks:
            self._mark(mark, left=mark.spread > 0.62 * most_across, above=mark.mean == highest)
        readings = [
            f"spread {estimate(point.spread, unit)}: a mean of {estimate(point.mean, unit)} or "
            f"more, by the {point.governing} rule"
            for point in knee.curve
        ] + [
            f"{mark.words}: mean {estimate(mark.mean, unit)}, spread {estimate(mark.spread, unit)}"
            for mark in marks
        ]
        across, up = (mark.spread for mark in marks), (mark.mean for mark in marks)
        self.can_read([*spreads, *across], [*means, *up], readings.__getitem__)
        curve = [
            ("curve", _text(point.spread), _text(point.mean), point.governing)
            for point in knee.curve
        ]
        named = [("knee", _text(knee.spread), _text(nominal), "")]
        named += [(mark.words, _text(mark.spread), _text(mark.mean), "") for mark in marks]
        columns = ("what", f"spread_{unit}", f"mean_{unit}", "rule")
        self.table = lambda: Table(columns, (*curve, *named))

    def _mark(self, mark: _Place, *, left: bool, above: bool) -> None:
        """A proposal is a solid diamond, what is now a hollow square."""
        at = [mark.spread], [mark.mean]
        if mark.proposed:
            self.points(*at, Mark.DIAMOND, mm=4.0, fill=self.colours.act)
        else:
            self.points(*at, Mark.SQUARE, mm=3.2, fill=self.colours.paper, edge=self.colours.ink)
        beside = (float(left), 0.8 if above else 0.2)
        self.name_point(mark.spread, mark.mean, f"   {mark.words}   ", beside)


@dataclass(frozen=True, slots=True)
class _Place:
    """A named place in the plane of spread and mean."""

    words: str
    spread: float
    mean: float
    proposed: bool = False


def _places(advice: Advice | None) -> list[_Place]:
    if advice is None:
        return []
    places = [_Place(f"target {advice.target:g} now", advice.spread, advice.mean)]
    proposal = advice.proposal
    if proposal is not None:
        words = f"target {proposal.target:g} proposed"
        places.append(_Place(words, proposal.spread, proposal.mean, proposed=True))
    return places


class WeightsChart(Chart):
    """Every bag in its time, with limits, running mean and weighted average."""

    def __init__(self, palette: Palette) -> None:
        super().__init__(palette, "time", "net", clock=True)

    def show_figures(self, figures: RunFigures) -> None:
        """Draw the fills of a run."""
        self.clear()
        fills, window, unit = figures.charts, figures.run.window, figures.limits.nominal.unit
        if not fills.nets:
            return
        self.zone = fills.at[-1].tzinfo or self.zone
        self.name_axes("time", f"net, {unit}")
        seconds = [at.timestamp() for at in fills.at]
        landmarks = _landmarks(figures)
        t2 = float(figures.limits.t2.amount)
        low = min(*fills.nets, float(figures.limits.t1.amount))
        high = max(*fills.nets, float(window.upper.in_unit(unit).amount))
        room = 0.08 * (high - low)
        wide = max(60.0, seconds[-1] - seconds[0])
        self.show_range(
            (seconds[0] - 0.02 * wide, seconds[0] + 1.16 * wide), (low - room, high + room)
        )
        self.points(seconds, fills.nets, fill=self.colours.edge)
        names = _apart(landmarks, _CLOSE * (high - low))
        for name, value in landmarks:
            if name != "T2" or t2 >= low:
                strokes = _LANDMARK_STROKES[name]
                self.level(value, names[name], strokes, place=0.995, thick=0.8)
        self.line(seconds, fills.running_mean, thick=2.2)
        if fills.averages:
            averages = [one.value for one in fills.averages]
            self.line(seconds, averages, Strokes.DASHED, thick=1.2)
        limits = _mean_limits(fills)
        if limits:
            least, most = [one.lower_action for one in limits], [one.upper_action for one in limits]
            for bounds in (least, most):
                near = [min(max(bound, low - room), high + room) for bound in bounds]
                self.line(seconds, near, Strokes.DOTTED, thick=0.9)

        def reading(index: int) -> str:
            at, net, mean = fills.at[index], fills.nets[index], fills.running_mean[index]
            words = f"{at:%H:%M:%S}: {net:g} {unit}; mean so far {estimate(mean, unit)}"
            if not fills.averages:
                return words
            its = limits[index]
            bounds = f"{estimate(its.lower_action, unit)} to {estimate(its.upper_action, unit)}"
            outside = not its.lower_action <= mean <= its.upper_action
            return (
                f"{words} {'OUTSIDE' if outside else 'within'} {bounds}, "
                f"weighted average {estimate(fills.averages[index].value, unit)}"
            )

        self.can_read(seconds, fills.nets, reading)
        self.table = lambda: _weights_table(fills, str(unit))


def _mean_limits(fills: FillCharts) -> tuple[ChartLimits, ...]:
    """Action limits of the mean of the first bag, the first two, and so on (ISO 7870-2)."""
    habit = fills.habit
    if habit is None or not fills.averages:
        return ()
    return tuple(
        mean_limits(habit.mean, habit.spread, count) for count in range(1, len(fills.nets) + 1)
    )


def _weights_table(fills: FillCharts, unit: str) -> Table:
    columns = ("at", f"net_{unit}", f"running_mean_{unit}", f"weighted_average_{unit}",
               f"mean_least_{unit}", f"mean_most_{unit}")  # fmt: skip
    values = zip_longest(
        fills.at, fills.nets, fills.running_mean, fills.averages, _mean_limits(fills)
    )
    return Table(
        columns,
        tuple(
            (
                at.isoformat(),
                f"{net:g}",
                _text(mean),
                "" if average is None else _text(average.value),
                "" if limits is None else _text(limits.lower_action),
                "" if limits is None else _text(limits.upper_action),
            )
            for at, net, mean, average, limits in values
        ),
    )


class SpreadChart(Chart):
    """How many bags have which net, with the limits."""

    def __init__(self, palette: Palette) -> None:
        super().__init__(palette, "net", "bags")

    def show_figures(self, figures: RunFigures) -> None:
        """Draw the fills of a run."""
        self.clear()
        nets, unit = figures.charts.nets, figures.limits.nominal.unit
        if not nets:
            return
        self.name_axes(f"net, {unit}", "bags")
        interval = _interval(nets)
        counts = Counter(round(net / interval) for net in nets)
        steps = sorted(counts)
        middles = [step * interval for step in steps]
        heights = [counts[step] for step in steps]
        landmarks = _landmarks(figures)
        low = min(middles[0], landmarks[0][1])
        high = max(middles[-1], landmarks[-1][1])
        room = 0.04 * (high - low) + interval
        tallest = max(heights)
        self.show_range((low - room, high + 2.5 * room), (0.0, 1.45 * tallest))
        self.bars(middles, heights, interval * 0.9)
        for name, value in landmarks:
            place = 0.86 if name in ("target", "T1") else 0.95
            self.level(value, name, _LANDMARK_STROKES[name], upright=True, place=place, thick=0.8)
        readings = [
            f"{middle:g} {unit}: {count} bags, {100 * count / len(nets):.1f} %"
            for middle, count in zip(middles, heights, strict=True)
        ]
        self.can_read(middles, heights, readings.__getitem__)
        rows = tuple((f"{m:g}", str(count)) for m, count in zip(middles, heights, strict=True))
        self.table = lambda: Table((f"net_{unit}", "bags"), rows)


_LANDMARK_STROKES = {
    "T2": Strokes.CHAIN,
    "T1": Strokes.CHAIN,
    "nominal": Strokes.WHOLE,
    "target": Strokes.DOTTED,
    "upper": Strokes.DASHED,
}


def _landmarks(figures: RunFigures) -> tuple[tuple[str, float], ...]:
    """The five places of the packer's strip, in rising order."""
    limits, window = figures.limits, figures.run.window
    masses: tuple[tuple[str, Mass], ...] = (
        ("T2", limits.t2),
        ("T1", limits.t1),
        ("nominal", limits.nominal),
        ("target", window.target),
        ("upper", window.upper),
    )
    return tuple((name, float(mass.in_unit(limits.nominal.unit).amount)) for name, mass in masses)


def _apart(landmarks: tuple[tuple[str, float], ...], close: float) -> dict[str, str]:
    """What to write at each landmark: where the next one lies close, its name joins that one's."""
    names = {name: name for name, _ in landmarks}
    for (name, value), (following, its_value) in pairwise(landmarks):
        if its_value - value < close:
            names[following] = f"{names[name]}, {following}"
            names[name] = ""
    return names


def _interval(nets: tuple[float, ...]) -> float:
    """The step of the nets: the scale's interval, or what 60 bars need if that is finer."""
    distinct = sorted(set(nets))
    gaps = [high - low for low, high in pairwise(distinct)]
    finest = min(gaps, default=1.0)
    wide = distinct[-1] - distinct[0]
    return finest * max(1, round(wide / finest / 60))


def _text(value: float) -> str:
    return f"{value:.{_FINE}f}"
