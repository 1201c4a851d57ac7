"""The plan of one label: where each text, plate and bar code goes, before any ink.

From top to bottom: name and net quantity in one field of vision; the use-by date as a black slab
joined to a framed slot; storage, ingredients, input lots and packer as running text; two bar codes
with lot and serial beside them. Running text takes what it needs down to its least height; the bar
codes take the rest.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import product

from labels.content import PackLabel
from labels.dates import date_in_words, short_date_in_words
from labels.design import LabelDesign
from labels.errors import LabelError
from labels.gs1 import Element, check_pairs, date_value, gtin_14
from labels.layout import (
    Box,
    Ink,
    PlacedText,
    Span,
    Word,
    break_code,
    set_line,
    steps_down,
    width_of,
    words_of,
    wrap,
)
from labels.rules.figure_height import E_MARK, E_MARK_MM, least_figure_height
from labels.symbol import QUIET_ZONE_MODULES, Symbol, gs1_128
from labels.typeface import Face, type_of
from labels.words import WORDS, LabelWords

GAP = 1.0  # between rows, mm
COLUMN_GAP = 0.5  # between the slot of the bar codes and the column beside it, mm
DOTS_OF_DESIGN = 8  # dots per mm the module widths of a design are stated for


@dataclass(frozen=True, slots=True)
class PlacedSymbol:
    """A bar code in whole printer dots from the upper left corner of the label."""

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
    """

    page: Box
    dots_per_mm: int
    texts: tuple[PlacedText, ...]
    plates: tuple[Box, ...]
    symbols: tuple[PlacedSymbol, ...]


def arrange(
    label: PackLabel, design: LabelDesign, dots_per_mm: int = 8, language: str = "en"
) -> Plan:
    """Place everything one label says.

    Raises:
        LabelError: A text or bar code does not fit, or a character has no glyph.
    """
    return _Arranger(label, design, dots_per_mm, language).plan()


