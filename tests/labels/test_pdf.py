"""Drawn labels as dots on paper, by poppler: `pdftoppm -mono`."""

import datetime
import threading
from collections.abc import Callable
from decimal import Decimal

import numpy as np
import pypdfium2
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from labels.content import InputLot, PackLabel
from labels.design import PACK_100_BY_60
from labels.errors import LabelError
from labels.layout import PlacedText
from labels.pdf import PRINT_HEADS, LabelDrawer
from labels.raster import pdfium_lock
from labels.rules.figure_height import least_figure_height
from labels.typeface import type_of

FINE = 40  # dots per mm for measuring glyphs: 0.025 mm


def ink_heights(dots: np.ndarray, text: PlacedText) -> dict[str, float]:
    """Return the least height of the ink of each character of a text, mm, by its own columns."""
    heights: dict[str, float] = {}
    top, bottom = int(text.box.y * FINE) - 2, int(text.box.bottom * FINE) + 3
    for place, character in enumerate(text.text):
        left, right = (
            round((text.x + type_of(text.face).width(text.text[:end]) * text.size) * FINE)
            for end in (place, place + 1)
        )
        rows = np.flatnonzero(dots[top:bottom, left:right].any(axis=1))
        if len(rows):
            height = float(rows[-1] - rows[0] + 1) / FINE
            heights[character] = min(height, heights.get(character, height))
    return heights


def page_text(pdf: bytes) -> str:
    with pdfium_lock:
        document = pypdfium2.PdfDocument(pdf)
        text: str = document[0].get_textpage().get_text_bounded()
        document.close()
    return text


@pytest.mark.parametrize("dots_per_mm", PRINT_HEADS)
@pytest.mark.parametrize("copy_mark", ["", "R1", "SPECIMEN"])
def test_every_bar_and_space_is_a_whole_number_of_dots(
    make_label, dots_of, dots_per_mm: int, copy_mark: str
) -> None:
    drawer = LabelDrawer(PACK_100_BY_60, dots_per_mm)
    label = make_label(copy_mark=copy_mark)
    dots = dots_of(drawer.draw(label), dots_per_mm)
    assert dots.shape == (60 * dots_per_mm, 100 * dots_per_mm)
    for placed in drawer.plan(label).symbols:
        wanted = np.repeat([m == "1" for m in placed.symbol.modules], placed.module_dots)
        quiet = np.zeros(10 * placed.module_dots, bool)
        wanted = np.concatenate([quiet, wanted, quiet])
        left = placed.x_dots - len(quiet)
        rows = dots[placed.y_dots : placed.y_dots + placed.height_dots, left : left + len(wanted)]
        assert (rows == wanted).all()
        for beyond in (placed.y_dots - 1, placed.y_dots + placed.height_dots):
            assert not dots[beyond, left : left + len(wanted)].any()


@pytest.mark.parametrize(
    ("grams", "text", "market"),
    [
        ("40", "40 g ℮", "EU"),
        ("200", "200 g", "EU"),
        ("250", "250 g ℮", "EU"),
        ("1000", "1000 g", "DE"),
        ("2500", "2.5 kg", "EU"),
        ("1800", "1 800 g", "GB"),
    ],
)
def test_figures_of_the_net_quantity_reach_the_legal_height_on_paper(
    make_label, drawer, dots_of, grams: str, text: str, market: str
) -> None:
    label = make_label(net_quantity_text=text, nominal_grams=Decimal(grams), market=market)
    least = least_figure_height(market, Decimal(grams), PACK_100_BY_60.panel_cm2)
    (placed,) = (one for one in drawer.plan(label).texts if one.role == "Net quantity")
    heights = ink_heights(dots_of(drawer.draw(label), FINE), placed)
    figures = [character for character in text if character.isdigit()]
    assert all(heights[figure] >= float(least) - 1 / FINE for figure in figures)
    assert heights.get("℮", 3.0) >= 3.0  # Directive 76/211/EEC Annex I 3.3


@pytest.mark.parametrize("lots", [1, 6, 8])
def test_the_x_height_of_running_text_is_at_least_1_2_mm_on_paper(
    make_label, eight_lots, drawer, dots_of, lots: int
) -> None:
    """Regulation (EU) No 1169/2011 Art. 13(2)."""
    label = make_label(input_lots=eight_lots[:lots], packer_text="Packed by x, x, x")
    (placed,) = (one for one in drawer.plan(label).texts if one.role == "Packer")
    heights = ink_heights(dots_of(drawer.draw(label), FINE), placed)
    assert heights["x"] >= 1.2 - 1 / FINE


