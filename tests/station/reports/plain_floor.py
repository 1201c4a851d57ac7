"""A line at random work, and beside it a plain list of what became of each bag.

The list is kept by hand and knows no SQL, no projection and no report, so that whatever the record
tells of the same bags can be held against it.
"""

import random
from dataclasses import dataclass, field, replace

from station.app.live_numbers import LiveNumbers
from station.core.dispositions import (
    LINKED,
    QUALITY_AFTER,
    Decided,
    Disposition,
    disposition_fact,
)
from station.core.holds import Released, Scope, ScopeKind, hold_fact, release_fact
from station.core.ids import new_uid
from station.core.label_life import (
    FATE_WORDS,
    Fate,
    OldLabel,
    Reprint,
    ReprintReason,
    Resolve,
)
from station.core.line_lots import LotMove, Move, move_fact
from station.core.pack import LabelState
from station.core.shipping import Shipment, UnitLabel
from station.core.shipping_entries import case_fact, shipment_fact, unit_label_fact
from station.line.events import LabelFailed, Labelled, Resumed, SetAside
from station.line.state import Phase
from station.store import hold_scopes
from station.store.queries import trace_pack
from tests.station.line.lot_rig import LotLine
from tests.station.store.dock import MARSHGATE, a_case

SOLD = ("good", "held", "released")
DOUBTFUL = ("in doubt", "spooled")
"""Labels that wait for an answer; a spooled one is a copy that came out and is on no bag yet."""
LOTS = ("ROM-1", "ROM-2", "ROM-3")
"""Of one component each in turn; every run has CAR-7 beside them."""


@dataclass
class Bag:
    """What is known of a bag by looking on."""

    serial: str
    run: str
    net: int
    lots: frozenset[str]
    quality: str = "good"
    label: str = "applied"
    reason: str = ""
    holds: set[str] = field(default_factory=set)
    decision: str = ""
    into: str = ""
    case: str = ""
    shipment: str = ""

    @property
    def sold(self):
        return self.quality in SOLD

    def leave(self, quality, reason):
        self.quality, self.reason = quality, self.reason or reason


