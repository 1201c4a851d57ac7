"""The digits of a large number, each drawn once and kept: a number that runs is painted often."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QImage, QPainter

from station.screens.widgets.lettering import Fitted

_MOST = 600
"""Signs that are kept, of all sizes and colours together; the strip alone has twenty sizes."""
_SPARE = 2
"""Pixels round a sign for its softened edge."""


@dataclass(frozen=True)
class _Sign:
    """One sign.

    Args:
        picture: of its ink.
        ink: from the pen's place on the baseline to the picture's corner.
        advance: to the pen's place of the next.
    """

    picture: QImage
    ink: QPointF
    advance: float


_KEPT: dict[tuple[str, str, str, float], _Sign] = {}


def draw_figures(painter: QPainter, fitted: Fitted, left: float, top: float, colour: str) -> None:
    """Draw a text of one line in a face without kerning, with its capitals starting at ``top``.

    It looks as :func:`station.screens.widgets.lettering.draw` draws it, but each sign stands on
    whole pixels.
    """
    ratio = painter.device().devicePixelRatioF()
    pen, baseline = left, top + fitted.cap
    for character in fitted.lines[0]:
        sign = _sign(character, fitted.font, colour, ratio)
        corner = QPointF(round(pen) + sign.ink.x(), round(baseline) + sign.ink.y())
        painter.drawImage(corner, sign.picture)
        pen += sign.advance


def _sign(character: str, font: QFont, colour: str, ratio: float) -> _Sign:
    key = (character, font.key(), colour, ratio)
    found = _KEPT.get(key)
    if found is None:
        if len(_KEPT) >= _MOST:
            _KEPT.clear()
        found = _KEPT[key] = _drawn(character, font, colour, ratio)
    return found


def _drawn(character: str, font: QFont, colour: str, ratio: float) -> _Sign:
    metrics = QFontMetricsF(font)
    box = metrics.boundingRect(character).toAlignedRect()
    box.adjust(-_SPARE, -_SPARE, _SPARE, _SPARE)
    picture = QImage(box.size() * ratio, QImage.Format.Format_ARGB32_Premultiplied)
    picture.setDevicePixelRatio(ratio)
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setFont(font)
    painter.setPen(QColor(colour))
    painter.drawText(QPointF(-box.left(), -box.top()), character)
    painter.end()
    return _Sign(picture, QPointF(box.topLeft()), metrics.horizontalAdvance(character))
