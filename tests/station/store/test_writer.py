import json
import sqlite3
from contextlib import closing
from dataclasses import replace
from datetime import date

import pytest

from station.core.journal import EntryKind
from station.core.lots import LotStatus
from station.core.pack import LabelState, epoch_mark
from station.errors import BadInput, EnvironmentFault
from station.line.ports import Store, StoreFault
from station.store import queries
from station.store.engine import reading
from station.store.heads import SeenHead, read_head, write_head
from station.store.journal import entries, read_entry
from station.store.verify import verify
from station.store.writer import CHECKPOINT_EVERY, StationStore


def journal(world):
    with reading(world.home) as connection:
        return [read_entry(kept.stored.canonical) for kept in entries(connection)]


def kinds(world):
    return [entry.kind for entry in journal(world)]


def test_it_is_the_store_the_line_needs(store):
    needed: Store = store
    assert needed is store


# --- opening and closing ------------------------------------------------------------------------


def test_a_new_record_has_a_random_epoch_and_begins_with_a_start(world):
    with world.open() as store:
        assert 0 < store.epoch < 2**63
        assert store.head()[0] == 1
    (start, stop) = journal(world)
    assert start.kind is EntryKind.START
    assert start.body["sqlite"] == sqlite3.sqlite_version
    assert (start.body["journal_mode"], start.body["synchronous"]) == ("wal", "full")
    assert (start.site, start.station, start.epoch) == ("HA", "L1A", store.epoch)
    assert stop.kind is EntryKind.STOP


def test_two_records_have_two_epochs(world):
    with world.open() as store:
        first = store.epoch
    world.database.unlink()
    with world.open() as store:
        assert store.epoch != first
        assert epoch_mark(store.epoch) != epoch_mark(first)
    before = journal(world)[0].body["before"]
    assert before["epoch"] == str(first)


def test_numbers_go_on_after_a_restart(world):
    with world.stocked() as store:
        run = world.start(store)
        world.fill(store, run, 3)
    with world.open() as store:
        assert store.add_pack(world.draft(run)).id.number == 4
    assert verify(world.home).whole


def test_closing_twice_is_harmless_and_nothing_goes_in_afterwards(world):
    store = world.open()
    store.close()
    store.close()
    with pytest.raises(StoreFault, match="closed"):
        store.note("late", world.clock.now(), "p.marsh")


def test_closing_folds_the_log_into_the_file(world):
    with world.stocked() as store:
        world.fill(store, world.start(store), 3)
    assert [path.name for path in sorted(world.home.iterdir())] == [
        "station.head",
        "station.last",
        "station.lock",
        "station.sqlite",
    ]


def test_the_record_of_another_station_is_refused(world):
    world.open().close()
    for site, station in (("HA", "L2A"), ("HB", "L1A")):
        with pytest.raises(BadInput, match="record of station L1A at site HA"):
            StationStore.open(world.home, site, station, world.clock)


def test_a_folder_in_use_is_refused_and_free_again_afterwards(world):
    with world.open(), pytest.raises(EnvironmentFault, match="in use by another station"):
        world.open()
    world.open().close()


def test_a_failed_opening_lets_go_of_the_folder(world):
    world.open().close()
    with pytest.raises(BadInput):
        StationStore.open(world.home, "HA", "L2A", world.clock)
    world.open().close()


@pytest.mark.parametrize("state", [LabelState.RECORDED, LabelState.SUBMITTED, LabelState.SPOOLED])
def test_a_label_on_its_way_at_the_end_is_in_doubt_at_the_start(world, state):
    store = world.stocked()
    run = world.start(store)
    done, rejected, open_one = world.fill(store, run, 3)[1], None, None
    rejected = store.add_pack(world.draft(run, "0.2405", "too light")).serial
    open_one = store.add_pack(world.draft(run)).serial
    for passed in (LabelState.SUBMITTED, LabelState.SPOOLED):
        if state in (passed, LabelState.SPOOLED):
            store.mark_label(open_one, passed, world.clock.now(), "station", "")
    world.crash(store)
    with world.open() as store:
        assert store.in_doubt() == (open_one,)
    assert queries.labels_in(world.home, LabelState.NONE)[-1] == rejected
    assert done in queries.labels_in(world.home, LabelState.APPLIED)
    entry = journal(world)[-2]
    assert entry.kind is EntryKind.LABEL
    assert entry.body["serial"] == open_one
    assert entry.who == "station"


def test_a_doubt_that_was_answered_stays_answered(world):
    store = world.stocked()
    serial = store.add_pack(world.draft(world.start(store))).serial
    world.crash(store)
    with world.open() as store:
        store.mark_label(
            serial, LabelState.APPLIED, world.clock.now(), "p.marsh", "seen on the bag"
        )
        assert store.in_doubt() == ()
    with world.open() as store:
        assert store.in_doubt() == ()


def test_a_tail_that_does_not_hold_stops_the_start(world):
    world.open().close()
    world.tamper(
        "DROP TRIGGER journal_no_update",
        "UPDATE journal SET canonical = CAST(canonical || ' ' AS BLOB) WHERE seq = 2",
    )
    with pytest.raises(EnvironmentFault, match="does not hold at entry 2"):
        world.open()


