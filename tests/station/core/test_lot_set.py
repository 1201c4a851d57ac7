"""Lot sets: every lot that could be in a bag, and who may be in one."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.core.lot_set import LotSet, LotUse, assemble, blend_lot_code
from station.core.lots import InputLot, LotError, LotStatus
from tests.station.line.scenario import make_product

DAY = date(2026, 11, 25)
CODE = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789./-"
# GS1 General Specifications section 3.4.1: AI (10) is X..20, of the 82 characters of its figure
# 7.11-1 (GS1 AI encodable character set 82), of which these are a part.
SET_82 = set("!\"%&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz")

codes = st.text(CODE, min_size=1, max_size=20)
uses = st.builds(LotUse, st.sampled_from(["ROM", "CAR", "CA", "R", "ROM-1"]), codes)
lot_sets = st.lists(uses, min_size=1, max_size=6).map(LotSet.of)


def known(*lots):
    return {lot.code: lot for lot in lots}


ROM = InputLot("ROM-1", "ROM", "Aldermoor Growers", DAY)
CAR = InputLot("CAR-7", "CAR", "Tarn Roots", DAY)


# --- sets -------------------------------------------------------------------------------------


@given(st.lists(uses, min_size=1, max_size=8))
def test_order_and_repetition_do_not_matter(members):
    assert LotSet.of(members) == LotSet.of(members[::-1] + members)
    assert set(LotSet.of(members).uses) == set(members)


@given(lot_sets, lot_sets)
def test_keys_are_equal_exactly_when_the_members_are(one, other):
    assert (one.key == other.key) == (one == other)
    assert len(one.key) == 32
    assert set(one.key) <= set("0123456789abcdef")


def test_the_key_stays_what_it_was():
    # Stored with every bag: SHA-256 over "component TAB lot" lines, its first 32 hex digits.
    lots = LotSet((LotUse("CAR", "CAR-7"), LotUse("ROM", "ROM-1")))
    assert lots.key == "d4262f885d5234c570340771963cf620"


@pytest.mark.parametrize("component", ["CAR\tX", "CAR\nROM", "CAR\x00", "\u2028"])
def test_no_component_code_can_make_two_sets_share_a_key(component):
    with pytest.raises(LotError, match="component code"):
        LotUse(component, "CAR-7")


@pytest.mark.parametrize("lot", ["", "X\tY", "A\nROM\tB", "low"])
def test_a_member_has_a_lot_code_that_can_be_printed(lot):
    with pytest.raises(LotError, match="cannot be printed"):
        LotUse("CAR", lot)


@given(lot_sets, lot_sets)
def test_an_overlap_holds_the_members_of_both(one, other):
    both = one.union(other)
    assert set(both.uses) == set(one.uses) | set(other.uses)
    assert both == other.union(one)
    assert one.union(one) == one


def test_an_overlap_keeps_the_old_and_the_new_lot_of_a_component():
    old = LotSet.of([LotUse("ROM", "ROM-1"), LotUse("CAR", "CAR-7")])
    new = LotSet.of([LotUse("ROM", "ROM-2"), LotUse("CAR", "CAR-7")])
    assert old.union(new).lots_of("ROM") == ("ROM-1", "ROM-2")
    assert old.union(new).lots_of("CAR") == ("CAR-7",)
    assert old.union(new).lots_of("DIL") == ()


def test_a_set_is_never_empty_and_always_sorted():
    with pytest.raises(LotError, match="at least one input lot"):
        LotSet.of([])
    first, second = LotUse("CAR", "CAR-7"), LotUse("ROM", "ROM-1")
    for members in ((second, first), (first, first)):
        with pytest.raises(LotError, match="sorted and stand once each"):
            LotSet(members)


# --- assembling -------------------------------------------------------------------------------


def test_the_chosen_lots_become_the_set():
    product = make_product()
    lot_set = assemble(product, ["CAR-7", "ROM-1", "ROM-1"], known(ROM, CAR), DAY)
    assert lot_set == LotSet.of([LotUse("ROM", "ROM-1"), LotUse("CAR", "CAR-7")])


HARVESTED = InputLot("R-OLD", "ROM", "Aldermoor Growers", DAY, harvested=DAY - timedelta(days=7))
RECEIVED = InputLot("R-OLD", "ROM", "Aldermoor Growers", DAY - timedelta(days=7))


@pytest.mark.parametrize(
    ("lots", "chosen", "words"),
    [
        ((ROM, CAR), ["CAR-7", "ROM-2"], "lot 'ROM-2' is not known: receive it first"),
        (
            (InputLot("R-H", "ROM", "Aldermoor Growers", DAY, status=LotStatus.HELD), CAR),
            ["CAR-7", "R-H"],
            "lot R-H is held: it must not be used, call QA",
        ),
        (
            (InputLot("R-E", "ROM", "Aldermoor Growers", DAY, status=LotStatus.EXPIRED), CAR),
            ["CAR-7", "R-E"],
            "lot R-E is expired: it must not be used, call QA",
        ),
        (
            (InputLot("R-U", "ROM", "Aldermoor Growers", DAY, use_by=DAY - timedelta(days=1)), CAR),
            ["CAR-7", "R-U"],
            "lot R-U had its last day on 2026-11-24: it must not be used",
        ),
        (
            (HARVESTED, CAR),
            ["CAR-7", "R-OLD"],
            "lot R-OLD is 7 days old, ROM may be packed for 6 days after harvest",
        ),
        (
            (RECEIVED, CAR),
            ["CAR-7", "R-OLD"],
            "lot R-OLD is 7 days old, ROM may be packed for 6 days after receipt",
        ),
        (
            (InputLot("R-F", "ROM", "Aldermoor Growers", DAY + timedelta(days=1)), CAR),
            ["CAR-7", "R-F"],
            "lot R-F is dated as received on 2026-11-26, later than today, 2026-11-25: "
            "correct its date or the clock",
        ),
        (
            (InputLot("DIL-1", "DIL", "Tarn Roots", DAY), ROM, CAR),
            ["ROM-1", "CAR-7", "DIL-1"],
            "lot DIL-1 is DIL, which product HARBOUR-250 does not contain: allowed are ROM, CAR",
        ),
        ((ROM, CAR), ["ROM-1"], "product HARBOUR-250 has no lot yet for: CAR"),
        ((ROM, CAR), [], "product HARBOUR-250 has no lot yet for: ROM, CAR"),
    ],
)
def test_each_refusal_has_its_words(lots, chosen, words):
    with pytest.raises(LotError) as refused:
        assemble(make_product(), chosen, known(*lots), DAY)
    assert str(refused.value) == words


def test_the_last_allowed_day_is_allowed():
    last = InputLot(
        "R-L", "ROM", "Aldermoor Growers", DAY, harvested=DAY - timedelta(days=6), use_by=DAY
    )
    old_root = InputLot("C-L", "CAR", "Tarn Roots", DAY - timedelta(days=90))  # no limit of its own
    lot_set = assemble(make_product(), ["R-L", "C-L"], known(last, old_root), DAY)
    assert lot_set.lots_of("ROM") == ("R-L",)


# --- blend lots -------------------------------------------------------------------------------

lines = st.text("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789", min_size=1, max_size=13)
blends = st.tuples(lines, st.dates(date(2000, 1, 1), date(2099, 12, 31)), st.integers(1, 99))


def test_a_blend_lot_tells_line_day_and_number():
    assert blend_lot_code("A", date(2026, 11, 25), 1) == "A2632901"
    assert blend_lot_code("A", date(2028, 12, 31), 99) == "A2836699"  # a leap year's last day
    assert blend_lot_code("A", date(2027, 1, 1), 1) != blend_lot_code("A", date(2028, 1, 1), 1)


@given(blends, blends)
def test_no_two_blends_of_a_century_share_a_lot_code(one, other):
    assert (blend_lot_code(*one) == blend_lot_code(*other)) == (one == other)


def test_no_two_blends_of_lines_that_look_alike_share_a_lot_code():
    made = [
        blend_lot_code(line, DAY + timedelta(days=ahead), number)
        for line in ("A", "A2", "A26", "2", "26", "A263")
        for ahead in range(400)
        for number in (1, 9, 10, 99)
    ]
    assert len(set(made)) == len(made)


@given(blends)
def test_a_blend_lot_fits_the_batch_field_of_a_bar_code(blend):
    code = blend_lot_code(*blend)
    assert len(code) <= 20
    assert set(code) <= SET_82
    assert InputLot(code, "MIX", "own blend", DAY).code == code


@pytest.mark.parametrize("number", [0, -1, 100])
def test_a_line_has_99_blends_a_day(number):
    with pytest.raises(LotError, match=rf"blend number {number} of 2026-11-25: .*1 to 99"):
        blend_lot_code("A", DAY, number)


@pytest.mark.parametrize("line", ["", "a", "A-1", "A 1", "Ñ", "Ⅷ", "٣", "A" * 14, "A\n"])
def test_a_line_code_that_does_not_fit_is_refused(line):
    with pytest.raises(LotError, match="use 1 to 13 of A-Z and 0-9"):
        blend_lot_code(line, DAY, 1)
