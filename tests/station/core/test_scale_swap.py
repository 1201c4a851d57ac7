"""A scale taken into use: its identity, its check and its marks, kept and read back."""

from dataclasses import replace
from datetime import UTC, date, datetime

import pytest

from station.core.facts import FactRecord
from station.core.journal import Entry, EntryKind, canonical
from station.core.metrology.scale_suitability import Level
from station.core.pack import Moment
from station.core.scale_swap import (
    REFUSED,
    TAKEN,
    ScaleIdentity,
    ScaleSwap,
    age_words,
    marks,
    swap_fact,
    swap_of,
    taken,
)
from tests.station.screens.checks_rig import failed_check

NOW = Moment(datetime(2026, 11, 25, 10, tzinfo=UTC), 0, "Europe/Dublin", 1)
TODAY = date(2026, 11, 25)
OLD = ScaleIdentity("Wharfe", "W3", "1.2", "1001", "12ab:0034/A1")
NEW = replace(OLD, serial="1002")
SWAP = ScaleSwap(NEW, "1002", date(2026, 3, 1), failed_check(0), {"SPINACH": Level.GOOD})


def kept(swap: ScaleSwap) -> FactRecord:
    return FactRecord(swap_fact(swap, "u1"), NOW, "M01", 7)


def test_what_was_kept_is_read_back() -> None:
    made = replace(SWAP.made, check=replace(SWAP.made.check, at=NOW.utc))
    assert swap_of(kept(SWAP)) == replace(SWAP, made=made)
    assert taken(kept(SWAP))


def test_entry_can_be_journalled() -> None:
    entry = Entry("QH", "A1", 1, 1, EntryKind.SETTING, NOW, "M01", swap_fact(SWAP, "u1").body())
    assert b'"taken into use"' in canonical(entry)


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"made": failed_check(4)}, "failed its check"),
        ({"fitness": {"SPINACH": Level.GOOD, "HERBS": Level.REFUSE}}, "does not suit HERBS"),
    ],
)
def test_scale_that_fails_is_kept_as_refused(changes: dict, words: str) -> None:
    swap = replace(SWAP, **changes)
    assert words in swap.refusal
    assert swap_fact(swap, "u1").result == REFUSED
    assert not taken(kept(swap))
    assert swap_fact(SWAP, "u1").result == TAKEN


def test_other_settings_are_no_swap() -> None:
    record = kept(SWAP)
    other = replace(record, fact=replace(record.fact, subject="target"))
    assert swap_of(other) is None
    assert not taken(other)


@pytest.mark.parametrize(
    ("here", "is_other"),
    [
        (OLD, False),
        (NEW, True),
        (replace(OLD, model="W4"), True),
        (replace(OLD, version="1.3"), False),  # its program was renewed
        (replace(OLD, device="12ab:0034/B2"), False),  # the same scale by another converter
        (replace(OLD, serial=""), False),  # a line of what it says was lost
        (ScaleIdentity(maker=OLD.maker), False),
        (replace(NEW, model=""), True),
        (ScaleIdentity(device="12ab:0034/A1"), False),
        (ScaleIdentity(device="99ff:0001"), True),
        (ScaleIdentity(), False),
    ],
)
def test_another_scale_is_told_by_what_it_says_or_by_its_plug(
    here: ScaleIdentity, is_other: bool
) -> None:
    assert here.is_other(OLD) is is_other


def test_identity_in_words() -> None:
    assert OLD.words == "Wharfe W3 serial 1001, connected by 12ab:0034/A1"
    assert ScaleIdentity(device="a:b").words == "connected by a:b"
    assert ScaleIdentity().words == "a scale that says nothing"
    assert age_words(date(2026, 11, 20), NOW.utc) == "verified 2026-11-20, 5 days ago"


@pytest.mark.parametrize(
    ("serial", "verified", "words"),
    [
        ("", "2026-03-01", "1 to 40 characters"),
        ("x" * 41, "2026-03-01", "1 to 40 characters"),
        ("1\n2", "2026-03-01", "1 to 40 characters"),
        ("1002", "1 March", "as in 2026-11-25"),
        ("1002", "2026-11-26", "to today"),
        ("1002", "1999-12-31", "from 2000-01-01"),
    ],
)
def test_marks_that_cannot_be_are_refused(serial: str, verified: str, words: str) -> None:
    with pytest.raises(ValueError, match=words):
        marks(serial, verified, TODAY)


def test_marks_of_a_plate() -> None:
    assert marks(" 1002 ", "2026-11-25", TODAY) == ("1002", TODAY)
