"""Rolls, first-offs and scans come back from their entries as they went in; rolls add up."""

from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.core.checks.first_off import FirstOff, FirstOffError, first_off_fact, first_off_of
from station.core.checks.rolls import (
    MOST_LABELS,
    RollCount,
    RollError,
    RollStep,
    accounts,
    explained_fact,
    is_step,
    put_in_fact,
    taken_out_fact,
)
from station.core.checks.scan_back import (
    ScanBack,
    ScanError,
    ScanTrigger,
    checked_scan,
    cleared_fact,
    scan_fact,
    scan_of,
)
from station.core.facts import FactRecord
from station.core.pack import Moment

AT = Moment(datetime(2026, 11, 25, 9, tzinfo=UTC), 0, "Europe/Dublin", 1)
SHA = "ab" * 32
counts = st.integers(0, 2000)


def record(fact, seq=1):
    return FactRecord(fact, AT, "L01", seq)


# --- rolls --------------------------------------------------------------------------------------


@given(issued=st.integers(1, 5000), used=counts, spoiled=counts, samples=counts, returned=counts)
def test_the_difference_is_what_is_issued_less_all_that_is_accounted_for(
    issued, used, spoiled, samples, returned
):
    put_in = record(put_in_fact("LR-1", issued, "u1"))
    (still_in,) = accounts([put_in], [used])
    assert (still_in.difference, still_in.open, still_in.count) == (None, False, None)
    out = record(taken_out_fact(still_in, RollCount(returned, spoiled, samples), "u2"))
    (whole,) = accounts([put_in, out], [used])
    assert whole.difference == issued - used - spoiled - samples - returned
    assert whole.open == (whole.difference != 0)
    assert whole.taken_out == out


def test_a_difference_is_open_until_it_is_explained():
    put_in = record(put_in_fact("LR-1", 100, "u1"))
    (inside,) = accounts([put_in], [60])
    out = record(taken_out_fact(inside, RollCount(35, 2, 1), "u2"))
    (short,) = accounts([put_in, out], [60])
    assert (short.difference, short.open) == (2, True)
    said = record(explained_fact(short, " used to set the printer up ", "u3"))
    (explained,) = accounts([put_in, out, said], [60])
    assert (explained.difference, explained.open) == (2, False)
    assert explained.explanation == "used to set the printer up"


def test_the_same_roll_put_in_twice_has_two_accounts():
    first = record(put_in_fact("LR-1", 100, "u1"))
    (account,) = accounts([first], [40])
    out = record(taken_out_fact(account, RollCount(60, 0, 0), "u2"))
    again = record(put_in_fact("LR-1", 60, "u3"))
    whole, rest = accounts([first, out, again], [40, 5])
    assert (whole.difference, rest.issued, rest.used, rest.taken_out) == (0, 60, 5, None)


@pytest.mark.parametrize("labels", [0, -1, MOST_LABELS + 1])
def test_a_roll_of_so_many_labels_is_refused(labels):
    with pytest.raises(RollError, match=f"{labels} labels issued: allowed is 1 to"):
        put_in_fact("LR-1", labels, "u1")


def test_what_cannot_be_is_refused_in_words():
    with pytest.raises(RollError, match="needs its id"):
        put_in_fact("", 100, "u1")
    with pytest.raises(RollError, match="-1 labels spoiled"):
        RollCount(1, -1, 0)
    put_in = record(put_in_fact("LR-1", 100, "u1"))
    (inside,) = accounts([put_in], [0])
    with pytest.raises(RollError, match="no difference"):
        explained_fact(inside, "because", "u2")
    out = record(taken_out_fact(inside, RollCount(99, 0, 0), "u2"))
    (short,) = accounts([put_in, out], [0])
    with pytest.raises(RollError, match="needs words"):
        explained_fact(short, "  ", "u3")
    assert is_step(put_in, RollStep.PUT_IN)
    assert not is_step(put_in, RollStep.TAKEN_OUT)


# --- first-offs ---------------------------------------------------------------------------------


@pytest.mark.parametrize("refusal", ["", "wrong date"])
def test_a_first_off_comes_back_from_its_entry(refusal):
    said = FirstOff("r1", "SLAW-340", 3, SHA, 2, "L01", "Q01", refusal)
    kept = record(first_off_fact(said, "u1"))
    assert first_off_of(kept) == said
    assert kept.fact.result == ("refused" if refusal else "approved")


def test_two_different_people_approve_and_one_may_refuse():
    for second in ("", "L01"):
        with pytest.raises(FirstOffError, match="two different people"):
            FirstOff("r1", "SLAW-340", 3, SHA, 1, "L01", second)
    assert FirstOff("r1", "SLAW-340", 3, SHA, 1, "L01", "", "wrong date").refusal
    with pytest.raises(FirstOffError, match="the lead signs first"):
        FirstOff("r1", "SLAW-340", 3, SHA, 1, "", "Q01")
    with pytest.raises(FirstOffError, match="was not drawn"):
        FirstOff("r1", "SLAW-340", 3, "", 1, "L01", "Q01")


# --- scans --------------------------------------------------------------------------------------

EXPECTED = ("]C1010952123454321317261129", "]C110L1263290\x1d21A1-7K-000044")


@pytest.mark.parametrize("scanned", [*EXPECTED, "]C010L1263290\x1d21A1-7K-000044", "]C1"])
def test_a_scan_comes_back_from_its_entry_with_its_outcome(scanned):
    scan = ScanBack("A1-7K-000044", scanned, EXPECTED, ScanTrigger.HOURLY)
    kept = record(scan_fact(scan, "u1", "r1"))
    assert scan_of(kept) == scan
    assert scan.equal == (scanned in EXPECTED)
    assert kept.fact.result == ("equal" if scan.equal else "differs")


def test_a_plain_code_128_with_the_same_data_is_no_gs1_128():
    """ISO/IEC 15424: modifier 1 says FNC1 stands first (]C1), modifier 0 that it does not."""
    assert not ScanBack("A1-7K-000044", "]C0" + EXPECTED[0][3:], EXPECTED, ScanTrigger.FIRST).equal


def test_a_scan_without_a_symbology_identifier_is_refused():
    assert checked_scan(" ]C101\r\n") == "]C101"
    for text in ("", "0109521234543213", "]", "]1C"):
        with pytest.raises(ScanError, match="set the scanner to send it"):
            checked_scan(text)


def test_a_mismatch_is_cleared_with_a_reason():
    scan = ScanBack("A1-7K-000044", "]C1x", EXPECTED, ScanTrigger.FIRST)
    wrong = record(scan_fact(scan, "u1", "r1"))
    assert cleared_fact(wrong, "wrong roll", "u2").details == {"scan": "u1", "reason": "wrong roll"}
    with pytest.raises(ScanError, match="needs a reason"):
        cleared_fact(wrong, " ", "u2")
