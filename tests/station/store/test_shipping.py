"""Cases, pallets and shipments in the record, what refuses them, and the record rebuilt."""

from dataclasses import replace
from datetime import date

import pytest

from station.core.pack import LabelState
from station.core.receiving import hold_lot_fact, release_lot_fact
from station.core.shipping import (
    Shipment,
    ShippingError,
    Undoing,
    UnitKind,
    serials_between,
    spans_of,
)
from station.core.shipping_entries import (
    case_fact,
    case_of,
    pallet_fact,
    pallet_of,
    shipment_fact,
    shipment_of,
)
from station.errors import BadInput
from station.line.ports import StoreFault
from station.store.lot_reach import bags_with
from station.store.rebuild import rebuild
from station.store.shipping import (
    loose_bags,
    next_numbers,
    places_of,
    shipments,
    unit_named,
    units_in_house,
    units_of,
)
from station.store.unit_contents import contents_of_shipment, contents_of_unit
from station.store.verify import verify
from tests.station.store.dock import MARSHGATE, Dock, a_case, a_pallet, number


@pytest.fixture
def dock(world):
    with world.stocked() as store:
        yield Dock(world, store)


def test_serials_that_follow_one_another_are_one_span():
    serials = serials_between("A1-7K-000099", "A1-7K-000102")
    assert serials == ("A1-7K-000099", "A1-7K-000100", "A1-7K-000101", "A1-7K-000102")
    assert spans_of(reversed(serials)) == (("A1-7K-000099", "A1-7K-000102"),)
    assert spans_of(["A1-7K-999999", "A1-7K-1000000", "A1-ZZ-1000001"]) == (
        ("A1-7K-999999", "A1-7K-1000000"),
        ("A1-ZZ-1000001", "A1-ZZ-1000001"),
    )


@pytest.mark.parametrize(
    ("first", "last", "why"),
    [
        ("A1-7K-000002", "A1-7K-000001", "comes before"),
        ("A1-7K-000001", "A1-ZZ-000002", "not of one row"),
        ("A1-7K-000001", "A1-7K-000501", "501 bags, at most 500"),
        ("A1-7K-1", "A1-7K-000501", "no serial of a bag"),
    ],
)
def test_a_range_that_cannot_be_is_refused_in_words(first, last, why):
    with pytest.raises(ShippingError, match=why):
        serials_between(first, last)


def test_cases_pallet_and_shipment_are_found_from_bag_to_customer_and_back(dock):
    home = dock.world.home
    one, two = dock.labelled(1, dock.good[:3]), dock.labelled(2, dock.good[3:5])
    pallet = dock.pallet(3, one, two)
    loose = dock.labelled(4, dock.good[5:6])
    dock.ship("S-1", pallet.sscc, loose.sscc)
    places = places_of(home, dock.serials)
    assert set(places) == set(dock.good[:6])
    where = places[dock.good[3]]
    assert (where.case, where.pallet) == (two.sscc, pallet.sscc)
    assert where.shipment.customer == MARSHGATE
    assert where.shipment.number == "S-1"
    assert places[dock.good[5]].pallet == ""
    assert [unit.sscc for unit in units_of(home, pallet=pallet.sscc)] == [one.sscc, two.sscc]
    assert [unit.sscc for unit in units_of(home, shipped="S-1")] == [
        one.sscc, two.sscc, pallet.sscc, loose.sscc,
    ]  # fmt: skip
    assert contents_of_unit(home, pallet.sscc).serials == tuple(dock.good[:5])
    assert contents_of_shipment(home, "S-1").serials == tuple(dock.good[:6])
    assert units_in_house(home) == ()
    assert dock.unit(pallet).net_ug == one.micrograms + two.micrograms
    assert [bag.serial for bag in loose_bags(home, dock.run.id)] == dock.good[6:]


def test_the_entries_are_read_back_as_they_were_written(dock):
    case = a_case(dock.world.home, 1, dock.good[:3])
    pallet = a_pallet(2, [case])
    gone = Shipment("S-1", MARSHGATE, "delivery note 12", (pallet.sscc,))
    assert case_of(case_fact(case, "u")) == case
    assert pallet_of(pallet_fact(pallet, "u")) == pallet
    assert shipment_of(shipment_fact(gone, "u")) == gone


@pytest.mark.parametrize("place", [2, 5])
def test_a_bag_set_aside_goes_into_no_case(dock, place):
    reject = dock.serials[place]
    with pytest.raises(StoreFault, match=rf"bag {reject} is out of the count \(reject\)"):
        dock.fill(1, [dock.serials[place - 1], reject])
    assert units_in_house(dock.world.home) == ()


