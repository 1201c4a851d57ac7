"""Text that fits its box or says that it does not; never cut, never with an ellipsis."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property, lru_cache

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QTextLayout

from station.screens.theme import Face, font_of

LEADING = 1.75
"""From baseline to baseline, in heights of a capital."""
_PREFER_WRAPPING = 0.75
"""A line that would need to shrink below this part of its size wraps instead."""


@dataclass(frozen=True)
class Fitted:
    """Lines of one text, all in one font.

    Args:
        lines: every word of the text, in order.
        font: the font they fit in.
        cap: height of its capitals in pixels.
        whole: whether all lines lie in the box.
        leading: from baseline to baseline, in heights of a capital.
    """

    lines: tuple[str, ...]
    font: QFont
    cap: float
    whole: bool
    leading: float = LEADING

    @property
    def height(self) -> float:
        """From the top of the first line's capitals to the last baseline."""
        return self.cap * (1 + self.leading * (len(self.lines) - 1))

    @cached_property
    def width(self) -> float:
        """Of the widest line."""
        metrics = QFontMetricsF(self.font)
        return max((metrics.horizontalAdvance(line) for line in self.lines), default=0.0)

    @cached_property
    def descent(self) -> float:
        """How far the ink of the last line reaches below its baseline; 0 without descenders."""
        ink = QFontMetricsF(self.font).tightBoundingRect(self.lines[-1])
        return max(0.0, ink.bottom())

    @cached_property
    def rise(self) -> float:
        """How far the ink of the first line reaches above its baseline."""
        ink = QFontMetricsF(self.font).tightBoundingRect(self.lines[0])
        return max(0.0, -ink.top())


def ink_of(fitted: Fitted) -> tuple[float, float]:
    """How far the ink of a text reaches above its first baseline and below its last.

    Glyph by glyph, since Qt's tight rectangle leaves out signs that a script sets above and below
    its letters.
    """
    boxes = (_ink(fitted.lines[0], fitted.font), _ink(fitted.lines[-1], fitted.font))
    return max(0.0, -boxes[0].top()), max(0.0, boxes[1].bottom())


def _ink(line: str, font: QFont) -> QRectF:
    """The ink of a line, from its baseline."""
    layout = QTextLayout(line, font)
    layout.beginLayout()
    set_line = layout.createLine()
    layout.endLayout()
    box = QRectF()
    for run in layout.glyphRuns():
        raw, places = run.rawFont(), run.positions()
        for glyph, place in zip(run.glyphIndexes(), places, strict=True):
            box |= raw.boundingRect(glyph).translated(place.x(), place.y() - set_line.ascent())
    return box


def text_width(text: str, font: QFont) -> float:
    """Width of one line in pixels."""
    return QFontMetricsF(font).horizontalAdvance(text)


@lru_cache(maxsize=512)
def fit(
    text: str,
    face: Face,
    cap: float,
    width: float,
    height: float = 0.0,
    *,
    least: float = 0.5,
    leading: float = LEADING,
) -> Fitted:
    """Return a text with capitals as high as ``cap`` allows.

    It is set on one line; where that would be small, it wraps at blanks into as many lines as
    ``height`` takes, as large as it can be.

    Args:
        text: plain text.
        face: the typeface.
        cap: wished height of a capital, in pixels.
        width: of the box, in pixels.
        height: of the box; 0 allows one line.
        least: smallest part of ``cap`` it may shrink to.
        leading: from baseline to baseline, in heights of a capital.
    """
    sizes = [cap * step / 100 for step in range(100, round(least * 100) - 1, -4)]
    for size in sizes:
        if size < cap * _PREFER_WRAPPING:
            break
        one = _one_line(text, face, size, width)
        if one.whole:
            return one
    fitted = _one_line(text, face, cap, width)
    for size in sizes:
        fitted = _wrapped(text, face, size, width, max(height, cap), leading)
        if fitted.whole:
            break
    return fitted


def _one_line(text: str, face: Face, cap: float, width: float) -> Fitted:
    font = font_of(face, cap)
    return Fitted((text,), font, cap, text_width(text, font) <= width)


def _wrapped(
    text: str, face: Face, cap: float, width: float, height: float, leading: float
) -> Fitted:
    font = font_of(face, cap)
    metrics = QFontMetricsF(font)
    lines: list[str] = []
    for gap, word in _pieces(text):
        longer = f"{lines[-1]}{gap}{word}" if lines else word
        if lines and metrics.horizontalAdvance(longer) <= width:
            lines[-1] = longer
        else:
            lines.append(word)
    tall = cap * (1 + leading * (len(lines) - 1))
    inside = all(metrics.horizontalAdvance(line) <= width for line in lines)
    return Fitted(tuple(lines), font, cap, inside and tall <= height, leading)


_AMID = re.compile(
    r"(?<=[\u3001\u3002\u3400-\u9fff\uff01-\uff5e])(?=[^\u0000-\u0020\u3001\u3002\uff01-\uff1f])"
    r"|(?<=[^\u0000-\u0020\uff08])(?=[\u3400-\u9fff])"
)
"""Where a line may end without a blank: beside a Chinese character, but not before a stop and not
after an opening bracket (common practice; GB/T 15834 for the stops)."""


def _pieces(text: str) -> Iterator[tuple[str, str]]:
    """Parts of a text that stay together, each with what stands before it on the same line."""
    for word in text.split(" "):
        gap = " "
        for piece in _AMID.split(word):
            yield gap, piece
            gap = ""


def draw(painter: QPainter, fitted: Fitted, left: float, top: float, colour: str) -> None:
    """Draw with the capitals of the first line starting at ``top``."""
    painter.setFont(fitted.font)
    painter.setPen(QColor(colour))
    baseline = top + fitted.cap
    for line in fitted.lines:
        painter.drawText(QPointF(left, baseline), line)
        baseline += fitted.cap * fitted.leading


def draw_centred(painter: QPainter, fitted: Fitted, box: QRectF, colour: str) -> None:
    """Draw with every line in the middle of ``box``, by the height of the capitals."""
    painter.setFont(fitted.font)
    painter.setPen(QColor(colour))
    metrics = QFontMetricsF(fitted.font)
    baseline = box.center().y() - fitted.height / 2 + fitted.cap
    for line in fitted.lines:
        left = box.center().x() - metrics.horizontalAdvance(line) / 2
        painter.drawText(QPointF(left, baseline), line)
        baseline += fitted.cap * fitted.leading


def draw_right(painter: QPainter, fitted: Fitted, right: float, top: float, colour: str) -> None:
    """Draw with every line ending at ``right``."""
    painter.setFont(fitted.font)
    painter.setPen(QColor(colour))
    metrics = QFontMetricsF(fitted.font)
    baseline = top + fitted.cap
    for line in fitted.lines:
        painter.drawText(QPointF(right - metrics.horizontalAdvance(line), baseline), line)
        baseline += fitted.cap * fitted.leading