def test_a_journal_behind_the_head_written_beside_it_stops_the_start(world):
    world.open().close()
    older = world.database.read_bytes()
    world.open().close()
    world.database.write_bytes(older)
    with pytest.raises(EnvironmentFault, match="another copy of the file was put here"):
        world.open()


def test_a_stale_head_is_no_reason_to_stop(world):
    world.open().close()
    stale = read_head(world.home)
    world.open().close()
    write_head(world.home, stale)
    world.open().close()


def test_a_head_with_another_hash_stops_the_start(world):
    world.open().close()
    seen = read_head(world.home)
    (world.home / "station.last").unlink()
    write_head(world.home, SeenHead(seen.epoch, 1, "00" * 32))
    with pytest.raises(EnvironmentFault, match="entry 1 was written before"):
        world.open()


def test_a_bag_taken_out_of_its_table_cannot_give_its_number_away(world):
    with world.stocked() as store:
        world.fill(store, world.start(store), 3)
    world.tamper("DELETE FROM pack WHERE number = 3")
    with pytest.raises(EnvironmentFault, match="ends with bag 3, the table of bags with bag 2"):
        world.open()


# --- bags ---------------------------------------------------------------------------------------


def test_a_bag_is_durable_with_its_entry_when_it_has_its_number(store, world):
    run = world.start(store)
    record = store.add_pack(world.draft(run))
    assert record.serial == f"L1A-{epoch_mark(store.epoch)}-000001"
    assert (record.entry_seq, record.entry_hash) == store.head()
    # Seen by another connection, so committed
    trace = queries.trace_pack(world.home, record.serial)
    assert trace.record == record


def test_a_rejected_bag_needs_a_reason(store, world):
    run = world.start(store)
    draft = replace(world.draft(run, "0.2405", "torn"), reason="")
    before = store.head()
    with pytest.raises(StoreFault, match="needs a reason"):
        store.add_pack(draft)
    assert store.head() == before
    assert store.add_pack(world.draft(run)).id.number == 1


def test_a_refused_bag_takes_no_number_and_leaves_no_trace(store, world):
    run = world.start(store)
    unknown = replace(world.draft(run), lot_set="0" * 32)
    before = store.head()
    with pytest.raises(StoreFault, match=r"lot set 0+ is not in the record"):
        store.add_pack(unknown)
    with pytest.raises(StoreFault, match="run nowhere is not in the record"):
        store.add_pack(replace(world.draft(run), run="nowhere"))
    assert store.head() == before
    assert store.add_pack(world.draft(run)).id.number == 1


def test_an_ended_run_takes_no_bag_and_ends_once(store, world):
    run = world.start(store)
    store.add_pack(world.draft(run))
    store.end_run(run.id, world.clock.now(), "p.marsh")
    with pytest.raises(StoreFault, match="has ended"):
        store.add_pack(world.draft(run))
    with pytest.raises(StoreFault, match="has ended"):
        store.end_run(run.id, world.clock.now(), "p.marsh")
    assert queries.last_run(world.home).open is False


def test_a_run_in_pounds_keeps_its_digits(store, world):
    # 8.5 oz and 0.53125 lb are the same mass; neither is a whole number of micrograms
    from station.core.mass import Mass, Unit
    from station.core.pack import Weighing

    run = world.start(store)
    net, tare = Mass.of("0.5312", Unit.POUND), Mass.of("0.0276", Unit.POUND)
    weighing = Weighing(net + tare, tare, net, Mass.of("0", Unit.POUND), 900, 0, "00")
    serial = store.add_pack(replace(world.draft(run), weighing=weighing)).serial
    found = queries.trace_pack(world.home, serial).record.draft.weighing
    assert (found.net.digits, found.net.unit) == ("0.5312", Unit.POUND)


# --- labels -------------------------------------------------------------------------------------


def test_a_label_s_way_is_recorded_step_by_step(store, world):
    serial = world.fill(store, world.start(store), 1)[0]
    words = [e.body["label"] for e in journal(world) if e.kind is EntryKind.LABEL]
    assert words == ["submitted", "spooled", "applied"]
    assert queries.labels_in(world.home, LabelState.APPLIED) == (serial,)


def test_taking_back_makes_a_reject_with_a_void_label_in_one_entry(store, world):
    serial = world.fill(store, world.start(store), 1)[0]
    before = store.head()[0]
    store.take_back(serial, "torn", world.clock.now(), "i.sedge")
    assert store.head()[0] == before + 1
    (row,) = queries.rejects_of_day(world.home, world.day)
    assert (row.serial, row.reason, row.label) == (serial, "torn", LabelState.VOIDED)


@pytest.mark.parametrize("state", list(LabelState))
def test_a_void_label_stays_void(store, world, state):
    serial = world.fill(store, world.start(store), 1)[0]
    store.take_back(serial, "torn", world.clock.now(), "i.sedge")
    with pytest.raises(StoreFault, match="is voided and cannot become"):
        store.mark_label(serial, state, world.clock.now(), "station", "")


