"""Pictures that say the same as the words, drawn from simple shapes; the same in every language.

Each is drawn into a square of 100 x 100 units.
"""

from __future__ import annotations

from collections.abc import Callable
from enum import Enum

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

SIDE = 100.0
_LINE = 8.0


class Picture(Enum):
    """What there are pictures of."""

    ADD = "add"
    TAKE_OUT = "take out"
    WAIT = "wait"
    TICK = "tick"
    LIFT_BAG = "lift bag"
    BAG_ON = "bag on"
    EMPTY_PAN = "empty pan"
    WIPE_PAN = "wipe pan"
    NO_READING = "no reading"
    CALL_LEAD = "call lead"
    SET_ASIDE = "set aside"
    START_RUN = "start run"
    ORDER_DONE = "order done"
    BURST_SEAL = "burst seal"
    FOREIGN_BODY = "foreign body"
    WRONG_WEIGHT = "wrong weight"
    OTHER = "other"
    HELD = "held"


def draw_picture(painter: QPainter, picture: Picture, box: QRectF, colour: str) -> None:
    """Draw a picture into the largest square in the middle of ``box``."""
    side = min(box.width(), box.height())
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(box.center().x() - side / 2, box.center().y() - side / 2)
    painter.scale(side / SIDE, side / SIDE)
    pen = QPen(QColor(colour), _LINE)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    _DRAWN[picture](painter)
    painter.restore()


def _line(painter: QPainter, *points: tuple[float, float]) -> None:
    painter.drawPolyline(QPolygonF([QPointF(x, y) for x, y in points]))


def _filled(painter: QPainter, path: QPainterPath) -> None:
    painter.fillPath(path, painter.pen().color())


def _closed(*points: tuple[float, float]) -> QPainterPath:
    path = QPainterPath()
    path.addPolygon(QPolygonF([QPointF(x, y) for x, y in points]))
    path.closeSubpath()
    return path


def _bag(painter: QPainter, left: float, top: float, size: float) -> None:
    """A pouch: straight sides, a welded seam above, a round bottom."""
    s = size / 100
    right, bottom, bend = left + size, top + size, 26 * s
    path = QPainterPath(QPointF(left, top))
    path.lineTo(right, top)
    path.lineTo(right, bottom - bend)
    path.quadTo(right, bottom, right - bend, bottom)
    path.lineTo(left + bend, bottom)
    path.quadTo(left, bottom, left, bottom - bend)
    path.closeSubpath()
    painter.drawPath(path)
    _line(painter, (left, top + 26 * s), (right, top + 26 * s))


def _pan(painter: QPainter, top: float = 84.0) -> None:
    _line(painter, (8, top), (92, top))
    _line(painter, (38, top + 11), (62, top + 11))


def _arrow(painter: QPainter, x: float, tail: float, tip: float) -> None:
    """An upright arrow with a solid head."""
    back = 16 if tip < tail else -16
    _line(painter, (x, tail), (x, tip + back))
    _filled(painter, _closed((x - 17, tip + back), (x + 17, tip + back), (x, tip)))


def _chevron(painter: QPainter, points_right: bool) -> None:
    near, far = (30, 70) if points_right else (70, 30)
    pen = painter.pen()
    pen.setWidthF(17)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    painter.setPen(pen)
    _line(painter, (near, 12), (far, 50), (near, 88))


def _add(painter: QPainter) -> None:
    _chevron(painter, points_right=True)


def _take_out(painter: QPainter) -> None:
    _chevron(painter, points_right=False)


def _wait(painter: QPainter) -> None:
    """The comb of the strip: an edge that has not come to rest."""
    for index, width in enumerate((26.0, 11.0, 8.0, 5.0)):
        left = (8.0, 43.0, 63.0, 80.0)[index]
        painter.fillRect(QRectF(left, 14, width, 72), painter.pen().color())


def _tick(painter: QPainter) -> None:
    pen = painter.pen()
    pen.setWidthF(17)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    painter.setPen(pen)
    _line(painter, (10, 52), (38, 80), (90, 22))


def _lift_bag(painter: QPainter) -> None:
    _bag(painter, 32, 42, 36)
    _arrow(painter, 50, 32, 2)
    _pan(painter, 89)


def _bag_on(painter: QPainter) -> None:
    _bag(painter, 32, 42, 36)
    _arrow(painter, 50, 2, 33)
    _pan(painter, 89)


def _empty_pan(painter: QPainter) -> None:
    _pan(painter, 76)
    _line(painter, (22, 76), (22, 70))
    _line(painter, (78, 76), (78, 70))
    _arrow(painter, 50, 60, 14)


