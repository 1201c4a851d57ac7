"""The sheet a label is laid out on, and the finished plan of it."""

from dataclasses import dataclass
from typing import Protocol

from labels.design import LabelDesign
from labels.layout import Box, Ink, PlacedText
from labels.rules.letter_height import least_letter_height
from labels.symbol import Symbol
from labels.typeface import Face, type_of
from labels.words import words_of_language


@dataclass(frozen=True, slots=True)
class PlacedSymbol:
    """A bar code in whole printer dots from the upper left corner of the label.

    Attributes:
        symbol: The bar code.
        x_dots: Left edge of its first bar.
        y_dots: Upper edge of its bars.
        module_dots: Width of one module.
        height_dots: Height of its bars; a matrix is as high as its rows.
    """

    symbol: Symbol
    x_dots: int
    y_dots: int
    module_dots: int
    height_dots: int


@dataclass(frozen=True, slots=True)
class Plan:
    """Everything to be inked on one label.

    Attributes:
        page: The paper, mm.
        dots_per_mm: Resolution the bar codes and plates are aligned to.
        texts: All texts.
        plates: Black areas, mm, on whole dots.
        symbols: The bar codes.
        title: What the page is, for the file's own title.
    """

    page: Box
    dots_per_mm: int
    texts: tuple[PlacedText, ...]
    plates: tuple[Box, ...]
    symbols: tuple[PlacedSymbol, ...]
    title: str = ""


class Paper(Protocol):
    """What a sheet needs to know of a design; lengths in mm."""

    @property
    def width(self) -> float:
        """Width of the paper."""

    @property
    def height(self) -> float:
        """Height of the paper."""

    @property
    def left_margin(self) -> float:
        """Free paper on the left."""

    @property
    def right_margin(self) -> float:
        """Free paper on the right."""


class Sheet:
    """Collects the parts of one label.

    Args:
        paper: Size and margins of the label.
        dots_per_mm: Resolution of the print head.
        language: Language of the fixed words and of dates.

    Raises:
        LabelError: No fixed words are known for the language.
    """

    def __init__(self, paper: Paper, dots_per_mm: int, language: str) -> None:
        self.page = Box(0, 0, paper.width, paper.height)
        self.dots_per_mm = dots_per_mm
        self.language = language
        self.words = words_of_language(language)
        self.left = paper.left_margin
        self.right = paper.width - paper.right_margin
        self.texts: list[PlacedText] = []
        self.plates: list[Box] = []
        self.symbols: list[PlacedSymbol] = []

    @property
    def width(self) -> float:
        """Width between the margins, mm."""
        return self.right - self.left

    def on_dots(self, length: float) -> float:
        """Return the length nearest to `length` that is a whole number of dots, mm."""
        return round(length * self.dots_per_mm) / self.dots_per_mm

    def put(
        self,
        text: str,
        face: Face,
        size: float,
        at: tuple[float, float],
        role: str,
        ink: Ink = Ink.BLACK,
        angle: float = 0.0,
    ) -> PlacedText:
        """Place one text with its left end and baseline at `at`, mm.

        Raises:
            LabelError: The face lacks a glyph for a character.
        """
        type_of(face).check(text, role)
        placed = PlacedText(text, face, size, at[0], at[1], role, ink, angle)
        self.texts.append(placed)
        return placed

    def put_symbol(self, symbol: Symbol, at: tuple[int, int], module: int, height: int = 0) -> None:
        """Place a bar code with its first module at `at`, all in dots; a matrix needs no height."""
        tall = len(symbol.rows) * module if symbol.is_matrix else height
        self.symbols.append(PlacedSymbol(symbol, at[0], at[1], module, tall))

    def plan(self, title: str = "") -> Plan:
        """Return what has been placed."""
        placed = (tuple(self.texts), tuple(self.plates), tuple(self.symbols))
        return Plan(self.page, self.dots_per_mm, *placed, title)


class PackSheet(Sheet):
    """The sheet of a pack label, which knows the sizes of its design and its market."""

    def __init__(self, design: LabelDesign, dots_per_mm: int, language: str, market: str) -> None:
        super().__init__(design, dots_per_mm, language)
        self.design = design
        self.least_x = max(design.body_x_least, float(least_letter_height(market)))
