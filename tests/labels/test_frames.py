"""Cases, pallets and reject tickets in their frames."""

import dataclasses
import datetime
from decimal import Decimal

import pytest

from labels.errors import LabelError
from labels.frame_designs import (
    CASE_100_BY_100,
    FRAME_DESIGNS,
    PALLET_100_BY_150,
    REJECT_60_BY_40,
    REJECT_100_BY_60,
)
from labels.frames import Frame, Framed, FrameDesign, Part
from labels.gs1_digits import sscc
from labels.layout import Box
from labels.logistics import CaseLabel, PalletLabel, Unit
from labels.pdf import LabelDrawer
from labels.reject import RejectTicket
from labels.release import release
from tests.labels.test_designs import assert_sound

UNIT = Unit(
    sscc(0, "9521234", 1234),
    "9521234543213",
    12,
    "Crisp Garden Salad",
    "12 packs of 250 g",
    datetime.date(2026, 11, 29),
    "Use by",
    "B261124-2",
    "Packed by Saltmarsh Fresh, 4 Dyke Road, Holmouth HM2 7QT",
)
CASE = CaseLabel(UNIT, "A1-000112", "A1-000123")
PALLET = PalletLabel(
    dataclasses.replace(
        UNIT,
        sscc=sscc(1, "9521234", 77),
        content_gtin="19521234543210",
        count=48,
        contents="48 cases of 12 packs",
    ),
    Decimal("186.4"),
)
REJECT = RejectTicket(
    "A1-000123",
    "Crisp Garden Salad",
    "B261124-2",
    "Short weight",
    "227 g",
    "Below T2: 232 g is the least for 250 g",
    datetime.datetime(2026, 11, 24, 14, 3, 22, tzinfo=datetime.UTC),
)
LABELS = [
    (CASE_100_BY_100, CASE.framed()),
    (PALLET_100_BY_150, PALLET.framed()),
    (REJECT_100_BY_60, REJECT.framed()),
    (REJECT_60_BY_40, REJECT.framed()),
]


@pytest.mark.parametrize(("design", "label"), LABELS, ids=sorted(FRAME_DESIGNS))
@pytest.mark.parametrize("dots_per_mm", [8, 12, 24])
def test_drawn_sound_and_read_back(design: FrameDesign, label: Framed, dots_per_mm: int) -> None:
    drawer = LabelDrawer(design, dots_per_mm)
    assert_sound(drawer.plan(label))
    released = release(drawer, label)
    assert released.pages == 1
    assert released.pdf == LabelDrawer(design, dots_per_mm).draw(label)
    words = " ".join(text.text for text in drawer.plan(label).texts)
    for fact in label.facts:
        assert fact.text in words


def test_a_reject_ticket_cannot_be_taken_for_a_pack() -> None:
    words = {text.text for text in LabelDrawer(REJECT_100_BY_60).plan(REJECT.framed()).texts}
    assert "NOT FOR SALE" in words
    (symbol,) = (symbol for _, symbol in REJECT.framed().symbols)
    assert symbol.expected_bytes == b"90REJECT/A1-000123"
    assert [element.ai for element in symbol.elements] == ["90"]  # no GTIN: no till knows it


def test_the_bar_codes_of_a_case_and_a_pallet_say_what_is_inside() -> None:
    """GS1 General Specifications 4.13: (00) with (02) and (37)."""
    symbols = dict(CASE.framed().symbols)
    assert symbols["sscc"].expected_bytes == b"00" + UNIT.sscc.encode()
    assert symbols["all"].hri == (f"(00){UNIT.sscc}(02)09521234543213(17)261129(37)12(10)B261124-2")
    symbols = dict(PALLET.framed().symbols)
    assert symbols["content code"].hri == "(02)19521234543210(37)48"
    assert symbols["date code"].hri == "(17)261129(3301)001864(10)B261124-2"


