"""Alarms of every priority and answer, for pictures and for tests of the page."""

from datetime import UTC, datetime, timedelta

from station.core.alarms import Alarm, AlarmKind, acknowledged_fact, shelved_fact

NOW = datetime(2026, 11, 25, 9, 40, tzinfo=UTC)


def alarm(kind, words, minutes=4, **more):
    return Alarm(f"uid-{kind.name}", kind, words, NOW - timedelta(minutes=minutes), **more)


MISMATCH = alarm(
    AlarmKind.MISMATCH,
    "the scan of label A1-7K-000131 does not match: the lead clears it at RUN, then LABELS (F5)",
)
PRINTER = alarm(AlarmKind.PRINTER, "label A1-7K-000132 is not out yet: look at the printer", 2)
MEAN = alarm(AlarmKind.MEAN_LOW, "64 bags weigh less than 250 g in the mean", 9, acknowledged="L01")
ROLL = alarm(
    AlarmKind.ROLL_LOW,
    "fewer than 50 labels are left",
    12,
    shelved_until=NOW + timedelta(minutes=3),
)


class AlarmSourceStub:
    def __init__(self, *alarms):
        self.open, self.now = alarms, NOW

    def acknowledge(self, alarm):
        return acknowledged_fact(f"seen-{alarm.uid}", alarm, "0193-run")

    def shelve(self, alarm, minutes):
        return shelved_fact(f"shelved-{alarm.uid}", alarm, minutes, "0193-run")
