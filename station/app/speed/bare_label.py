"""The floor of drawing a label: the marks of a plan put on a page with reportlab, nothing kept.

Each page is a document of its own with its fonts cut anew, as a straightforward program would draw
it. The station's own drawing must give the same dots.
"""

from __future__ import annotations

import io
import math
from collections.abc import Sequence

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import FILL_NON_ZERO, Canvas

from labels.layout import Ink, PlacedText
from labels.marks import INSET_DOTS, OUTLINE_MM, POINT, rectangles_of
from labels.pdf import points_down
from labels.sheet import Plan
from labels.typeface import Face


def register_fonts() -> None:
    """Make the label typeface known to reportlab, once in a process."""
    for face in Face:
        pdfmetrics.registerFont(TTFont(face.value, str(face.file)))


def draw_bare(plans: Sequence[Plan]) -> bytes:
    """Return the pages of a label as reportlab writes them."""
    paper = io.BytesIO()
    page = plans[0].page
    canvas = Canvas(
        paper, pagesize=(points_down(page.width), points_down(page.height)), invariant=1
    )
    for plan in plans:
        top = plan.page.height * POINT
        dot = POINT / plan.dots_per_mm
        shape = canvas.beginPath()
        for left, upper, wide, high in rectangles_of(plan).tolist():
            shape.rect(
                (left + INSET_DOTS) * dot,
                top - (upper + high - INSET_DOTS) * dot,
                (wide - 2 * INSET_DOTS) * dot,
                (high - 2 * INSET_DOTS) * dot,
            )
        canvas.drawPath(shape, stroke=0, fill=1, fillMode=FILL_NON_ZERO)
        for text in plan.texts:
            _draw_text(canvas, text, top)
        canvas.showPage()
    canvas.save()
    return paper.getvalue()


def _draw_text(canvas: Canvas, text: PlacedText, top: float) -> None:
    canvas.setFont(text.face.value, round(text.size * POINT, 4))
    x, y = round(text.x * POINT, 4), round(top - text.baseline * POINT, 4)
    if text.ink is Ink.BLACK:
        canvas.drawString(x, y, text.text)
        return
    canvas.saveState()
    if text.ink is Ink.WHITE:
        canvas.setFillGray(1)
        canvas.drawString(x, y, text.text)
    else:
        turn = math.radians(text.angle)
        canvas.transform(math.cos(turn), math.sin(turn), -math.sin(turn), math.cos(turn), x, y)
        canvas.setLineWidth(round(OUTLINE_MM * POINT, 4))
        canvas.drawString(0, 0, text.text, mode=1)
    canvas.restoreState()
