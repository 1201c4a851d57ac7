"""Draws a plan as a PDF: embedded typeface, bars as rectangles in whole printer dots.

Bars that end exactly on the edge of a dot grow by one dot in some renderers; each rectangle is
therefore inset by a twentieth of a dot on every side, which rounds to the right dots everywhere
tried. Text is drawn as plain strings: markup in a product name is only characters. The same label
always gives the same bytes.
"""

import io
import math
import threading
from collections.abc import Sequence
from functools import lru_cache

from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas

from labels.content import PackLabel
from labels.design import LabelDesign
from labels.errors import LabelError
from labels.frames import Framed, FrameDesign
from labels.framing import arrange_frames
from labels.layout import Ink, PlacedText
from labels.plan import arrange_pack
from labels.rules.judge import judge
from labels.sheet import PlacedSymbol, Plan
from labels.symbol import GUARD_MODULES, Symbol, runs
from labels.typeface import Face, type_of

PRINT_HEADS = (8, 12, 16, 24)  # dots/mm; 203, 300, 400 and 600 dpi by their trade names
INSET_DOTS = 0.05
OUTLINE_MM = 0.375

Label = PackLabel | Framed
Design = LabelDesign | FrameDesign

_drawing = threading.Lock()  # reportlab's fonts keep state while a document is built


class LabelDrawer:
    """Draws labels of one design for one print head.

    Args:
        design: Sizes of the label.
        printer_dots_per_mm: Resolution of the print head, one of `PRINT_HEADS`.

    Raises:
        LabelError: Another resolution.
    """

    PLANS_KEPT = 16

    def __init__(self, design: Design, printer_dots_per_mm: int = 8) -> None:
        if printer_dots_per_mm not in PRINT_HEADS:
            raise LabelError(
                "Print head",
                f"{printer_dots_per_mm!r} dots/mm; allowed: {', '.join(map(str, PRINT_HEADS))}",
            )
        self.design = design
        self.dots_per_mm = printer_dots_per_mm
        self._plans = lru_cache(self.PLANS_KEPT)(self._arrange)
        for face in Face:
            type_of(face)

    def plan(self, label: Label) -> Plan:
        """Return where everything on the first page of a label goes.

        Raises:
            LabelError: The label does not fit, or has a character without a glyph.
        """
        return self._plans(label)[0]

    def plans(self, label: Label) -> tuple[Plan, ...]:
        """Return where everything goes, page by page: two where input lots need a second label.

        Raises:
            LabelError: The label does not fit, or has a character without a glyph.
        """
        return self._plans(label)

    def _arrange(self, label: Label) -> tuple[Plan, ...]:
        if isinstance(label, PackLabel) and isinstance(self.design, LabelDesign):
            plans = arrange_pack(label, self.design, self.dots_per_mm)
            judge(label, self.design, plans)
            return plans
        if isinstance(label, Framed) and isinstance(self.design, FrameDesign):
            return (arrange_frames(label, self.design, self.dots_per_mm),)
        raise LabelError(
            "Label design",
            f"{self.design.name!r} is not for {type(label).__name__}; choose another design",
        )

    def symbols(self, label: Label) -> tuple[Symbol, ...]:
        """Return the bar codes a label carries on all its pages, as they must read back."""
        return tuple(placed.symbol for plan in self.plans(label) for placed in plan.symbols)

    def draw(self, label: Label) -> bytes:
        """Return a label as a PDF, one page for each piece of paper.

        Raises:
            LabelError: The label does not fit, or has a character without a glyph.
        """
        plans = self.plans(label)
        with _drawing:
            return _draw(plans, label.subject)


def _draw(plans: Sequence[Plan], subject: str) -> bytes:
    first = plans[0]
    paper = io.BytesIO()
    canvas = Canvas(
        paper,
        pagesize=(_points_down(first.page.width), _points_down(first.page.height)),
        invariant=1,
        pageCompression=0,
    )
    canvas.setTitle(first.title)
    canvas.setSubject(subject)
    canvas.setAuthor("")
    canvas.setCreator("Pack line station")
    canvas.setProducer("Pack line station, label drawer")
    for plan in plans:
        _draw_page(canvas, plan)
        canvas.showPage()
    canvas.save()
    return paper.getvalue()


