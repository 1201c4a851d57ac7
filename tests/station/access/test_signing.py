"""Proofs of signatures: one act each, by the right person, slowed where PINs are wrong."""

from datetime import UTC, datetime, timedelta
from types import SimpleNamespace

import pytest

from station.access.credentials import Credentials
from station.access.signing import Signing
from station.access.tries import TryBook
from station.config.packhouse import Person
from station.config.people_rules import PeopleRules
from station.core.rights import Act, Role, signer
from station.errors import EnvironmentFault

PEOPLE = {
    "L01": Person("L01", "Brigid", Role.LEAD),
    "L02": Person("L02", "Rashid", Role.LEAD),
    "Q01": Person("Q01", "Noor", Role.QA),
}
PIN, BADGE = "482913", "BADGE-7731-QH"
START = datetime(2026, 11, 25, 5, tzinfo=UTC)


class Hours:
    """A wall clock and a steady count that a test moves."""

    def __init__(self):
        self.utc, self.ns = START, 0

    def pass_by(self, seconds):
        self.utc += timedelta(seconds=seconds)
        self.ns += round(seconds * 10**9)


@pytest.fixture(scope="module")
def home(tmp_path_factory):
    folder = tmp_path_factory.mktemp("home")
    kept = Credentials(folder)
    kept.set_pin("L01", PIN)
    kept.set_badge("L02", BADGE)
    return folder


@pytest.fixture
def desk(home):
    (home / "access" / "tries.json").unlink(missing_ok=True)
    return opened(home, Hours())


def opened(home, hours, pins=True, credentials=None):
    refused = []
    signing = Signing(
        PEOPLE,
        PeopleRules(pins=pins),
        credentials or Credentials(home),
        TryBook(home, lambda: hours.utc, lambda: hours.ns),
        lambda: hours.ns,
    )
    signing.refused = lambda who, words: refused.append((who, words))
    return SimpleNamespace(signing=signing, hours=hours, refused=refused)


def test_a_right_pin_proves_one_act_of_its_person(desk):
    assert desk.signing.sign("L01", PIN, stays=False).who == "L01"
    start = signer(Act.START_RUN, "L01")
    assert "L02 did not sign" in desk.signing.prove(signer(Act.START_RUN, "L02"))
    assert desk.signing.prove(start) == ""
    assert "a PIN or badge is needed" in desk.signing.prove(start)


def test_a_proof_is_good_for_minutes_and_not_for_the_shift(desk):
    desk.signing.sign("L01", PIN, stays=False)
    desk.hours.pass_by(181)
    assert desk.signing.prove(signer(Act.START_RUN, "L01"))


def test_who_signed_is_signed_on_for_lesser_acts_until_nobody_touched_for_long(desk):
    desk.signing.sign("L01", PIN)
    lesser, graver = signer(Act.SIGN_CHANGE, "L01"), signer(Act.RELEASE, "L01")
    assert desk.signing.covers(lesser)
    assert not desk.signing.covers(graver)
    assert not desk.signing.covers(signer(Act.SIGN_CHANGE, "L02"))
    for _ in range(3):
        desk.hours.pass_by(599)
        desk.signing.touch()
    assert desk.signing.covers(lesser)
    desk.hours.pass_by(601)
    assert not desk.signing.open
    desk.signing.touch()
    assert not desk.signing.covers(lesser)


def test_a_badge_says_whose_it_is(desk):
    assert desk.signing.sign_with_badge(BADGE).who == "L02"
    assert desk.signing.prove(signer(Act.START_RUN, "L02")) == ""
    refused = desk.signing.sign_with_badge("BADGE-0000-QH")
    assert (refused.who, refused.words) == ("", "this badge is not right")


def test_who_has_no_pin_is_told_where_to_get_one(desk):
    assert "station people pin Q01" in desk.signing.sign("Q01", PIN).words
    assert desk.signing.sign("X99", PIN).words == "X99 may not sign here"


def test_wrong_pins_are_told_for_the_record_and_never_quoted(desk):
    assert desk.signing.sign("L01", "999111").who == ""
    assert desk.refused == [("L01", "wrong PIN, number 1")]


def test_the_right_pin_is_not_even_tried_while_somebody_must_wait(desk):
    for _ in range(3):
        desk.signing.sign("L01", "999111")
    assert desk.signing.sign("L01", PIN).words == "too many wrong PINs: wait 1 s"
    desk.hours.pass_by(1)
    assert desk.signing.sign("L01", PIN).who == "L01"
    assert desk.signing.sign("L01", "999111").words == "this PIN is not right"


class Slow:
    """Never the right PIN; stands for the hashes so that a day of guessing takes no day."""

    def __init__(self):
        self.looked = 0

    def of(self, who):
        return SimpleNamespace(pin="x", badge="", disabled=False)

    def pin_fits(self, who, pin):
        self.looked += 1
        return False


@pytest.mark.parametrize("restarts", [False, True])
def test_an_hour_of_guessing_looks_at_fewer_than_twenty_pins_with_restarts_too(home, restarts):
    (home / "access" / "tries.json").unlink(missing_ok=True)
    hours, hashes = Hours(), Slow()
    desk = opened(home, hours, credentials=hashes)
    for second in range(3600):
        if restarts and second % 7 == 0:
            desk = opened(home, hours, credentials=hashes)
        desk.signing.sign("L01", "999111")
        hours.pass_by(1)
    assert 10 <= hashes.looked <= 20


def test_setting_the_clock_ahead_does_not_shorten_the_wait(desk):
    for _ in range(12):
        desk.signing.sign("L01", "999111")
        desk.hours.pass_by(31)
    desk.hours.utc += timedelta(days=1)
    assert "too many wrong PINs" in desk.signing.sign("L01", PIN).words


def test_a_try_that_cannot_be_counted_is_not_made(desk, monkeypatch):
    def full(*_):
        raise EnvironmentFault("tries.json cannot be written", "No space left on device")

    monkeypatch.setattr("station.access.tries.write_object", full)
    signed = desk.signing.sign("L01", PIN)
    assert (signed.who, "No space left" in signed.words) == ("", True)


def test_who_is_disabled_has_no_role_any_more(home):
    kept = Credentials(home)
    kept.set_disabled("Q01", True)
    assert set(opened(home, Hours()).signing.roles) == {"L01", "L02"}
    kept.set_disabled("Q01", False)


def test_with_pins_off_a_name_is_enough(home):
    signing = opened(home, Hours(), pins=False).signing
    assert signing.prove(signer(Act.RELEASE, "Q01")) == ""
    assert signing.open