def test_a_bag_without_a_label_that_is_on_it_goes_into_no_case(dock):
    record = dock.store.add_pack(dock.world.draft(dock.run))
    with pytest.raises(StoreFault, match=f"label of bag {record.serial} is recorded: say first"):
        dock.fill(1, [record.serial])


def test_a_bag_goes_into_one_case_only_until_that_is_opened(dock):
    case = dock.fill(1, dock.good[:3])
    with pytest.raises(StoreFault, match=f"bag {dock.good[2]} is in case {case.sscc} already"):
        dock.fill(2, dock.good[2:4])
    dock.undo(case.sscc, Undoing.OPENED, "u1")
    with pytest.raises(StoreFault, match="no SSCC is given twice"):
        dock.fill(1, dock.good[:2])
    again = dock.fill(2, dock.good[:2])
    assert dock.unit(case).undone
    assert places_of(dock.world.home, dock.good[:3]).keys() == set(dock.good[:2])
    assert places_of(dock.world.home, dock.good[:1])[dock.good[0]].case == again.sscc


def test_bags_of_two_blend_lots_do_not_share_a_case(dock):
    dock.store.end_run(dock.run.id, dock.world.clock.now(), "p.marsh")
    other = dock.world.start(dock.store, 2, ("LF-102", "CR-201"))
    serial = dock.world.fill(dock.store, other, 1)[0]
    with pytest.raises(ShippingError, match="close this case and begin another"):
        dock.fill(1, [dock.good[-1], serial])
    case = a_case(dock.world.home, 1, dock.good[-2:])
    mixed = replace(case, spans=spans_of([dock.good[-1], serial]))
    with pytest.raises(StoreFault, match="one blend lot in a case"):
        dock.record(case_fact(mixed, "u1"))


def test_a_case_whose_sum_is_not_that_of_its_bags_is_refused(dock):
    case = replace(a_case(dock.world.home, 1, dock.good[:2]), micrograms=1)
    with pytest.raises(StoreFault, match="its bags do not make"):
        dock.record(case_fact(case, "u1"))


def test_a_held_bag_keeps_its_case_and_its_pallet_in_the_house(dock):
    home, case = dock.world.home, dock.labelled(1, dock.good[:3])
    pallet = dock.pallet(2, case)
    dock.record(hold_lot_fact("h1", "LF-101", "grower called", bags_with(home, "LF-101")))
    assert dock.unit(case).held == dock.unit(pallet).held == 3
    with pytest.raises(StoreFault, match=f"case {case.sscc} must not leave: bag .* is held: QA"):
        dock.ship("S-1", pallet.sscc)
    with pytest.raises(StoreFault, match="is held: QA decides"):
        dock.fill(3, dock.good[3:5])
    dock.record(release_lot_fact("h2", "LF-101", "h1", "grower was wrong"))
    dock.ship("S-1", pallet.sscc)
    assert dock.unit(case).held == 0
    assert dock.unit(case).shipment == "S-1"


def test_a_bag_set_aside_after_its_case_was_filled_keeps_it_in_the_house(dock):
    case = dock.labelled(1, dock.good[:3])
    dock.store.take_back(dock.good[1], "burst", dock.world.clock.now(), "i.sedge")
    with pytest.raises(StoreFault, match=f"bag {dock.good[1]} is out of the count"):
        dock.ship("S-1", case.sscc)


def test_a_case_whose_label_is_in_doubt_is_printed_again_before_it_leaves(dock):
    case = dock.fill(1, dock.good[:3])
    dock.label(case.sscc, LabelState.SUBMITTED, LabelState.IN_DOUBT)
    with pytest.raises(StoreFault, match=f"label of case {case.sscc} is in doubt: print it again"):
        dock.ship("S-1", case.sscc)
    with pytest.raises(StoreFault, match="cannot become submitted, copy 2"):
        dock.label(case.sscc, LabelState.SUBMITTED, copy=2)
    dock.label(case.sscc, LabelState.SUBMITTED, LabelState.SPOOLED, copy=1)
    dock.ship("S-1", case.sscc)
    assert (dock.unit(case).copies, dock.unit(case).label) == (1, LabelState.SPOOLED)


