"""The desk of reference tests: batches of the record, bags picked from them, the criterion."""

from __future__ import annotations

import os
from datetime import timedelta
from pathlib import Path

from station.app.quality_rights import check_role
from station.config.packhouse import Packhouse
from station.config.shelf_life import APPROVERS
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.metrology.batch import Judgement
from station.core.metrology.rehearsal import Rehearsal, rehearse
from station.core.metrology.rule_sets.registry import rule_set
from station.core.reference_test import (
    Batch,
    Picked,
    ReferenceTest,
    ReferenceTestError,
    StoredBag,
    draw,
    reference_fact,
    standing,
    verdict,
)
from station.core.run import Run
from station.line.opening import day_of
from station.line.ports import Clock
from station.reports.serial_scan import serial_of
from station.store.batches import batches_of
from station.store.run_evidence import runs_of_day

_DAYS = 3
_DRAWS = 2000


class InspectorDesk:
    """Implements station.screens.quality_sources.InspectorSource; any thread.

    Args:
        house: the settings.
        home: folder of the record.
        clock: tells the time.
        dwell_ns: how long a reading must stand before it is taken.
    """

    def __init__(self, house: Packhouse, home: Path, clock: Clock, dwell_ns: int) -> None:
        self._house, self._home, self._clock = house, home, clock
        self.dwell_ns = dwell_ns

    def batches(self) -> tuple[Batch, ...]:
        """The batches of the last production days, newest first; reads the record."""
        today = day_of(self._clock.now(), self._house.settings.cut_off)
        found: list[Batch] = []
        for back in range(_DAYS):
            for uid in runs_of_day(self._home, today - back * timedelta(days=1)):
                found += batches_of(self._home, uid)
        return tuple(sorted(found, key=lambda batch: batch.hour, reverse=True))

    def begin(self, batch: Batch) -> ReferenceTest:
        """A test of a batch without a bag.

        Raises:
            RuleRefused: the rules have no test for it.
        """
        limits = batch.run.window.limits
        rules = rule_set(limits.rule_set)
        size = len(batch.packs)
        plan = rules.official_plan(size)
        return ReferenceTest(batch.run.id, limits.rule_set, limits.nominal, size, plan)

    def pick(self, test: ReferenceTest, batch: Batch, text: str) -> ReferenceTest:
        """The test with a bag whose label was scanned or typed.

        Raises:
            ReferenceTestError: it is not of the batch, or was picked before.
        """
        serial = serial_of(text)
        bag = next((one for one in batch.packs if one.serial == serial), None)
        if bag is None:
            raise ReferenceTestError(
                f"bag {serial} is not in this batch of {len(batch.packs)} bags: it holds "
                f"{batch.packs[0].serial} to {batch.packs[-1].serial}"
            )
        return test.pick(_picked(batch.run, bag))

    def draw(self, test: ReferenceTest, batch: Batch, seed: int | None = None) -> ReferenceTest:
        """The test with a sample drawn at random; the seed stands in its record.

        Raises:
            ReferenceTestError: bags were picked already.
        """
        if test.picked:
            raise ReferenceTestError("bags were picked already: begin anew to draw a sample")
        chosen = int.from_bytes(os.urandom(4), "big") if seed is None else seed
        serials = draw([one.serial for one in batch.packs], test.plan.n, chosen)
        by_serial = {one.serial: one for one in batch.packs}
        bags = tuple(_picked(batch.run, by_serial[serial]) for serial in serials)
        return ReferenceTest(
            test.run, test.rule_set, test.nominal, test.lot_size, test.plan, bags, chosen
        )

    def standing(self, test: ReferenceTest) -> Judgement | None:
        """The criterion with the bags weighed so far."""
        return standing(test, rule_set(test.rule_set))

    def verdict(self, test: ReferenceTest) -> Judgement:
        """The verdict on a whole sample; raises RuleRefused before it is whole."""
        return verdict(test, rule_set(test.rule_set))

    def rehearsal(self, test: ReferenceTest, batch: Batch) -> Rehearsal:
        """How many samples of the stored bags would pass; takes seconds on a large batch.

        Raises:
            ValueError: the plan takes more bags than there are.
        """
        limits = batch.run.window.limits
        nets = [one.net.in_unit(limits.nominal.unit) for one in batch.packs]
        return rehearse(nets, limits, test.plan, draws=_DRAWS)

    def record(self, test: ReferenceTest, inspector: str, who: str) -> Fact:
        """The fact that keeps a test.

        Raises:
            ValueError: the sample is not whole, nobody is named, or who signs may not.
        """
        check_role(self._house.people, who, APPROVERS, "keep a reference test")
        return reference_fact(test, self.verdict(test), inspector, new_uid(self._clock.now()))


def _picked(run: Run, bag: StoredBag) -> Picked:
    return Picked(bag.serial, run.product.bag.tare.in_unit(bag.net.unit), bag.net)
