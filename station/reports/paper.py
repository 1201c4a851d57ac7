"""The report's page: A4 in the station's own typeface, one column, the same bytes every time."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from io import BytesIO

from reportlab.lib.colors import Color, HexColor
from reportlab.lib.enums import TA_RIGHT
from reportlab.lib.pagesizes import A4
from reportlab.lib.styles import ParagraphStyle
from reportlab.lib.units import mm
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas
from reportlab.platypus import (
    BaseDocTemplate,
    CondPageBreak,
    Flowable,
    Frame,
    KeepTogether,
    PageTemplate,
    Paragraph,
    Spacer,
    Table,
    TableStyle,
)

from labels.typeface import Face
from station.core.long_work import go_on

MARGIN = 16 * mm
WIDTH = A4[0] - 2 * MARGIN

INK: Color = HexColor("#12181C")
MUTED: Color = HexColor("#4A545B")
EDGE: Color = HexColor("#9AA4AA")
QUIET: Color = HexColor("#E9ECEE")
ACT: Color = HexColor("#0A4C9A")
ATTEND: Color = HexColor("#F2B200")
STOP: Color = HexColor("#B3001B")

TEXT, STRONG, CODE = (face.value for face in (Face.TEXT, Face.STRONG, Face.CODE))


@lru_cache(maxsize=1)
def load_faces() -> None:
    """Make the typeface known to reportlab; needed before anything is measured or drawn."""
    for face in (Face.TEXT, Face.STRONG, Face.CODE):
        pdfmetrics.registerFont(TTFont(face.value, str(face.file)))


def _style(name: str, face: str, size: float, lead: float, **more: object) -> ParagraphStyle:
    given = {"textColor": INK, **more}
    return ParagraphStyle(name, fontName=face, fontSize=size, leading=lead, **given)


TITLE = _style("title", STRONG, 20, 24)
UNDER = _style("under", TEXT, 10.5, 14)
HEADING = _style("heading", STRONG, 12, 16, spaceBefore=12, spaceAfter=4)
BODY = _style("body", TEXT, 9, 12)
NAME = ParagraphStyle("name", parent=BODY, textColor=MUTED)
CELL = _style("cell", TEXT, 8.2, 10.5)
HEAD = ParagraphStyle("head", parent=CELL, fontName=STRONG)
NUMBER = ParagraphStyle("number", parent=CELL, alignment=TA_RIGHT)
NUMBER_HEAD = ParagraphStyle("number head", parent=HEAD, alignment=TA_RIGHT)
SMALL = _style("small", TEXT, 8, 10.5, textColor=MUTED, spaceBefore=3)


def escape(text: str) -> str:
    """A text as a paragraph shows it, sign for sign."""
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")


def heading(words: str) -> list[Flowable]:
    """A heading that never stands alone at the foot of a page."""
    return [CondPageBreak(45 * mm), Paragraph(escape(words), HEADING)]


def pairs(rows: Sequence[tuple[str, str]]) -> Table:
    """Names on the left, what they are on the right."""
    cells = [[Paragraph(escape(name), NAME), Paragraph(escape(is_), BODY)] for name, is_ in rows]
    table = Table(cells, colWidths=[44 * mm, WIDTH - 44 * mm])
    table.setStyle(
        TableStyle(
            [
                ("VALIGN", (0, 0), (-1, -1), "TOP"),
                ("LEFTPADDING", (0, 0), (-1, -1), 0),
                ("TOPPADDING", (0, 0), (-1, -1), 1.2),
                ("BOTTOMPADDING", (0, 0), (-1, -1), 1.2),
            ]
        )
    )
    return table


def listing(
    columns: Sequence[tuple[str, float]],
    rows: Sequence[Sequence[str]],
    right: frozenset[int] = frozenset(),
) -> Table:
    """A table with its head on every page.

    Args:
        columns: head and share of the width of each; the shares add up to 1.
        rows: cells as text.
        right: columns of numbers, set to the right.
    """
    head = [
        Paragraph(escape(name), NUMBER_HEAD if index in right else HEAD)
        for index, (name, _) in enumerate(columns)
    ]
    body = [
        [
            Paragraph(escape(cell), NUMBER if index in right else CELL)
            for index, cell in enumerate(row)
        ]
        for row in rows
    ]
    table = Table([head, *body], colWidths=[share * WIDTH for _, share in columns], repeatRows=1)
    table.setStyle(
        TableStyle(
            [
                ("VALIGN", (0, 0), (-1, -1), "TOP"),
                ("LINEBELOW", (0, 0), (-1, 0), 0.8, INK),
                ("LINEBELOW", (0, 1), (-1, -1), 0.3, EDGE),
                ("LEFTPADDING", (0, 0), (-1, -1), 2),
                ("RIGHTPADDING", (0, 0), (-1, -1), 4),
                ("TOPPADDING", (0, 0), (-1, -1), 1.6),
                ("BOTTOMPADDING", (0, 0), (-1, -1), 1.6),
            ]
        )
    )
    return table


def note(words: str) -> Paragraph:
    """A quiet sentence."""
    return Paragraph(escape(words), SMALL)


def gap(millimetres: float) -> Spacer:
    """Empty height."""
    return Spacer(0, millimetres * mm)


def beside(left: Sequence[Flowable], right: Sequence[Flowable]) -> Table:
    """Two columns, the right one as wide as a code of 60 mm needs."""
    table = Table([[list(left), list(right)]], colWidths=[WIDTH - 62 * mm, 62 * mm])
    table.setStyle(
        TableStyle(
            [
                ("VALIGN", (0, 0), (-1, -1), "TOP"),
                ("ALIGN", (1, 0), (1, 0), "RIGHT"),
                ("LEFTPADDING", (0, 0), (-1, -1), 0),
                ("RIGHTPADDING", (0, 0), (-1, -1), 0),
            ]
        )
    )
    return table


def together(parts: Sequence[Flowable]) -> KeepTogether:
    """Parts that stay on one page; a heading among them needs no room of its own any more."""
    return KeepTogether([part for part in parts if not isinstance(part, CondPageBreak)])


class _Stamped(Canvas):  # type: ignore[misc]  # reportlab ships no types
    """A canvas that writes the foot of each page once the number of pages is known."""

    foot = ""

    def __init__(self, *args: object, **more: object) -> None:
        super().__init__(*args, **more)
        self._pages: list[dict[str, object]] = []

    def showPage(self) -> None:  # noqa: N802  reportlab's name
        go_on()  # a paper of many pages takes seconds
        self._pages.append(dict(self.__dict__))
        self._startPage()

    def save(self) -> None:
        for number, page in enumerate(self._pages, start=1):
            self.__dict__.update(page)
            self._draw_foot(f"page {number} of {len(self._pages)}")
            super().showPage()
        super().save()

    def _draw_foot(self, place: str) -> None:
        self.setFillColor(MUTED)
        self.setStrokeColor(EDGE)
        self.setLineWidth(0.4)
        self.line(MARGIN, 13 * mm, A4[0] - MARGIN, 13 * mm)
        self.setFont(TEXT, 7.5)
        self.drawString(MARGIN, 9 * mm, self.foot)
        self.drawRightString(A4[0] - MARGIN, 9 * mm, place)


def write(title: str, foot: str, story: Sequence[Flowable]) -> bytes:
    """Set a report and return its PDF; the same story gives the same bytes."""
    load_faces()
    stamped = type("Stamped", (_Stamped,), {"foot": foot})
    kept = BytesIO()
    document = BaseDocTemplate(
        kept, pagesize=A4, title=title, author="", creator="", invariant=1, pageCompression=1
    )
    frame = Frame(
        MARGIN,
        16 * mm,
        WIDTH,
        A4[1] - 16 * mm - 14 * mm,
        leftPadding=0,
        rightPadding=0,
        topPadding=0,
        bottomPadding=0,
    )
    document.addPageTemplates([PageTemplate("page", [frame])])
    document.build(list(story), canvasmaker=stamped)
    return kept.getvalue()
