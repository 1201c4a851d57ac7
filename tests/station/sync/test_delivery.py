"""The contract of delivery against a real PostgreSQL."""

import random
import shutil
import sqlite3
import threading
from contextlib import closing

import psycopg
import pytest

from station.errors import EnvironmentFault
from station.store.backup import back_up
from station.store.outlet import JournalOutlet
from station.store.restore import restore
from station.sync.batch import Pace, batch_of
from station.sync.connection import connect
from station.sync.delivery import OTHER_ENTRY, Delivery, Mark
from station.sync.errors import CentreGone, TakenElsewhere, TwoRecords
from tests.station.store.conftest import World
from tests.station.sync.centre import WAIT_S, Centre, assert_level, entries_of, send_all, sender

ME = ("HA", "L1A")


def add(world: World, bags: int = 3) -> None:
    with world.open() as store:
        run = world.start(store, number=world.clock.count % 50 + 2)
        world.fill(store, run, bags)


def test_everything_arrives_once_and_in_order(packed, centre):
    address = centre.station(*ME)
    sent = send_all(packed.home, address, Pace(rows=7))
    assert sent == len(entries_of(packed.home).popitem()[1])
    assert_level(packed.home, centre)
    assert send_all(packed.home, address) == 0
    add(packed)
    assert send_all(packed.home, address) > 0
    assert_level(packed.home, centre)
    assert centre.quarantine() == []


def test_the_bytes_are_kept_as_they_were_hashed(packed, centre):
    send_all(packed.home, centre.station(*ME))
    with JournalOutlet(packed.home) as outlet:
        (span,) = outlet.epochs()
        ours = [(e.seq, e.kind, e.canonical) for e in outlet.after(span, 0, 10_000, 1 << 30)]
    rows = centre.ask("SELECT seq, kind, canonical FROM centre.entry ORDER BY seq")
    assert [(seq, kind, bytes(kept)) for seq, kind, kept in rows] == ours


def test_pieces_repeated_and_out_of_order_change_nothing(packed, centre):
    """Each piece is sent up to five times in any order; only the next one moves the watermark."""
    chance, epoch = random.Random(28), entries_of(packed.home).popitem()[0]
    with (
        JournalOutlet(packed.home) as outlet,
        connect(centre.station(*ME), "station", WAIT_S) as connection,
    ):
        (span,) = outlet.epochs()
        pieces, mark = [], Mark()
        while mark.seq < span.last:
            piece = batch_of(mark.seq, mark.hash, outlet.after(span, mark.seq, 5, 1 << 20))
            pieces.append(piece)
            mark = Mark(piece.last, piece.hash)
        delivery = Delivery(connection, *ME, WAIT_S)
        delivery.begin(epoch)
        stood = 0
        while stood < span.last:
            for piece in chance.sample(pieces * chance.randrange(1, 6), len(pieces)):
                try:
                    delivery.send(epoch, piece)
                except TakenElsewhere:
                    assert piece.after != stood
                else:
                    assert piece.after == stood
                now = centre.mark(epoch)
                assert now >= stood
                stood = now
    assert_level(packed.home, centre)


def test_a_centre_without_a_part_for_each_station_takes_everything_too(packed, centre):
    """As an engine that spreads its tables by itself: the station changes nothing."""
    centre.tell("ALTER TABLE centre.entry_ha DETACH PARTITION centre.entry_ha_l1a")
    centre.tell("DROP TABLE centre.entry_ha_l1a")
    centre.tell("CREATE TABLE centre.others PARTITION OF centre.entry_ha DEFAULT")
    send_all(packed.home, centre.station(*ME), Pace(rows=7))
    assert_level(packed.home, centre)
    centre.tell("UPDATE centre.watermark SET seq = 0, hash = %s", bytes(32))
    send_all(packed.home, centre.station(*ME))
    assert_level(packed.home, centre)


def test_a_centre_put_back_from_a_backup_is_filled_up_again(packed, centre, server):
    address = centre.station(*ME)
    with sender(packed.home, address, Pace(rows=10)) as one:
        one.shake_hands()
        next(one.pieces())
    server.copy_database(centre.name, f"{centre.name}_backup")
    send_all(packed.home, address)
    add(packed)
    send_all(packed.home, address)
    server.drop_database(centre.name)
    server.copy_database(f"{centre.name}_backup", centre.name)
    server.drop_database(f"{centre.name}_backup")
    assert centre.mark(entries_of(packed.home).popitem()[0]) == 10
    send_all(packed.home, address)
    assert_level(packed.home, centre)


