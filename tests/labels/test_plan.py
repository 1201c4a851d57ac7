"""Where things stand: within the page, apart from one another, complete."""

import datetime
import itertools
from decimal import Decimal

import pytest

from labels.content import InputLot
from labels.design import PACK_100_BY_60
from labels.errors import LabelError
from labels.layout import Box, Ink
from labels.plan import arrange
from labels.sheet import Plan
from labels.symbol import QUIET_ZONE_MODULES

LONG = {
    "product_name": "Winter Crunch Kitchen Mix with Rocket and Baby Leaves",
    "net_quantity_text": "1.5 kg",
    "nominal_grams": Decimal(1500),
    "use_by": datetime.date(2026, 12, 30),
    "blend_lot": "ABCDEFGHIJKLMNOPQRST",
    "serial": "WWWWWWWWWW0000000001",
    "copy_mark": "R12",
}


@pytest.fixture(
    params=["short", "long", "wide letters", "eight lots", "one lot", "no packing day", "Canada"]
)
def plan(request: pytest.FixtureRequest, make_label, eight_lots) -> Plan:
    changes = {
        "short": {},
        "long": LONG,
        "wide letters": {"blend_lot": "W" * 20, "serial": "W" * 20, "copy_mark": "R99"},
        "eight lots": {
            "input_lots": eight_lots,
            "ingredients": tuple(lot.component.lower() for lot in eight_lots),
        },
        "one lot": {"input_lots": eight_lots[:1]},
        "no packing day": {"packed_on": None},
        "Canada": {"market": "CA", "net_quantity_text": "250 g", "input_lots": eight_lots[:2]},
    }
    return arrange(make_label(**changes[request.param]), PACK_100_BY_60)


def test_every_text_is_within_the_page(plan: Plan) -> None:
    margin = Box(1.5, 1.0, plan.page.width - 3.0, plan.page.height - 2.0)
    for text in plan.texts:
        assert margin.contains(text.box), text


def test_no_text_overlaps_another(plan: Plan) -> None:
    for one, other in itertools.combinations(plan.texts, 2):
        assert not one.box.overlaps(other.box), (one, other)


def test_white_texts_lie_on_a_plate_and_black_ones_on_none(plan: Plan) -> None:
    for text in plan.texts:
        if text.ink is Ink.WHITE:
            assert any(plate.contains(text.box) for plate in plan.plates), text
        else:
            assert not any(plate.overlaps(text.box) for plate in plan.plates), text


def test_quiet_zones_are_free(plan: Plan) -> None:
    dot = 1 / plan.dots_per_mm
    zones = []
    for placed in plan.symbols:
        quiet = QUIET_ZONE_MODULES * placed.module_dots
        width = len(placed.symbol.modules) * placed.module_dots + 2 * quiet
        zone = Box(
            (placed.x_dots - quiet) * dot,
            placed.y_dots * dot,
            width * dot,
            placed.height_dots * dot,
        )
        assert plan.page.contains(zone)
        zones.append(zone)
    for zone in zones:
        for ink in (*(text.box for text in plan.texts), *plan.plates):
            assert not zone.overlaps(ink)
    assert not zones[0].overlaps(zones[1])


def test_plates_and_bars_are_on_whole_dots(plan: Plan) -> None:
    for plate in plan.plates:
        for edge in (plate.x, plate.y, plate.right, plate.bottom):
            assert abs(edge * plan.dots_per_mm - round(edge * plan.dots_per_mm)) < 1e-6
    for placed in plan.symbols:
        assert placed.module_dots >= 2
        assert placed.height_dots >= 6 * plan.dots_per_mm


def test_eight_components_fit_and_every_lot_stands_whole(make_label, eight_lots) -> None:
    plan = arrange(make_label(input_lots=eight_lots), PACK_100_BY_60)
    texts = [text.text for text in plan.texts]
    for lot in eight_lots:
        assert any(lot.code in text for text in texts), lot
        assert any(lot.component in text for text in texts), lot


def test_too_many_lots_are_refused_not_cut(make_label) -> None:
    lots = tuple(InputLot(f"Component {n}", f"LOT-{n:016d}") for n in range(24))
    with pytest.raises(LabelError) as caught:
        arrange(make_label(input_lots=lots), PACK_100_BY_60)
    assert "Nothing is cut off" in caught.value.detail
    assert "Input lots" in caught.value.detail


@pytest.mark.parametrize(
    ("field", "value", "title"),
    [
        ("product_name", "Unabbreviated " * 5, "Product name"),
        ("product_name", "M" * 60, "Product name"),
        ("product_name", "Salad 漢", "Product name"),
        ("net_quantity_text", "250 grams of mixed leaf", "Net quantity"),
        ("net_quantity_text", "250 g 🥬", "Net quantity"),
        ("use_by_words", "WWWWWWWW " * 9 + "W", "Use-by words"),
        ("storage_text", "x" * 150, "Storage"),
        ("packer_text", "漢", "Packer"),
        ("ingredients", ("celery", "🥕"), "Ingredients"),
        ("input_lots", (InputLot("漢", "A"),), "Input lots"),
    ],
)
def test_what_does_not_fit_or_has_no_glyph_is_named(
    make_label, field: str, value: object, title: str
) -> None:
    with pytest.raises(LabelError) as caught:
        arrange(make_label(**{field: value}), PACK_100_BY_60)
    assert caught.value.title == title


def test_an_unknown_language_is_named(make_label) -> None:
    with pytest.raises(LabelError, match="'tlh'"):
        arrange(make_label(), PACK_100_BY_60, language="tlh")


def test_allergens_and_only_they_are_in_the_strong_face(make_label) -> None:
    plan = arrange(make_label(), PACK_100_BY_60)
    words = [text for text in plan.texts if text.role == "Ingredients"]
    strong = [text.text for text in words if "Bold" in text.face.value]
    assert strong == ["celery"]


def test_lot_and_serial_are_in_the_second_symbol_while_they_fit(make_label) -> None:
    first, second = arrange(make_label(), PACK_100_BY_60).symbols
    assert first.symbol.hri == "(01)09521234543213(17)261129"
    assert second.symbol.hri == "(10)B261124-2(21)A1-000123"
    assert (first.module_dots, second.module_dots) == (3, 2)
    alone = arrange(make_label(blend_lot="A" * 20), PACK_100_BY_60).symbols[1]
    assert alone.symbol.hri == "(10)" + "A" * 20


def test_a_reprint_and_a_specimen_are_marked(make_label) -> None:
    reprint = arrange(make_label(copy_mark="R2"), PACK_100_BY_60)
    assert [text.text for text in reprint.texts if text.role == "Copy mark"] == ["Copy R2"]
    specimen = arrange(make_label(copy_mark="SPECIMEN"), PACK_100_BY_60)
    assert [text.ink for text in specimen.texts if text.text == "SPECIMEN"] == [Ink.OUTLINE]