def _draw_page(canvas: Canvas, plan: Plan) -> None:
    canvas.setFillGray(0)
    height = plan.page.height
    for plate in plan.plates:
        inset = INSET_DOTS / plan.dots_per_mm
        canvas.rect(
            (plate.x + inset) * mm,
            (height - plate.bottom + inset) * mm,
            (plate.width - 2 * inset) * mm,
            (plate.height - 2 * inset) * mm,
            stroke=0,
            fill=1,
        )
    for placed in plan.symbols:
        draw = _draw_cells if placed.symbol.is_matrix else _draw_bars
        draw(canvas, placed, height, plan.dots_per_mm)
    for text in plan.texts:
        _draw_text(canvas, text, height)


def _points_down(length: float) -> float:
    """Return mm in points, rounded down to a thousandth.

    Rounded up, a page of 800 dots comes out a hair wider, and renderers make it 801.
    """
    return math.floor(length * float(mm) * 1000) / 1000


def _draw_bars(canvas: Canvas, placed: PlacedSymbol, page_height: float, dots_per_mm: int) -> None:
    dot = mm / dots_per_mm
    bottom = page_height * mm - (placed.y_dots + placed.height_dots - INSET_DOTS) * dot
    height = (placed.height_dots - 2 * INSET_DOTS) * dot
    rectangles = []
    for place, (start, width) in enumerate(placed.symbol.bars):
        longer = GUARD_MODULES * placed.module_dots * dot if place in placed.symbol.guards else 0.0
        left = placed.x_dots + start * placed.module_dots + INSET_DOTS
        wide = width * placed.module_dots - 2 * INSET_DOTS
        rectangles.append(
            f"{left * dot:.4f} {bottom - longer:.4f} {wide * dot:.4f} {height + longer:.4f} re"
        )
    canvas.addLiteral("\n".join([*rectangles, "f"]))


def _draw_cells(canvas: Canvas, placed: PlacedSymbol, page_height: float, dots_per_mm: int) -> None:
    """Draw a matrix: neighbouring dark modules as one rectangle, along rows and along columns.

    Either alone would leave hairs of the inset between rows or columns.
    """
    dot, module, rows = mm / dots_per_mm, placed.module_dots, placed.symbol.rows
    along_rows = [
        (start, number, length, 1) for number, row in enumerate(rows) for start, length in runs(row)
    ]
    along_columns = [
        (number, start, 1, length)
        for number, column in enumerate(map("".join, zip(*rows, strict=True)))
        for start, length in runs(column)
        if length > 1
    ]
    rectangles = []
    for x, y, wide, high in (*along_rows, *along_columns):
        left = (placed.x_dots + x * module + INSET_DOTS) * dot
        bottom = page_height * mm - (placed.y_dots + (y + high) * module - INSET_DOTS) * dot
        width, height = ((size * module - 2 * INSET_DOTS) * dot for size in (wide, high))
        rectangles.append(f"{left:.4f} {bottom:.4f} {width:.4f} {height:.4f} re")
    canvas.addLiteral("\n".join([*rectangles, "f"]))


def _draw_text(canvas: Canvas, text: PlacedText, page_height: float) -> None:
    canvas.setFont(text.face.value, text.size * mm)
    x, y = text.x * mm, (page_height - text.baseline) * mm
    if text.ink is Ink.BLACK:
        canvas.drawString(x, y, text.text)
        return
    canvas.saveState()
    if text.ink is Ink.WHITE:
        canvas.setFillGray(1)
        canvas.drawString(x, y, text.text)
    else:
        canvas.translate(x, y)
        canvas.rotate(text.angle)
        canvas.setLineWidth(OUTLINE_MM * mm)
        canvas.drawString(0, 0, text.text, mode=1)
    canvas.restoreState()
