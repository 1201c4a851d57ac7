"""The facts of a run are those that looking through every fact on record would find."""

from types import SimpleNamespace

import pytest

from station.core.facts import FACT_KINDS, Fact
from station.core.journal import EntryKind
from station.reports.evidence_facts import entered_for, touching
from station.store.bag_sums import run_spans
from station.store.facts import facts
from station.store.facts_from import FactsFrom
from station.store.run_evidence import run_evidence
from station.store.weighed import packs_of_run
from tests.station.store.conftest import World


def asked(home, uid):
    packs = packs_of_run(home, uid)
    (span,) = run_spans(home, [uid])
    proof = run_evidence(home, uid)
    record = SimpleNamespace(run=packs.run, bags=packs.packs, evidence=proof)  # all it looks at
    return record, span, {use.lot for use in packs.run.lot_set.uses}


@pytest.mark.parametrize("number", [0, 3, -1])
def test_every_run_of_a_week_with_all_its_faults(week, number):
    uid = week.runs[number]
    record, span, lots = asked(week.home, uid)
    source, every = FactsFrom(week.home), facts(week.home, FACT_KINDS)
    found = entered_for(record, span, source, lots)
    assert found == touching(record, span, every, lots)
    assert len(found) > 10
    if number == -1:
        assert len(source._read) < len(every) / 2


def test_what_names_an_earlier_entry_of_the_run_is_found_however_long_ago_it_was(tmp_path):
    """A fact of the run names one of before, another of before names that one, years apart."""

    def told(uid, about, **details):
        fact = Fact(EntryKind.CALL, uid, about, "made", "", details)
        store.record((fact,), world.clock.now(), "L01")

    world = World(tmp_path / "home")
    store = world.stocked()
    told("far", "nothing")
    told("old", "nothing")
    told("of-old", "nothing", why="old")
    told("about-old", "old")
    told("else", "nothing", why="far")
    run = world.start(store)
    serials = world.fill(store, run, 3)
    store.end_run(run.id, world.clock.now(), "L01")
    told("names", serials[0], why="old")
    told("of-bag", "nothing", why=serials[1])
    told("after", "nothing")
    store.close()
    record, span, lots = asked(world.home, run.id)
    source = FactsFrom(world.home)
    found = entered_for(record, span, source, lots)
    assert [one.fact.uid for one in found] == ["old", "of-old", "about-old", "names", "of-bag"]
    assert found == touching(record, span, facts(world.home, FACT_KINDS), lots)
    assert "far" not in {one.fact.uid for one in source._read.values()}
