"""The desk of checks: makes the facts of scale checks, tares and decisions, and reads windows."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import tzinfo
from pathlib import Path
from zoneinfo import ZoneInfo

from station.config.packhouse import StationSettings
from station.core.checks.scale import CheckMade, Trigger, check_fact
from station.core.checks.suspect import Decision, FiledWindow, decision_facts
from station.core.checks.tare import (
    EmptyBag,
    empty_bag_fact,
    judge_empty_bag,
    study_fact,
)
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.mass import Mass
from station.core.metrology.check_plan import PlannedLoad, plan_loads
from station.core.metrology.scale_check import CheckStage, ScaleCheck
from station.core.metrology.scale_suitability import Scale
from station.core.metrology.tare import TareStudy
from station.core.run import Run
from station.line.guided import GuidedCheck
from station.line.ports import Clock
from station.line.scale_duty import ScaleDuty
from station.line.suspected import Suspected
from station.line.tare_duty import TareDuty
from station.store.suspects import open_windows


class ChecksDesk:
    """Implements station.screens.checks_source.ChecksSource; any thread.

    Args:
        settings: of the station.
        home: folder of the record.
        clock: tells the time.
        scale_duty, tare_duty: know what is due and what was studied.
        dwell_ns: how long a reading must stand before it is taken by itself.
    """

    def __init__(
        self,
        settings: StationSettings,
        home: Path,
        clock: Clock,
        scale_duty: ScaleDuty,
        tare_duty: TareDuty,
        dwell_ns: int,
    ) -> None:
        self._settings, self._home, self._clock = settings, home, clock
        self._scale, self._tare = scale_duty, tare_duty
        self.dwell_ns = dwell_ns

    @property
    def zone(self) -> tzinfo:
        """The plant's time zone."""
        return ZoneInfo(self._settings.zone)

    @property
    def scale_on(self) -> bool:
        """Whether bags are taken only after a check of the scale."""
        return self._settings.checks.on

    @property
    def tare_on(self) -> bool:
        """Whether bags are taken only after an empty one."""
        return self._settings.tare.on

    @property
    def scale_wanted(self) -> bool:
        """Whether acceptance is closed until the scale is checked, and no check failed."""
        return not self._scale.failed and bool(self._scale.closing(self._clock.now().utc))

    @property
    def tare_wanted(self) -> bool:
        """Whether acceptance is closed until a bag is weighed."""
        return bool(self._tare.closing(self._clock.now().utc))

    @property
    def plate(self) -> Scale:
        """What the plate of the scale says."""
        return self._settings.scale.plate

    @property
    def trigger(self) -> Trigger:
        """Why a check made now is made."""
        return self._scale.trigger

    @property
    def stage(self) -> CheckStage:
        """Whether a check made now is as found or as left."""
        return self._scale.stage

    @property
    def study_bags(self) -> int:
        """Bags a tare study needs."""
        return self._settings.tare.rule.least_bags

    @property
    def film_lot(self) -> str:
        """The film lot in use; empty before the run's first empty bag."""
        return self._tare.film_lot

    def planned(self, run: Run) -> tuple[PlannedLoad, ...]:
        """The loads of a check for a run.

        Raises:
            RuleRefused: the test weights do not make them up.
        """
        product = run.product
        return plan_loads(
            self.plate, self._settings.checks.weights, product.bag.tare, product.nominal
        )

    def guided(self, run: Run) -> GuidedCheck:
        """A check for a run, to be gone through."""
        return GuidedCheck(self.plate, self.planned(run), self.dwell_ns)

    def judge(self, guided: GuidedCheck) -> ScaleCheck:
        """The whole check, judged now.

        Raises:
            RuleRefused: no load is taken, or a test weight is too coarse for the scale.
        """
        return guided.check(self._clock.now().utc, self.stage)

    def check(self, check: ScaleCheck, run: Run) -> Fact:
        """The fact that keeps a check."""
        settings = self._settings
        made = CheckMade(
            check, self.plate, settings.scale.id, self.trigger, settings.checks.weights.certificate
        )
        return check_fact(made, self._new_id(), run.id)

    def empty_bag(self, run: Run, film_lot: str, shown: Mass) -> tuple[EmptyBag, Fact]:
        """One empty bag of a run, judged, and the fact that keeps it."""
        item = run.product.bag
        study = self._tare.study(item.code, film_lot)
        interval = self.plate.interval
        bag = judge_empty_bag(item.code, film_lot, shown, interval, study, item.tare)
        return bag, empty_bag_fact(bag, self._new_id(), run.id)

    def study(self, run: Run, film_lot: str, tares: Sequence[Mass]) -> tuple[TareStudy, Fact]:
        """A study of a run's bags, and the fact that keeps it."""
        now = self._clock.now()
        study = TareStudy(run.product.bag.code, film_lot, ("label",), now.utc, tuple(tares))
        return study, study_fact(study, self._new_id(), run.id)

    def windows(self) -> tuple[Suspected, ...]:
        """Suspect windows nobody decided about yet, oldest first; reads the record."""
        return open_windows(self._home)

    def decide(self, window: FiledWindow, decision: Decision, reason: str) -> tuple[Fact, ...]:
        """The facts that keep a decision.

        Raises:
            ValueError: there is no reason, or nothing before a step to release.
        """
        uids = [self._new_id() for _ in range(len(window.holds) + 1)]
        return decision_facts(window, decision, reason, uids)

    def _new_id(self) -> str:
        return new_uid(self._clock.now())
