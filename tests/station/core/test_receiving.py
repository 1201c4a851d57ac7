"""Receiving of an invented packhouse: codes, duplicates, contradictions, holds.

Key data elements of receiving: 21 CFR 1.1345(a).
"""

from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest

from station.core.facts import FactRecord
from station.core.lots import LotError, LotStatus
from station.core.mass import Mass
from station.core.receiving import (
    Delivery,
    Notes,
    delivery_fact,
    delivery_of,
    hold_lot_fact,
    merge,
    open_holds,
    own_lot_code,
    receive,
    release_lot_fact,
)
from tests.station.line.scenario import make_moment

DAY = date(2026, 11, 25)
NOTES = Notes(
    code="TR-26-118",
    component="CAR",
    supplier="Tarn Roots",
    harvested=date(2026, 11, 20),
    packed=date(2026, 11, 21),
    use_by=date(2026, 12, 2),
    quantity=Mass.parse("412.50 kg"),
    temperature=Decimal("3.4"),
    reference="delivery note 4711",
    code_source="Tarn Roots",
    gtin="09521234543213",
)
COMPONENTS = ("CAR", "ROM")


def taken(notes=NOTES, known=()):
    return receive(notes, {lot.code: lot for lot in known}, COMPONENTS, "QH", DAY)


def test_a_delivery_reads_back_from_its_entry_whole():
    delivery = taken()
    assert delivery_of(delivery_fact(delivery, "u1")) == delivery
    assert delivery.quantity.digits == "412.50"
    bare = taken(Notes(component="CAR", supplier="Tarn Roots"))
    assert delivery_of(delivery_fact(bare, "u2")) == bare


def test_a_lot_that_came_without_a_code_gets_the_next_free_one():
    first = taken(replace(NOTES, code=None))
    assert first.lot.code == "QH26329-001"
    assert first.code_source == "QH"
    assert taken(replace(NOTES, code=" "), known=[first.lot]).lot.code == "QH26329-002"


def test_a_code_no_label_can_carry_is_kept_beside_a_new_one():
    delivery = taken(replace(NOTES, code="Feld 7 / Süd"))
    assert (delivery.lot.code, delivery.supplier_code) == ("QH26329-001", "Feld 7 / Süd")
    assert delivery.code_source == "QH"


def test_the_days_own_codes_end():
    with pytest.raises(LotError, match="999 lot codes"):
        own_lot_code("QH", DAY, {f"QH26329-{n:03d}" for n in range(1, 1000)})


def test_the_same_case_scanned_twice_is_told_from_another_delivery():
    lot = taken().lot
    with pytest.raises(LotError, match="received already on 2026-11-25: load it"):
        taken(known=[lot])
    with pytest.raises(LotError, match=r"another delivery \(ROM from Tarn Roots"):
        taken(known=[replace(lot, component="ROM")])
    held = replace(lot, status=LotStatus.HELD)
    with pytest.raises(LotError, match="received already"):
        taken(known=[held])


def test_two_symbols_are_merged_and_their_contradiction_is_named():
    one = Notes(gtin="09521234543213", code="A1")
    other = Notes(code="A1", packed=DAY)
    assert merge(one, other) == Notes(gtin="09521234543213", code="A1", packed=DAY)
    with pytest.raises(LotError, match="code stands for A1 and for A2"):
        merge(one, Notes(code="A2"))
    with pytest.raises(LotError, match="packing stands for 2026-11-25 and for 2026-11-24"):
        merge(other, Notes(packed=date(2026, 11, 24)))


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"component": None}, "names no component: allowed are CAR, ROM"),
        ({"component": "KALE"}, "component 'KALE' is not known"),
        ({"supplier": " "}, "names no supplier"),
        ({"quantity": Mass.parse("0 kg")}, "more than nothing"),
        ({"harvested": date(2026, 11, 26)}, "harvested 2026-11-26 after"),
        ({"packed": date(2026, 11, 26)}, "packed 2026-11-26 after"),
        ({"temperature": Decimal(61)}, "allowed are -30 to 60"),
    ],
)
def test_what_cannot_be_taken_in_is_refused_in_words(changes, words):
    with pytest.raises(LotError, match=words):
        taken(replace(NOTES, **changes))


def test_a_lot_past_its_last_day_comes_in_as_expired_and_a_hold_needs_its_reason():
    assert taken(replace(NOTES, use_by=date(2026, 11, 24))).lot.status is LotStatus.EXPIRED
    with pytest.raises(LotError, match="an entry of its own"):
        Delivery(replace(taken().lot, status=LotStatus.HELD))
    with pytest.raises(LotError, match="without a reason"):
        hold_lot_fact("h", "A1", " ")
    with pytest.raises(LotError, match="without a reason"):
        release_lot_fact("r", "A1", "h", "")


def test_a_lot_is_held_until_every_hold_is_released():
    def record(fact):
        return FactRecord(fact, make_moment(), "P09", 1)

    holds = [record(hold_lot_fact(uid, "A1", "wash water")) for uid in ("h1", "h2")]
    one = record(release_lot_fact("r1", "A1", "h1", "result came"))
    other = record(release_lot_fact("r2", "A1", "h2", "result came"))
    assert [r.fact.uid for r in open_holds(holds)["A1"]] == ["h1", "h2"]
    assert [r.fact.uid for r in open_holds([*holds, one])["A1"]] == ["h2"]
    assert not open_holds([*holds, one, other])
