"""The questions of every day are answered by an index, never by reading all bags."""

from datetime import date

import pytest
from sqlalchemy import event

from station.store import queries
from station.store.engine import reader_engine


@pytest.fixture
def plans(packed_once):
    """Ask something and return SQLite's plan of every statement that was run."""
    engine = reader_engine(packed_once.home.resolve() / "station.sqlite")

    def asked(question):
        statements = []

        def note(connection, cursor, statement, parameters, context, many):
            if statement.lstrip().startswith("SELECT"):
                statements.append((statement, parameters))

        event.listen(engine, "before_cursor_execute", note)
        try:
            question()
        finally:
            event.remove(engine, "before_cursor_execute", note)
        with engine.connect() as connection:
            return [
                row[3]
                for statement, parameters in statements
                for row in connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {statement}", parameters)
            ]

    return asked


@pytest.mark.parametrize(
    ("question", "index"),
    [
        (lambda home, _: queries.rejects_of_day(home, date(2026, 3, 4)), "ix_pack_rejected"),
        (lambda home, _: queries.trace_lot(home, "LF-101"), "ix_pack_blend_id"),
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