def test_an_older_copy_of_the_record_sends_nothing(packed, centre, tmp_path):
    shutil.copytree(packed.home, tmp_path / "older")
    add(packed)
    send_all(packed.home, centre.station(*ME))
    with pytest.raises(TwoRecords, match="an older copy was put back"):
        send_all(tmp_path / "older", centre.station(*ME))
    assert_level(packed.home, centre)


def test_two_stations_with_one_record_are_told_apart_at_the_first_entry(packed, centre, tmp_path):
    copy = World(tmp_path / "copy")
    shutil.copytree(packed.home, copy.home)
    whole = len(entries_of(packed.home).popitem()[1])
    add(packed, 3)
    copy.clock.count = 5000
    add(copy, 5)
    send_all(packed.home, centre.station(*ME))
    for _ in range(2):
        with pytest.raises(TwoRecords, match=f"another entry {whole + 1} of this epoch") as raised:
            send_all(copy.home, centre.station(*ME))
        assert raised.value.seq == whole + 1
        assert centre.quarantine() == [(whole + 1, OTHER_ENTRY)]
    assert_level(packed.home, centre)
    (epoch,) = entries_of(copy.home)
    kept = centre.ask("SELECT hash FROM centre.quarantine")[0][0]
    assert bytes(kept) == dict(entries_of(copy.home)[epoch])[whole + 1]


def test_two_that_send_at_once_cannot_both_go_on(packed, centre, tmp_path):
    copy = World(tmp_path / "copy")
    shutil.copytree(packed.home, copy.home)
    add(packed, 4)
    copy.clock.count = 5000
    add(copy, 4)
    address = centre.station(*ME)
    with sender(packed.home, address) as one, sender(copy.home, address) as two:
        one.shake_hands()
        two.shake_hands()
        one.drain()
        with pytest.raises((TakenElsewhere, TwoRecords)):
            two.drain()
    assert_level(packed.home, centre)


def tamper(world: World, seq: int, canonical: bytes, kind: str = "event") -> None:
    """Put another entry in the place of one, as a damaged disk or a foreign hand would."""
    with closing(sqlite3.connect(world.database, isolation_level=None)) as file:
        triggers = file.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall()
        for (name,) in triggers:
            file.execute(f"DROP TRIGGER {name}")
        file.execute(
            "UPDATE journal SET canonical = ?, kind = ? WHERE seq = ?", (canonical, kind, seq)
        )


@pytest.mark.parametrize(
    ("canonical", "kind", "why"),
    [
        (b"changed", "event", "it does not follow from the entry before it"),
        (b"x" * (5 << 20), "event", "it does not follow from the entry before it"),
    ],
)
def test_an_entry_that_does_not_follow_is_set_apart(packed, centre, canonical, kind, why):
    tamper(packed, 9, canonical, kind)
    send_all(packed.home, centre.station(*ME), Pace(rows=4))
    ((epoch, ours),) = entries_of(packed.home).items()
    assert centre.quarantine() == [(9, why)]
    assert centre.entries(epoch) == [one for one in ours if one[0] != 9]
    assert centre.mark(epoch) == len(ours)


def test_entries_the_centre_refuses_are_found_by_halves_and_set_apart(packed, centre):
    ours = entries_of(packed.home).popitem()[1]
    for seq in (5, 6, 30):
        with closing(sqlite3.connect(packed.database, isolation_level=None)) as file:
            for (name,) in file.execute(
                "SELECT name FROM sqlite_master WHERE type = 'trigger'"
            ).fetchall():
                file.execute(f"DROP TRIGGER {name}")
            # A zero character is good text for SQLite and none for PostgreSQL.
            file.execute("UPDATE journal SET kind = 'pa' || char(0) WHERE seq = ?", (seq,))
    send_all(packed.home, centre.station(*ME))
    assert [seq for seq, _ in centre.quarantine()] == [5, 6, 30]
    assert all(why.startswith("the centre refused it") for _, why in centre.quarantine())
    (epoch,) = entries_of(packed.home)
    assert centre.entries(epoch) == [one for one in ours if one[0] not in (5, 6, 30)]
    assert centre.mark(epoch) == len(ours)


