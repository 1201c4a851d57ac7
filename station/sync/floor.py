"""The least that could bring entries to a server: what sending is measured against."""

from __future__ import annotations

from collections.abc import Sequence

from station.store.outlet import Sent
from station.sync.connection import CentreConnection

_TABLE = """CREATE TABLE {name} (site text NOT NULL, station text NOT NULL, epoch bigint NOT NULL,
    seq bigint NOT NULL, kind text NOT NULL, hash bytea NOT NULL, canonical bytea NOT NULL,
    PRIMARY KEY (site, station, epoch, seq))"""
_TYPES = ("text", "text", "int8", "int8", "text", "bytea", "bytea")
_WAIT_S = 60.0


class BareTable:
    """A table like the centre's and nothing around it: no checks, no rights, no watermark.

    Args:
        connection: as an owner.
        name: of the table; made here.
    """

    def __init__(self, connection: CentreConnection, name: str) -> None:
        self._connection, self._name = connection, name
        with connection.within(_WAIT_S):
            connection.execute(_TABLE.format(name=name).encode())
            connection.execute(
                f"CREATE TEMPORARY TABLE {name}_arrived (LIKE {name}) "
                "ON COMMIT DELETE ROWS".encode()
            )

    def copy(self, key: tuple[str, str, int], entries: Sequence[Sent]) -> None:
        """COPY straight into the table, one commit."""
        with self._connection.within(_WAIT_S), self._connection.transaction():
            self._copy(self._name, key, entries)

    def copy_on_conflict(self, key: tuple[str, str, int], entries: Sequence[Sent]) -> None:
        """COPY into a temporary table and INSERT … ON CONFLICT DO NOTHING, one commit."""
        with self._connection.within(_WAIT_S), self._connection.transaction():
            self._copy(f"{self._name}_arrived", key, entries)
            self._connection.execute(
                f"INSERT INTO {self._name} SELECT * FROM {self._name}_arrived "
                "ON CONFLICT DO NOTHING".encode()
            )

    def _copy(self, table: str, key: tuple[str, str, int], entries: Sequence[Sent]) -> None:
        statement = f"COPY {table} FROM STDIN (FORMAT BINARY)".encode()
        with self._connection.cursor() as cursor, cursor.copy(statement) as copy:
            copy.set_types(_TYPES)
            for entry in entries:
                copy.write_row((*key, *entry))
