"""Designs: the sizes a label is set in, one frozen record per label size.

Every length is in millimetres. Heights of text are heights on paper (of the letter x or H, or of
figures), never type sizes.
"""

import math
from dataclasses import dataclass, replace
from decimal import Decimal

from labels.errors import LabelError
from labels.typeface import Face

TILL_DIGITS = 3.0  # below the bars of a till symbol, mm
LENGTHS = (  # of a design, by field
    *("width", "height", "left_margin", "right_margin", "top_margin", "bottom_margin"),
    *("name_row", "use_by_row", "row_gap", "quantity_row", "till_bars", "column", "column_gap"),
    *("symbol_slot", "tallest_bar", "body_x", "body_x_least", "net_figure"),
)


@dataclass(frozen=True, slots=True)
class NameStep:
    """One way to set the product name: face, number of lines, greatest and least cap height."""

    face: Face
    lines: int
    largest_cap: float
    smallest_cap: float


@dataclass(frozen=True, slots=True)
class LabelDesign:
    """Sizes of one label.

    Attributes:
        name: Name of the design, as a configuration refers to it.
        width: Width of the paper.
        height: Height of the paper.
        left_margin: Free paper on the left; also the left quiet zone of the bar codes.
        right_margin: Free paper on the right.
        top_margin: Free paper above the name.
        bottom_margin: Free paper below the last bar code.
        panel_cm2: Principal display panel of the pack, cm2, for US and CA figure heights.
        net_figure: Height wanted for the figures of the net quantity; the law's least height
            replaces it where greater.
        name_row: Height of the row of name and net quantity.
        name_steps: How to set the name, tried in this order.
        use_by_row: Height of the use-by bar.
        use_by_cap: Greatest cap height of the use-by date.
        use_by_cap_least: Least cap height of the use-by date.
        use_by_words_cap: Cap height of the words on the slab.
        use_by_padding: Left and right of the words on the slab, and of the date.
        row_gap: Between rows.
        body_x: Greatest x-height of running text.
        body_x_least: Least x-height; Regulation (EU) No 1169/2011 Art. 13(2): 1.2 mm.
        body_leadings: Distance of baselines in em and extra distance between paragraphs in mm,
            tried in this order.
        quantity_row: Height of a row at the foot for the net quantity alone; 0 where it stands
            beside the name.
        panel_is_label: True where the label is itself the principal display panel of the pack.
        foot: True for two GS1-128 symbols across the foot.
        till_bars: Height of the bars of an EAN-13 or UPC-A at the foot; 0 for none.
        till_dots: Width of its modules, in dots of an 8 dots/mm head.
        column: Width of a column on the right, beside the running text, with a matrix symbol of
            everything and lot and serial in words below it; 0 for none.
        column_gap: Between running text and that column.
        matrix_dots: Widths of a matrix module to try, in dots of an 8 dots/mm head, wide first.
        link_stem: Start of the web address where the matrix is a QR Code with a GS1 Digital Link;
            empty for GS1 DataMatrix.
        bars: Height of each bar code, tried in this order; the last is the least.
        tallest_bar: Height beyond which bar codes do not grow into free paper.
        hri_cap: Cap height of the text below a bar code.
        below_hri: Between that text and what follows.
        code_caps: Cap heights of lot and serial in words, tried in this order.
        symbol_slot: Width left of which the bar codes end, right quiet zone included.
        module_dots: Widths of a bar code module to try, in dots of an 8 dots/mm head, wide first.

    Raises:
        LabelError: A length is none, or a row, column or slot lies outside the paper.
    """

    name: str
    width: float
    height: float
    left_margin: float = 3.75
    right_margin: float = 3.0
    top_margin: float = 2.5
    bottom_margin: float = 2.0
    panel_cm2: Decimal = Decimal(600)
    net_figure: float = 6.0
    name_row: float = 9.25
    name_steps: tuple[NameStep, ...] = (
        NameStep(Face.STRONG, 1, 5.4, 4.4),
        NameStep(Face.STRONG, 2, 3.5, 3.0),
        NameStep(Face.NARROW_STRONG, 2, 3.4, 2.6),
    )
    use_by_row: float = 7.0
    use_by_cap: float = 3.8
    use_by_cap_least: float = 2.6
    use_by_words_cap: float = 3.0
    use_by_padding: float = 2.2
    row_gap: float = 1.0
    body_x: float = 1.4
    body_x_least: float = 1.2
    body_leadings: tuple[tuple[float, float], ...] = ((1.16, 0.7), (1.12, 0.35), (1.08, 0.0))
    quantity_row: float = 0.0
    panel_is_label: bool = False
    foot: bool = True
    till_bars: float = 0.0
    till_dots: int = 3
    column: float = 0.0
    column_gap: float = 2.5
    matrix_dots: tuple[int, ...] = (5, 4, 3)
    link_stem: str = ""
    bars: tuple[float, ...] = (8.0, 7.0, 6.0)
    tallest_bar: float = 30.0
    hri_cap: float = 1.5
    below_hri: float = 0.7
    code_caps: tuple[float, ...] = (2.1, 1.9, 1.7, 1.5, 1.3)
    symbol_slot: float = 78.25
    module_dots: tuple[int, ...] = (3, 2)

    def __post_init__(self) -> None:
        for field in LENGTHS:
            length = getattr(self, field)
            if not math.isfinite(length) or length < 0:
                raise LabelError(
                    f"Label design {self.name}", f"{field} = {length}; allowed: mm from 0"
                )
        till = self.till_bars + TILL_DIGITS if self.till_bars else 0.0
        rows = (
            self.top_margin
            + self.name_row
            + self.use_by_row
            + 2 * self.row_gap
            + max(self.quantity_row, till)
            + self.bottom_margin
        )
        side = self.column + self.column_gap if self.column else 0.0
        for what, taken, paper in (
            ("rows and margins", rows, self.height),
            ("column and margins", self.left_margin + side + self.right_margin, self.width),
            ("bar codes", self.symbol_slot if self.foot else 0.0, self.width),
        ):
            if taken > paper or paper <= 0:
                raise LabelError(
                    f"Label design {self.name}",
                    f"its {what} take {taken:g} mm and lie outside the paper of {self.width:g} x "
                    f"{self.height:g} mm; make them smaller",
                )


