"""The gates about labels of one station: its duties, primed from the record, and their desk."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from station.app.labels_desk import LabelsDesk
from station.app.paper import drawers
from station.config.packhouse import Packhouse
from station.core.ids import new_uid
from station.core.journal import EntryKind
from station.line.duties import Duty
from station.line.label_duties import DoubtDuty, FirstOffDuty, RollDuty
from station.line.ports import Clock
from station.line.scan_duty import ScanDuty
from station.store.label_rolls import roll_accounts
from station.store.queries import in_doubt
from station.store.standing import standing_facts

_NEVER = timedelta(days=36500)
"""Between scans where none is wanted; the duty is not asked then."""


@dataclass(frozen=True, slots=True)
class LabelGates:
    """What a station needs of it.

    Args:
        duties: those that are on, in the order their words are shown.
        desk: makes the facts.
    """

    duties: tuple[Duty, ...]
    desk: LabelsDesk


def label_gates(house: Packhouse, home: Path, clock: Clock) -> LabelGates:
    """Read the record and return the gates as it left them.

    Args:
        house: the settings.
        home: folder of the record.
        clock: tells the time.
    """
    settings = house.settings
    checks = settings.label_checks
    inside = standing_facts(home, EntryKind.ROLL)
    newest = roll_accounts(home, 1) if inside else ()
    rolls = RollDuty(inside, newest[-1].used if newest else 0)
    first_off = FirstOffDuty(
        ZoneInfo(settings.zone), settings.cut_off, each_roll=checks.first_off_each_roll
    )
    wrong = standing_facts(home, EntryKind.SCAN_BACK)
    scans = ScanDuty(checks.scan_every or _NEVER, checks.grace, wrong)
    chosen: tuple[tuple[bool, Duty], ...] = (
        (True, DoubtDuty(lambda: in_doubt(home))),
        (checks.rolls, rolls),
        (checks.first_off, first_off),
        (checks.scan_every is not None, scans),
    )
    desk = LabelsDesk(
        settings,
        tuple(house.people.values()),
        home,
        clock,
        drawers(settings.printer),
        new_uid,
        rolls,
        first_off,
        scans,
    )
    return LabelGates(tuple(duty for on, duty in chosen if on), desk)