def test_what_stands_on_a_pallet_or_has_left_is_not_taken_alone(dock):
    case = dock.labelled(1, dock.good[:3])
    pallet = dock.pallet(2, case)
    with pytest.raises(StoreFault, match=f"stands on pallet {pallet.sscc}"):
        dock.ship("S-1", case.sscc)
    with pytest.raises(StoreFault, match=f"stands on pallet {pallet.sscc}"):
        dock.undo(case.sscc, Undoing.OPENED, "u1")
    dock.ship("S-1", pallet.sscc)
    with pytest.raises(StoreFault, match="left with shipment S-1"):
        dock.ship("S-2", pallet.sscc)
    with pytest.raises(StoreFault, match="left with shipment S-1"):
        dock.undo(pallet.sscc, Undoing.BROKEN_UP, "u4")


def test_a_pallet_holds_no_cases_whose_dates_mean_two_things(dock):
    """Its label says one date: (17) use by, or (15) best before (GS1 GenSpecs 3.4)."""
    first, second = dock.labelled(1, dock.good[:3]), dock.labelled(2, dock.good[3:5])
    older = replace(second, date_words="Best before")
    with pytest.raises(ShippingError, match=f"case {second.sscc} is .*, Best before, the pallet"):
        a_pallet(3, [first, older])
    assert a_pallet(3, [first, second]).date_words == "Use by"


def test_a_pallet_holds_cases_of_one_product_and_no_pallets(dock):
    case = dock.labelled(1, dock.good[:3])
    pallet = dock.pallet(2, case)
    with pytest.raises(StoreFault, match="is a pallet: a pallet holds cases"):
        dock.record(pallet_fact(replace(a_pallet(3, [case]), cases=(pallet.sscc,)), "u9"))
    other = dock.labelled(4, dock.good[3:5])
    wrong = replace(a_pallet(5, [other]), product="HA-100", name="Hollow Ash mix 100 g")
    with pytest.raises(StoreFault, match="one product on a pallet"):
        dock.record(pallet_fact(wrong, "u10"))


@pytest.mark.parametrize("how", [Undoing.WITHDRAWN, Undoing.CAME_BACK])
def test_a_shipment_is_undone_once_by_an_entry_that_names_it(dock, how):
    case = dock.labelled(1, dock.good[:3])
    uid = dock.ship("S-1", case.sscc)
    with pytest.raises(StoreFault, match="shipment S-9 is not in the record"):
        dock.undo("S-9", how, uid)
    dock.undo("S-1", how, uid)
    with pytest.raises(StoreFault, match=f"undone already: {how}"):
        dock.undo("S-1", how, uid)
    (gone,) = shipments(dock.world.home)
    assert (gone.state, gone.gone) == (str(how), False)
    with pytest.raises(StoreFault, match="S-1 is on record: take the next number"):
        dock.ship("S-1", case.sscc)
    dock.ship("S-2", case.sscc)
    assert dock.unit(case).shipment == "S-2"


def test_an_sscc_nobody_knows_is_refused_with_close_ones(dock):
    case = dock.labelled(1, dock.good[:3])
    with pytest.raises(BadInput, match=case.sscc):
        unit_named(dock.world.home, case.sscc[:-1] + "0")
    with pytest.raises(StoreFault, match="no case or pallet of the record"):
        dock.ship("S-1", number(99))


def test_the_next_numbers_go_on_where_the_record_ends(dock):
    mark, units, gone = next_numbers(dock.world.home, date(2026, 3, 4))
    assert (mark, units, gone) == (dock.store.epoch >> 53, 0, 0)
    case = dock.labelled(1, dock.good[:3])
    dock.ship("S-1", case.sscc)
    assert next_numbers(dock.world.home, date(2026, 3, 4))[1:] == (1, 1)
    assert next_numbers(dock.world.home, date(2026, 3, 5))[1:] == (1, 0)


def test_the_tables_follow_from_the_journal_alone(world):
    with world.stocked() as store:
        dock = Dock(world, store)
        one, two = dock.labelled(1, dock.good[:3]), dock.labelled(2, dock.good[3:5])
        pallet = dock.pallet(3, one)
        uid = dock.ship("S-1", pallet.sscc)
        dock.undo("S-1", Undoing.CAME_BACK, uid)
        dock.undo(two.sscc, Undoing.OPENED, unit_named(world.home, two.sscc).uid)
        before = units_in_house(world.home)
    assert verify(world.home).whole
    rebuild(world.home)
    assert verify(world.home).whole
    assert units_in_house(world.home) == before
    assert [one.kind for one in before] == [UnitKind.PALLET]