def test_capitals_of_name_and_use_by_are_read_at_arms_length(make_label, drawer, dots_of) -> None:
    """At 0.7 m, 2.6 mm are 13 minutes of arc; 5 are the limit of normal sight."""
    label = make_label(use_by=datetime.date(2026, 9, 30), packed_on=None)
    dots = dots_of(drawer.draw(label), FINE)
    for role in ("Name", "Use-by date"):
        placed = next(one for one in drawer.plan(label).texts if one.role == role)
        assert ink_heights(dots, placed)[placed.text[0]] >= 2.6


def test_same_label_same_bytes(make_label, drawer) -> None:
    label = make_label()
    other = LabelDrawer(PACK_100_BY_60)
    first = drawer.draw(label)
    drawer.draw(make_label(product_name="Łódź Σαλάτα Салат", serial="A1-000124"))
    assert drawer.draw(label) == first == other.draw(label)


def test_labels_drawn_by_several_threads_are_the_same(make_label, drawer) -> None:
    labels = [make_label(serial=f"A1-{number:06d}") for number in range(12)]
    wanted = [LabelDrawer(PACK_100_BY_60).draw(label) for label in labels]
    got: dict[int, bytes] = {}
    threads = [
        threading.Thread(target=lambda n=n: got.update({n: drawer.draw(labels[n])}))
        for n in range(len(labels))
    ]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert [got[number] for number in range(len(labels))] == wanted


def test_the_page_says_everything_in_searchable_text(make_label, eight_lots, drawer) -> None:
    label = make_label(product_name="Zimowa sałatka łódzka", input_lots=eight_lots, copy_mark="R1")
    text = " ".join(page_text(drawer.draw(label)).split())
    for wanted in (
        *(label.product_name, label.net_quantity_text, "Use by", "Sunday 29 November 2026"),
        *(label.storage_text, "Packed 24 November 2026", label.packer_text, "Copy R1"),
        *("(01)09521234543213", "(17)261129", "(10)B261124-2", "(21)A1-000123"),
        *(f"{lot.component} {lot.code}" for lot in eight_lots),
        *label.ingredients,
    ):
        assert wanted in text


def test_fonts_are_embedded_and_nothing_else_is_named(make_label, drawer) -> None:
    pdf = drawer.draw(make_label())
    assert pdf.count(b"/FontFile2") == pdf.count(b"/Subtype /TrueType")
    assert pdf.count(b"/FontFile2") >= 4
    assert b"/Creator (Pack line station)" in pdf


def test_an_unknown_print_head_is_refused() -> None:
    with pytest.raises(LabelError, match="8, 12, 16, 24"):
        LabelDrawer(PACK_100_BY_60, 9)


WILD = st.one_of(
    st.text(max_size=60),
    st.sampled_from(
        [
            *("<img src='/etc/hosts'/>", "A<B", "&amp;", "<b>bold</b>", "\\", "(((", "%PDF", ")Tj"),
            *("ñ", "\xf1", "\x1d", "\x00", "\u202e", "🥬", "a" * 10_000, "' OR 1=1", "=1+1", "{0}"),
        ]
    ),
)
FIELDS = ("product_name", "net_quantity_text", "use_by_words", "storage_text", "packer_text")


def drawn_or_refused(drawer: LabelDrawer, make: Callable[[], PackLabel]) -> bytes:
    """Return the page, or no bytes when the label was refused in words."""
    try:
        pdf = drawer.draw(make())
    except LabelError as refusal:
        pdf, said = b"", (refusal.title, refusal.detail)
    else:
        said = ("drawn", "drawn")
        assert pdf.startswith(b"%PDF-")
    assert all(said)
    return pdf


@settings(max_examples=80)
@given(st.sampled_from([*FIELDS, "blend_lot", "serial", "gtin", "market", "copy_mark"]), WILD)
def test_any_text_is_drawn_as_plain_characters_or_refused(
    make_label, drawer, field: str, text: str
) -> None:
    outcome = drawn_or_refused(drawer, lambda: make_label(**{field: text}))
    assert b"/Subtype /Image" not in outcome  # no picture was pulled in


@settings(max_examples=30)
@given(WILD, WILD)
def test_any_component_ingredient_or_lot_code_is_drawn_or_refused(
    make_label, drawer, name: str, code: str
) -> None:
    drawn_or_refused(
        drawer,
        lambda: make_label(input_lots=(InputLot(name, code),), ingredients=(name, "celery")),
    )


def test_markup_is_printed_as_it_stands(make_label, drawer) -> None:
    pdf = drawer.draw(make_label(product_name="<b>A</b> & B <img src='/x'/>"))
    assert "<b>A</b> & B <img src='/x'/>" in " ".join(page_text(pdf).split())
