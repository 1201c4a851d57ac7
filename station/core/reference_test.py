"""A reference test on bags an inspector picks, as an entry of the record: an aid, never official.

The station weighs what he puts on the scale, takes the tare of the run off and shows the criterion
of the run's rule set as it stands. The result that counts is his own.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from random import Random
from typing import Any

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value
from station.core.mass import Mass
from station.core.metrology.batch import Judgement, judge_sample, judge_sums
from station.core.metrology.plans import Plan
from station.core.metrology.rule_set import RuleSet
from station.core.metrology.running import RunningBatch
from station.core.run import Run

AID = "an aid to the inspector, no official result"
"""Stands in each record and on each screen of a reference test."""
WHOLE_BATCH = timedelta(hours=1)
"""At the end of a packing line a batch is at most what the line puts out in an hour (Council
Directive 76/211/EEC Annex II, from memory; SI 2006/659 Schedule 2)."""


class ReferenceTestError(ValueError):
    """A test that cannot be made or kept; the message says why."""


@dataclass(frozen=True, slots=True)
class StoredBag:
    """A bag of a batch by the record: serial, when it was weighed, its net then."""

    serial: str
    at: datetime
    net: Mass


@dataclass(frozen=True, slots=True)
class Batch:
    """Bags of one run in one hour of the clock.

    Args:
        run: the run.
        hour: its beginning, in the plant's time.
        packs: its bags that are or may be sold, in order.
    """

    run: Run
    hour: datetime
    packs: tuple[StoredBag, ...]

    @property
    def key(self) -> str:
        """What names it."""
        return f"{self.run.id} {self.hour.isoformat()}"


@dataclass(frozen=True, slots=True)
class Picked:
    """One bag of a test.

    Args:
        serial: as printed.
        gross: what the scale showed now; None before it was weighed.
        tare: taken off.
        stored: net by the record, from the day it was packed.
    """

    serial: str
    tare: Mass
    stored: Mass
    gross: Mass | None = None

    @property
    def net(self) -> Mass | None:
        """Net as weighed now; None before."""
        return None if self.gross is None else self.gross - self.tare.in_unit(self.gross.unit)


@dataclass(frozen=True, slots=True)
class ReferenceTest:
    """A test on one batch.

    Args:
        run: id of its run.
        rule_set: id of the rules.
        nominal: declared net quantity.
        lot_size: bags in the batch.
        plan: the sample the rules want.
        picked: bags, in the order they were picked.
        seed: of the random draw; None where he picked each bag by hand.
    """

    run: str
    rule_set: str
    nominal: Mass
    lot_size: int
    plan: Plan
    picked: tuple[Picked, ...] = ()
    seed: int | None = None

    @property
    def most(self) -> int:
        """Bags the whole test can take, both stages of a double plan."""
        return self.plan.n + (self.plan.second.n if self.plan.second else 0)

    @property
    def nets(self) -> tuple[Mass, ...]:
        """Nets of the bags weighed, in order, in the unit of the nominal quantity."""
        unit = self.nominal.unit
        return tuple(one.net.in_unit(unit) for one in self.picked if one.net is not None)

    @property
    def next_to_weigh(self) -> Picked | None:
        """The first picked bag not weighed yet."""
        return next((one for one in self.picked if one.gross is None), None)

    def pick(self, bag: Picked) -> ReferenceTest:
        """With one more bag.

        Raises:
            ReferenceTestError: it was picked before, or no more may be.
        """
        if any(one.serial == bag.serial for one in self.picked):
            raise ReferenceTestError(f"bag {bag.serial} was picked already")
        if len(self.picked) >= self.most:
            raise ReferenceTestError(f"the plan takes {self.most} bags, and they are picked")
        return replace(self, picked=(*self.picked, bag))

    def weigh(self, gross: Mass) -> ReferenceTest:
        """With the next bag weighed.

        Raises:
            ReferenceTestError: every picked bag was weighed.
        """
        bag = self.next_to_weigh
        if bag is None:
            raise ReferenceTestError("every picked bag is weighed: pick the next one")
        if (gross - bag.tare.in_unit(gross.unit)).amount <= 0:
            raise ReferenceTestError(f"{gross} is not more than the empty bag of {bag.tare}")
        weighed = replace(bag, gross=gross)
        return replace(self, picked=tuple(weighed if one is bag else one for one in self.picked))


def draw(serials: Sequence[str], count: int, seed: int) -> tuple[str, ...]:
    """Draw bags at random without putting back; the same seed draws the same bags.

    Simple random sampling: each bag of the batch has the same chance (NIST Handbook 133 chapter 2
    asks for samples drawn with random numbers; from memory).

    Raises:
        ReferenceTestError: there are not so many.
    """
    if not 0 < count <= len(serials):
        raise ReferenceTestError(f"{count} bags cannot be drawn from {len(serials)}")
    places = sorted(Random(seed).sample(range(len(serials)), count))
    return tuple(serials[place] for place in places)


def standing(test: ReferenceTest, rules: RuleSet) -> Judgement | None:
    """The criterion as it stands with the bags weighed so far; None before the first."""
    nets = test.nets
    if not nets:
        return None
    start = RunningBatch(rules.limits(test.nominal))
    mean_packs = start.add_all(nets[: test.plan.mean_size])
    return judge_sums(mean_packs.add_all(nets[test.plan.mean_size :]), test.plan, mean_packs)


def verdict(test: ReferenceTest, rules: RuleSet) -> Judgement:
    """The verdict on a whole sample.

    Raises:
        RuleRefused: another number of bags was weighed than the plan takes.
    """
    return judge_sample(rules, test.nominal, test.nets, test.lot_size, test.plan.kind)


def reference_fact(test: ReferenceTest, judged: Judgement, inspector: str, uid: str) -> Fact:
    """The entry that keeps a test.

    Raises:
        ReferenceTestError: nobody is named.
    """
    if not inspector.strip():
        raise ReferenceTestError("name the inspector: scan or type who tests")
    picked: list[Value] = [
        {
            "serial": one.serial,
            "gross": None if one.gross is None else str(one.gross),
            "tare": str(one.tare),
            "stored": str(one.stored),
        }
        for one in test.picked
    ]
    return Fact(
        EntryKind.REFERENCE,
        uid,
        inspector.strip()[:80],
        "would be accepted" if judged.accepted else "would not be accepted",
        test.run,
        {
            "aid": AID,
            "rule_set": test.rule_set,
            "plan": str(test.plan),
            "lot_size": test.lot_size,
            "nominal": str(test.nominal),
            "n": judged.n,
            "mean": str(judged.mean),
            "below_t1": judged.t1_count,
            "below_t2": judged.t2_count,
            "seed": test.seed,
            "picked": picked,
        },
    )


def picked_serials(record: FactRecord) -> tuple[str, ...]:
    """The bags of a test on record."""
    details: Any = record.fact.details
    return tuple(one["serial"] for one in details["picked"])
