"""What about labels is looked at before bags are taken, frozen."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta


@dataclass(frozen=True, slots=True)
class LabelChecks:
    """What is looked at.

    Args:
        rolls: label rolls are scanned in and counted out.
        first_off: two people approve each run's label before its first bag.
        first_off_each_roll: and after each roll change.
        scan_every: time between scans of applied labels; None where none is scanned.
        grace: how much later a scan may be before acceptance closes.
        copies_alone: copies of one label that are printed without the lead.
    """

    rolls: bool
    first_off: bool
    first_off_each_roll: bool
    scan_every: timedelta | None
    grace: timedelta
    copies_alone: int
