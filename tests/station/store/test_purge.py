"""A purge takes whole old runs and nothing else; what is left proves itself as before."""

import json
import os
import signal
import sqlite3
import sys
from contextlib import closing
from dataclasses import replace
from hashlib import sha256
from itertools import pairwise
from pathlib import Path
from shutil import copytree
from subprocess import run as run_process

import pytest
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PublicKey

from station.core.checks.rolls import RollStep
from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.pack import LabelState
from station.errors import BadInput, EnvironmentFault
from station.store import queries
from station.store.backup import back_up
from station.store.engine import database, reading
from station.store.export_check import check_export
from station.store.facts import facts
from station.store.label_doubts import open_labels
from station.store.label_rolls import roll_accounts
from station.store.lock import HomeLock
from station.store.proofs import check_proof, prove_entry, prove_growth
from station.store.quick_verify import verify_since_head
from station.store.rebuild import rebuild
from station.store.restore import restore
from station.store.verify import verify
from tests.station.store.conftest import SITE, STATION, World
from tests.station.store.old_runs import BAGS, OldRuns, old_runs
from tests.station.store.signed_world import DayClock

STEPS = (
    "looking at old runs",
    "exporting",
    "reading back",
    "emptying",
    "building the tables",
    "comparing",
    "committing",
)
"""Each comes before what it names; all of them are one transaction."""


@pytest.fixture(scope="module")
def made_once(tmp_path_factory) -> OldRuns:
    return old_runs(World(tmp_path_factory.mktemp("old") / "home"))


@pytest.fixture(scope="module")
def purged_once(made_once, tmp_path_factory) -> tuple[OldRuns, Path]:
    """A copy after its purge, and the folder of the export."""
    made = copy_of(made_once, tmp_path_factory.mktemp("purged"))
    folder = made.home.with_name("out")
    made.purge(folder)
    return made, folder


def copy_of(made: OldRuns, folder: Path) -> OldRuns:
    """The record and its key in a place of their own."""
    home = folder / "home"
    copytree(made.home, home)
    for beside in made.home.parent.glob("home.key*"):
        (folder / beside.name).write_bytes(beside.read_bytes())
        (folder / beside.name).chmod(0o600)
    return replace(made, world=World(home))


@pytest.fixture
def made(made_once, tmp_path) -> OldRuns:
    return copy_of(made_once, tmp_path)


@pytest.fixture
def purged(purged_once, tmp_path) -> OldRuns:
    return copy_of(purged_once[0], tmp_path)


def journal_of(home: Path) -> list[tuple]:
    with closing(sqlite3.connect(f"{database(home).resolve().as_uri()}?mode=ro", uri=True)) as file:
        return file.execute("SELECT * FROM journal ORDER BY id").fetchall()


def tables_of(home: Path) -> dict[str, list[tuple]]:
    with closing(sqlite3.connect(f"{database(home).resolve().as_uri()}?mode=ro", uri=True)) as file:
        names = [
            row[0] for row in file.execute("SELECT name FROM sqlite_schema WHERE type='table'")
        ]
        return {name: file.execute(f'SELECT * FROM "{name}"').fetchall() for name in sorted(names)}


def guards_of(home: Path) -> list[tuple]:
    with closing(sqlite3.connect(database(home))) as file:
        schema = "SELECT name, sql FROM sqlite_schema WHERE type = 'trigger' ORDER BY name"
        return file.execute(schema).fetchall()


def test_a_run_goes_whole_and_its_entries_keep_number_kind_and_hash(made, tmp_path):
    before, guards = journal_of(made.home), guards_of(made.home)
    done = made.purge(tmp_path / "out")
    after = journal_of(made.home)
    assert [row[:5] for row in after[: len(before)]] == [row[:5] for row in before]
    emptied = [row for row in after if not row[5]]
    # run, run end, its bags, three states of all labels but one, one disposition
    assert len(emptied) == done.entries == 1 + 1 + BAGS + 3 * (BAGS - 1) + 1
    assert [(row[3], row[5] != b"") for row in after[len(before) :]] == [
        ("purge", True),
        ("head", True),
    ]
    assert guards_of(made.home) == guards
    assert verify(made.home).whole
    assert verify_since_head(made.home).whole