PACK_100_BY_60 = LabelDesign("pack 100 x 60", 100.0, 60.0)

PACK_100_BY_100 = LabelDesign(
    "pack 100 x 100",
    100.0,
    100.0,
    left_margin=5.5,
    right_margin=4.5,
    top_margin=4.5,
    bottom_margin=3.0,
    net_figure=7.0,
    name_row=13.5,
    name_steps=(
        NameStep(Face.STRONG, 1, 6.4, 4.8),
        NameStep(Face.NARROW_STRONG, 1, 6.0, 4.2),
        NameStep(Face.STRONG, 2, 4.4, 3.8),
        NameStep(Face.NARROW_STRONG, 2, 4.4, 3.0),
        NameStep(Face.NARROW_STRONG, 3, 3.0, 2.6),
    ),
    use_by_row=10.5,
    use_by_cap=5.4,
    use_by_cap_least=2.6,
    use_by_words_cap=3.6,
    use_by_padding=2.6,
    row_gap=1.8,
    body_x=2.0,
    body_leadings=((1.24, 1.3), (1.18, 0.8), (1.12, 0.35), (1.08, 0.0)),
    column=20.0,
    matrix_dots=(6, 5, 4, 3),
    bars=(8.0,),  # they grow into what the text leaves
    tallest_bar=13.0,
    hri_cap=1.8,
    below_hri=1.6,
    symbol_slot=100.0,
    module_dots=(4, 3, 2),
)

# The net quantity in the lower 30 % of the panel, as 21 CFR 101.7(f) asks for.
PACK_100_BY_100_US = replace(
    PACK_100_BY_100,
    name="pack 100 x 100 US",
    panel_cm2=Decimal(100),
    net_figure=6.4,
    quantity_row=13.0,
    panel_is_label=True,
    foot=False,
    name_row=16.0,
    use_by_words_cap=3.2,
    use_by_padding=2.2,
    name_steps=(
        NameStep(Face.STRONG, 1, 8.4, 5.6),
        NameStep(Face.STRONG, 2, 5.2, 3.8),
        NameStep(Face.NARROW_STRONG, 2, 4.6, 3.0),
    ),
    column=24.0,
    matrix_dots=(7, 6, 5, 4, 3),
)

# For the till: EAN-13 or UPC-A, and a matrix symbol of everything.
PACK_100_BY_60_RETAIL = replace(
    PACK_100_BY_60,
    name="pack 100 x 60 retail",
    foot=False,
    till_bars=13.0,
    column=17.0,
    matrix_dots=(5, 4, 3),
)

PACK_60_BY_40 = LabelDesign(
    "pack 60 x 40",
    60.0,
    40.0,
    left_margin=2.0,
    right_margin=2.0,
    top_margin=1.5,
    bottom_margin=1.5,
    net_figure=4.0,
    name_row=7.0,
    name_steps=(
        NameStep(Face.STRONG, 1, 3.2, 2.6),
        NameStep(Face.NARROW_STRONG, 1, 3.2, 2.6),
        NameStep(Face.NARROW_STRONG, 2, 2.3, 1.8),
    ),
    use_by_row=5.0,
    use_by_cap=2.6,
    use_by_cap_least=2.0,
    use_by_words_cap=2.0,
    use_by_padding=1.3,
    row_gap=0.75,
    body_x=1.3,
    foot=False,
    column=12.5,
    column_gap=1.5,
    matrix_dots=(4, 3),
    code_caps=(1.9, 1.7, 1.5, 1.3),
)

DESIGNS = {
    design.name: design
    for design in (
        PACK_100_BY_60,
        PACK_100_BY_60_RETAIL,
        PACK_100_BY_100,
        PACK_100_BY_100_US,
        PACK_60_BY_40,
    )
}
