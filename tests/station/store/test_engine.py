import sqlite3
from contextlib import closing

import pytest
from sqlalchemy.exc import DBAPIError

from station.errors import BadInput, EnvironmentFault
from station.store import engine as engines
from station.store.engine import database, reader_engine, reading, writer_engine


def answer(connection, pragma):
    return connection.exec_driver_sql(f"PRAGMA {pragma}").scalar_one()


@pytest.fixture
def path(tmp_path):
    return tmp_path / "station.sqlite"


@pytest.fixture
def writer(path):
    engine = writer_engine(path)
    yield engine
    engine.dispose()


# Values as SQLite's documentation of each PRAGMA numbers them
@pytest.mark.parametrize(
    ("pragma", "value"),
    [
        ("journal_mode", "wal"),
        ("synchronous", 2),
        ("foreign_keys", 1),
        ("busy_timeout", 5000),
        ("cell_size_check", 1),
        ("trusted_schema", 0),
        ("wal_autocheckpoint", 0),
        ("mmap_size", 0),
        ("query_only", 0),
    ],
)
def test_the_writer_keeps_its_pragmas(writer, pragma, value):
    with writer.connect() as connection:
        assert answer(connection, pragma) == value


@pytest.mark.parametrize(
    ("pragma", "value"), [("query_only", 1), ("trusted_schema", 0), ("cell_size_check", 1)]
)
def test_a_reader_keeps_its_pragmas(writer, path, pragma, value):
    with writer.connect() as connection, connection.begin():
        connection.exec_driver_sql("CREATE TABLE t (x INTEGER) STRICT")
    with reader_engine(path).connect() as connection:
        assert answer(connection, pragma) == value


def test_a_reader_can_neither_write_nor_switch_writing_on(writer, path):
    with writer.connect() as connection, connection.begin():
        connection.exec_driver_sql("CREATE TABLE t (x INTEGER) STRICT")
    with reader_engine(path).connect() as connection:
        connection.exec_driver_sql("PRAGMA query_only=OFF")
        with pytest.raises(DBAPIError, match="readonly"):
            connection.exec_driver_sql("INSERT INTO t VALUES (1)")


def test_a_reader_leaves_the_log_alone_when_it_closes(writer, path):
    with writer.connect() as connection, connection.begin():
        connection.exec_driver_sql("CREATE TABLE t (x INTEGER) STRICT")
    log = path.with_name(path.name + "-wal")
    before = log.read_bytes()
    with reader_engine(path).connect() as connection:
        connection.exec_driver_sql("SELECT * FROM t")
    assert log.read_bytes() == before


def test_there_is_one_writing_connection_and_no_second(path):
    engine = writer_engine(path)
    engine.pool._timeout = 0.05
    with engine.connect(), pytest.raises(Exception, match="QueuePool limit"):
        engine.connect()
    engine.dispose()


def test_the_writer_takes_the_lock_when_it_begins(writer, path):
    with (
        writer.connect() as connection,
        connection.begin(),
        closing(sqlite3.connect(path, timeout=0, isolation_level=None)) as other,
        pytest.raises(sqlite3.OperationalError, match="locked"),
    ):
        other.execute("BEGIN IMMEDIATE")


def test_ddl_rolls_back(writer):
    with writer.connect() as connection:
        transaction = connection.begin()
        connection.exec_driver_sql("CREATE TABLE t (x INTEGER) STRICT")
        transaction.rollback()
        assert connection.exec_driver_sql("SELECT count(*) FROM sqlite_schema").scalar_one() == 0


def test_a_pragma_that_is_not_kept_stops_the_start(path, monkeypatch):
    asked = (*engines.WRITER, ("page_size", "12345", 12345))  # no power of two: ignored silently
    monkeypatch.setattr(engines, "WRITER", asked)
    engine = writer_engine(path)
    with pytest.raises(EnvironmentFault, match="does not keep PRAGMA page_size=12345"):
        engine.connect()
    engine.dispose()


def test_a_file_that_is_no_database_is_refused_in_words(path):
    path.write_bytes(b"not a database, just some text that is long enough" * 20)
    engine = writer_engine(path)
    with pytest.raises(EnvironmentFault, match="no station record"):
        engine.connect()
    engine.dispose()


def test_reading_where_nothing_is_names_the_folder(tmp_path):
    with pytest.raises(BadInput, match="no station record in"), reading(tmp_path):
        pass


def test_reading_a_damaged_header_is_a_fault_of_the_surroundings(tmp_path):
    database(tmp_path).write_bytes(bytes(8192))
    with pytest.raises(EnvironmentFault, match="cannot"), reading(tmp_path) as connection:
        connection.exec_driver_sql("SELECT * FROM journal")