def test_what_stays_is_as_it_was_and_a_rebuild_gives_the_same_tables(purged):
    left = tables_of(purged.home)
    serials = [row[3] for row in left["pack"]]
    assert serials == purged.serials[2] + purged.serials[3]
    assert [row[1] for row in left["run"]] == [purged.runs[2].id, purged.runs[3].id]
    assert {row[0] for row in left["lot"]} >= {"LF-101", "CR-201"}
    (case,) = (row for row in left["unit"])
    assert (case[9], case[12] is not None) == (3, True)  # bags of the case, and its shipment
    rebuild(purged.home)
    assert tables_of(purged.home) == left


def test_no_number_comes_again(purged):
    last = int(purged.serials[3][-1].rpartition("-")[2])
    with purged.open() as store:
        run = purged.runs[3] = replace(purged.runs[3], id="019cb76f-7160-7000-8000-00000000000a")
        store.start_run(run, purged.clock.now())
        draft = purged.world.draft(run)
        assert int(store.add_pack(draft).serial.rpartition("-")[2]) == last + 1
    assert verify(purged.home).whole


def test_questions_that_go_through_the_journal_pass_over_what_went(purged):
    """Labels in doubt and rolls are asked of the entries of labels, past purged ones too."""
    put_in = Fact(EntryKind.ROLL, "roll-2", "R2", RollStep.PUT_IN, "", {"issued": 500})
    with purged.open() as store:
        purged.record(store, put_in)
        run = purged.runs[3] = replace(purged.runs[3], id="019cb76f-7160-7000-8000-00000000000b")
        store.start_run(run, purged.clock.now())
        serial = store.add_pack(purged.world.draft(run)).serial
        for state in (LabelState.SUBMITTED, LabelState.SPOOLED):
            store.mark_label(serial, state, purged.clock.now(), "station", "")
    with purged.open():
        pass
    assert [one.serial for one in open_labels(purged.home)] == [serial]
    (roll,) = roll_accounts(purged.home)
    assert (roll.roll, roll.used) == ("R2", 1)


def test_a_roll_whose_labels_went_has_no_account(tmp_path):
    """Run 1 was printed from it, so that its labels cannot be counted any more."""
    home = tmp_path / "other" / "home"
    other = OldRuns(World(home), DayClock(World(home).clock))
    with other.open() as store:
        old = Fact(EntryKind.ROLL, "roll-1", "R1", RollStep.PUT_IN, "", {"issued": 500})
        new = Fact(EntryKind.ROLL, "roll-2", "R2", RollStep.PUT_IN, "", {"issued": 500})
        other.record(store, old)
        other.pack(store, 1, 8)
        other.dump(store, 1)
        other.record(store, new)
        other.years_on(store)
    assert [(one.roll, one.used) for one in roll_accounts(home)] == [("R1", 7), ("R2", 5)]
    other.purge(tmp_path / "out")
    assert [(one.roll, one.used) for one in roll_accounts(home)] == [("R2", 5)]


def test_a_second_purge_finds_nothing_more(purged, tmp_path):
    with pytest.raises(BadInput, match="nothing may be purged"):
        purged.purge(tmp_path / "again")


def test_room_is_given_back(purged_once):
    made, _ = purged_once
    assert not list(made.home.glob("*.unfinished"))
    with closing(sqlite3.connect(database(made.home))) as file:
        assert file.execute("PRAGMA freelist_count").fetchone() == (0,)


# --- damage ---------------------------------------------------------------------------------------


def damage(home: Path, *statements: str) -> str:
    with closing(sqlite3.connect(database(home), isolation_level=None)) as file:
        file.execute("DROP TRIGGER journal_no_update")
        for statement in statements:
            file.execute(statement)
    found = verify(home)
    assert not found.whole
    return f"{found.first_break}: {found.why}"


def first_emptied(home: Path) -> int:
    return next(row[0] for row in journal_of(home) if not row[5])


def test_an_entry_emptied_outside_a_purge_is_named(purged):
    (row,) = (row for row in journal_of(purged.home) if row[3] == "purge")
    seq = row[2] - 10
    words = damage(purged.home, f"UPDATE journal SET canonical = x'' WHERE seq = {seq}")
    assert words.startswith(f"{seq}: entry {seq} is empty and no purge names it")