def test_an_entry_of_five_megabytes_does_not_hold_up_the_others(world, centre):
    with world.stocked() as store:
        store.note("x" * (5 << 20), world.clock.now(), "station")
        world.fill(store, world.start(store), 3)
    send_all(world.home, centre.station(*ME))
    ((seq, why),) = centre.quarantine()
    assert "allowed are 1048576" in why
    ((epoch, ours),) = entries_of(world.home).items()
    assert centre.entries(epoch) == [one for one in ours if one[0] != seq]
    assert centre.mark(epoch) == len(ours)


def test_a_station_sees_and_writes_its_own_rows_alone(packed, centre):
    send_all(packed.home, centre.station(*ME))
    with connect(centre.station("HA", "L2A"), "station", WAIT_S) as other:
        with other.within(WAIT_S):
            for table in ("entry", "watermark", "register", "quarantine"):
                found = other.execute(f"SELECT count(*) FROM centre.{table}").fetchone()
                assert found == (0,), table
        for statement in (
            "INSERT INTO centre.watermark VALUES ('HA', 'L1A', 1, 0, '')",
            "INSERT INTO centre.entry SELECT 'HA', 'L1A', 1, 1, 'event', sha256(''), ''",
            "INSERT INTO centre.entry_ha_l1a SELECT 'HA', 'L1A', 1, 1, 'event', sha256(''), ''",
            "INSERT INTO centre.entry_ha_l2a SELECT 'HA', 'L1A', 1, 1, 'event', sha256(''), ''",
            "DELETE FROM centre.entry",
            "UPDATE centre.entry SET kind = 'x'",
            "SELECT * FROM centre.pack",
            "SELECT * FROM centre.entry_ha",
            "DROP TABLE centre.entry",
        ):
            refused = pytest.raises(
                (CentreGone, psycopg.IntegrityError), match=r"denied|violates|owner"
            )
            with refused, other.within(WAIT_S):
                other.execute(statement)


def test_a_station_nobody_admitted_is_told_so(packed, centre):
    with pytest.raises((CentreGone, EnvironmentFault)):
        send_all(packed.home, centre.station("HA", "L9Z"))


def test_a_centre_without_tables_and_one_of_another_shape_are_told(packed, server, centre):
    centre.tell("UPDATE centre.shape SET shape = 999")
    with pytest.raises(EnvironmentFault, match="shape 999"):
        send_all(packed.home, centre.station(*ME))
    centre.tell("DROP SCHEMA centre CASCADE")
    with pytest.raises(EnvironmentFault, match="station centre init"):
        send_all(packed.home, centre.station(*ME))


def test_init_can_be_repeated(packed, server):
    one = Centre(server, ME)
    try:
        send_all(packed.home, one.station(*ME))
        again = one.admit(ME, ("QQ", "B1"))
        assert again[0].password == ""
        assert_level(packed.home, one)
    finally:
        one.close()


def test_statements_wait_no_longer_than_their_deadline(packed, centre, server):
    with connect(centre.station(*ME), "station", WAIT_S) as connection:
        delivery = Delivery(connection, *ME, 0.5)
        server.freeze()
        thaw = threading.Timer(5, server.thaw)
        thaw.start()
        try:
            with pytest.raises(CentreGone, match="did not answer in time"):
                delivery.marks()
            assert thaw.is_alive()
        finally:
            thaw.cancel()
            thaw.join()
            server.thaw()
    assert connection.closed


def test_a_refused_row_is_the_row_s_fault(centre):
    with (
        connect(centre.address("packadmin"), "owner", WAIT_S) as connection,
        pytest.raises(psycopg.IntegrityError),
        connection.within(WAIT_S),
    ):
        connection.execute("INSERT INTO centre.shape VALUES (1)")


def test_a_restored_station_goes_on_in_a_new_epoch(packed, centre, tmp_path):
    """The centre keeps what the restored record lacks, and takes the new epoch from its start."""
    address, folder = centre.station(*ME), tmp_path / "backups"
    folder.mkdir()
    done = back_up(packed.home, folder, packed.clock.now())
    add(packed, 4)
    send_all(packed.home, address)
    before = entries_of(packed.home)
    restore(done.backup.path, packed.home, ME, packed.clock, "p.marsh", "disk failed")
    add(packed, 5)
    send_all(packed.home, address)
    after = entries_of(packed.home)
    ((old, kept),) = before.items()
    assert len(after) == 2
    assert len(after[old]) < len(kept)
    assert centre.entries(old) == kept
    (new,) = set(after) - {old}
    assert centre.entries(new) == after[new]
    assert centre.mark(new) == len(after[new])
    assert centre.quarantine() == []