class Floor:
    """Packs, holds, decides, cases and ships by chance; every step is noted in ``bags``."""

    def __init__(self, home, seed):
        self.home, self.chance = home, random.Random(seed)
        self.line = LotLine(home)
        self.numbers = LiveNumbers(home, self.line.clock)
        runner = self.line.runner
        runner._duties.all = (*runner._duties.all, self.numbers)
        self.bags: list[Bag] = []
        self.holds: dict[str, list[Bag]] = {}
        self.units = 0
        self.start()

    def start(self):
        """The next run, with the lots that are on the line, those of rework among them."""
        on = sorted(code for code in self.line.duty.line.codes if code in LOTS)
        self.line.start(*(on or (self.chance.choice(LOTS),)), "CAR-7")

    def uid(self):
        return new_uid(self.line.clock.now())

    def enter(self, *facts):
        answer = self.line.enter(*facts)
        assert answer.recorded, answer.words

    def drawn(self, *, of):
        """One bag of some, or None."""
        some = [bag for bag in self.bags if of(bag)]
        return self.chance.choice(some) if some else None

    def work(self, steps):
        ways = [self.pack] * 8 + [self.hold, self.release, self.release, self.reprint, self.ship]
        ways += [self.decide, self.decide, self.correct, self.answer, self.answer, self.case]
        ways += [self.late, self.lots, self.next_run]
        for _ in range(steps):
            self.chance.choice(ways)()

    # --- at the scale ---------------------------------------------------------------------------

    def pack(self):
        how = self.chance.choice(["good"] * 4 + ["aside", "burst", "jam"])
        line, run = self.line, self.line.run
        lots = frozenset(use.lot for use in run.lot_set.uses)
        net = self.chance.choice(("250", "252", "258"))
        if how == "aside":
            line.weigh(100, 2)
            line.take(SetAside("too light"))
            line.weigh(100, 5)
        else:
            line.on_pan(net)
        record = line.runner._cycle.last
        assert record.serial not in {bag.serial for bag in self.bags}, line.state.because
        bag = Bag(record.serial, run.id, record.draft.weighing.net.micrograms, lots)
        self.bags.append(bag)
        if how == "aside":
            bag.label = "none"
            bag.leave("reject", "too light")
        elif how == "jam":
            line.take(LabelFailed(bag.serial, "jammed"))
            bag.label = "in doubt"
        else:
            line.take(Labelled(bag.serial))
        if how == "burst":
            line.take(SetAside("burst seal"))
            bag.label = "voided"
            bag.leave("reject", "burst seal")
        line.weigh(0)
        if line.state.phase is Phase.STOPPED:
            line.take(Resumed("P01"))
            line.weigh(0)

    def late(self):
        """The last bag is found open while the pan is empty."""
        cycle = self.line.runner._cycle
        if cycle.last_is_good:
            bag = self.bags[-1]
            assert bag.serial == cycle.last.serial
            self.line.take(SetAside("found open"))
            bag.label = "voided"
            bag.leave("reject", "found open")

    def lots(self):
        """A lot is loaded beside the one there, or the older one is empty."""
        on = sorted(code for code in self.line.duty.line.codes if code in LOTS)
        if len(on) > 1:
            self.line.empty(on[0])
        else:
            self.line.load(self.chance.choice([code for code in LOTS if code not in on]), 5)

    def next_run(self):
        if self.chance.random() < 0.4:
            self.line.end()
            self.start()

    # --- labels ---------------------------------------------------------------------------------

    def reprint(self):
        bag = self.drawn(of=lambda one: one.label == "applied" and not one.case and one.sold)
        if bag is not None and bag.quality != "held":
            self.line.take(Reprint(bag.serial, ReprintReason.TORN, OldLabel.DESTROYED, "P02"))
            if self.line.entered[-1].recorded:  # a second copy wants the lead
                out = self.chance.random() < 0.5
                event = Labelled(bag.serial) if out else LabelFailed(bag.serial, "jammed")
                self.line.take(event)
                bag.label = "spooled" if out else "in doubt"

    def answer(self):
        bag = self.drawn(of=lambda one: one.label in DOUBTFUL)
        if bag is not None:
            fate = self.chance.choice(list(Fate))
            self.line.take(Resolve(bag.serial, fate, "P02"))
            assert self.line.entered[-1].recorded
            bag.label = "applied" if fate is Fate.APPLIED else "voided"
            if bag.label == "voided" and bag.sold:
                bag.leave("reject", FATE_WORDS[fate])

    # --- QA -------------------------------------------------------------------------------------

    def hold(self):
        if not self.bags:
            return
        first = self.chance.randrange(len(self.bags))
        some = self.bags[first : first + self.chance.randint(1, 6)]
        ranges = hold_scopes.between_serials(self.home, some[0].serial, some[-1].serial)
        uid = self.uid()
        self.enter(hold_fact(Scope(ScopeKind.SERIALS, "some"), "metal", ranges, uid))
        self.holds[uid] = some
        for bag in some:
            bag.holds.add(uid)
            if bag.sold:
                bag.quality = "held"

    def release(self):
        if self.holds:
            uid = self.chance.choice(list(self.holds))
            free = Released(uid, "", "looked at", "", 1)
            self.enter(release_fact(free, "some", self.uid(), "Q01", two=False))
            for bag in self.holds.pop(uid):
                bag.holds.discard(uid)
                if bag.quality == "held" and not bag.holds:
                    bag.quality = "released"

    def decide(self):
        self._decide(self.drawn(of=lambda one: one.quality in ("reject", "held")))

    def correct(self):
        self._decide(self.drawn(of=lambda one: one.decision and one.quality != "reworked"))

    def _decide(self, bag):
        if bag is None:
            return
        end, into, facts = self.chance.choice(list(Disposition)), "", []
        if end in LINKED:
            taken = {one.into for one in self.bags if one is not bag}
            later = self.bags[self.bags.index(bag) + 1 :]
            free = [one for one in later if bag.lots <= one.lots and one.serial not in taken]
            if not free:
                return
            into = self.chance.choice(free).serial
        if end is Disposition.REWORK:
            if bag.decision or bag.quality == "held":
                return
            facts.append(self._back(bag.serial))
        decided = Decided(bag.serial, end, "light", "Q02", into=into, corrects=bag.decision)
        made = disposition_fact(decided, self.uid(), bag.run)
        if bag.holds and end not in (Disposition.DUMP, Disposition.SAMPLE):
            assert "lies under the hold" in self.line.enter(*facts, made).words
            return
        self.enter(*facts, made)
        bag.decision, bag.into = made.uid, into
        bag.leave(str(QUALITY_AFTER[end]), "light")

    def _back(self, serial):
        """Its content goes back on the line."""
        found = trace_pack(self.home, serial)
        draft = found.record.draft
        members = self.line.store.labelled(serial).run.lot_set.uses
        move = LotMove(
            Move.REWORK,
            draft.blend_lot,
            quantity=draft.weighing.net,
            members=members,
            use_by=draft.use_by,
            packed_at=draft.judged_at.utc,
            serials=(serial,),
        )
        return move_fact(move, self.uid(), "A")

    # --- out of the door ------------------------------------------------------------------------

    def case(self):
        first = self.drawn(of=self._free)
        if first is None:
            return
        code = trace_pack(self.home, first.serial).record.draft.blend_lot
        some = [one for one in self.bags if self._free(one) and one.run == first.run]
        some = [
            one for one in some if trace_pack(self.home, one.serial).record.draft.blend_lot == code
        ][:3]
        self.units += 1
        case = a_case(self.home, self.units, [one.serial for one in some])
        self.enter(case_fact(case, self.uid(), first.run))
        for state in (LabelState.SUBMITTED, LabelState.SPOOLED):
            self.enter(unit_label_fact(UnitLabel(case.sscc, state, 0), self.uid()))
        for bag in some:
            bag.case = case.sscc

    def _free(self, bag):
        return bag.quality in ("good", "released") and bag.label == "applied" and not bag.case

    def ship(self):
        first = self.drawn(of=lambda one: one.case and not one.shipment)
        if first is None:
            return
        inside = [one for one in self.bags if one.case == first.case]
        if all(replace(one, case="").quality in ("good", "released") for one in inside):
            self.units += 1
            left = Shipment(f"S-{self.units}", MARSHGATE, "note", (first.case,))
            self.enter(shipment_fact(left, self.uid()))
            for bag in inside:
                bag.shipment = left.number
