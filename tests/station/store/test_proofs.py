"""Proofs that are checked without the record."""

import json

import pytest

from station.errors import BadInput
from station.store.proofs import check_proof, entry_of_serial, prove_entry, prove_growth
from station.store.signing import make_key, read_key
from tests.station.store.signed_world import fill_two_days, key_of


@pytest.fixture(scope="module")
def signed(tmp_path_factory):
    from tests.station.store.conftest import World

    world = World(tmp_path_factory.mktemp("proofs") / "home")
    fill_two_days(world)
    return world


def carried(document):
    return json.loads(json.dumps(document))


def size_of(world):
    return int(prove_entry(world.home, 1)["words"].split()[0])


def test_each_entry_is_proved_by_what_leaves_the_station_alone(signed):
    key = read_key(key_of(signed)).public
    for seq in (1, 2, 255, 256, 257, size_of(signed)):
        assert check_proof(carried(prove_entry(signed.home, seq)), key) == ""


def test_a_bag_is_proved_by_its_serial(signed):
    import sqlite3
    from contextlib import closing

    with closing(sqlite3.connect(signed.database)) as connection:
        (serial,) = connection.execute("SELECT serial FROM pack WHERE number = 3").fetchone()
    document = prove_entry(signed.home, entry_of_serial(signed.home, serial))
    assert json.loads(document["entry"])["body"]["serial"] == serial
    with pytest.raises(BadInput, match="not in the present epoch"):
        entry_of_serial(signed.home, "L1A-ZZ-000001")


def test_growth_is_proved_from_any_length(signed):
    for old in (1, 255, 256, 300, size_of(signed)):
        assert check_proof(carried(prove_growth(signed.home, old))) == ""


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (lambda d: d.update(entry=d["entry"].replace("event", "evenk")), "is not under the head"),
        (lambda d: d.update(hash_before="00" * 32), "is not under the head"),
        (lambda d: d.update(number=d["number"] + 1), "is not under the head"),
        (lambda d: d["path"].pop(), "is not under the head"),
        (lambda d: d.update(head=d["head"][:-20] + "0" * 20), "signature of the head"),
    ],
)
def test_a_changed_proof_does_not_hold(signed, change, words):
    document = carried(prove_entry(signed.home, 100))
    change(document)
    assert words in check_proof(document)


def test_a_changed_proof_of_growth_does_not_hold(signed):
    document = carried(prove_growth(signed.home, 100))
    document["old_root"] = "11" * 32
    assert "do not begin" in check_proof(document)


def test_a_proof_with_another_station_s_key_does_not_hold(signed, tmp_path):
    other = make_key(tmp_path / "other.key").public
    assert "signed with the key" in check_proof(prove_entry(signed.home, 1), other)


@pytest.mark.parametrize("document", [{}, {"what": "x"}, [], {"head": 3}])
def test_what_is_no_proof_is_refused(document):
    with pytest.raises(BadInput, match="no document of a proof"):
        check_proof(document)


def test_what_no_head_covers_yet_is_said(signed, world):
    size = size_of(signed)
    with pytest.raises(BadInput, match=f"over entries 1 to {size}"):
        prove_entry(signed.home, size + 1)
    with pytest.raises(BadInput, match=f"over {size}"):
        prove_growth(signed.home, size + 1)
    with world.stocked():
        pass
    with pytest.raises(BadInput, match="no signed head"):
        prove_entry(world.home, 1)