def test_a_changed_hash_of_a_purged_entry_is_found(purged):
    seq = first_emptied(purged.home) + 7
    words = damage(purged.home, f"UPDATE journal SET hash = zeroblob(32) WHERE seq = {seq}")
    assert "the hash of a purged entry from" in words
    assert purged.runs[1].id in words


def test_the_last_purged_hash_of_a_range_is_held_by_the_next_entry_too(purged):
    rows = journal_of(purged.home)
    last = next(row for row, after in pairwise(rows) if not row[5] and after[5])
    words = damage(purged.home, f"UPDATE journal SET hash = zeroblob(32) WHERE id = {last[0]}")
    assert not words.startswith("None")


def test_a_changed_kind_of_a_purged_entry_is_found(purged):
    seq = first_emptied(purged.home) + 7
    words = damage(purged.home, f"UPDATE journal SET kind = 'event' WHERE seq = {seq}")
    assert "the kind of a purged entry" in words


def test_a_purge_without_its_entry_is_damage(purged):
    words = damage(purged.home, "UPDATE journal SET canonical = x'' WHERE kind = 'purge'")
    assert "is empty and no purge names it" in words


def test_a_table_that_keeps_a_purged_bag_is_found(purged):
    words = damage(purged.home, "UPDATE run SET name = 'other' WHERE id = 1")
    assert "was changed in its table" in words


# --- proofs, backups ------------------------------------------------------------------------------


def test_heads_and_proofs_hold_over_purged_entries(purged):
    newest = verify(purged.home).signed
    kept = prove_entry(purged.home, newest.head.size)
    assert check_proof(dict(kept)) == ""
    assert check_proof(dict(prove_growth(purged.home, 300))) == ""
    with pytest.raises(BadInput, match="was purged"):
        prove_entry(purged.home, first_emptied(purged.home))


def test_a_backup_of_a_purged_record_is_whole_and_comes_back(purged, tmp_path):
    (tmp_path / "second").mkdir()
    made = back_up(purged.home, tmp_path / "second", purged.clock.now())
    back = tmp_path / "back" / "home"
    restore(made.backup.path, back, (SITE, STATION), purged.clock, "m.reed", "new disk")
    assert verify(back).whole
    assert tables_of(back)["pack"] == tables_of(purged.home)["pack"]
    assert queries.summary(back).packs == 12


# --- the export -----------------------------------------------------------------------------------


def test_the_export_has_every_byte_that_went(made, tmp_path):
    before = {row[2]: row for row in journal_of(made.home)}
    done = made.purge(tmp_path / "out")
    found = check_export(tmp_path / "out", lambda *_: None)
    assert found == done.export
    gone = {row[2] for row in journal_of(made.home) if not row[5]}
    assert found.entries == len(gone)
    (lines,) = (tmp_path / "out").glob("run-*.jsonl")
    text = lines.read_bytes()
    for seq in gone:
        assert before[seq][5].replace(b'"', b'\\"') in text


def merkle_root(leaves: list[bytes]) -> bytes:
    """RFC 9162 section 2.1.1, word for word."""
    if len(leaves) == 1:
        return sha256(b"\x00" + leaves[0]).digest()
    cut = 1
    while cut * 2 < len(leaves):
        cut *= 2
    return sha256(b"\x01" + merkle_root(leaves[:cut]) + merkle_root(leaves[cut:])).digest()


def test_the_export_is_proved_by_the_standard_alone(purged_once):
    """SHA-256, RFC 9162 and Ed25519 (RFC 8032) by themselves, with none of our functions."""
    made, folder = purged_once
    manifest = json.loads((folder / "manifest.json").read_text(encoding="utf-8"))
    (head,) = manifest["heads"].values()
    mark, site, station, epoch, size, root, at, key, signature = head.split(" ")
    Ed25519PublicKey.from_public_bytes(bytes.fromhex(key)).verify(
        bytes.fromhex(signature), " ".join((mark, site, station, epoch, size, root, at)).encode()
    )
    hashes = [row[4] for row in journal_of(made.home)][: int(size)]
    assert merkle_root(hashes).hex().upper() == root
    (path,) = folder.glob("run-*.jsonl")
    lines = [json.loads(line) for line in path.read_text(encoding="utf-8").splitlines()]
    for line in lines:
        before, entry = bytes.fromhex(line["hash_before"]), line["entry"].encode()
        assert sha256(b"\x00" + before + entry).digest() == hashes[line["number"] - 1]
    (run,) = manifest["runs"]
    gone = [hashes[line["number"] - 1] for line in lines]
    assert merkle_root(gone).hex() == run["root"]
    digest = sha256((folder / "manifest.json").read_bytes()).hexdigest()
    (record,) = facts(made.home, (EntryKind.PURGE,))
    assert (record.fact.subject, record.who) == (digest, "m.reed")


