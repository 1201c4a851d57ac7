"""``station journal head``, ``prove``, ``key`` and what ``verify`` does with them."""

import json
from shutil import copytree

import pytest

from station.store.signing import read_key
from tests.station.cli.conftest import DEMO


@pytest.fixture
def signed(packed, tmp_path, station):
    """A copy of the packed home, opened once more by a verb that knows the settings' key."""
    home = copytree(packed.home, tmp_path / "home")
    done = station(
        *("lots", "hold", "SM-WC26323", "--why", "supplier", "--who", "L01"),
        *("--home", home, "--config", DEMO),
    )
    assert done.code == 0, done.err
    return home


def test_the_head_is_told_in_words_signed_and_found_again(signed, station, tmp_path):
    line = tmp_path / "head.txt"
    shown = station("journal", "head", "--home", signed, "--to", line, "--json")
    assert shown.code == 0
    size, words = shown.document["size"], shown.document["words"]
    assert line.read_text().strip() == shown.document["signed"]
    for given in (f"{size} {words}", f"{size} {words.upper()}", line, line.read_text().strip()):
        for more in ((), ("--quick",)):
            done = station("journal", "verify", "--home", signed, "--head", given, *more, "--json")
            assert (done.code, done.document["whole"]) == (0, True), done.out


def test_another_head_is_none_of_this_record_and_the_answer_is_no(signed, station):
    given = "3 bafodi kesamo tirage nopeza"
    done = station("journal", "verify", "--home", signed, "--head", given, "--json")
    assert (done.code, done.document["whole"]) == (1, False)
    assert "none of this record" in done.document["why"]


@pytest.mark.parametrize(
    ("option", "given", "words"),
    [
        ("--head", "no head", "nine parts"),
        ("--head", "12 words", "four words as they are printed"),
        ("--key", "abc", "neither 64 hex digits nor a file"),
    ],
)
def test_what_cannot_be_read_is_refused(signed, station, option, given, words):
    done = station("journal", "verify", "--home", signed, option, given, "--json")
    assert done.code == 2
    assert words in str(done.error)


def test_a_bag_is_proved_to_somebody_without_the_record(packed, signed, station, tmp_path):
    file = tmp_path / "proof.json"
    made = station(
        "journal", "prove", "--home", signed, "--serial", packed.serials[2], "--to", file, "--json"
    )
    assert made.code == 0, made.err
    public = read_key(signed.with_name("home.key")).public.hex()
    done = station("journal", "verify", "--proof", file, "--key", public, "--json")
    assert (done.code, done.document) == (0, {"holds": True, "why": ""})
    document = json.loads(file.read_text())
    document["entry"] = document["entry"].replace("343", "349").replace("331", "349")
    file.write_text(json.dumps(document))
    done = station("journal", "verify", "--proof", file, "--key", public)
    assert done.code == 1
    assert "DOES NOT HOLD" in done.out


def test_growth_is_proved(signed, station, tmp_path):
    file = tmp_path / "proof.json"
    assert station("journal", "prove", "--home", signed, "--since", 3, "--to", file).code == 0
    assert station("journal", "verify", "--proof", file).code == 0
    again = station("journal", "prove", "--home", signed, "--since", 3, "--to", file, "--json")
    assert again.code == 2


def test_one_thing_is_proved_at_a_time(signed, station):
    done = station("journal", "prove", "--home", signed, "--json")
    assert done.code == 2
    assert "one of --entry, --serial and --since" in str(done.error)


def test_the_key_is_shown_and_another_one_is_taken_by_name_and_reason(signed, station):
    where = ("--home", signed, "--config", DEMO)
    first = station("journal", "key", *where, "--json").document
    assert station("journal", "key", *where, "--new", "--json").code == 2
    taken = station(
        "journal", "key", *where, "--new", "--who", "L01", "--why", "laptop lost", "--json"
    )
    assert taken.code == 0, taken.err
    assert taken.document["id"] != first["id"]
    aside = [file.name for file in signed.parent.iterdir() if ".before-" in file.name]
    assert len(aside) == 1
    assert station("lots", "release", "SM-WC26323", "--why", "looked at", "--who", "L01", *where)
    done = station("journal", "verify", *where, "--json")
    assert (done.code, done.document["key"]) == (0, taken.document["id"])


def test_without_the_key_the_head_is_told_as_not_signed(signed, station):
    signed.with_name("home.key").unlink()
    shown = station("journal", "head", "--home", signed, "--json")
    assert (shown.code, shown.document["signed"]) == (1, None)
    assert "cannot be read" in shown.document["why_not"]