class _Arranger:
    """Collects the parts of one plan, row by row."""

    def __init__(
        self, label: PackLabel, design: LabelDesign, dots_per_mm: int, language: str
    ) -> None:
        self.label = label
        self.design = design
        self.dots = dots_per_mm
        self.language = language
        self.words: LabelWords = WORDS[language]
        self.left = design.side_margin
        self.right = design.width - design.right_margin
        self.texts: list[PlacedText] = []
        self.plates: list[Box] = []
        self.symbols: list[PlacedSymbol] = []

    def plan(self) -> Plan:
        design = self.design
        y = design.top_margin
        self.name_and_quantity(y)
        y += design.name_row + GAP
        self.use_by(y)
        y += design.use_by_row + GAP
        chosen = self.choose_symbols()
        y = self.body(y, len(chosen))
        self.bar_codes(chosen, y + GAP)
        self.identity_column(y + GAP)
        if self.label.copy_mark == "SPECIMEN":
            self.specimen()
        page = Box(0, 0, design.width, design.height)
        return Plan(page, self.dots, tuple(self.texts), tuple(self.plates), tuple(self.symbols))

    def put(
        self, text: str, face: Face, size: float, x: float, baseline: float, role: str,
        ink: Ink = Ink.BLACK, angle: float = 0.0,
    ) -> PlacedText:
        type_of(face).check(text, role)
        placed = PlacedText(text, face, size, x, baseline, role, ink, angle)
        self.texts.append(placed)
        return placed

    def on_dots(self, length: float) -> float:
        return round(length * self.dots) / self.dots

    # Name and net quantity

    def name_and_quantity(self, y: float) -> None:
        design = self.design
        quantity = self.net_quantity_size()
        text = self.label.net_quantity_text
        width = type_of(Face.STRONG).width(text) * quantity
        figure = quantity * type_of(Face.STRONG).height("0123456789")
        room = self.right - self.left - width - 4.0
        lines, face, cap = self.fit_name(room)
        size = cap / type_of(face).cap_height
        leading = cap + 1.55
        block = cap + leading * (len(lines) - 1)
        top = y + (design.name_row - 1.1 - block) / 2
        baseline = top + cap
        for number, line in enumerate(lines):
            self.texts += set_line(line, self.left, baseline + number * leading, size, "Name")
        first = baseline if len(lines) == 1 else y + (design.name_row - 1.1 + figure) / 2
        self.put(text, Face.STRONG, quantity, self.right - width, first, "Net quantity")

    def net_quantity_size(self) -> float:
        """Return the em of the net quantity, mm, from the height its own figures must have."""
        label = self.label
        face = type_of(Face.STRONG)
        face.check(label.net_quantity_text, "Net quantity")
        least = least_figure_height(label.market, label.nominal_grams, self.design.panel_cm2)
        figures = "".join(re.findall("[0-9]", label.net_quantity_text))
        size = max(self.design.net_figure, float(least)) / face.height(figures)
        if E_MARK in label.net_quantity_text:
            size = max(size, float(E_MARK_MM) / face.height(E_MARK))
        if face.width(label.net_quantity_text) * size > (self.right - self.left) / 2:
            size = max(float(least), 2.0) / face.height(figures)
        if face.width(label.net_quantity_text) * size > (self.right - self.left) * 0.6:
            raise LabelError(
                "Net quantity",
                f"{label.net_quantity_text!r} does not fit beside the name with figures of "
                f"{least} mm ({label.market}); shorten it or use a larger label",
            )
        return size

    def fit_name(self, room: float) -> tuple[list[list[Word]], Face, float]:
        name = self.label.product_name
        for step in self.design.name_steps:
            face = type_of(step.face)
            face.check(name, "Product name")
            words = words_of(name, step.face)
            for cap in steps_down(step.largest_cap, step.smallest_cap, 0.1):
                lines = wrap(words, room, cap / face.cap_height)
                if lines is not None and len(lines) <= step.lines:
                    return lines, step.face, cap
        last = self.design.name_steps[-1]
        raise LabelError(
            "Product name",
            f"{name!r} does not fit on {last.lines} lines of {room:.0f} mm with capitals of "
            f"{last.smallest_cap} mm; shorten the name",
        )

    # Use-by date: a black slab joined to a framed slot

    def use_by(self, y: float) -> None:
        design = self.design
        y = self.on_dots(y)
        height = self.on_dots(design.use_by_row)
        frame = self.on_dots(0.5)
        words, day = self.label.use_by_words, date_in_words(self.label.use_by, self.language)
        word_size = 3.0 / type_of(Face.STRONG).cap_height
        word_width = type_of(Face.STRONG).width(words) * word_size
        slab = self.on_dots(word_width + 4.4)
        room = self.right - self.left - slab - 5.0
        wide = type_of(Face.STRONG)
        cap = min(design.use_by_cap, room / wide.width(day) * wide.cap_height)
        if cap < design.use_by_cap_least:
            raise LabelError(
                "Use-by words",
                f"{words!r} and {day!r} do not fit on one line with capitals of "
                f"{design.use_by_cap_least} mm; shorten the words",
            )
        slot = Box(self.left + slab, y, self.on_dots(self.right - self.left) - slab, height)
        self.plates += [
            Box(self.left, y, slab, height),
            Box(slot.x, y, slot.width, frame),
            Box(slot.x, slot.bottom - frame, slot.width, frame),
            Box(slot.right - frame, y + frame, frame, height - 2 * frame),
        ]
        middle = y + height / 2
        self.put(
            words, Face.STRONG, word_size, self.left + 2.2, middle + 1.5, "Use-by words", Ink.WHITE
        )
        size = cap / wide.cap_height
        self.put(day, Face.STRONG, size, slot.x + 2.5, middle + cap / 2, "Use-by date")

    # Running text

    def paragraphs(self) -> dict[str, list[Word]]:
        label = self.label
        return {
            "Storage": words_of(label.storage_text, Face.NARROW_STRONG),
            "Ingredients": self.ingredient_words(),
            "Input lots": self.lot_words(together=False),
            "Packer": words_of(label.packer_text, Face.NARROW),
        }

    def ingredient_words(self) -> list[Word]:
        """Return the list of ingredients, its allergens in the strong face (Art. 21(1)(b))."""
        words = words_of(f"{self.words.ingredients}:", Face.NARROW)
        for number, ingredient in enumerate(self.label.ingredients, start=1):
            strong = _emphasised(ingredient, self.label.allergens)
            end = "." if number == len(self.label.ingredients) else ","
            parts = list(re.finditer(r"\S+", ingredient))
            for part in parts:
                bold = any(start < part.end() and part.start() < stop for start, stop in strong)
                word: Word = (Span(part.group(), Face.NARROW_STRONG if bold else Face.NARROW),)
                words.append((*word, Span(end, Face.NARROW)) if part is parts[-1] else word)
        return words

    def lot_words(self, *, together: bool) -> list[Word]:
        words = words_of(f"{self.words.input_lots}:", Face.NARROW)
        for number, lot in enumerate(self.label.input_lots, start=1):
            end = () if number == len(self.label.input_lots) else (Span(" ·", Face.NARROW),)
            code: Word = (Span(lot.code, Face.CODE), *end)
            if together:
                words.append((Span(" ".join(lot.component.split()) + " ", Face.NARROW), *code))
            else:
                words += [*words_of(lot.component, Face.NARROW), code]
        return words

    def lot_lines(self, width: float, size: float) -> list[list[Word]] | None:
        """Wrap the input lots, each kept with its component where that costs no line."""
        parted = wrap(self.lot_words(together=False), width, size)
        kept = wrap(self.lot_words(together=True), width, size)
        if parted is None or kept is None or len(kept) > len(parted):
            return parted
        return kept

    def body(self, y: float, symbols: int) -> float:
        """Set the running text as large as the bar codes allow; return where it ends, mm."""
        design = self.design
        words = self.paragraphs()
        for role, row in words.items():
            for span in (span for word in row for span in word):
                type_of(span.face).check(span.text, role)
        foot = design.height - design.bottom_margin - GAP - symbols * self.hri_height()
        sizes = steps_down(design.body_x, design.body_x_least, 0.05)
        for bar, leading_em, x_height in product(design.bar_heights, design.body_leadings, sizes):
            size = x_height / type_of(Face.NARROW).x_height
            leading = size * leading_em
            lines = self.wrapped(words, size)
            end = y + leading * sum(map(len, lines.values()))
            if end <= foot - symbols * bar:
                self.set_body(lines, y, size, leading)
                return end
        needs = ", ".join(f"{role} {len(rows)}" for role, rows in lines.items())
        raise LabelError(
            "Text of the label",
            f"too much for {design.name} mm with letters of {design.body_x_least} mm; lines "
            f"needed: {needs}; room for {int((foot - symbols * bar - y) / leading)}. Nothing is "
            "cut off: shorten a text, use fewer input lots in one blend, or a larger label",
        )

    def wrapped(self, words: dict[str, list[Word]], size: float) -> dict[str, list[list[Word]]]:
        width = self.right - self.left
        lines = {}
        for role, row in words.items():
            rows = self.lot_lines(width, size) if role == "Input lots" else wrap(row, width, size)
            if rows is None:
                longest = max(row, key=lambda word: width_of(word, size))
                raise LabelError(
                    role,
                    f"{''.join(span.text for span in longest)[:60]!r} is wider than the label; "
                    "shorten it or put a blank where it may be parted",
                )
            lines[role] = rows
        return lines

    def set_body(
        self, lines: dict[str, list[list[Word]]], y: float, size: float, leading: float
    ) -> None:
        baseline = y + type_of(Face.NARROW).extent("d")[1] * size
        for role, rows in lines.items():
            for row in rows:
                self.texts += set_line(row, self.left, baseline, size, role)
                baseline += leading

    # Bar codes, and the codes in words beside them

    def choose_symbols(self) -> list[tuple[Symbol, int]]:
        """Return each symbol with its module width in dots, the widest that fits its slot."""
        label = self.label
        item = (Element("01", gtin_14(label.gtin)), Element("17", date_value(label.use_by)))
        lot, serial = Element("10", label.blend_lot), Element("21", label.serial)
        check_pairs((*item, lot, serial))
        return [self.widest("Bar code", (item,)), self.widest("Bar code", ((lot, serial), (lot,)))]

    def widest(self, where: str, choices: Sequence[tuple[Element, ...]]) -> tuple[Symbol, int]:
        """Return the first choice that fits, at its widest module.

        A long lot leaves no room for the serial in the same symbol; it then stands in words only.
        """
        slot = round(self.design.symbol_slot * self.dots)
        left = round(self.left * self.dots)
        for elements in choices:
            symbol = gs1_128(elements)
            for design_dots in self.design.module_dots:
                dots = design_dots * self.dots // DOTS_OF_DESIGN
                quiet = QUIET_ZONE_MODULES * dots
                if quiet <= left and left + len(symbol.modules) * dots + quiet <= slot:
                    return symbol, dots
        raise LabelError(
            where,
            f"{symbol.hri} needs {symbol.width_with_quiet_zones} modules with its quiet zones; "
            f"the slot holds {slot // (self.design.module_dots[-1] * self.dots // DOTS_OF_DESIGN)}"
            " of the narrowest allowed; use a shorter code",
        )

    def hri_height(self) -> float:
        return self.design.hri_cap + 1.0

    def bar_codes(self, chosen: Sequence[tuple[Symbol, int]], y: float) -> None:
        design = self.design
        hri = self.hri_height()
        room = (design.height - design.bottom_margin - y) / len(chosen)
        height = int((room - hri) * self.dots)
        face = type_of(Face.CODE)
        size = design.hri_cap / face.cap_height
        left = round(self.left * self.dots)
        for number, (symbol, module) in enumerate(chosen):
            top = round((y + number * room) * self.dots)
            self.symbols.append(PlacedSymbol(symbol, left, top, module, height))
            baseline = (top + height) / self.dots + 0.45 + design.hri_cap
            self.put(symbol.hri, Face.CODE, size, self.left, baseline, "Bar code in words")

    def identity_column(self, y: float) -> None:
        """Set lot, serial and packing day beside the bar codes, and the mark of a copy."""
        design = self.design
        x = design.symbol_slot + COLUMN_GAP
        width = self.right - x
        size = 1.3 / type_of(Face.NARROW).x_height
        code_size = 1.9 / type_of(Face.CODE).cap_height
        bottom = design.height - design.bottom_margin
        entries = [(self.words.lot, self.label.blend_lot), (self.words.serial, self.label.serial)]
        baseline = y + type_of(Face.NARROW).extent("d")[1] * size
        for title, code in entries:
            self.put(title, Face.NARROW, size, x, baseline, title)
            for line in break_code(code, Face.CODE, width, code_size):
                baseline += 2.75
                self.put(line, Face.CODE, code_size, x, baseline, f"{title} in words")
            baseline += 3.2
        if self.label.packed_on is not None:
            self.put(self.words.packed, Face.NARROW, size, x, baseline, "Packed")
            day = short_date_in_words(self.label.packed_on, self.language)
            lines = wrap(words_of(day, Face.NARROW), width, size)
            for line in lines or ():
                baseline += 2.6
                self.texts += set_line(line, x, baseline, size, "Packing date")
            baseline += 3.2
        if self.label.copy_mark:
            self.copy_mark(x, bottom, width)

    def copy_mark(self, x: float, bottom: float, width: float) -> None:
        mark = self.label.copy_mark
        face = type_of(Face.STRONG)
        text = mark if mark == "SPECIMEN" else f"{self.words.copy} {mark}"
        size = min(2.4 / face.cap_height, (width - 1.6) / face.width(text))
        height = self.on_dots(3.75)
        x, y = self.on_dots(x), self.on_dots(bottom - height)
        self.plates.append(Box(x, y, self.on_dots(width), height))
        left = x + (width - face.width(text) * size) / 2
        baseline = y + height / 2 + face.cap_height * size / 2
        self.put(text, Face.STRONG, size, left, baseline, "Copy mark", Ink.WHITE)

    def specimen(self) -> None:
        """Lay SPECIMEN across the words, in outline, clear of the bar codes."""
        size = (self.right - self.left) * 0.95 / type_of(Face.STRONG).width("SPECIMEN")
        self.put(
            "SPECIMEN", Face.STRONG, size, self.left + 3, 31.0, "Specimen", Ink.OUTLINE, angle=9.0
        )


def _emphasised(ingredient: str, allergens: Sequence[str]) -> list[tuple[int, int]]:
    """Return where allergen words stand in an ingredient, as (start, end)."""
    return [
        match.span()
        for allergen in allergens
        for match in re.finditer(re.escape(allergen), ingredient, re.IGNORECASE)
    ]

