"""``station people``: PINs and badges on a stopped station, signed and on record."""

from pathlib import Path
from shutil import copytree

import pytest

from station.access.credentials import Credentials
from station.core.journal import EntryKind
from station.store.facts import facts
from station.store.lock import HomeLock

DEMO = Path(__file__).parents[3] / "demo_config"
MANAGER, LEAD, BADGE = "482913", "739164", "BADGE-7731-QH"


@pytest.fixture
def people(station, tmp_path):
    copytree(DEMO, tmp_path / "settings")

    def call(verb, *rest, keyed=()):
        where = ("--config", tmp_path / "settings", "--home", tmp_path / "home", "--json")
        lines = "".join(f"{line}\n" for line in keyed)
        return station("people", verb, *rest, *where, keyed=lines)

    call.home, call.settings = tmp_path / "home", tmp_path / "settings"
    return call


BY = ("--who", "M01", "--why", "start of season")


@pytest.fixture
def managed(people):
    assert people("pin", "M01", *BY, keyed=(MANAGER, MANAGER)).code == 0
    return people


def kept(home):
    return [
        (one.who, one.fact.subject, one.fact.result, *one.fact.details.values())
        for one in facts(home, (EntryKind.PERSON,))
    ]


def test_the_first_pin_of_all_is_a_managers_and_says_so(people):
    refused = people("pin", "L01", "--who", "L01", "--why", "mine", keyed=(LEAD, LEAD))
    assert (refused.code, "allowed is manager" in refused.err) == (2, True)
    assert people("pin", "M01", *BY, keyed=(MANAGER, MANAGER)).code == 0
    why = "start of season; nobody who may had a PIN before"
    assert kept(people.home) == [("M01", "M01", "PIN set", "a PIN", "none", why)]


def test_a_manager_sets_pins_and_badges_and_the_record_has_neither(managed):
    assert managed("pin", "L01", *BY, keyed=(MANAGER, LEAD, LEAD)).code == 0
    assert managed("badge", "P01", *BY, keyed=(MANAGER, BADGE)).code == 0
    found = Credentials(managed.home)
    assert found.pin_fits("L01", LEAD)
    assert found.owner_of(BADGE) == "P01"
    steps = [(who, subject, step) for who, subject, step, *_ in kept(managed.home)]
    assert steps[1:] == [("M01", "L01", "PIN set"), ("M01", "P01", "badge set")]
    everything = b"".join(one.read_bytes() for one in managed.home.rglob("*") if one.is_file())
    for secret in (MANAGER, LEAD, BADGE):
        assert secret.encode() not in everything


def test_who_sets_a_pin_gives_their_own_and_wrong_ones_are_on_record(managed):
    wrong = managed("pin", "L01", *BY, keyed=("000111", LEAD, LEAD))
    assert (wrong.code, "this PIN is not right" in wrong.err) == (2, True)
    assert not Credentials(managed.home).can_sign("L01")
    assert kept(managed.home)[-1][:3] == ("station", "M01", "signature refused")


def test_everybody_may_change_their_own_pin(managed):
    managed("pin", "L01", *BY, keyed=(MANAGER, LEAD, LEAD))
    mine = managed("pin", "L01", "--who", "L01", "--why", "seen", keyed=(LEAD, "615204", "615204"))
    assert mine.code == 0
    assert Credentials(managed.home).pin_fits("L01", "615204")


@pytest.mark.parametrize(
    ("keyed", "words"),
    [
        ((MANAGER, "123456", "123456"), "guessed first"),
        ((MANAGER, LEAD, "739165"), "not the same"),
        ((MANAGER, "12", "12"), "2 digits"),
    ],
)
def test_a_bad_pin_changes_nothing(managed, keyed, words):
    refused = managed("pin", "L01", *BY, keyed=keyed)
    assert (refused.code, words in refused.err) == (2, True)
    assert not Credentials(managed.home).can_sign("L01")
    assert len(kept(managed.home)) == 1


def test_a_new_person_stands_in_the_settings_whatever_the_name(managed):
    added = managed("add", "P09", "--name", 'Jo "X" Ärn', "--role", "packer", *BY, keyed=(MANAGER,))
    assert added.code == 0, added.err
    (found,) = [one for one in managed("list").document["people"] if one["id"] == "P09"]
    assert (found["name"], found["role"], found["may_sign"]) == ('Jo "X" Ärn', "packer", False)
    assert kept(managed.home)[-1][3:5] == ('Jo "X" Ärn, packer', "nobody")


@pytest.mark.parametrize(
    ("person", "name", "role", "words"),
    [
        ("L01", "Twice", "lead", "stands in people.toml already"),
        ("P09", "Line\nbreak", "packer", "people.toml"),
        ("P09", "Anybody", "boss", "give one of packer"),
    ],
)
def test_a_person_who_does_not_fit_leaves_the_settings_as_they_were(
    managed, person, name, role, words
):
    before = (managed.settings / "people.toml").read_bytes()
    refused = managed("add", person, "--name", name, "--role", role, *BY, keyed=(MANAGER,))
    assert (refused.code, words in refused.err) == (2, True)
    assert (managed.settings / "people.toml").read_bytes() == before


def test_who_left_signs_no_more_and_stays_in_the_list(managed):
    managed("pin", "L02", *BY, keyed=(MANAGER, LEAD, LEAD))
    assert managed("disable", "L02", *BY, keyed=(MANAGER,)).code == 0
    (found,) = [one for one in managed("list").document["people"] if one["id"] == "L02"]
    assert (found["disabled"], found["pin"], found["may_sign"]) == (True, False, False)
    own = managed("disable", "M01", *BY, keyed=(MANAGER,))
    assert (own.code, "another manager" in own.err) == (2, True)
    assert managed("disable", "L02", "--undo", *BY, keyed=(MANAGER,)).code == 0
    assert kept(managed.home)[-1][1:3] == ("L02", "enabled")


def test_a_running_station_is_stopped_first(managed):
    lock = HomeLock(managed.home)
    try:
        refused = managed("pin", "L01", *BY, keyed=(MANAGER, LEAD, LEAD))
    finally:
        lock.release()
    assert (refused.code, "stop it first" in refused.err) == (3, True)
