"""Core statements compiled once, for the few that run with every bag.

``Connection.execute`` looks a statement up in its cache, sorts its parameters and wraps the result
anew each time, which costs several times SQLite's own work. A prepared statement keeps the text and
the order, still passes each value through its column's type, and runs on the driver's connection,
inside whatever transaction SQLAlchemy began there.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Mapping, Sequence
from typing import Any

from sqlalchemy import Connection, Table
from sqlalchemy.dialects.sqlite.pysqlite import SQLiteDialect_pysqlite
from sqlalchemy.sql.compiler import SQLCompiler
from sqlalchemy.sql.expression import ClauseElement

_DIALECT = SQLiteDialect_pysqlite(paramstyle="qmark")


class Prepared:
    """One statement with named parameters.

    Args:
        statement: a Core statement.
        columns: the columns an insert fills; empty for any other statement.
    """

    def __init__(self, statement: ClauseElement, columns: Sequence[str] = ()) -> None:
        compiled = statement.compile(
            dialect=_DIALECT,
            column_keys=list(columns) or None,
        )
        assert isinstance(compiled, SQLCompiler), "only statements are prepared, no DDL"
        self._text = compiled.string
        self._binds = tuple(
            (name, compiled.binds[name].type.dialect_impl(_DIALECT).bind_processor(_DIALECT))
            for name in compiled.positiontup or ()
        )

    def execute(self, connection: Connection, values: Mapping[str, Any]) -> sqlite3.Cursor:
        """Run it; result values come as SQLite gives them.

        Raises:
            KeyError: a parameter has no value.
            ValueError: a column's type refuses a value.
            sqlite3.Error: as the driver raises it.
        """
        bound = [
            values[name] if process is None else process(values[name])
            for name, process in self._binds
        ]
        return driver_of(connection).execute(self._text, bound)


def driver_of(connection: Connection) -> sqlite3.Connection:
    """The driver's connection behind SQLAlchemy's."""
    driver = connection.connection.driver_connection
    assert isinstance(driver, sqlite3.Connection), "the engine opens sqlite3 connections"
    return driver


def insert_text(table: Table) -> str:
    """The statement that inserts one row: all columns but the row number, in the table's order.

    Nothing stands between its values and the driver: whoever uses it turns days, times, words and
    masses into what the column's type would make of them.
    """
    names = [f'"{column.name}"' for column in table.columns if column.name != "id"]
    marks = ", ".join("?" * len(names))
    return f"INSERT INTO {table.name} ({', '.join(names)}) VALUES ({marks})"
