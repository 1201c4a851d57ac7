"""Every design of a pack label: apart, within the paper, on whole dots, read back, continued."""

import dataclasses
import itertools
import math

import numpy as np
import pytest

from labels.content import InputLot, Translation
from labels.design import (
    DESIGNS,
    PACK_60_BY_40,
    PACK_100_BY_60,
    PACK_100_BY_60_RETAIL,
    PACK_100_BY_100,
)
from labels.errors import LabelError
from labels.layout import Box, Ink
from labels.pdf import LabelDrawer
from labels.plan import arrange, arrange_pack
from labels.readback import read_back
from labels.release import release
from labels.sheet import Plan
from labels.typeface import type_of

EVERY = pytest.mark.parametrize("name", sorted(DESIGNS))
HEADS = (8, 12, 24)  # 203, 300 and 600 dpi
LINK_100_BY_100 = dataclasses.replace(PACK_100_BY_100, link_stem="https://id.example.org")


def zones_of(plan: Plan) -> list[Box]:
    """Return the area of each bar code with its quiet zones, mm."""
    found = []
    for placed in plan.symbols:
        left, right = (modules * placed.module_dots for modules in placed.symbol.quiet)
        above = left if placed.symbol.is_matrix else 0
        wide = len(placed.symbol.modules) * placed.module_dots + left + right
        edges = (
            *(placed.x_dots - left, placed.y_dots - above, wide),
            placed.height_dots + 2 * above,
        )
        found.append(Box(*(edge / plan.dots_per_mm for edge in edges)))
    return found


def assert_sound(plan: Plan) -> None:
    """Nothing outside the paper, nothing over anything else."""
    for text in plan.texts:
        assert plan.page.contains(text.box), text
        on_plate = any(plate.overlaps(text.box) for plate in plan.plates)
        assert on_plate == (text.ink is Ink.WHITE), text
        if on_plate:  # white ink beyond its plate would be lost
            assert any(plate.contains(text.box) for plate in plan.plates), text
    for one, other in itertools.combinations(plan.texts, 2):
        assert not one.box.overlaps(other.box), (one, other)
    zones = zones_of(plan)
    for zone in zones:
        assert plan.page.contains(zone)
        for ink in (*(text.box for text in plan.texts), *plan.plates):
            assert not zone.overlaps(ink), (zone, ink)
    for first, second in itertools.combinations(zones, 2):
        assert not first.overlaps(second)


@EVERY
@pytest.mark.parametrize("lots", [1, 3, 6, 8])
def test_nothing_overlaps_and_every_lot_stands_whole(
    make_label, eight_lots, name: str, lots: int
) -> None:
    label = make_label(input_lots=eight_lots[:lots])
    plans = arrange_pack(label, DESIGNS[name])
    for plan in plans:
        assert_sound(plan)
    words = " ".join(text.text for plan in plans for text in plan.texts)
    assert all(lot.code in words and lot.component in words for lot in label.input_lots)


@EVERY
@pytest.mark.parametrize("dots_per_mm", HEADS)
@pytest.mark.parametrize("copy_mark", ["", "R1", "SPECIMEN"])
def test_every_symbol_is_in_whole_dots_on_paper_and_reads_back(
    make_label, dots_of, name: str, dots_per_mm: int, copy_mark: str
) -> None:
    drawer = LabelDrawer(DESIGNS[name], dots_per_mm)
    label = make_label(copy_mark=copy_mark, input_lots=make_label().input_lots[:3])
    pdf = drawer.draw(label)
    dots = dots_of(pdf, dots_per_mm)
    for placed in drawer.plan(label).symbols:
        rows = placed.symbol.rows
        wanted = np.array([[one == "1" for one in row] for row in rows])
        tall = placed.module_dots if placed.symbol.is_matrix else placed.height_dots
        wanted = np.repeat(np.repeat(wanted, placed.module_dots, 1), tall, 0)
        got = dots[placed.y_dots :, placed.x_dots :][: wanted.shape[0], : wanted.shape[1]]
        assert (got == wanted).all()
    assert read_back(pdf, drawer.symbols(label), dots_per_mm).ok