def _wipe_pan(painter: QPainter) -> None:
    _pan(painter, 80)
    painter.drawPath(_closed((20, 68), (32, 44), (84, 44), (72, 68)))
    _line(painter, (40, 56), (64, 56))
    _line(painter, (30, 22), (70, 22))
    _filled(painter, _closed((34, 8), (34, 36), (14, 22)))
    _filled(painter, _closed((66, 8), (66, 36), (86, 22)))


def _no_reading(painter: QPainter) -> None:
    """Two ends of a line that do not meet."""
    _line(painter, (4, 50), (24, 50))
    _line(painter, (76, 50), (96, 50))
    painter.drawRoundedRect(QRectF(24, 34, 18, 32), 4, 4)
    painter.drawRoundedRect(QRectF(60, 34, 16, 32), 4, 4)
    _line(painter, (42, 43), (50, 43))
    _line(painter, (42, 57), (50, 57))
    _line(painter, (44, 18), (47, 6))
    _line(painter, (56, 18), (53, 6))


def _call_lead(painter: QPainter) -> None:
    """A person with a raised arm."""
    painter.drawEllipse(QPointF(44, 26), 15, 15)
    body = QPainterPath(QPointF(16, 94))
    body.cubicTo(16, 62, 26, 54, 44, 54)
    body.cubicTo(62, 54, 72, 62, 72, 94)
    painter.drawPath(body)
    _line(painter, (66, 62), (84, 40), (84, 8))


def _set_aside(painter: QPainter) -> None:
    """A bag that goes into a tote."""
    _bag(painter, 34, 4, 32)
    _arrow(painter, 50, 46, 68)
    _line(painter, (8, 56), (18, 94), (82, 94), (92, 56))


def _start_run(painter: QPainter) -> None:
    """Bags in a row behind an open gate."""
    _bag(painter, 8, 40, 36)
    _bag(painter, 56, 40, 36)
    _line(painter, (4, 90), (96, 90))
    _line(painter, (20, 22), (80, 22))
    _filled(painter, _closed((72, 8), (94, 22), (72, 36)))


def _order_done(painter: QPainter) -> None:
    """Bags in a row under a tick."""
    for left in (4, 37, 70):
        _bag(painter, left, 60, 26)
    _line(painter, (2, 95), (98, 95))
    _line(painter, (34, 26), (46, 40), (70, 8))


def _burst_seal(painter: QPainter) -> None:
    """A pouch torn open along its seam."""
    path = QPainterPath(QPointF(14, 34))
    path.lineTo(14, 76)
    path.quadTo(14, 95, 34, 95)
    path.lineTo(66, 95)
    path.quadTo(86, 95, 86, 76)
    path.lineTo(86, 34)
    painter.drawPath(path)
    _line(painter, (14, 34), (28, 22), (38, 38), (50, 20), (62, 38), (72, 22), (86, 34))
    _line(painter, (14, 16), (30, 4))
    _line(painter, (86, 16), (70, 4))


def _foreign_body(painter: QPainter) -> None:
    """A bolt in a pouch."""
    _bag(painter, 12, 8, 78)
    bolt = ((36, 44), (66, 44), (66, 54), (57, 54), (57, 74), (45, 74), (45, 54), (36, 54))
    _filled(painter, _closed(*bolt))


def _wrong_weight(painter: QPainter) -> None:
    """Slab and slot that do not meet."""
    painter.fillRect(QRectF(4, 32, 40, 36), painter.pen().color())
    _line(painter, (64, 30), (94, 30), (94, 70), (64, 70))
    _line(painter, (40, 92), (68, 8))


def _other(painter: QPainter) -> None:
    pen = painter.pen()
    for x in (20.0, 50.0, 80.0):
        painter.setBrush(pen.color())
        painter.drawEllipse(QPointF(x, 50), 6, 6)


def _held(painter: QPainter) -> None:
    """A ring with a bar across."""
    painter.drawEllipse(QPointF(50, 50), 40, 40)
    _line(painter, (22, 22), (78, 78))


_DRAWN: dict[Picture, Callable[[QPainter], None]] = {
    Picture.ADD: _add,
    Picture.TAKE_OUT: _take_out,
    Picture.WAIT: _wait,
    Picture.TICK: _tick,
    Picture.LIFT_BAG: _lift_bag,
    Picture.BAG_ON: _bag_on,
    Picture.EMPTY_PAN: _empty_pan,
    Picture.WIPE_PAN: _wipe_pan,
    Picture.NO_READING: _no_reading,
    Picture.CALL_LEAD: _call_lead,
    Picture.SET_ASIDE: _set_aside,
    Picture.START_RUN: _start_run,
    Picture.ORDER_DONE: _order_done,
    Picture.BURST_SEAL: _burst_seal,
    Picture.FOREIGN_BODY: _foreign_body,
    Picture.WRONG_WEIGHT: _wrong_weight,
    Picture.OTHER: _other,
    Picture.HELD: _held,
}
