"""The questions of every day are answered by an index, never by reading all bags."""

from datetime import date

import pytest
from sqlalchemy import event

from station.store import queries
from station.store.engine import reader_engine
from station.store.prepared import driver_of
from station.store.recall import reach_of_day, reach_of_lot


@pytest.fixture
def plans(packed_once):
    """Ask something and return SQLite's plan of every statement that was run."""
    engine = reader_engine(packed_once.home.resolve() / "station.sqlite")

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
        (lambda home, _: queries.rejects_of_day(home, date(2026, 3, 4)), "ix_pack_rejected"),
        (lambda home, _: queries.trace_lot(home, "LF-101"), "ix_pack_blend_id"),
        (lambda home, _: reach_of_lot(home, "LF-101"), "ix_pack_blend_id"),
        (lambda home, _: reach_of_day(home, date(2026, 3, 4)), "ix_blend_production_day"),
        (lambda home, _: queries.trace_lot(home, "LF-101"), "ix_lot_use_lot"),
        (
            lambda home, packed: queries.trace_pack(home, packed.serials[3]),
            "sqlite_autoindex_pack_1",
        ),
        (lambda home, packed: queries.run_tally(home, packed.runs[0].id), "ix_pack_blend_id"),
        (lambda home, _: queries.last_run(home), "ix_pack_blend_id"),
        (lambda home, _: queries.in_doubt(home), "ix_pack_label_open"),
    ],
)
def test_a_question_uses_its_index_and_scans_no_bags(plans, packed_once, question, index):
    found = plans(lambda: question(packed_once.home, packed_once))
    assert not [step for step in found if step.startswith("SCAN pack")], found
    assert any(index in step for step in found), found