@pytest.mark.parametrize(
    "state", [LabelState.RECORDED, LabelState.SUBMITTED, LabelState.SPOOLED, LabelState.NONE]
)
def test_an_applied_label_is_not_printed_again_under_the_same_state(store, world, state):
    serial = world.fill(store, world.start(store), 1)[0]
    with pytest.raises(StoreFault, match="allowed is in doubt, voided"):
        store.mark_label(serial, state, world.clock.now(), "station", "")


def test_a_reject_has_no_label_to_mark_or_to_take_back(store, world):
    run = world.start(store)
    serial = store.add_pack(world.draft(run, "0.2405", "too light")).serial
    with pytest.raises(StoreFault, match="is none and cannot become"):
        store.mark_label(serial, LabelState.SUBMITTED, world.clock.now(), "station", "")
    with pytest.raises(StoreFault, match="is none and cannot become"):
        store.take_back(serial, "torn", world.clock.now(), "i.sedge")


def test_an_unknown_serial_is_named(store, world):
    with pytest.raises(StoreFault, match="bag L9-ZZ-000001 is not in the record"):
        store.mark_label("L9-ZZ-000001", LabelState.APPLIED, world.clock.now(), "station", "")


# --- lots, runs, notes --------------------------------------------------------------------------


def test_known_lots_are_not_recorded_again(store, world):
    before = store.head()
    assert store.add_lots(world.lots, world.clock.now(), "p.marsh") == 0
    assert store.head() == before
    assert queries.known_lots(world.home) == tuple(sorted(world.lots, key=lambda lot: lot.code))


def test_a_lot_s_new_status_is_recorded(store, world):
    held = replace(world.lots[0], status=LotStatus.HELD)
    assert store.add_lots([held], world.clock.now(), "q.alder") == 0
    assert held in queries.known_lots(world.home)
    assert kinds(world)[-1] is EntryKind.LOT


def test_a_second_delivery_under_a_known_code_is_refused(store, world):
    other = replace(world.lots[0], supplier="Quarry Farm", harvested=None)
    fresh = replace(world.lots[0], code="LF-900")
    before = store.head()
    with pytest.raises(StoreFault, match="LF-101 is already in the record as another delivery"):
        store.add_lots([fresh, other], world.clock.now(), "p.marsh")
    assert store.head() == before
    assert fresh not in queries.known_lots(world.home)


def test_a_run_with_a_lot_nobody_received_is_refused(world):
    with world.open() as store, pytest.raises(StoreFault, match="lot CR-201, LF-101 is not"):
        world.start(store)


def test_a_run_is_started_once(store, world):
    run = world.start(store)
    with pytest.raises(StoreFault, match="already in the record"):
        store.start_run(run, world.clock.now())


def test_blend_numbers_rise_by_line_and_day(store, world):
    assert store.next_blend_number("L1", world.day) == 1
    for number in (1, 2, 10):
        world.start(store, number)
    assert store.next_blend_number("L1", world.day) == 11
    assert store.next_blend_number("L", world.day) == 1
    assert store.next_blend_number("L2", world.day) == 1
    assert store.next_blend_number("L1", date(2026, 3, 5)) == 1


def test_a_note_is_kept_in_its_words(store, world):
    store.note("scale link lost: no frame for 2 s", world.clock.now(), "station")
    assert journal(world)[-1].body == {"words": "scale link lost: no frame for 2 s"}


# --- the log ------------------------------------------------------------------------------------


def test_the_log_is_folded_in_while_packing(store, world):
    run = world.start(store)
    log = world.database.with_name("station.sqlite-wal")
    for _ in range(CHECKPOINT_EVERY):
        store.add_pack(world.draft(run))
    first = log.stat().st_size
    for _ in range(CHECKPOINT_EVERY):
        store.add_pack(world.draft(run))
    assert log.stat().st_size < 1.2 * first
    assert read_head(world.home).seq == store.head()[0]  # noted with each commit
    (world.home / "station.last").unlink()
    seen = read_head(world.home)  # written with each checkpoint
    assert 0 < store.head()[0] - seen.seq < CHECKPOINT_EVERY


def test_the_journal_cannot_be_changed_cut_or_stretched(store, world):
    with closing(sqlite3.connect(world.database, isolation_level=None)) as other:
        for statement in (
            "UPDATE journal SET canonical = x'00'",
            "DELETE FROM journal",
            "INSERT INTO journal SELECT id + 2, epoch, seq + 2, kind, hash, canonical FROM journal"
            " ORDER BY id DESC LIMIT 1",
            "INSERT OR REPLACE INTO journal SELECT id, epoch, seq, kind, hash, x'00' FROM journal",
            "DELETE FROM identity",
        ):
            with pytest.raises(sqlite3.IntegrityError, match=r"journal: |identity: "):
                other.execute(statement)


def test_every_entry_is_text_and_whole_numbers(store, world):
    world.fill(store, world.start(store), 2)
    with reading(world.home) as connection:
        for kept in entries(connection):
            whole = json.loads(kept.stored.canonical, parse_float=lambda text: pytest.fail(text))
            assert whole["v"] == 1
