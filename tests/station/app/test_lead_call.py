"""A call for the lead is one entry, by whoever is on the scale, of the run that is open."""

from station.app.lead_call import LeadCall
from station.clock import SystemClock
from station.core.journal import EntryKind
from station.core.rights import STATION, Act, Proof, act_of, signers
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.states import every_state

STATES = every_state()


def called(state):
    intents = FakeIntents()
    LeadCall(intents, SystemClock("Europe/Dublin"), "A").call(state)
    [(what, ((fact,), who))] = intents.asked
    assert what == "enter"
    return fact, who


def test_whoever_is_on_the_scale_calls_in_the_run():
    fact, who = called(STATES["stopped"])
    assert (fact.kind, fact.subject, fact.result) == (EntryKind.CALL, "A", "lead")
    assert fact.run == STATES["stopped"].run.id
    assert who == STATES["stopped"].run.operator
    assert act_of(fact) is Act.CALL
    assert signers((fact,), who)[0].proof is Proof.NAME


def test_without_a_run_the_station_says_it():
    for state in (None, STATES["start_run"]):
        fact, who = called(state)
        assert (fact.run, who) == ("", STATION)
