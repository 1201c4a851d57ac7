from datetime import UTC, date, datetime

import pytest

from station.core.dispositions import (
    BinCount,
    Decided,
    Disposition,
    DispositionError,
    bin_count_of,
    bin_fact,
    check_decision,
    decided_of,
    disposition_fact,
)
from station.core.facts import FactRecord
from station.core.lot_set import LotUse
from station.core.pack import Moment

WITNESSED = frozenset({Disposition.DUMP})


def a_decision(disposition=Disposition.DUMP, **more):
    return Decided("A1-7K-000012", disposition, **{"reason": "burst seal", "witness": "Q01"} | more)


def test_a_decision_is_read_back_whole():
    decided = a_decision(
        Disposition.REWORK,
        lots=(LotUse("CARROT", "TR-118"), LotUse("CELERY", "CE-7")),
        use_by=date(2026, 12, 3),
    )
    assert decided_of(disposition_fact(decided, "u1", "r1")) == decided


@pytest.mark.parametrize(
    ("decided", "who", "said"),
    [
        (a_decision(), "", "who decides"),
        (a_decision(reason="  "), "L01", "needs a reason"),
        (a_decision(reason="x" * 201), "L01", "allowed are 200"),
        (a_decision(witness="L01"), "L01", "cannot witness"),
        (a_decision(witness=""), "L01", "wants a witness"),
        (a_decision(Disposition.TOP_UP), "L01", "scan the label of the new bag"),
        (a_decision(Disposition.SAMPLE, into="A1-7K-000013"), "L01", "has no new bag"),
        (a_decision(Disposition.REWEIGH, into="A1-7K-000012"), "L01", "a serial of its own"),
        (a_decision(Disposition.REWORK, corrects="u0"), "L01", "no correction"),
    ],
)
def test_a_decision_that_cannot_be_is_refused_in_words(decided, who, said):
    with pytest.raises(DispositionError, match=said):
        check_decision(decided, who, WITNESSED)


def test_a_decision_with_its_witness_passes_and_one_without_where_none_is_wanted():
    check_decision(a_decision(), "L01", WITNESSED)
    check_decision(a_decision(Disposition.SAMPLE, witness=""), "L01", WITNESSED)


def test_a_bin_that_differs_needs_an_explanation():
    day = date(2026, 11, 25)
    with pytest.raises(DispositionError, match="say why they differ"):
        bin_fact(BinCount(day, 7, 9), "u1")
    count = BinCount(day, 7, 9, "two bags went to the laboratory")
    fact = bin_fact(count, "u1")
    at = Moment(datetime(2026, 11, 25, tzinfo=UTC), 0, "UTC", 1)
    assert (fact.result, count.difference) == ("differs", -2)
    assert bin_count_of(FactRecord(fact, at, "Q01", 1)) == count
    assert bin_fact(BinCount(day, 9, 9), "u2").result == "agrees"
    with pytest.raises(DispositionError, match="0 to 100000"):
        bin_fact(BinCount(day, -1, 9, "x"), "u3")
