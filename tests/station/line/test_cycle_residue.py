"""The empty pan between two bags, as the next bag's record keeps it."""

from station.core.pack import PackId, PackRecord
from station.line.cycle import step
from station.line.cycle_state import Cycle
from station.line.effects import Record
from station.line.events import Barred, Labelled, LinkUp, Recorded, RunStarted, Weighed
from tests.end_to_end.checked_line import NINE, a_bag
from tests.station.line.runner_rig import RULES, Rig
from tests.station.line.scenario import grams, make_reading, make_run


class Pan:
    """A cycle fed by hand; keeps every bag that was judged."""

    def __init__(self) -> None:
        self.cycle = Cycle(RULES)
        self.judged: list[Record] = []
        self.ms = 1_000
        self.tell(LinkUp("bench"))
        self.tell(RunStarted(make_run()))

    def tell(self, event) -> None:
        self.cycle, effects = step(self.cycle, event)
        for effect in effects:
            if isinstance(effect, Record):
                self.judged.append(effect)
                self.tell(Recorded(_recorded(effect)))

    def show(self, value, *, steady=True, **changes) -> None:
        self.ms += 100
        self.tell(Weighed(make_reading(value, self.ms, steady=steady, **changes)))

    def bag(self, value=259) -> None:
        for _ in range(5):
            self.show(value)


def _recorded(effect):
    draft = a_bag(make_run(), NINE, 253)
    return PackRecord(PackId("S", "A1", 0, 1), "u", draft, 1, "00")


def residues(pan) -> list:
    return [None if one.residue is None else one.residue.digits for one in pan.judged]


def test_the_first_bag_of_a_run_has_none_and_the_next_has_what_the_pan_showed():
    pan = Pan()
    pan.show(0)
    pan.bag()
    finish(pan)
    pan.bag()
    assert residues(pan) == [None, "0"]


def finish(pan, *shown) -> None:
    """The label is printed, the bag is lifted, and the pan shows what it shows."""
    pan.tell(Labelled("A1-00-000001"))
    pan.show(120, steady=False)
    for value in (*shown, 0):
        pan.show(value)


def test_the_first_steady_reading_counts_before_anybody_zeroes_the_scale():
    pan = Pan()
    pan.show(0)
    pan.bag()
    finish(pan, 2, 1)
    pan.bag()
    assert residues(pan) == [None, "2"]


def test_a_reading_that_moves_is_none():
    pan = Pan()
    pan.show(0)
    pan.bag()
    pan.tell(Labelled("A1-00-000001"))
    pan.show(1, steady=False)
    pan.show(0)
    pan.bag()
    assert residues(pan) == [None, "0"]


def test_each_bag_has_its_own():
    pan = Pan()
    pan.show(0)
    for left in (1, 2, 0):
        pan.bag()
        finish(pan, left)
    pan.bag()
    assert residues(pan) == [None, "1", "2", "0"]


def test_a_bag_that_was_lifted_unjudged_gives_the_newest_reading():
    pan = Pan()
    pan.show(0)
    pan.bag()
    finish(pan, 1)
    pan.bag(200)  # short, and taken off again
    pan.show(2)
    pan.show(0)
    pan.bag()
    assert residues(pan) == [None, "2"]


def test_a_disturbance_or_a_check_breaks_the_row():
    for broken in (
        lambda pan: pan.show(0, fault="the scale sent dashes instead of a weight"),
        lambda pan: (pan.tell(Barred("scale check", "x")), pan.tell(Barred("scale check", ""))),
    ):
        pan = Pan()
        pan.show(0)
        pan.bag()
        finish(pan)
        broken(pan)
        pan.show(0)
        pan.bag()
        assert residues(pan) == [None, None]


def test_the_record_has_the_reading_and_when_it_was():
    rig = Rig().open()
    rig.good_bag()
    rig.runner.post(Labelled("A1-00-000001"))
    rig.weigh(1)
    at = rig.clock.now().utc
    rig.weigh(0)
    rig.rest(258)
    rig.close()
    first, second = rig.store.drafts
    assert first.residue is None
    assert second.residue.reading == grams(1)
    assert abs((second.residue.at - at).total_seconds()) < 0.001
