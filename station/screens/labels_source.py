"""What the page of labels asks of the station."""

from __future__ import annotations

from typing import Protocol

from station.core.checks.rolls import RollAccount, RollCount
from station.core.checks.scan_back import ScanBack
from station.core.facts import Fact
from station.core.label_life import OpenLabel
from station.core.run import Run


class LabelsSource(Protocol):
    """Draws, reads the record and makes facts to be entered; quick enough for Qt's thread.

    What cannot be is refused with a ValueError in words.
    """

    @property
    def roll_inside(self) -> str:
        """Id of the roll in the printer; empty without one."""
        ...

    @property
    def roll_wanted(self) -> bool:
        """Whether acceptance waits for a roll."""
        ...

    @property
    def first_off_wanted(self) -> bool:
        """Whether acceptance waits for two people."""
        ...

    @property
    def mismatch(self) -> str:
        """Serial of a label whose scan differed and is not cleared; empty without one."""
        ...

    def specimen(self, run: Run) -> bytes:
        """The specimen of a run's label, a PDF."""
        ...

    def first_off(self, run: Run, lead: str, second: str, refusal: str = "") -> Fact:
        """What two people say about the specimen."""
        ...

    def scan(self, run: Run, text: str, last: str) -> tuple[ScanBack, Fact]:
        """A scan of an applied label, held against the record."""
        ...

    def clear(self, who: str, reason: str) -> Fact:
        """A lead goes on after a mismatch."""
        ...

    def rolls(self) -> tuple[RollAccount, ...]:
        """The accounts of the newest rolls, oldest first."""
        ...

    def put_in(self, roll: str, issued: int, run: Run | None = None) -> Fact:
        """A roll is put in."""
        ...

    def take_out(self, count: RollCount, run: Run | None = None) -> Fact:
        """The roll is taken out, with what was counted."""
        ...

    def explain(self, account: RollAccount, words: str) -> Fact:
        """A difference is explained."""
        ...

    def doubts(self) -> tuple[OpenLabel, ...]:
        """Labels that wait for a person's answer, oldest bag first."""
        ...
