"""The gap strip: missing is hollow, good is one solid body, excess is hatched."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPixmap, QPolygonF, QRegion
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from station.screens.theme import Face, Palette
from station.screens.tongue import tr
from station.screens.widgets.figures import draw_figures
from station.screens.widgets.gap_geometry import Body, GapView, Landmark, Span
from station.screens.widgets.lettering import Fitted, draw, draw_centred, fit
from station.screens.widgets.painted import Painted, hatch, stroke
from station.screens.widgets.pictograms import Picture, draw_picture

# Heights from the top, in layout millimetres; the band takes what is left.
_QUAY = 9.0
_AIR = 2.0
_SIGN = 4.6
_MASS = 6.4
_LABELS = 17.5
_CHEVRON = 1.25
"""Width of a chevron with its air, in heights of a capital."""
_LIP = 3.2
"""How far the slot's rails stand above and below the slab."""
_TEXT = 45.0
"""More than an amount on the strip is ever wide."""
_STEPS, _LEAST = 20, 0.3
"""Sizes of the amount on the strip, and the smallest as a part of the largest."""
_DEPTHS = (0.86, 0.58, 0.3, 0.0)
"""Of the quay left of T2, T1, the nominal quantity, and above it."""


class GapStrip(Painted[GapView]):
    """Paints a GapView; nothing else decides what is shown."""

    def __init__(self, palette: Palette, parent: QWidget | None = None) -> None:
        self.labels: tuple[tuple[Landmark, Fitted, Fitted], ...] = ()
        """Landmark, its sign and its mass as they are set; for whoever checks the layout."""
        self._backdrop: QPixmap | None = None
        self._backdrop_of: object = None
        super().__init__(palette, GapView(Body.ABSENT), parent)

    @override
    def arrange(self) -> None:
        wide = self.width() * 0.105
        self.labels = tuple(
            (
                mark,
                fit(tr(mark.sign), Face.TEXT, _SIGN * self.unit, wide),
                fit(mark.mass, Face.FIGURES, _MASS * self.unit, wide),
            )
            for mark in self.view.landmarks
        )

    @override
    def changed(self, before: GapView) -> QRegion | None:
        """While a bag is filled: from where its edge was, or is, to the end of the slot."""
        view = self.view
        if not view.body is before.body is Body.SHORT:
            return None
        if (view.slot, view.landmarks) != (before.slot, before.landmarks):
            return None
        left = min(min(one.reach.left, one.slab.right - one.comb.width) for one in (view, before))
        edge = min(self.along(left), self.along(view.slot.right) - _TEXT * self.unit)
        return QRegion(self.band.adjusted(edge - self.unit, 0, 0, 0).toAlignedRect())

    @property
    def band(self) -> QRectF:
        """Where slab and slot lie, in pixels."""
        height = self.height() - (_QUAY + _AIR + _LABELS) * self.unit
        return QRectF(0, 0, self.width(), max(height, 8 * self.unit))

    def along(self, fraction: float) -> float:
        """A fraction of the width in pixels."""
        return fraction * self.width()

    @override
    def paint(self, painter: QPainter) -> None:
        view = self.view
        painter.drawPixmap(0, 0, self._still())
        if view.body is Body.JOINED:
            self._joined(painter, view)
            return
        if view.slot.width > 0:
            self._slot(painter, view)
        if view.gap.width > 0:
            self._gap(painter, view)
        if view.slab.width > 0:
            self._slab(painter, view)
        if view.lap.width > 0:
            self._lap(painter, view)
        if view.teeth:
            self._comb(painter, view)
        if view.amount and view.body is Body.SHORT:
            self._to_add(painter, view)
        if view.amount and view.body is Body.LAP:
            self._to_take_out(painter, view)

    # --- slab and slot ----------------------------------------------------------------------

    def _body(self, span: Span) -> QRectF:
        lip = _LIP * self.unit
        band = self.band.adjusted(0, lip, 0, -lip)
        return QRectF(self.along(span.left), band.top(), self.along(span.width), band.height())

    def _slab(self, painter: QPainter, view: GapView) -> None:
        right = view.slab.right
        if view.teeth and view.body is not Body.LAP:
            right = min(right, view.comb.left)
        painter.fillRect(self._body(Span(0.0, right)), QColor(self.colours.muted))

    def _comb(self, painter: QPainter, view: GapView) -> None:
        """Teeth that thin out over the spread of the last half second."""
        body = self._body(view.comb)
        pitch = body.width() / view.teeth
        for tooth in range(view.teeth):
            share = 0.78 - 0.5 * tooth / view.teeth
            left = body.left() + pitch * (tooth + 1 - share)
            bar = QRectF(left, body.top(), max(pitch * share, 1.5), body.height())
            painter.fillRect(bar, QColor(self.colours.muted))

    def _slot(self, painter: QPainter, view: GapView) -> None:
        """A socket, open towards the slab: two rails, two lips and a far wall."""
        thick = 1.5 * self.unit
        box = self.band.adjusted(0, thick / 2, 0, -thick / 2)
        left, right = self.along(view.slot.left), self.along(view.slot.right) + thick / 2
        lip = 2.6 * self.unit
        pen = stroke(self.colours.ink, thick)
        if view.body is Body.ABSENT:
            pen = self._dashed(self.colours.edge)
        painter.setPen(pen)
        painter.setBrush(QColor(self.colours.paper))
        painter.fillRect(
            QRectF(left, box.top(), right - left, box.height()), QColor(self.colours.paper)
        )
        painter.drawPolyline(
            QPolygonF(
                [
                    QPointF(left, box.top() + lip),
                    QPointF(left, box.top()),
                    QPointF(right, box.top()),
                    QPointF(right, box.bottom()),
                    QPointF(left, box.bottom()),
                    QPointF(left, box.bottom() - lip),
                ]
            )
        )

    def _dashed(self, colour: str) -> QPen:
        pen = stroke(colour, 0.8 * self.unit)
        pen.setDashPattern([4.0, 3.0])
        return pen

    def _gap(self, painter: QPainter, view: GapView) -> None:
        body = self._body(view.gap)
        painter.setPen(self._dashed(self.colours.act if view.amount else self.colours.edge))
        painter.drawLine(body.topLeft(), body.topRight())
        painter.drawLine(body.bottomLeft(), body.bottomRight())

    def _to_add(self, painter: QPainter, view: GapView) -> None:
        """The grams and a chevron, in the hollow between the slab and the slot.

        Where the gap is narrow they reach on towards the target, inside the empty slot.
        """
        edge = view.comb.right if view.teeth else view.reach.left
        most = min(16 * self.unit, self._body(view.slot).height() * 0.5)
        gap, reach = Span(edge, view.gap.right), Span(edge, view.reach.right)
        text = _tag_text(view.amount, self._body(gap).width() - 6 * self.unit, most)
        space = self._body(gap)
        if text.cap < most * 0.75:
            space = self._body(reach)
            text = _tag_text(view.amount, space.width() - 3 * self.unit, most)
        left = space.center().x() - (text.width + _CHEVRON * text.cap) / 2
        draw_figures(painter, text, left, space.center().y() - text.cap / 2, self.colours.act)
        box = QRectF(0, 0, text.cap, text.cap)
        box.moveCenter(QPointF(left + text.width + 0.75 * text.cap, space.center().y()))
        draw_picture(painter, Picture.ADD, box, self.colours.act)

    def _lap(self, painter: QPainter, view: GapView) -> None:
        over = self._body(view.lap)
        hatch(painter, over, self.colours.attend, self.colours.on_attend, 4.4 * self.unit)
        painter.setPen(stroke(self.colours.ink, self.unit))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(over)

    def _to_take_out(self, painter: QPainter, view: GapView) -> None:
        """The grams and a chevron on a tag in the lap, or before it where the lap is narrow."""
        lap, slot = self._body(view.lap), self._body(view.slot)
        most = min(11 * self.unit, slot.height() * 0.4)
        inside = _tag_text(view.amount, lap.width() - 7 * self.unit, most)
        text = (
            inside
            if inside.cap > most * 0.68
            else _tag_text(view.amount, slot.width() - 7 * self.unit, most)
        )
        tag = QRectF(0, 0, text.width + (_CHEVRON + 0.7) * text.cap, 2.1 * text.cap)
        tag.moveCenter(lap.center())
        if text is not inside:
            tag.moveRight(slot.right() - 3 * self.unit)
        painter.fillRect(tag, QColor(self.colours.paper))
        painter.setPen(stroke(self.colours.ink, 0.8 * self.unit))
        painter.drawRect(tag)
        arrow = QRectF(tag.left() + 0.2 * text.cap, 0, text.cap, text.cap)
        arrow.moveTop(tag.center().y() - 0.5 * text.cap)
        draw_picture(painter, Picture.TAKE_OUT, arrow, self.colours.act)
        left, top = tag.left() + 1.4 * text.cap, tag.center().y() - text.cap / 2
        draw_figures(painter, text, left, top, self.colours.act)

    def _joined(self, painter: QPainter, view: GapView) -> None:
        slab, band = self._body(view.slab), self.band
        right = self.along(view.slot.right) + 1.5 * self.unit
        socket = QRectF(
            self.along(view.slot.left), 0, right - self.along(view.slot.left), band.height()
        )
        painter.fillRect(slab, QColor(self.colours.ink))
        painter.fillRect(socket, QColor(self.colours.ink))
        cap = min(17 * self.unit, socket.height() * 0.5)
        tick = QRectF(0, 0, cap * 1.25, cap * 1.25)
        if not view.word:
            tick.moveCenter(socket.center())
            draw_picture(painter, Picture.TICK, tick, self.colours.on_dark)
            return
        word = fit(tr(view.word), Face.VERB, cap, socket.width() - tick.width() - 3 * cap / 2)
        whole = tick.width() + 0.5 * cap + word.width
        tick.moveCenter(
            QPointF(socket.center().x() - whole / 2 + tick.width() / 2, socket.center().y())
        )
        draw_picture(painter, Picture.TICK, tick, self.colours.on_dark)
        left, top = tick.right() + 0.5 * cap, socket.center().y() - word.cap / 2
        draw(painter, word, left, top, self.colours.on_dark)

    def _still(self) -> QPixmap:
        """The quay and its signs, drawn once for a run and a size: they stand while bags come."""
        ratio = self.devicePixelRatioF()
        of = (self.view.landmarks, self.size(), self.unit, ratio)
        if self._backdrop is None or self._backdrop_of != of:
            self._backdrop = self.drawn(self.size(), lambda one: self._quay(one, self.view))
            self._backdrop_of = of
        return self._backdrop

    # --- the quay ---------------------------------------------------------------------------

    def _quay(self, painter: QPainter, view: GapView) -> None:
        """The steps under the slab: the deeper, the worse; then a wall."""
        if not view.landmarks:
            return
        top = self.band.bottom() + _AIR * self.unit
        deep = _QUAY * self.unit
        base = top + deep
        risers = sorted(mark.at for mark in view.landmarks if mark.sign in ("T2", "T1", "N"))
        target = next(mark.at for mark in view.landmarks if mark.sign == "target")
        upper = max(next(m.at for m in view.landmarks if m.sign == "upper"), risers[-1])
        points = [QPointF(0, top + _DEPTHS[0] * deep)]
        for at, before, after in zip(risers, _DEPTHS[:-1], _DEPTHS[1:], strict=True):
            points.append(QPointF(self.along(at), top + before * deep))
            points.append(QPointF(self.along(at), top + after * deep))
        notch = 2.4 * self.unit
        if risers[-1] < target <= upper:
            points.append(QPointF(self.along(target) - notch, top))
            points.append(QPointF(self.along(target), top + 1.6 * notch))
            points.append(QPointF(self.along(target) + notch, top))
        points.append(QPointF(self.along(upper), top))
        skyline = QPolygonF(points)
        body = QPainterPath()
        body.addPolygon(QPolygonF([*points, QPointF(self.along(upper), base), QPointF(0, base)]))
        painter.fillPath(body, QColor(self.colours.quiet))
        painter.setPen(stroke(self.colours.edge, 0.6 * self.unit))
        painter.drawPolyline(skyline)
        wall = QRectF(
            self.along(upper), self.band.bottom(), 1.5 * self.unit, base - self.band.bottom()
        )
        painter.fillRect(wall, QColor(self.colours.edge))
        self._signs(painter, base)

    def _signs(self, painter: QPainter, base: float) -> None:
        wide = self.width() * 0.105
        top = base + 1.5 * self.unit
        for mark, sign, mass in self.labels:
            box = QRectF(0, top, wide, _SIGN * self.unit)
            box.moveCenter(QPointF(self.along(mark.at), box.center().y()))
            draw_centred(painter, sign, box, self.colours.muted)
            box.translate(0, 8.0 * self.unit)
            draw_centred(painter, mass, box, self.colours.ink)


def _tag_text(amount: str, width: float, cap: float) -> Fitted:
    """An amount that leaves room for its chevron in ``width``, as large as ``cap`` at most.

    Sizes are steps of ``cap``, the same few for every amount, so that each is measured once.
    """
    text = _whole(amount, cap)
    wide = text.width + (_CHEVRON + 0.7) * cap
    step = min(_STEPS, math.ceil(_STEPS * (1 - max(width, 0.0) / wide) / (1 - _LEAST)))
    return text if step <= 0 else _whole(amount, cap * (1 - (1 - _LEAST) * step / _STEPS))


def _whole(amount: str, cap: float) -> Fitted:
    return fit(amount, Face.FIGURES, cap, math.inf, least=1.0)