@EVERY
def test_the_word_specimen_lies_within_the_paper_and_clear_of_bar_codes(
    make_label, name: str
) -> None:
    plan = LabelDrawer(DESIGNS[name]).plan(make_label(copy_mark="SPECIMEN"))
    (word,) = (text for text in plan.texts if text.ink is Ink.OUTLINE)
    slope = math.radians(word.angle)
    cap = type_of(word.face).cap_height * word.size
    highest = word.baseline - word.width * math.sin(slope) - cap * math.cos(slope)
    assert highest >= 0
    right = word.x + word.width * math.cos(slope)
    assert right <= plan.page.width
    area = Box(word.x, highest, right - word.x, word.baseline - highest)
    assert not any(area.overlaps(zone) for zone in zones_of(plan))


def test_a_digital_link_takes_the_place_of_the_data_matrix(make_label) -> None:
    drawer = LabelDrawer(LINK_100_BY_100)
    released = release(drawer, make_label())
    link = next(symbol for symbol in released.symbols if symbol.is_matrix)
    assert link.identifier == "]Q1"
    assert link.hri == (
        "https://id.example.org/01/09521234543213/10/B261124-2/21/A1-000123?17=261129"
    )
    assert_sound(drawer.plan(make_label()))


@pytest.mark.parametrize(
    ("gtin", "sent", "digits"),
    [
        ("9521234543213", b"9521234543213", "9521234543213"),
        ("09521234543213", b"9521234543213", "9521234543213"),
        ("012345678905", b"0012345678905", "012345678905"),
    ],
)
@pytest.mark.parametrize("dots_per_mm", HEADS)
def test_the_till_gets_ean_or_upc_with_its_digits(
    make_label, dots_of, dots_per_mm: int, gtin: str, sent: bytes, digits: str
) -> None:
    drawer = LabelDrawer(PACK_100_BY_60_RETAIL, dots_per_mm)
    label = make_label(gtin=gtin)
    plan = drawer.plan(label)
    assert_sound(plan)
    released = release(drawer, label)
    assert sent in [symbol.expected_bytes for symbol in released.symbols]
    row = sorted((text for text in plan.texts if text.role == "Till digits"), key=lambda t: t.x)
    assert "".join(text.text for text in row) == digits
    (placed,) = (one for one in plan.symbols if one.symbol.guards)
    assert 0.264 <= placed.module_dots / dots_per_mm <= 0.660
    dots = dots_of(released.pdf, dots_per_mm)
    guards = [start for n, (start, _) in enumerate(placed.symbol.bars) if n in placed.symbol.guards]
    below = placed.y_dots + placed.height_dots + 5 * placed.module_dots
    for start in guards:  # five modules longer, not one dot more
        column = placed.x_dots + start * placed.module_dots
        assert dots[placed.y_dots : below, column].all()
        assert not dots[below, column]


def test_a_case_gtin_has_no_place_at_the_till(make_label) -> None:
    with pytest.raises(LabelError, match="indicator 1"):
        arrange_pack(make_label(gtin="19521234543210"), PACK_100_BY_60_RETAIL)


@pytest.mark.parametrize("design", [PACK_100_BY_60, PACK_60_BY_40])
def test_lots_that_do_not_fit_take_a_second_label(make_label, design) -> None:
    count = 24 if design is PACK_100_BY_60 else 8
    lots = tuple(InputLot(f"Component {n}", f"LOT-{n:012d}") for n in range(count))
    label = make_label(input_lots=lots)
    with pytest.raises(LabelError, match="Nothing is cut off"):
        arrange(label, design)
    first, second = arrange_pack(label, design)
    for plan in (first, second):
        assert_sound(plan)
    words = [text.text for text in first.texts]
    assert "Input lots: see label 2 of 2." in words
    assert not any(lot.code in word for word in words for lot in lots)
    continued = " ".join(text.text for text in second.texts)
    assert all(lot.code in continued and lot.component in continued for lot in lots)
    assert "2 / 2" in continued
    assert label.blend_lot in continued
    released = release(LabelDrawer(design), label)
    assert released.pages == 2
    assert len(released.symbols) == len(first.symbols) + len(second.symbols)


def test_lots_that_do_not_fit_a_second_label_either_are_refused(make_label) -> None:
    lots = tuple(InputLot(f"A component of long name {n}", f"LOT-{n:016d}") for n in range(24))
    with pytest.raises(LabelError) as caught:
        arrange_pack(make_label(input_lots=lots), PACK_60_BY_40)
    assert "A second label does not help" in caught.value.detail


