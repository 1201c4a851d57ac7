from datetime import timedelta

import pytest

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from station.core.pauses import LOOKS, Look, Reason, pauses_of, resume_fact, stop_fact
from tests.station.line.scenario import make_moment

EVERYTHING = frozenset(Look)


def recorded(fact, ms=0):
    return FactRecord(fact, make_moment(ms), "P01", 1)


@pytest.mark.parametrize("reason", Reason)
def test_a_stop_ends_when_everything_was_looked_at(reason):
    begun = recorded(stop_fact("u1", "L1", "r1", reason))
    (pause,) = pauses_of((begun,))
    assert (pause.reason, pause.ended) == (reason, None)
    for look in LOOKS[reason]:
        with pytest.raises(ValueError, match=str(look)):
            resume_fact("u2", "L1", "r1", pause, EVERYTHING - {look})
    ended = recorded(resume_fact("u2", "L1", "r1", pause, EVERYTHING), 90_000)
    (pause,) = pauses_of((begun, ended))
    assert pause.ended == ended.at.utc
    assert pause.took(ended.at.utc + timedelta(hours=1)) == ended.at.utc - begun.at.utc


def test_every_stop_looks_at_the_pan_before_it_ends():
    assert all(Look.PAN in looks for looks in LOOKS.values())


def test_other_facts_and_ends_without_a_beginning_are_left_out():
    (pause,) = pauses_of((recorded(stop_fact("u1", "L1", "", Reason.BREAK)),))
    ended = recorded(resume_fact("u2", "L1", "", pause, EVERYTHING))
    assert pauses_of((ended, recorded(Fact(EntryKind.HOLD, "u3", "lot", "held")))) == ()
