"""A plane with two axes on paper: where numbers lie, round ticks, lines, bars and named levels."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil, floor, log10

from reportlab.graphics.shapes import Drawing, Line, PolyLine, Rect, String
from reportlab.lib.colors import Color, white
from reportlab.lib.units import mm
from reportlab.pdfbase.pdfmetrics import stringWidth

from station.reports.paper import EDGE, INK, MUTED, STRONG, TEXT, WIDTH

_LEFT, _RIGHT, _FOOT, _TOP = 15 * mm, 24 * mm, 10 * mm, 7 * mm
_SIZE = 7.2
_APART = 8.2
"""Names of levels stand at least this far from each other, in points."""


@dataclass(frozen=True, slots=True)
class Level:
    """A named level: its value, its name, its colour and whether it is dashed."""

    value: float
    name: str
    colour: Color = INK
    dash: tuple[float, float] | None = None
    width: float = 0.8


class Plot:
    """One chart.

    Args:
        across: range of the axis from left to right.
        up: range of the axis from bottom to top.
        names: what the axes are, with units.
        height_mm: height of the whole.
        places: decimals of the ticks across; None for as many as they need.
    """

    def __init__(
        self,
        across: tuple[float, float],
        up: tuple[float, float],
        names: tuple[str, str],
        height_mm: float = 58,
    ) -> None:
        self.drawing = Drawing(WIDTH, height_mm * mm)
        self._across, self._up = _opened(across), _opened(up)
        self._box = (_LEFT, _FOOT, WIDTH - _RIGHT, height_mm * mm - _TOP)
        self._names = names
        self._levels: list[Level] = []

    def x(self, value: float) -> float:
        """Place of a value across, in points."""
        return _place(value, self._across, self._box[0], self._box[2])

    def y(self, value: float) -> float:
        """Place of a value upwards, in points; a value outside stands at the edge."""
        return _place(value, self._up, self._box[1], self._box[3])

    def ticks(
        self,
        *,
        across: Sequence[tuple[float, str]] | None = None,
        up: Sequence[tuple[float, str]] | None = None,
    ) -> None:
        """Draw frame and ticks; round numbers, or the ones given across or upwards."""
        left, foot, right, top = self._box
        self._add(Line(left, foot, right, foot, strokeColor=INK, strokeWidth=0.8))
        self._add(Line(left, foot, left, top, strokeColor=INK, strokeWidth=0.8))
        for value, words in round_ticks(*self._up) if up is None else up:
            at = self.y(value)
            self._add(Line(left, at, right, at, strokeColor=EDGE, strokeWidth=0.25))
            self._say(words, left - 3, at - _SIZE / 3, "end")
        named = round_ticks(*self._across) if across is None else across
        for value, words in named:
            at = self.x(value)
            self._add(Line(at, foot, at, foot - 2.5, strokeColor=INK, strokeWidth=0.6))
            self._say(words, at, foot - 3 - _SIZE, "middle")
        self._say(self._names[0], right, foot - 4 - 2 * _SIZE, "end", MUTED)
        self._say(self._names[1], 0, top + 9, "start", MUTED)

    def line(
        self, xs: Sequence[float], ys: Sequence[float], colour: Color = INK, width: float = 1.0
    ) -> None:
        """A line through points."""
        if len(xs) < 2:
            return
        points = [place for x, y in zip(xs, ys, strict=True) for place in (self.x(x), self.y(y))]
        self._add(PolyLine(points, strokeColor=colour, strokeWidth=width, strokeLineJoin=1))

    def dots(self, xs: Sequence[float], ys: Sequence[float], colour: Color, size: float) -> None:
        """A small square at every point."""
        half = size / 2
        for x, y in zip(xs, ys, strict=True):
            left, low = self.x(x) - half, self.y(y) - half
            self._add(Rect(left, low, size, size, fillColor=colour, strokeColor=None))

    def ring(self, x: float, y: float, words: str, colour: Color, *, solid: bool) -> None:
        """A named point: a solid square for what is proposed, a hollow one for what is."""
        size = 6.0
        left, low = self.x(x) - size / 2, self.y(y) - size / 2
        fill = colour if solid else None
        self._add(Rect(left, low, size, size, fillColor=fill, strokeColor=colour, strokeWidth=1.2))
        beyond = self.x(x) > (self._box[0] + self._box[2]) / 2
        at = left - 4 if beyond else left + size + 4
        behind = stringWidth(words, STRONG, _SIZE) + 2
        clear = at - behind + 1 if beyond else at - 1
        self._add(Rect(clear, low - 2, behind, _SIZE + 2, fillColor=white, strokeColor=None))
        self._say(words, at, low - 1, "end" if beyond else "start", colour, STRONG)

    def bar(self, left: float, right: float, value: float, colour: Color) -> None:
        """An upright bar from zero."""
        low, high = self.y(0.0), self.y(value)
        x, width = self.x(left), self.x(right) - self.x(left)
        bar = Rect(x, low, max(width - 0.6, 0.4), high - low, fillColor=colour, strokeColor=None)
        self._add(bar)

    def block(
        self, across: tuple[float, float], up: tuple[float, float], colour: Color, width: float = 0
    ) -> None:
        """A rectangle; with a width it is hollow, its edge so many points wide."""
        x, y = self.x(across[0]), self.y(up[0])
        wide, high = max(self.x(across[1]) - x, 0.6), max(self.y(up[1]) - y, 0.6)
        self._add(
            Rect(
                *(x, y, wide, high),
                fillColor=None if width else colour,
                strokeColor=colour if width else None,
                strokeWidth=width,
            )
        )

    def level(self, level: Level) -> None:
        """A level across the plane; its name stands at the right once all are known."""
        left, _, right, _ = self._box
        at = self.y(level.value)
        line = Line(left, at, right, at, strokeColor=level.colour, strokeWidth=level.width)
        line.strokeDashArray = None if level.dash is None else list(level.dash)
        self._add(line)
        self._levels.append(level)

    def upright(self, level: Level, step: int = 0) -> None:
        """A level from bottom to top; its name stands above it, ``step`` lines up."""
        _, foot, _, top = self._box
        at = self.x(level.value)
        line = Line(at, foot, at, top, strokeColor=level.colour, strokeWidth=level.width)
        line.strokeDashArray = None if level.dash is None else list(level.dash)
        self._add(line)
        self._say(level.name, at, top + 1.5 + step * _SIZE, "middle", level.colour)

    def finished(self) -> Drawing:
        """The drawing with the names of its levels, none over another."""
        right = self._box[2]
        at = None
        for level in sorted(self._levels, key=lambda one: one.value):
            wanted = self.y(level.value) - _SIZE / 3
            at = wanted if at is None else max(wanted, at + _APART)
            self._say(level.name, right + 3, at, "start", level.colour)
        return self.drawing

    def _say(
        self,
        words: str,
        x: float,
        y: float,
        anchor: str,
        colour: Color = INK,
        face: str = TEXT,
    ) -> None:
        width = stringWidth(words, face, _SIZE)
        left = {"start": x, "middle": x - width / 2, "end": x - width}[anchor]
        left = min(max(left, 0.0), WIDTH - width)  # nothing leaves the paper
        self._add(String(left, y, words, fontName=face, fontSize=_SIZE, fillColor=colour))

    def _add(self, shape: Line | PolyLine | Rect | String) -> None:
        self.drawing.add(shape)


def round_ticks(low: float, high: float, about: int = 6) -> list[tuple[float, str]]:
    """Round numbers inside a range with their words, steps of 1, 2 or 5 times a power of ten."""
    rough = (high - low) / about
    power = 10.0 ** floor(log10(rough))
    step = next(power * times for times in (1, 2, 5, 10) if power * times >= rough)
    places = max(0, -floor(log10(step) + 1e-9))
    first, last = ceil(low / step - 1e-9), floor(high / step + 1e-9)
    return [(n * step, f"{n * step:.{places}f}") for n in range(first, last + 1)]


def _opened(given: tuple[float, float]) -> tuple[float, float]:
    low, high = given
    return (low, high) if high > low else (low - 0.5, high + 0.5)


def _place(value: float, given: tuple[float, float], start: float, end: float) -> float:
    low, high = given
    share = (min(max(value, low), high) - low) / (high - low)
    return start + share * (end - start)
