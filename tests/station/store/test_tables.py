"""The questions of every day are answered by an index, never by reading all bags."""

import shutil
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from sqlalchemy import event

from station.core.pack import Moment
from station.core.receiving import hold_lot_fact
from station.errors import BadInput
from station.store import queries
from station.store.bag_sums import run_spans
from station.store.complaint import bag_at, complaint
from station.store.engine import reader_engine
from station.store.facts import fact_named
from station.store.hold_scopes import between_times, of_run
from station.store.inbox import inbox
from station.store.ledger import bin_state, ledger
from station.store.lot_reach import bags_with
from station.store.lot_usage import packed_with
from station.store.prepared import driver_of
from station.store.recall import reach_of_day, reach_of_lot, reach_of_run
from station.store.release_list import Wanted, release_list
from station.store.shipping import places_of
from station.store.since import RecordPast
from station.store.suspects import open_windows
from station.store.weighed import packs_of_run
from station.store.writer import StationStore
from tests.station.store.conftest import DAY, SITE, STATION, SteppingClock

BY_ROWS = "SEARCH pack USING INTEGER PRIMARY KEY (rowid>? AND rowid<?)"
NOON = datetime(2026, 3, 4, 12, tzinfo=UTC)


@pytest.fixture(scope="module")
def packed(packed_once, tmp_path_factory):
    """The packed record with a hold of one of its lots."""
    home = tmp_path_factory.mktemp("asked") / "home"
    shutil.copytree(packed_once.home, home)
    at = Moment(NOON, 60, "Europe/Madrid", 0)
    with StationStore.open(home, SITE, STATION, SteppingClock()) as store:
        held = hold_lot_fact("h1", "LF-102", "grower called", bags_with(home, "LF-102"))
        store.record((held,), at, "q.fen")
    return replace(packed_once, home=home)


@pytest.fixture
def plans(packed):
    """Ask something and return SQLite's plan of every statement that was run."""
    engine = reader_engine(packed.home.resolve() / "station.sqlite")

    def asked(question):
        statements = []

        def note(statement):
            if statement.lstrip().startswith("SELECT"):
                statements.append(statement)

        def trace(driver, _):  # the driver's own view: prepared statements pass SQLAlchemy by
            driver.set_trace_callback(note)

        event.listen(engine, "connect", trace)
        try:
            question()
        finally:
            event.remove(engine, "connect", trace)
        with engine.connect() as connection:
            return [
                row[3]
                for statement in statements
                for row in driver_of(connection).execute(f"EXPLAIN QUERY PLAN {statement}")
            ]

    return asked


@pytest.mark.parametrize(
    ("question", "index"),
    [
        (lambda home, _: queries.rejects_of_day(home, DAY), "ix_pack_rejected"),
        (lambda home, _: queries.trace_lot(home, "LF-101"), BY_ROWS),
        (lambda home, _: reach_of_lot(home, "LF-101"), BY_ROWS),
        (lambda home, _: reach_of_day(home, DAY), "ix_blend_production_day"),
        (lambda home, _: queries.trace_lot(home, "LF-101"), "ix_lot_use_lot"),
        (
            lambda home, packed: queries.trace_pack(home, packed.serials[3]),
            "sqlite_autoindex_pack_1",
        ),
        (lambda home, packed: queries.run_tally(home, packed.runs[0].id), BY_ROWS),
        (lambda home, _: queries.last_run(home), BY_ROWS),
        (lambda home, _: queries.in_doubt(home), "ix_pack_label_open"),
        (lambda home, _: bags_with(home, "LF-101"), BY_ROWS),
        (lambda home, _: packed_with(home, ["LF-101"]), BY_ROWS),
        (lambda home, _: ledger(home, DAY), "ix_pack_rejected"),
        (lambda home, _: bin_state(home, DAY), "ix_pack_rejected"),
        (lambda home, packed: places_of(home, packed.serials), "ix_case_span_head"),
        (lambda home, packed: complaint(home, packed.serials[3]), "sqlite_autoindex_pack_1"),
        (lambda home, _: bag_at(home, "L12606302", NOON), BY_ROWS),
        (lambda home, _: between_times(home, NOON, NOON), "ix_blend_production_day"),
        (lambda home, packed: reach_of_run(home, packed.runs[0].id), BY_ROWS),
        (
            lambda home, _: RecordPast(home).packs_after(fact_named(home, "h1")),
            "pack USING INTEGER PRIMARY KEY (rowid>",
        ),
        (
            lambda home, _: RecordPast(home).packs_since(NOON - timedelta(hours=6), NOON),
            "pack USING INTEGER PRIMARY KEY (rowid>? AND rowid<?)",
        ),
        (lambda home, _: release_list(home, Wanted({}, False), DAY), "sqlite_autoindex_pack_1"),
        (lambda home, _: release_list(home, Wanted({}, True), DAY), BY_ROWS),
        (lambda home, _: release_list(home, Wanted({}, True), DAY), "ix_pack_label_open"),
        (lambda home, _: inbox(home, DAY), "ix_pack_rejected"),
    ],
)
def test_a_question_uses_its_index_and_scans_no_bags(plans, packed, question, index):
    found = plans(lambda: question(packed.home, packed))
    assert not [step for step in found if step.startswith("SCAN pack")], found
    assert any(index in step for step in found), found


@pytest.mark.parametrize(
    "question",
    [
        lambda home: inbox(home, DAY),
        lambda home: release_list(home, Wanted({}, True), DAY),
        lambda home: open_windows(home),
    ],
)
def test_what_is_open_is_asked_of_what_stands_and_not_of_all_facts(plans, packed, question):
    found = plans(lambda: question(packed.home))
    assert any("standing USING PRIMARY KEY (kind=?)" in step for step in found), found
    scanned = [step for step in found if step.startswith(("SCAN fact", "SCAN journal"))]
    assert not scanned, scanned
    assert not [
        step for step in found if step.startswith("SCAN hold_range USING INDEX ix_hold_range_hold")
    ]


def test_a_serial_nobody_has_is_looked_for_among_those_like_it(plans, packed):
    head = packed.serials[0].rpartition("-")[0]

    def ask():
        with pytest.raises(BadInput, match="close to it are"):
            complaint(packed.home, f"{head.lower()}-000999")

    found = plans(ask)
    assert any("sqlite_autoindex_pack_1 (serial>? AND serial<?)" in step for step in found), found


def test_spans_of_runs_are_asked_of_their_own_blends(plans, packed):
    found = plans(lambda: run_spans(packed.home, [packed.runs[0].id]))
    assert not [step for step in found if step.startswith(("SCAN blend", "SCAN run"))], found


@pytest.mark.parametrize("ask", [packs_of_run, of_run])
def test_a_run_is_found_without_going_through_all(plans, packed, ask):
    found = plans(lambda: ask(packed.home, packed.runs[0].id))
    assert not [step for step in found if step.startswith("SCAN run")], found