@pytest.mark.parametrize("name", ["manifest.json", "blocks.jsonl", "run-*.jsonl"])
def test_a_changed_export_is_found(purged_once, tmp_path, name):
    folder = copytree(purged_once[1], tmp_path / "out")
    (path,) = folder.glob(name)
    content = path.read_bytes()
    for place in range(100, len(content), len(content) // 7):
        other = b"5" if content[place : place + 1] != b"5" else b"6"
        path.write_bytes(content[:place] + other + content[place + 1 :])
        try:
            found = check_export(folder, lambda *_: None)
        except (EnvironmentFault, BadInput):
            continue
        # A word of the manifest that proves nothing: its digest, which the record names, differs.
        assert name == "manifest.json"
        assert found.digest != check_export(purged_once[1], lambda *_: None).digest


def test_a_folder_that_does_not_serve_is_refused(made, tmp_path):
    (tmp_path / "full").mkdir()
    (tmp_path / "full" / "a").touch()
    with pytest.raises(BadInput, match="is not empty"):
        made.purge(tmp_path / "full")
    with pytest.raises(BadInput, match="lies in the home"):
        made.purge(made.home / "out")


# --- faults ---------------------------------------------------------------------------------------


class Stop(Exception):
    """What goes wrong."""


@pytest.mark.parametrize("step", STEPS)
def test_a_fault_at_any_step_leaves_the_whole_old_record(made, tmp_path, step):
    before = tables_of(made.home)

    def told(words, *_):
        if words == step:
            raise Stop

    with pytest.raises(Stop):
        made.purge(tmp_path / "out", told)
    assert tables_of(made.home) == before
    assert len(guards_of(made.home)) == 4
    assert verify(made.home).whole


def test_a_fault_after_the_commit_leaves_the_whole_purged_record(made, tmp_path):
    def told(words, *_):
        if words == "making the file smaller":
            raise Stop

    with pytest.raises(Stop):
        made.purge(tmp_path / "out", told)
    assert first_emptied(made.home)
    assert verify(made.home).whole
    with made.open():
        pass


@pytest.mark.parametrize(
    ("step", "gone"), [("comparing", False), ("making the file smaller", True)]
)
def test_a_kill_leaves_the_whole_old_record_or_the_whole_purged_one(made, tmp_path, step, gone):
    killed = run_process(
        [sys.executable, Path(__file__).with_name("purging_child.py"), made.home, step],
        check=False,
        env={**os.environ, "PYTHONPATH": str(Path(__file__).parents[3])},
        timeout=120,
    )
    assert killed.returncode == -signal.SIGKILL
    assert any(not row[5] for row in journal_of(made.home)) is gone
    with made.open():
        pass
    assert verify(made.home).whole


def test_a_running_station_is_not_purged(made, tmp_path):
    lock = HomeLock(made.home)
    try:
        with pytest.raises(EnvironmentFault, match="in use by another station"):
            made.purge(tmp_path / "out")
    finally:
        lock.release()


def test_a_damaged_record_is_not_purged(made, tmp_path):
    with closing(sqlite3.connect(database(made.home), isolation_level=None)) as file:
        laid = file.execute(
            "SELECT sql FROM sqlite_schema WHERE name = 'journal_no_update'"
        ).fetchone()[0]
        file.execute("DROP TRIGGER journal_no_update")
        file.execute("UPDATE journal SET hash = zeroblob(32) WHERE seq = 330")
        file.execute(laid)
    before = journal_of(made.home)
    with pytest.raises(EnvironmentFault, match="does not hold"):
        made.purge(tmp_path / "out")
    assert journal_of(made.home) == before


def test_reading_goes_on_beside_a_purge(made, tmp_path):
    seen = []

    def told(words, *_):
        if words == "comparing":
            with reading(made.home) as connection:
                seen.append(connection.exec_driver_sql("SELECT count(*) FROM pack").scalar_one())

    made.purge(tmp_path / "out", told)
    assert seen == [BAGS + 12]
