"""What may be alarmed at this station: asks duties, printer, centre and the line itself.

Each row asks one thing for one kind of alarm, so that the short list stays short and every row has
a cause that can be pointed at.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from fractions import Fraction
from pathlib import Path

from station.app.alarm_desk import AlarmDesk
from station.core.alarms import AlarmKind
from station.core.checks.rolls import RollStep, is_step
from station.core.facts import FactRecord
from station.core.ids import new_uid
from station.core.pack import PackRecord, Quality
from station.core.room import Level
from station.core.run import Run
from station.line.alarm_board import AlarmBoard
from station.line.clock_duty import ClockDuty
from station.line.duties import Duty
from station.line.effects import Sound
from station.line.label_duties import RollDuty
from station.line.lot_duty import LotDuty
from station.line.ports import Clock
from station.line.qa_duty import QaDuty
from station.line.room_duty import RoomDuty
from station.line.scale_duty import ScaleDuty
from station.line.scan_duty import ScanDuty
from station.line.state import LineState, Notice, Phase, Verb
from station.store.label_rolls import roll_accounts

_SOON = timedelta(minutes=5)
_LATE_SYNC = timedelta(minutes=30)
_FEW_LABELS = 50
_FEW_BAGS = 10
"""A mean of fewer bags says nothing yet (common practice)."""
_LOT_ENDS = Fraction(1, 10)
Found = Iterator[tuple[AlarmKind, str]]
_Timed = ScaleDuty | ScanDuty | QaDuty


@dataclass(frozen=True, slots=True)
class AlarmGates:
    """What a station needs of its alarms: the duties of the line with them, and the desk."""

    duties: tuple[Duty, ...]
    board: AlarmBoard
    desk: AlarmDesk


class RollLeft:
    """Counts the labels left on the roll; implements station.line.duties.Duty and closes nothing.

    Copies and tickets are counted when the roll is taken out; this is a forecast.

    Args:
        issued, used: labels of the roll that is in, as the record has it; 0 where none is.
    """

    name = ""

    def __init__(self, issued: int = 0, used: int = 0) -> None:
        self._issued, self._used = issued, used

    @property
    def left(self) -> int | None:
        """Labels left; None while no roll is in."""
        return max(0, self._issued - self._used) if self._issued else None

    def opened(self, run: Run, at: datetime) -> None:
        """A roll may stay in from run to run."""

    def packed(self, record: PackRecord) -> None:
        """A good bag takes a label."""
        self._used += record.draft.quality is Quality.GOOD

    def noted(self, record: FactRecord) -> None:
        """See rolls put in and taken out."""
        if is_step(record, RollStep.PUT_IN):
            self._issued, self._used = int(str(record.fact.details["issued"])), 0
        elif is_step(record, RollStep.TAKEN_OUT):
            self._issued = 0

    def closing(self, now: datetime) -> str:
        """Nothing."""
        return ""

    def due(self, now: datetime) -> Notice | None:
        """Nothing."""
        return None


def alarm_gates(
    duties: Sequence[Duty],
    home: Path,
    clock: Clock,
    printer: Callable[[], str],
    sync_age: Callable[[datetime], timedelta],
    sound: Callable[[Sound], None],
) -> AlarmGates:
    """Return the alarms of a line.

    Args:
        duties: of the line.
        home: folder of the record.
        clock: tells the time.
        printer: what it needs; empty while nothing.
        sync_age: how long the oldest entry has waited for the centre.
        sound: plays a sound of the line.
    """
    roll = _roll_in(home, duties)

    def causes(now: datetime, state: LineState) -> Mapping[AlarmKind, str]:
        found: dict[AlarmKind, str] = {}
        asked: Iterable[Found] = (
            _of_line(state, now),
            *(_of_duty(duty, state, now) for duty in duties),
            _of_papers(printer(), roll.left, sync_age(now)),
        )
        for source in asked:
            for kind, words in source:
                found.setdefault(kind, words)
        return found

    board = AlarmBoard(causes, new_uid, sound)
    return AlarmGates((*duties, roll, board), board, AlarmDesk(board, clock))


def _roll_in(home: Path, duties: Sequence[Duty]) -> RollLeft:
    inside = any(isinstance(duty, RollDuty) and duty.inside for duty in duties)
    newest = roll_accounts(home, 1) if inside else ()
    return RollLeft(newest[-1].issued, newest[-1].used) if newest else RollLeft()


def _of_line(state: LineState, now: datetime) -> Found:
    if state.run is None:
        return
    if state.phase is Phase.STOPPED:
        yield AlarmKind.STOPPED, state.because
    if state.verb is Verb.NO_READING:
        yield AlarmKind.NO_READING, state.because
    if state.verb is Verb.WIPE_PAN:
        yield AlarmKind.RESIDUE, state.because
    mean, nominal = state.tally.mean, state.run.product.nominal
    if mean is not None and state.tally.good >= _FEW_BAGS and mean.grams < nominal.grams:
        yield AlarmKind.MEAN_LOW, f"{state.tally.good} bags weigh less than {nominal} in the mean"


def _of_duty(duty: Duty, state: LineState, now: datetime) -> Found:
    if isinstance(duty, ClockDuty) and duty.wanting:
        yield AlarmKind.CLOCK, duty.wanting
    if isinstance(duty, RoomDuty) and duty.level is not Level.AMPLE:
        yield AlarmKind.DISK, duty.shut or duty.words
    if state.run is None:
        return
    if isinstance(duty, ScaleDuty | QaDuty) and duty.failed and (words := duty.closing(now)):
        yield AlarmKind.CHECK_FAILED, words
    if isinstance(duty, ScanDuty) and duty.mismatch is not None:
        yield AlarmKind.MISMATCH, duty.closing(now)
    if isinstance(duty, _Timed):
        if duty.overdue(now):
            yield AlarmKind.OVERDUE, duty.closing(now)
        elif (notice := duty.due(now)) is not None and notice.at - now <= _SOON:
            yield AlarmKind.SOON, notice.words
    if isinstance(duty, LotDuty):
        yield from _of_lots(duty, now)


def _of_lots(duty: LotDuty, now: datetime) -> Found:
    for lot in duty.lingering(now):
        yield AlarmKind.OVERLAP, f"lot {lot} has been finishing for long: is it empty?"
    for row in duty.rows():
        balance = row.balance
        if row.held:
            yield AlarmKind.HELD_LOT, f"lot {row.lot} is held"
        if balance.question:
            yield AlarmKind.LOT_OVERRUN, balance.question
        elif balance.loaded and balance.left is not None and not row.finishing:
            ends = balance.left.likely < balance.loaded * _LOT_ENDS
            yield from [(AlarmKind.LOT_LOW, f"lot {row.lot} is nearly empty")] if ends else []


def _of_papers(printer: str, labels: int | None, sync_age: timedelta) -> Found:
    if printer:
        yield AlarmKind.PRINTER, printer
    if labels is not None and labels < _FEW_LABELS:
        yield AlarmKind.ROLL_LOW, f"fewer than {_FEW_LABELS} labels are left"
    if sync_age > _LATE_SYNC:
        yield AlarmKind.SYNC_LATE, "the oldest entry has waited for more than 30 minutes"
