"""Whom the checks page asks for what is due, and for the facts it enters."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import tzinfo
from typing import Protocol

from station.core.checks.suspect import Decision, FiledWindow
from station.core.checks.tare import EmptyBag
from station.core.facts import Fact
from station.core.mass import Mass
from station.core.metrology.scale_check import CheckStage, ScaleCheck
from station.core.metrology.tare import TareStudy
from station.core.run import Run
from station.line.guided import GuidedCheck
from station.line.suspected import Suspected


class ChecksSource(Protocol):
    """Knows the scale, its test weights, the tares and the record; quick but for ``windows``."""

    @property
    def zone(self) -> tzinfo:
        """The plant's time zone."""
        ...

    @property
    def dwell_ns(self) -> int:
        """How long a reading must stand before it is taken by itself."""
        ...

    @property
    def stage(self) -> CheckStage:
        """Whether a check made now is as found or as left."""
        ...

    @property
    def study_bags(self) -> int:
        """Bags a tare study needs."""
        ...

    @property
    def film_lot(self) -> str:
        """The film lot in use; empty before the run's first empty bag."""
        ...

    def guided(self, run: Run) -> GuidedCheck:
        """A check for a run; raises RuleRefused where the weights do not make up its loads."""
        ...

    def judge(self, guided: GuidedCheck) -> ScaleCheck:
        """The whole check, judged now; raises RuleRefused."""
        ...

    def check(self, check: ScaleCheck, run: Run) -> Fact:
        """The fact that keeps a check."""
        ...

    def empty_bag(self, run: Run, film_lot: str, shown: Mass) -> tuple[EmptyBag, Fact]:
        """One empty bag, judged, and the fact that keeps it."""
        ...

    def study(self, run: Run, film_lot: str, tares: Sequence[Mass]) -> tuple[TareStudy, Fact]:
        """A study, and the fact that keeps it."""
        ...

    def windows(self) -> tuple[Suspected, ...]:
        """Suspect windows nobody decided about; may take long, not for Qt's thread."""
        ...

    def decide(self, window: FiledWindow, decision: Decision, reason: str) -> tuple[Fact, ...]:
        """The facts that keep a decision; raises ValueError."""
        ...
