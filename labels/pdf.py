"""Draws a label as a PDF: its plan, the ink of each page, the file around them.

What a run of labels shares is made once: line breaks and sizes of running text, the fonts cut down
and packed, the head of the file. The same label always gives the same bytes.
"""

import math
from functools import lru_cache

from labels.content import PackLabel
from labels.design import LabelDesign
from labels.document import Facts, Leaf, document
from labels.embedding import fonts_for
from labels.errors import LabelError
from labels.frames import Framed, FrameDesign
from labels.framing import arrange_frames
from labels.marks import POINT, marks_of
from labels.plan import arrange_pack
from labels.rules.judge import judge
from labels.sheet import Plan
from labels.symbol import Symbol
from labels.typeface import Face, type_of

PRINT_HEADS = (8, 12, 16, 24)  # dots/mm; 203, 300, 400 and 600 dpi by their trade names
MAKER = "Pack line station"
DRAWERS_KEPT = 16

Label = PackLabel | Framed
Design = LabelDesign | FrameDesign


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
        fonts = fonts_for((text.face, text.text) for plan in plans for text in plan.texts)
        leaves = [
            Leaf(
                *(points_down(plan.page.width), points_down(plan.page.height)),
                marks_of(plan, fonts),
            )
            for plan in plans
        ]
        return document(fonts, leaves, Facts(plans[0].title, label.subject, MAKER))


def points_down(length: float) -> float:
    """Return mm in points, rounded down to a thousandth.

    Rounded up, a page of 800 dots comes out a hair wider, and renderers make it 801.
    """
    return math.floor(length * POINT * 1000) / 1000


@lru_cache(DRAWERS_KEPT)
def drawer_of(design: Design, printer_dots_per_mm: int = 8) -> LabelDrawer:
    """Return the drawer of a design for a print head; the same one each time.

    Raises:
        LabelError: Another resolution.
    """
    return LabelDrawer(design, printer_dots_per_mm)
