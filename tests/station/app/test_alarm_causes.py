"""Each kind of alarm has a cause that a station can really have."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from fractions import Fraction
from types import SimpleNamespace

import pytest

from station.app.alarm_causes import alarm_gates
from station.core.alarms import AlarmKind
from station.core.balance import Balance, Span
from station.core.checks.rolls import put_in_fact
from station.core.facts import FactRecord
from station.core.pack import Moment
from station.core.room import Level
from station.line.clock_duty import ClockDuty
from station.line.label_duties import RollDuty
from station.line.lot_duty import LotDuty, LotRow
from station.line.qa_duty import QaDuty
from station.line.room_duty import RoomDuty
from station.line.scale_duty import ScaleDuty
from station.line.scan_duty import ScanDuty
from station.line.state import Notice, Tally
from tests.station.screens.states import every_state

NOW = datetime(2026, 11, 25, 9, tzinfo=UTC)
STATES = every_state()


def duty(kind, **answers):
    """A duty of a kind that answers as told and nothing else."""
    return object.__new__(type(kind.__name__, (kind,), answers))


def asked(*duties, state=STATES["bag_on"], printer="", age=timedelta()):
    gates = alarm_gates(duties, None, lambda: printer, lambda _: age, print)
    return gates.board._causes(NOW, state)


def timed(kind, *, failed=(), overdue=False, due=None, mismatch=None):
    return duty(
        kind,
        failed=failed,
        mismatch=mismatch,
        overdue=lambda *_: overdue,
        closing=lambda *_: "it says why",
        due=lambda *_: due,
    )


def roll(issued):
    fact = put_in_fact("R1", issued, "u")
    return FactRecord(fact, Moment(NOW, 0, "UTC", 0), "L01", 1)


def lots(**row):
    loaded, lingering = row.pop("loaded", Fraction(1000)), row.pop("lingering", ())
    used = Fraction(row.pop("used", 100))
    balance = Balance("ROM-1", loaded, Span(used, used, used))
    given = {"finishing": False, "held": False, "listed": True, **row}
    made = LotRow("ROM-1", "ROM", balance=balance, **given)
    return duty(LotDuty, rows=lambda _: (made,), lingering=lambda *_: lingering)


SOON = Notice("scale check", NOW + timedelta(minutes=4))
LATER = Notice("scale check", NOW + timedelta(minutes=6))


@pytest.mark.parametrize(
    ("kind", "duties", "more"),
    [
        (AlarmKind.STOPPED, (), {"state": STATES["stopped"]}),
        (AlarmKind.NO_READING, (), {"state": STATES["no_reading"]}),
        (AlarmKind.RESIDUE, (), {"state": STATES["wipe_pan"]}),
        (AlarmKind.CHECK_FAILED, (timed(ScaleDuty, failed=True),), {}),
        (AlarmKind.CHECK_FAILED, (timed(QaDuty, failed=("seal",)),), {}),
        (AlarmKind.MISMATCH, (timed(ScanDuty, mismatch=SimpleNamespace()),), {}),
        (AlarmKind.OVERDUE, (timed(ScaleDuty, overdue=True),), {}),
        (AlarmKind.OVERDUE, (timed(ScanDuty, overdue=True),), {}),
        (AlarmKind.OVERDUE, (timed(QaDuty, overdue=True),), {}),
        (AlarmKind.SOON, (timed(ScaleDuty, due=SOON),), {}),
        (AlarmKind.CLOCK, (duty(ClockDuty, wanting="date and time jumped"),), {}),
        (AlarmKind.HELD_LOT, (lots(held=True),), {}),
        (AlarmKind.LOT_OVERRUN, (lots(used=1001),), {}),
        (AlarmKind.LOT_LOW, (lots(used=901),), {}),
        (AlarmKind.OVERLAP, (lots(finishing=True, lingering=("ROM-0",)),), {}),
        (AlarmKind.DISK, (duty(RoomDuty, shut="", level=Level.LOW, words="85 % full"),), {}),
        (AlarmKind.DISK, (duty(RoomDuty, shut="free 2 GB", level=Level.SHUT),), {}),
        (
            AlarmKind.DISK,
            (duty(RoomDuty, shut="free 2 GB", level=Level.RESERVE),),
            {"state": STATES["start_run"]},
        ),
        (AlarmKind.PRINTER, (), {"printer": "out of labels"}),
        (AlarmKind.SYNC_LATE, (), {"age": timedelta(minutes=31)}),
        (AlarmKind.ROLL_LOW, (RollDuty([roll(49)]),), {}),
        (AlarmKind.ROLL_LOW, (RollDuty([roll(100)], used=51),), {}),
    ],
)
def test_a_cause_is_alarmed_as_its_kind_alone(kind, duties, more):
    assert list(asked(*duties, **more)) == [kind]


@pytest.mark.parametrize(
    ("duties", "more"),
    [
        ((), {}),
        ((timed(ScaleDuty, due=LATER),), {}),
        ((lots(used=900),), {}),
        ((lots(used=950, finishing=True),), {}),
        ((lots(loaded=None),), {}),
        ((RollDuty([roll(50)]),), {}),
        ((RollDuty(),), {}),
        ((duty(RoomDuty, shut="", level=Level.AMPLE),), {}),
        ((), {"age": timedelta(minutes=30)}),
        ((), {"state": STATES["start_run"]}),
    ],
)
def test_what_asks_for_nothing_is_no_alarm(duties, more):
    assert asked(*duties, **more) == {}


def test_a_mean_below_nominal_is_alarmed_once_bags_say_so():
    state = STATES["bag_on"]

    def tally(good, micrograms):
        return replace(state, tally=Tally(good, 0, micrograms))

    under, over = 249_900_000, 250_000_000
    assert list(asked(state=tally(10, 10 * under))) == [AlarmKind.MEAN_LOW]
    assert asked(state=tally(9, 9 * under)) == {}
    assert asked(state=tally(10, 10 * over)) == {}
