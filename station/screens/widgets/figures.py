"""The digits of a large number, each drawn once and kept: a number that runs is painted often."""

from __future__ import annotations

import math
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRect, Qt
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


_KEPT: dict[tuple[str, str, str, str, float], _Sign] = {}


def draw_figures(
    painter: QPainter, fitted: Fitted, left: float, top: float, colour: str, ground: str = ""
) -> None:
    """Draw a text of one line in a face without kerning, with its capitals starting at ``top``.

    It looks as :func:`station.screens.widgets.lettering.draw` draws it, but each sign stands on
    whole pixels.

    Args:
        painter: where.
        fitted: the text as it is set.
        left: the pen's first place.
        top: of the capitals.
        colour: of the ink.
        ground: the plain colour it stands on, if it does: to lay a sign over it with its ground
            costs a third of blending it in.
    """
    ratio = painter.device().devicePixelRatioF()
    pen, baseline = left, round(top + fitted.cap)
    key = fitted.font.key()
    for character in fitted.lines[0]:
        kept = (character, key, colour, ground, ratio)
        sign = _KEPT.get(kept) or _keep(kept, fitted.font)
        corner = QPointF(round(pen) + sign.ink.x(), baseline + sign.ink.y())
        painter.drawImage(corner, sign.picture)
        pen += sign.advance


def _keep(key: tuple[str, str, str, str, float], font: QFont) -> _Sign:
    character, _, colour, ground, ratio = key
    if len(_KEPT) >= _MOST:
        _KEPT.clear()
    _KEPT[key] = drawn = _drawn(character, font, colour, ground, ratio)
    return drawn


def _drawn(character: str, font: QFont, colour: str, ground: str, ratio: float) -> _Sign:
    metrics = QFontMetricsF(font)
    box = metrics.boundingRect(character).toAlignedRect()
    own = math.floor(metrics.horizontalAdvance(character))
    # Ink that reaches out of the sign's own room must not be covered by its neighbours' ground.
    opaque = bool(ground) and box.left() >= 0 and box.right() < own
    box.adjust(-_SPARE, -_SPARE, _SPARE, _SPARE)
    if opaque:
        box = QRect(0, box.top(), own, box.height())
    picture = QImage(box.size() * ratio, QImage.Format.Format_ARGB32_Premultiplied)
    picture.setDevicePixelRatio(ratio)
    picture.fill(QColor(ground) if opaque else Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setFont(font)
    painter.setPen(QColor(colour))
    painter.drawText(QPointF(-box.left(), -box.top()), character)
    painter.end()
    if opaque:
        picture.convertTo(QImage.Format.Format_RGB32)
    return _Sign(picture, QPointF(box.topLeft()), metrics.horizontalAdvance(character))
