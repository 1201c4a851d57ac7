"""What may be alarmed at this station: asks duties, printer, centre and the line itself.

Each row asks one thing for one kind of alarm, so that the short list stays short and every row has
a cause that can be pointed at.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from fractions import Fraction

from station.app.alarm_desk import AlarmDesk
from station.core.alarms import AlarmKind
from station.core.ids import new_uid
from station.core.room import Level
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
from station.line.state import LineState, Phase, Verb

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


def alarm_gates(
    duties: Sequence[Duty],
    clock: Clock,
    printer: Callable[[], str],
    sync_age: Callable[[datetime], timedelta],
    sound: Callable[[Sound], None],
) -> AlarmGates:
    """Return the alarms of a line.

    Args:
        duties: of the line.
        clock: tells the time.
        printer: what it needs; empty while nothing.
        sync_age: how long the oldest entry has waited for the centre.
        sound: plays a sound of the line.
    """

    def causes(now: datetime, state: LineState) -> Mapping[AlarmKind, str]:
        found: dict[AlarmKind, str] = {}
        asked: Iterable[Found] = (
            _of_line(state, now),
            *(_of_duty(duty, state, now) for duty in duties),
            _of_papers(printer(), sync_age(now)),
        )
        for source in asked:
            for kind, words in source:
                found.setdefault(kind, words)
        return found

    board = AlarmBoard(causes, new_uid, sound)
    return AlarmGates((*duties, board), board, AlarmDesk(board, clock))


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
    if isinstance(duty, RollDuty) and duty.left is not None and duty.left < _FEW_LABELS:
        yield AlarmKind.ROLL_LOW, f"fewer than {_FEW_LABELS} labels are left"
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


def _of_papers(printer: str, sync_age: timedelta) -> Found:
    if printer:
        yield AlarmKind.PRINTER, printer
    if sync_age > _LATE_SYNC:
        yield AlarmKind.SYNC_LATE, "the oldest entry has waited for more than 30 minutes"
