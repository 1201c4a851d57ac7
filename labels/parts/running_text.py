"""Storage, ingredients, input lots and packer, set as running text over the whole width.

Regulation (EU) No 1169/2011 Art. 13(2): letters with an x-height of at least 1.2 mm; the design
carries that figure and text that does not fit with it is refused. Labels of one run differ in
their serial only, so the last settings are kept.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from functools import lru_cache
from itertools import chain, product

from labels.content import InputLot, PackLabel
from labels.dates import date_for_market, short_date_in_words
from labels.design import LabelDesign
from labels.errors import LabelError
from labels.ingredients import listed
from labels.layout import (
    PlacedText,
    Span,
    Word,
    set_line,
    steps_down,
    width_of,
    words_of,
    wrap,
)
from labels.sheet import PackSheet
from labels.typeface import Face, type_of
from labels.words import LabelWords, words_of_language

DOT = " ·"  # between two input lots
X_STEP = 0.05  # mm
SETTINGS_KEPT = 32

Lines = list[list[Word]]
TITLE = "Text of the label"


class Which(Enum):
    """What of the running text stands on a label."""

    ALL = "everything"
    WITHOUT_LOTS = "everything but the input lots, which stand on a second label"
    LOTS = "the input lots alone, on a second label"


@dataclass(frozen=True, slots=True)
class _List:
    """The list of ingredients in one language."""

    heading: str
    ingredients: tuple[str, ...]
    allergens: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Copy:
    """The running text of a label as it is to be set, headings included."""

    least_x: float
    storages: tuple[str, ...] = ()
    packed: str = ""
    lists: tuple[_List, ...] = ()
    origin: str = ""
    lots_heading: str = ""
    lots: tuple[InputLot, ...] = ()
    packer: str = ""
    see_second: str = ""


@dataclass(frozen=True, slots=True)
class _TooMuch:
    """The text does not fit; kept like a setting, since every label of a run would ask again."""

    why: str


def place(
    sheet: PackSheet,
    label: PackLabel,
    y: float,
    rooms: Sequence[float],
    width: float,
    which: Which = Which.ALL,
) -> float:
    """Place the running text from `y` mm down and return where it ends, mm.

    Args:
        sheet: Where to place it.
        label: Whose text.
        y: Upper edge, mm.
        rooms: Heights the text may take, mm, the most wanted first.
        width: Width it may take, mm.
        which: Everything, everything but the input lots, or the input lots alone.

    Raises:
        LabelError: The text does not fit the last height with letters of the least height.
    """
    setting = _set(_copy_of(sheet, label, which), sheet.design, y, tuple(rooms), width)
    if isinstance(setting, _TooMuch):
        raise LabelError(TITLE, setting.why)
    texts, height = setting
    sheet.texts += texts
    return y + height


def _copy_of(sheet: PackSheet, label: PackLabel, which: Which) -> _Copy:
    languages = [sheet.words]
    if label.second is not None:
        languages.append(words_of_language(label.second.language))
    lots_heading = " / ".join(words.input_lots for words in languages) + ":"
    if which is Which.LOTS:
        return _Copy(sheet.least_x, lots_heading=lots_heading, lots=label.input_lots)
    here = which is Which.ALL
    storages = [label.storage_text]
    lists = [_list(label, label.ingredients, label.allergens, sheet.language)]
    if label.second is not None:
        second = label.second
        storages.append(second.storage_text)
        lists.append(_list(label, second.ingredients, second.allergens, second.language))
    return _Copy(
        sheet.least_x,
        tuple(storages),
        _packed(label, sheet.language, languages),
        tuple(lists),
        " / ".join(words.origin for words in languages) + f": {label.origin}."
        if label.origin
        else "",
        lots_heading,
        label.input_lots if here else (),
        label.packer_text,
        "" if here else " ".join(words.see_second for words in languages),
    )


def _packed(label: PackLabel, language: str, languages: Sequence[LabelWords]) -> str:
    """Return the day of packing in words; two languages share one date."""
    if label.packed_on is None:
        return ""
    words = " / ".join(words.packed for words in languages)
    if label.second is not None:
        return f"{words} {date_for_market(label.packed_on, label.market, language)}."
    return f"{words} {short_date_in_words(label.packed_on, language)}."


def _list(
    label: PackLabel, ingredients: tuple[str, ...], allergens: tuple[str, ...], language: str
) -> _List:
    heading = f"{words_of_language(language).ingredients}:"
    return _List(heading, listed(label, ingredients, language), allergens)


@lru_cache(SETTINGS_KEPT)
def _set(
    copy: _Copy, design: LabelDesign, y: float, rooms: tuple[float, ...], width: float
) -> tuple[tuple[PlacedText, ...], float] | _TooMuch:
    """Return the texts and the height they take, mm, in the first setting that fits."""
    _check_glyphs(copy)
    sizes = steps_down(max(design.body_x, copy.least_x), copy.least_x, X_STEP)
    paragraphs = {x_height: _paragraphs(copy, width, _em(x_height)) for x_height in sizes}
    # Larger letters come before wider lines; the tightest lines only where nothing else fits.
    *wide, tight = design.body_leadings
    settings = chain(product(rooms, sizes, wide), product(rooms, sizes, (tight,)))
    for room, x_height, (leading_em, gap) in settings:
        lines = paragraphs[x_height]
        leading = _em(x_height) * leading_em
        height = leading * sum(map(len, lines.values())) + gap * (len(lines) - 1)
        if height <= room:
            return _placed(lines, design.left_margin, y, x_height, leading, gap), height
    least = paragraphs[sizes[-1]]
    fitting = int(rooms[-1] / (_em(sizes[-1]) * design.body_leadings[-1][0]))
    needs = ", ".join(f"{role} {len(lines)}" for role, lines in least.items())
    return _TooMuch(
        f"too much for a label of {design.width:g} x {design.height:g} mm with letters of "
        f"{copy.least_x} mm: lines needed: {needs}; lines that fit: {fitting}. Nothing is "
        "cut off: shorten a text, put fewer input lots in one blend, or use a larger label",
    )


def _em(x_height: float) -> float:
    return x_height / type_of(Face.NARROW).x_height


def _check_glyphs(copy: _Copy) -> None:
    narrow = type_of(Face.NARROW)
    for storage in copy.storages:
        type_of(Face.NARROW_STRONG).check(storage, "Storage")
    narrow.check(copy.packer, "Packer")
    narrow.check(copy.origin, "Origin")
    for one in copy.lists:
        narrow.check(" ".join(one.ingredients), "Ingredients")
    for lot in copy.lots:
        narrow.check(lot.component, "Input lots")


def _paragraphs(copy: _Copy, width: float, size: float) -> dict[str, Lines]:
    """Return the lines of each paragraph by its role."""
    found: dict[str, Lines] = {}
    last = len(copy.storages) - 1
    for number, storage in enumerate(copy.storages):
        words = words_of(storage, Face.NARROW_STRONG)
        if number == last and copy.packed:
            words += _kept(copy.packed, width, size)
        found[_role("Storage", number)] = _wrapped("Storage", words, width, size)
    last = len(copy.lists) - 1
    for number, one in enumerate(copy.lists):
        words = _ingredients(one)
        if number == last:
            words += words_of(copy.origin, Face.NARROW)
        found[_role("Ingredients", number)] = _wrapped("Ingredients", words, width, size)
    if copy.lots:
        found["Input lots"] = _lot_lines(copy, width, size)
    if copy.see_second:
        pointer = words_of(copy.see_second, Face.NARROW_STRONG)
        found["Input lots"] = _wrapped("Input lots", pointer, width, size)
    if copy.packer:
        packer = words_of(copy.packer, Face.NARROW)
        found["Packer"] = _wrapped("Packer", packer, width, size)
    return found


def _kept(text: str, width: float, size: float) -> list[Word]:
    """Return a short text as one word, so that a date stays on one line; parted where too wide."""
    whole: Word = (Span(text, Face.NARROW),)
    return [whole] if width_of(whole, size) <= width else words_of(text, Face.NARROW)


def _role(role: str, number: int) -> str:
    return f"{role}, second language" if number else role


def _wrapped(role: str, words: Sequence[Word], width: float, size: float) -> Lines:
    lines = wrap(words, width, size)
    if lines is None:
        widest = max(words, key=lambda word: width_of(word, size))
        raise LabelError(
            role,
            f"{''.join(span.text for span in widest)[:60]!r} is wider than the label; shorten it "
            "or put a blank where it may be parted",
        )
    return lines


def _ingredients(one: _List) -> list[Word]:
    """Return the list of ingredients, its allergens in the strong face (Art. 21(1)(b))."""
    words = words_of(one.heading, Face.NARROW)
    for number, ingredient in enumerate(one.ingredients, start=1):
        strong = [
            match.span()
            for allergen in one.allergens
            for match in re.finditer(re.escape(allergen), ingredient, re.IGNORECASE)
        ]
        end = Span("." if number == len(one.ingredients) else ",", Face.NARROW)
        parts = list(re.finditer(r"\S+", ingredient))
        for part in parts:
            bold = any(start < part.end() and part.start() < stop for start, stop in strong)
            span = Span(part.group(), Face.NARROW_STRONG if bold else Face.NARROW)
            words.append((span, end) if part is parts[-1] else (span,))
    return words


def _lot_lines(copy: _Copy, width: float, size: float) -> Lines:
    """Wrap the input lots, each code kept beside its component where that costs no line."""
    lines = _wrapped("Input lots", _lots(copy, together=False), width, size)
    kept = wrap(_lots(copy, together=True), width, size)
    if kept is not None and len(kept) <= len(lines):
        lines = kept
    for line in lines:
        if line[-1][-1].text == DOT:  # the end of the line parts well enough
            line[-1] = line[-1][:-1]
    return lines


def _lots(copy: _Copy, *, together: bool) -> list[Word]:
    words = words_of(copy.lots_heading, Face.NARROW)
    for number, lot in enumerate(copy.lots, start=1):
        end = () if number == len(copy.lots) else (Span(DOT, Face.NARROW),)
        code: Word = (Span(lot.code, Face.CODE), *end)
        if together:
            words.append((Span(" ".join(lot.component.split()) + " ", Face.NARROW), *code))
        else:
            words += [*words_of(lot.component, Face.NARROW), code]
    return words


def _placed(
    paragraphs: dict[str, Lines], x: float, y: float, x_height: float, leading: float, gap: float
) -> tuple[PlacedText, ...]:
    size = _em(x_height)
    baseline = y + type_of(Face.NARROW).extent("d")[1] * size
    texts: list[PlacedText] = []
    for role, lines in paragraphs.items():
        for line in lines:
            texts += set_line(line, x, baseline, size, role)
            baseline += leading
        baseline += gap
    return tuple(texts)
