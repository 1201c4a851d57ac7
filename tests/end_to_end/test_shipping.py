"""From the bench to the customer: bags packed, cased, labelled, stacked, shipped; then undone."""

import time

import pytest

from labels.readback import scan
from station.core.mass import Mass
from station.core.pack import LabelState
from station.core.shipping import ShippingError, UnitKind
from station.line.state import Verb
from station.store.shipping import places_of, shipments, unit_named, units_in_house
from station.store.verify import verify
from tests.end_to_end.line import PATIENCE_S, bench_line


def pack(line, product, good):
    with line.packer(product):
        line.until(lambda state: state.tally.good >= good)
    line.bench.lift()
    line.until(lambda state: state.verb in (Verb.BAG_ON, Verb.CALL_LEAD))


def enter(line, facts, who="L01"):
    line.station.line.enter(facts, who)
    return line.watch.next_entry(PATIENCE_S)


def settle(home, sscc, state):
    """Wait until the label of a unit has come so far."""
    ends = time.monotonic() + PATIENCE_S
    while (now := unit_named(home, sscc)).label is not state:
        assert time.monotonic() < ends, now
        time.sleep(0.01)


def test_bags_go_to_a_customer_and_every_label_says_what_the_record_says(tmp_path):
    with bench_line(tmp_path) as line:
        desk = line.station.shipping
        product = line.open_run("SOUP-MIX-2270")
        pack(line, product, 5)
        codes = []
        for _ in range(2):
            bags = desk.next_case()
            facts = desk.fill([bag.serial for bag in bags])
            assert enter(line, facts).recorded
            codes.append(facts[-1].subject)
            settle(tmp_path, codes[-1], LabelState.SPOOLED)
        assert [unit.sscc for unit in units_in_house(tmp_path)] == codes
        # the case's label names the case and never a bag
        for code in codes:
            (page,) = (tmp_path / "case-labels").glob(f"*{code}*.pdf")
            read = {one.identifier: one.data.decode() for one in scan(page.read_bytes())}
            assert read["]C1"] == f"00{code}"
            assert read["]d2"].startswith(f"00{code}02{product.gtin.zfill(14)}")
            assert desk.named(f"]C1{read[']C1']}") == code
        facts = desk.stack(codes, Mass.parse("21.4 kg"))
        assert enter(line, facts).recorded
        pallet = facts[-1].subject
        settle(tmp_path, pallet, LabelState.SPOOLED)
        assert unit_named(tmp_path, codes[0]).label is LabelState.APPLIED
        left = enter(line, desk.ship("MARSHGATE", "delivery note 4711", [pallet]))
        assert left.recorded, left.words
        with pytest.raises(ShippingError, match="Choose a customer"):
            desk.ship("NOBODY", "delivery note 4712", [pallet])
        (gone,) = shipments(tmp_path)
        serials = [bag.serial for bag in desk.next_case()]
        assert len(serials) == 1
        refused = enter(line, desk.undo(pallet, "wrapped badly"))
        assert not refused.recorded
        assert f"left with shipment {gone.number}" in refused.words
        assert enter(line, desk.undo(gone.number, "wrong customer")).recorded
        assert enter(line, desk.undo(pallet, "wrapped badly")).recorded
        assert enter(line, desk.undo(codes[1], "one bag leaks")).recorded
        assert enter(line, desk.print_again(codes[0])).recorded
        settle(tmp_path, codes[0], LabelState.SPOOLED)
        assert unit_named(tmp_path, codes[0]).copies == 1
        (copy,) = (tmp_path / "case-labels").glob(f"*{codes[0]}-R1*.pdf")
        assert scan(copy.read_bytes())
        places = places_of(tmp_path, [bag.serial for bag in desk.next_case()])
        assert places == {}
        standing = units_in_house(tmp_path)
        assert [(one.sscc, one.kind) for one in standing] == [(codes[0], UnitKind.CASE)]
    assert verify(tmp_path).whole
