"""Designs: the sizes a label is set in, one frozen record per label size.

Every length is in millimetres. Heights of text are heights on paper (of the letter x or H, or of
figures), never type sizes.
"""

from dataclasses import dataclass
from decimal import Decimal

from labels.typeface import Face


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
        body_x: Greatest x-height of running text.
        body_x_least: Least x-height; Regulation (EU) No 1169/2011 Art. 13(2): 1.2 mm.
        body_leadings: Distance of baselines in em and extra distance between paragraphs in mm,
            tried in this order.
        bars: Height of each bar code, tried in this order; the last is the least.
        hri_cap: Cap height of the text below a bar code.
        code_caps: Cap heights of lot and serial in words, tried in this order.
        symbol_slot: Width left of which the bar codes end, right quiet zone included.
        module_dots: Widths of a bar code module to try, in dots of an 8 dots/mm head, wide first.
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
    body_x: float = 1.4
    body_x_least: float = 1.2
    body_leadings: tuple[tuple[float, float], ...] = ((1.16, 0.7), (1.12, 0.35), (1.08, 0.0))
    bars: tuple[float, ...] = (8.0, 7.0, 6.0)
    hri_cap: float = 1.5
    code_caps: tuple[float, ...] = (2.1, 1.9, 1.7, 1.5, 1.3)
    symbol_slot: float = 78.25
    module_dots: tuple[int, ...] = (3, 2)


PACK_100_BY_60 = LabelDesign("pack 100 x 60", 100.0, 60.0)
DESIGNS = {design.name: design for design in (PACK_100_BY_60,)}
