"""Lots on the bench line: a change with its overlap, then holds; nothing is a stand-in."""

from station.core.line_lots import LotMove, Move
from station.core.pack import Quality
from station.line.state import Verb
from station.store.queries import trace_lot
from station.store.verify import verify
from tests.end_to_end.line import PATIENCE_S, bench_line


def enter(line, *moves):
    line.station.line.enter(line.station.lots.moves(moves), "L01")
    answer = line.watch.next_entry(PATIENCE_S)
    assert answer.recorded, answer.words


def pack(line, product, good):
    """Go on until so many bags are good and the pan is empty again."""
    with line.packer(product):
        line.until(lambda state: state.tally.good >= good)
    line.bench.lift()
    line.until(lambda state: state.verb in (Verb.BAG_ON, Verb.CALL_LEAD))


def test_a_change_of_lots_and_a_hold_reach_exactly_the_bags_they_concern(tmp_path):
    with bench_line(tmp_path) as line:
        product = line.open_run()
        run = line.until(lambda state: state.run is not None).run
        (old,) = run.lot_set.lots_of("ROCKET")
        new = next(
            lot.code
            for lot in line.house.lots.values()
            if lot.component == "ROCKET" and lot.code != old
        )
        pack(line, product, 4)
        enter(line, LotMove(Move.LOADED, new))
        overlap = line.until(lambda state: len(state.run.lot_set.uses) == 3).run
        assert overlap.blend_lot != run.blend_lot
        pack(line, product, 8)
        enter(line, LotMove(Move.EMPTY, old))
        pack(line, product, 12)
        held = line.station.lots.hold(old, "the grower called")
        line.station.line.enter(held, "L01")
        assert line.watch.next_entry(PATIENCE_S).recorded
        assert line.until(lambda state: True).closed == ()
        line.station.line.enter(line.station.lots.hold(new, "and this one"), "L01")
        state = line.until(lambda state: state.closed)
        assert f"lot {new} is held" in state.closed[0]
    past, present = trace_lot(tmp_path, old), trace_lot(tmp_path, new)
    assert {pack.quality for pack in past.packs} <= {Quality.HELD, Quality.REJECT}
    codes = [pack.blend_lot for pack in past.packs]
    assert sorted(set(codes)) == [run.blend_lot, overlap.blend_lot]
    both = {pack.serial for pack in past.packs} & {pack.serial for pack in present.packs}
    assert both == {pack.serial for pack in past.packs if pack.blend_lot == overlap.blend_lot}
    assert len(past.packs) + len(present.packs) - len(both) >= 12
    assert verify(tmp_path).whole
