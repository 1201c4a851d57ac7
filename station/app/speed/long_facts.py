"""What people and checks add to a long record in each run: years that a start must pass over."""

from __future__ import annotations

from collections.abc import Iterator

from station.config.packhouse import Packhouse
from station.core import line_lots, pauses
from station.core.checks.qa import QaCheck, QaKind, QaLimit, qa_fact
from station.core.checks.rolls import RollAccount, RollCount, put_in_fact, taken_out_fact
from station.core.checks.scale import CheckMade, Trigger, check_fact
from station.core.checks.scan_back import ScanBack, ScanTrigger, scan_fact
from station.core.clearance import Point, Reconciliation, cleared_fact, reconciled_fact
from station.core.facts import Fact, FactRecord
from station.core.ids import uuid7
from station.core.line_lots import LotMove, Move
from station.core.metrology.check_plan import plan_loads
from station.core.metrology.scale_check import CheckReading, CheckStage, judge_check
from station.core.pack import Moment
from station.core.run import Run

_HOURS = 3
"""Checks of a run: it takes about so long."""
_ROLL = 2000
_SEAL = QaLimit(QaKind.SEAL, at_start=True)
_FACTS = 1 << 60
"""Sets ids of facts apart from those of runs and bags of the same moment."""


class RunFacts:
    """The facts of one run, in the order a day brings them.

    Args:
        house: the settings.
        run: as opened.
        at: when it began.
        bags: how many it packed.
        stays: code of a lot that is not taken off the line.
        there: it is there already.
    """

    def __init__(
        self,
        house: Packhouse,
        run: Run,
        at: Moment,
        bags: int,
        stays: str = "",
        there: bool = False,
    ) -> None:
        self._house, self._run, self._at, self._bags = house, run, at, bags
        self._stays, self._there = stays, there
        self._count = 0

    def before(self) -> tuple[Fact, ...]:
        """What is done before the first bag and while the run is packed."""
        return (*self._lots(Move.LOADED), *self._checks(), *self._roll(), *self._stop())

    def after(self) -> tuple[Fact, ...]:
        """What is signed after the last one."""
        run, count = self._run.id, Reconciliation(self._run.id, self._bags, self._bags)
        return (
            *self._lots(Move.EMPTY),
            reconciled_fact(self._uid(), count),
            cleared_fact(self._uid(), run, dict.fromkeys(Point, True)),
        )

    def _lots(self, move: Move) -> Iterator[Fact]:
        for use in self._run.lot_set.uses:
            if use.lot == self._stays and (self._there or move is Move.EMPTY):
                continue
            moved = LotMove(move, use.lot, use.component)
            yield line_lots.move_fact(moved, self._uid(), self._house.settings.line, self._run.id)

    def _checks(self) -> Iterator[Fact]:
        run, settings = self._run, self._house.settings
        plate, weights = settings.scale.plate, settings.checks.weights
        loads = plan_loads(plate, weights, run.product.bag.tare, run.product.nominal)
        readings = [CheckReading(one.load, one.weights, one.mass) for one in loads]
        check = judge_check(plate, readings, self._at.utc, CheckStage.AS_FOUND)
        made = CheckMade(check, plate, settings.scale.id, Trigger.HOURLY, weights.certificate)
        for _ in range(_HOURS):
            yield check_fact(made, self._uid(), run.id)
            yield qa_fact(QaCheck(_SEAL, run.product.code, passed=True), self._uid(), run.id)
            scan = ScanBack("A1-00-000001", "]C1 01", ("]C1 01",), ScanTrigger.HOURLY)
            yield scan_fact(scan, self._uid(), run.id)

    def _roll(self) -> Iterator[Fact]:
        uid = self._uid()
        put_in = put_in_fact(f"ROLL-{uid[-12:]}", _ROLL, uid, self._run.id)
        yield put_in
        record = FactRecord(put_in, self._at, self._run.lead, 1)
        account = RollAccount(put_in.subject, uid, record, _ROLL, _ROLL, None, None, "")
        yield taken_out_fact(account, RollCount(0, 0, 0), self._uid(), self._run.id)

    def _stop(self) -> Iterator[Fact]:
        reason, line = pauses.Reason.BREAK, self._house.settings.line
        uid, began = self._uid(), self._at.utc
        yield pauses.stop_fact(uid, line, self._run.id, reason)
        stop = pauses.Pause(uid, reason, began)
        yield pauses.resume_fact(
            self._uid(), line, self._run.id, stop, frozenset(pauses.LOOKS[reason])
        )

    def _uid(self) -> str:
        """An id of its own for each fact, the same in every making."""
        self._count += 1
        return str(uuid7(self._at.utc, (_FACTS + self._count).to_bytes(10, "big")))
