"""Every alarm has a priority and an answer; few are high; entries tell how each one stands.

The shares of priorities are those that public summaries of ANSI/ISA-18.2 give for what rings on an
ordinary day (about 5, 15 and 80 of a hundred); a list of few kinds can only follow their order.
"""

from datetime import UTC, datetime, timedelta

import pytest

from station.core.alarms import (
    RULES,
    SHELVES_MINUTES,
    Alarm,
    AlarmKind,
    Priority,
    acknowledged_fact,
    alarms_after,
    over_fact,
    raised_fact,
    shelved_fact,
)
from station.core.facts import FactRecord
from station.core.pack import Moment
from station.core.rights import Act, Proof, act_of, signers

AT = datetime(2026, 11, 25, 9, tzinfo=UTC)


def record(fact, who="station", minutes=0):
    return FactRecord(fact, Moment(AT + timedelta(minutes=minutes), 0, "UTC", 0), who, 1)


def standing(*kinds):
    alarms: tuple[Alarm, ...] = ()
    for number, kind in enumerate(kinds):
        fact = raised_fact(f"uid-{kind.name}", kind, "why", "run")
        alarms = alarms_after(alarms, record(fact, minutes=number))
    return alarms


def test_every_kind_has_its_row_with_one_answer():
    assert set(RULES) == set(AlarmKind)
    assert all(rule.answer and rule.after for rule in RULES.values())
    answers = [rule.answer for rule in RULES.values()]
    assert len(set(answers)) == len(answers)


def test_the_gravest_stands_first_then_the_oldest():
    kinds = (AlarmKind.ROLL_LOW, AlarmKind.PRINTER, AlarmKind.MISMATCH, AlarmKind.RESIDUE)
    order = [alarm.kind for alarm in standing(*kinds)]
    assert order == [AlarmKind.MISMATCH, AlarmKind.PRINTER, AlarmKind.RESIDUE, AlarmKind.ROLL_LOW]


def test_an_alarm_is_seen_and_is_over():
    [one] = standing(AlarmKind.MISMATCH)
    assert one.rings(AT)
    [seen] = alarms_after((one,), record(acknowledged_fact("a", one, "run"), "P02"))
    assert seen.acknowledged == "P02"
    assert not seen.rings(AT)
    assert alarms_after((seen,), record(over_fact("o", seen, "run"))) == ()


def test_a_shelved_alarm_comes_back_unseen():
    [one] = standing(AlarmKind.PRINTER)
    [seen] = alarms_after((one,), record(acknowledged_fact("a", one, "run"), "L01"))
    [put_off] = alarms_after((seen,), record(shelved_fact("s", seen, 15, "run"), "L01"))
    assert put_off.shelved(AT + timedelta(minutes=14))
    assert not put_off.shelved(AT + timedelta(minutes=15))
    assert put_off.acknowledged == ""


@pytest.mark.parametrize("kind", [kind for kind in AlarmKind if RULES[kind].priority == 3])
def test_what_closes_the_line_is_not_put_off(kind):
    [one] = standing(kind)
    with pytest.raises(ValueError, match=r"cannot be shelved.*: "):
        shelved_fact("s", one, SHELVES_MINUTES[0], "run")


@pytest.mark.parametrize("minutes", [0, 14, 61, 480])
def test_no_alarm_is_put_off_for_another_time(minutes):
    [one] = standing(AlarmKind.PRINTER)
    with pytest.raises(ValueError, match="allowed are 15, 30, 60"):
        shelved_fact("s", one, minutes, "run")


def test_anybody_sees_an_alarm_and_a_lead_shelves_it():
    [one] = standing(AlarmKind.PRINTER)
    seen, put_off = acknowledged_fact("a", one, "run"), shelved_fact("s", one, 15, "run")
    assert (act_of(seen), act_of(put_off)) == (Act.ACKNOWLEDGE, Act.SHELVE)
    assert signers((seen,), "P02")[0].proof is Proof.NAME
    assert signers((put_off,), "L01")[0].proof is Proof.SIGNED_ON
    assert "packer" not in signers((put_off,), "L01")[0].roles


def test_high_ones_are_the_fewest_to_ring_by_rule():
    counts = dict.fromkeys(Priority, 0)
    for rule in RULES.values():
        counts[rule.priority] += 1
    assert counts[Priority.HIGH] <= 6
    assert sum(counts.values()) <= 17