def test_text_that_is_too_long_without_any_lot_is_refused(make_label) -> None:
    with pytest.raises(LabelError, match="A second label does not help"):
        arrange_pack(
            make_label(storage_text="keep cold " * 20, packer_text="x y " * 50), PACK_60_BY_40
        )


def test_long_codes_in_a_narrow_column_are_parted_or_refused(make_label) -> None:
    with pytest.raises(LabelError) as caught:
        arrange_pack(make_label(blend_lot="W" * 20, serial="W" * 20), PACK_60_BY_40)
    assert caught.value.title in ("Lot", "Lot and serial", "Bar code")


POLISH = {
    "language": "pl",
    "product_name": "Chrupiąca sałatka ogrodowa",
    "use_by_words": "Należy spożyć do",
    "ingredients": ("sałata rzymska", "marchew", "seler naciowy"),
    "allergens": ("seler",),
    "storage_text": "Przechowywać w temperaturze 0–5 °C.",
}
SWEDISH_AND_FINNISH = {
    "language": "sv",
    "product_name": "Krispig sallad",
    "use_by_words": "Sista förbrukningsdag / Viimeinen käyttöajankohta",
    "ingredients": ("romansallad", "morot", "selleri"),
    "allergens": ("selleri",),
    "storage_text": "Förvaras vid 0–5 °C.",
    "second": Translation(
        "fi", "Rapea salaatti", ("roomansalaatti", "porkkana", "selleri"), ("selleri",), "0–5 °C."
    ),
}


def texts_of(plan: Plan, role: str) -> list[str]:
    return [text.text for text in plan.texts if text.role == role]


@EVERY
def test_long_words_of_a_date_come_first_and_the_weekday_stands_where_it_fits(
    make_label, name: str
) -> None:
    label = make_label(**POLISH, input_lots=make_label().input_lots[:2])
    plan = LabelDrawer(DESIGNS[name]).plan(label)
    assert_sound(plan)
    (date,) = texts_of(plan, "Use-by date")
    assert date.endswith("29 listopada 2026")
    assert date.startswith("Niedziela") == (name != PACK_60_BY_40.name)
    assert " ".join(texts_of(plan, "Use-by words")) == "Należy spożyć do"


@pytest.mark.parametrize("name", sorted(DESIGNS.keys() - {PACK_60_BY_40.name}))
def test_words_of_a_date_in_two_languages_take_two_lines_on_the_plate(
    make_label, name: str
) -> None:
    label = make_label(**SWEDISH_AND_FINNISH, input_lots=make_label().input_lots[:2])
    plan = LabelDrawer(DESIGNS[name]).plan(label)
    assert_sound(plan)
    assert texts_of(plan, "Use-by words") == [
        "Sista förbrukningsdag /",
        "Viimeinen käyttöajankohta",
    ]


@EVERY
def test_the_mark_of_a_reprint_is_no_smaller_than_four_fifths_of_its_title(
    make_label, name: str
) -> None:
    label = make_label(copy_mark="R1", input_lots=make_label().input_lots[:2])
    plan = LabelDrawer(DESIGNS[name]).plan(label)
    (mark,) = (text for text in plan.texts if text.role == "Copy mark")
    (title,) = (text for text in plan.texts if text.role == "Serial")
    cap = type_of(mark.face).cap_height * mark.size
    assert cap >= 0.8 * type_of(title.face).cap_height * title.size
    assert mark.text in ("Copy R1", "R1")


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"height": 20.0}, "rows and margins take"),
        ({"name_row": 60.0}, "rows and margins take"),
        ({"till_bars": 45.0}, "rows and margins take"),
        ({"quantity_row": 60.0}, "rows and margins take"),
        ({"symbol_slot": 100.5}, "bar codes take 100.5 mm"),
        ({"column": 98.0}, "column and margins take"),
        ({"width": -1.0}, "width = -1.0"),
        ({"left_margin": float("nan")}, "left_margin = nan"),
        ({"width": float("inf")}, "width = inf"),
        ({"width": 0.0}, "outside the paper of 0 x 60 mm"),
    ],
)
def test_a_design_with_a_box_outside_the_paper_is_refused(changes, said: str) -> None:
    with pytest.raises(LabelError) as caught:
        dataclasses.replace(PACK_100_BY_60, **changes)
    assert caught.value.title == "Label design pack 100 x 60"
    assert said in caught.value.detail