def test_sscc_modules_and_height_of_a_logistic_label() -> None:
    """GS1 General Specifications 5.4 for logistic units: X at least 0.495 mm (from memory),
    bars at least 31.75 mm high."""
    for design, label in LABELS[:2]:
        for dots_per_mm in (8, 12, 24):
            plan = LabelDrawer(design, dots_per_mm).plan(label)
            (placed,) = (
                one
                for one in plan.symbols
                if one.symbol.hri.startswith("(00)") and not one.symbol.is_matrix
            )
            assert placed.module_dots / dots_per_mm >= 0.495
            assert placed.height_dots / dots_per_mm >= 31.75


@pytest.mark.parametrize(
    "boxes",
    [
        [Box(60, 0, 50, 10)],
        [Box(-1, 0, 5, 5)],
        [Box(0, 50, 5, 20)],
        [Box(0, 0, 10, 10), Box(9, 9, 10, 10)],
    ],
)
def test_frames_outside_the_paper_or_over_one_another_are_refused(boxes: list[Box]) -> None:
    frames = tuple(Frame(Part.TEXT, f"fact {n}", box) for n, box in enumerate(boxes))
    with pytest.raises(LabelError) as caught:
        FrameDesign("bad", 100, 60, frames)
    assert "bad" in caught.value.title
    assert "mm" in caught.value.detail


def test_a_design_for_another_label_is_refused(make_label, drawer) -> None:
    with pytest.raises(LabelError, match="no frame for 'all', 'serials', 'sscc'"):
        LabelDrawer(REJECT_100_BY_60).draw(
            dataclasses.replace(
                CASE.framed(), facts=(*REJECT.framed().facts, CASE.framed().facts[-1])
            )
        )
    with pytest.raises(LabelError, match="choose another design"):
        drawer.draw(CASE.framed())
    with pytest.raises(LabelError, match="choose another design"):
        LabelDrawer(CASE_100_BY_100).draw(make_label())


@pytest.mark.parametrize(
    ("make", "title"),
    [
        (lambda: dataclasses.replace(UNIT, sscc="095212340000000014"), "(00) SSCC"),
        (lambda: dataclasses.replace(UNIT, count=0), "Count"),
        (lambda: dataclasses.replace(UNIT, contents="a\nb"), "Contents"),
        (lambda: dataclasses.replace(UNIT, lot="A B"), "(10) BATCH/LOT"),
        (lambda: dataclasses.replace(PALLET, gross_kg=Decimal("1.25")), "Gross weight"),
        (lambda: dataclasses.replace(PALLET, gross_kg=Decimal(0)), "Gross weight"),
        (lambda: dataclasses.replace(CASE, last_serial=""), "(21) SERIAL"),
        (lambda: dataclasses.replace(REJECT, reason=""), "Reason"),
        (
            lambda: dataclasses.replace(REJECT, at=datetime.datetime(2026, 1, 1)),  # noqa: DTZ001
            "Time of the reject",
        ),
        (lambda: dataclasses.replace(REJECT, language="tlh"), "Language of the label"),
    ],
)
def test_a_bad_field_is_named(make, title: str) -> None:
    with pytest.raises(LabelError) as caught:
        make()
    assert caught.value.title == title


@pytest.mark.parametrize(
    ("design", "label"),
    [
        (CASE_100_BY_100, CaseLabel(dataclasses.replace(UNIT, product="Mmmm " * 16), "A", "B")),
        (
            REJECT_60_BY_40,
            dataclasses.replace(REJECT, reason="Unabbreviated reason of forty letters x"),
        ),
        (CASE_100_BY_100, CaseLabel(dataclasses.replace(UNIT, packer="漢"), "A", "B")),
    ],
)
def test_what_does_not_fit_or_has_no_glyph_is_refused(design: FrameDesign, label) -> None:
    with pytest.raises(LabelError):
        LabelDrawer(design).draw(label.framed())
