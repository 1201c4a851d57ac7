"""A target proposed from a run's own bags, its knee, and the fact that keeps it."""

import json
from dataclasses import replace

import pytest

from station.core.journal import EntryKind
from station.core.metrology.target import knee_point
from station.core.product import PackMode
from station.line.fill_target import advise, knee_of, proposal_fact
from station.line.numbers import RunNumbers, Span
from tests.station.screens.numbers_states import START, bags, fills, run_with_floor
from tests.station.screens.states import make_product, make_run

RUN = run_with_floor(246)
NETS = fills(600, 253, 2.5, floor=246)


class Enough(Exception):
    pass


def test_the_proposal_meets_every_clause_and_a_step_less_does_not():
    advice = advise(RUN, bags(NETS))
    assert advice is not None
    assert advice.proposal is not None
    assert all(one.met for one in advice.proposal.clauses)
    assert advice.proposal.target < advice.target
    assert (advice.fills, advice.lot_size, advice.interval) == (600, 600, 1.0)
    shifted = [net - round(advice.target - advice.proposal.target) - 1 for net in NETS]
    lower = advise(RUN, bags(net for net in shifted if net >= 246))
    assert lower is not None
    assert advice.proposal.governing != "the floor"


def test_whoever_watches_hears_of_each_target_and_may_stop_it():
    heard = []
    advise(RUN, bags(NETS), heard.append)
    assert heard == list(range(1, len(heard) + 1))
    assert len(heard) > 3

    def stop(count: int) -> None:
        if count == 2:
            raise Enough

    with pytest.raises(Enough):
        advise(RUN, bags(NETS), stop)


def test_sealed_bags_count_as_filled_and_open_ones_once_accepted():
    every = bags(NETS)
    some = (*every[:500], *(replace(bag, in_batch=False) for bag in every[500:]))
    opened, sealed = RUN, make_run(make_product(mode=PackMode.CHECK))
    assert [advise(run, some).fills for run in (opened, sealed)] == [500, 600]
    assert [advise(run, some).lot_size for run in (opened, sealed)] == [500, 500]


def test_too_few_bags_have_their_reason_and_none_have_nothing():
    advice = advise(RUN, bags(NETS[:49]))
    assert advice is not None
    assert advice.proposal is None
    assert "50 or more" in advice.why_none
    assert advise(RUN, ()) is None
    with pytest.raises(ValueError, match="50 or more"):
        proposal_fact("u", RUN, advice, _batch(bags(NETS[:49])))


def test_the_knee_is_where_the_mean_rule_alone_no_longer_does():
    limits = RUN.window.limits
    knee = knee_of(limits)
    assert knee_point(limits, knee.spread * 0.999).governing == "mean"
    assert knee_point(limits, knee.spread * 1.001).governing == "T1"
    assert knee.spread in [point.spread for point in knee.curve]
    means = [point.mean for point in knee.curve]
    assert means == sorted(means)
    assert knee.curve[0].mean == 250.0


def test_the_fact_keeps_chance_target_and_knee_without_a_float():
    advice, batch = advise(RUN, bags(NETS)), _batch(bags(NETS))
    fact = proposal_fact("0193-p", RUN, advice, batch)
    assert (fact.kind, fact.subject, fact.result, fact.run) == (
        EntryKind.PROPOSAL,
        "HARBOUR-250",
        "proposed",
        RUN.id,
    )
    details = fact.details
    assert float(str(details["target"])) == advice.proposal.target
    assert float(str(details["passing"])) == pytest.approx(batch.outlook.passing, abs=1e-6)
    assert details["outlook"] == "safe"
    assert float(str(details["knee_spread"])) == pytest.approx(
        knee_of(RUN.window.limits).spread, abs=1e-6
    )
    json.dumps(fact.body(), default=pytest.fail)
    assert not _floats(fact.body())


def _floats(value) -> list[float]:
    if isinstance(value, dict):
        return _floats(list(value.values()))
    if isinstance(value, list):
        return [one for inner in value for one in _floats(inner)]
    return [value] if isinstance(value, float) else []


def _batch(every):
    return RunNumbers(RUN, bags=every).figures(Span.RUN, START, still_open=False).batch
