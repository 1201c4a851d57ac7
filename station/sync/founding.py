"""Makes the centre: its tables, and a role with a password for each station."""

from __future__ import annotations

import re
import secrets
from collections.abc import Sequence
from dataclasses import dataclass

import psycopg
from psycopg import sql

from station.core.training import reserved
from station.errors import BadInput, EnvironmentFault
from station.sync import schema
from station.sync.connection import CentreConnection

_WAIT_S = 120.0
_NAME = re.compile(r"([A-Z0-9]{1,8})/([A-Z0-9]{1,6})", re.ASCII)


@dataclass(frozen=True, slots=True)
class Admitted:
    """A station the centre takes entries from.

    Args:
        site, station: its name.
        role: its role.
        password: of a role made just now; empty where the role was there.
    """

    site: str
    station: str
    role: str
    password: str


def station_name(text: str) -> tuple[str, str]:
    """Read ``SITE/STATION``.

    Raises:
        BadInput: it has another form, or is kept for training.
    """
    match = _NAME.fullmatch(text)
    if match is None:
        raise BadInput(f"{text!r} is no station", "write SITE/STATION as in its settings: QH/A1")
    if why := reserved(match[2]):
        raise BadInput(f"{text!r} is no station", f"{why}: give the code of a station's settings")
    return match[1], match[2]


def found(
    connection: CentreConnection, stations: Sequence[tuple[str, str]]
) -> tuple[Admitted, ...]:
    """Lay down what is missing, all of it or nothing; what is there stays as it is.

    Args:
        connection: as the owner of the database.
        stations: site and station of each that is to be let in.

    Raises:
        BadInput: the centre is of another shape, or the owner may not do this.
        CentreGone: the connection was lost.
    """
    with connection.within(_WAIT_S):
        try:
            with connection.transaction():
                _lay_down(connection)
                return tuple(_admit(connection, *names) for names in stations)
        except psycopg.errors.InsufficientPrivilege as refused:
            raise BadInput(
                "this role may not make the centre",
                f"{refused}".strip() + ": give the address of the database's owner, who may "
                "create roles",
            ) from refused


def check_shape(connection: CentreConnection) -> None:
    """Refuse a centre of another shape; inside ``within``.

    Raises:
        EnvironmentFault: it is newer, older or not made yet.
    """
    try:
        row = connection.execute("SELECT max(shape) FROM centre.shape").fetchone()
    except (psycopg.errors.UndefinedTable, psycopg.errors.InvalidSchemaName) as none:
        raise EnvironmentFault(
            "the centre's database has no tables", "run `station centre init` for it"
        ) from none
    except psycopg.errors.InsufficientPrivilege as none:
        raise EnvironmentFault(
            "the centre does not let this role in", "run `station centre init --station` for it"
        ) from none
    shape = row[0] if row else None
    if shape != schema.SHAPE:
        raise EnvironmentFault(
            f"the centre has shape {shape}, this program knows shape {schema.SHAPE}",
            "bring the older one of the two up to date",
        )


def _lay_down(connection: CentreConnection) -> None:
    for group in (schema.GROUP, schema.READER):
        _make_role(connection, group, sql.SQL("NOLOGIN"))
    there = connection.execute("SELECT to_regclass('centre.shape')").fetchone()
    if there is not None and there[0] is not None:
        check_shape(connection)
    for statement in schema.TABLES:
        connection.execute(statement)
    connection.execute(
        "INSERT INTO centre.shape VALUES (%s) ON CONFLICT DO NOTHING", (schema.SHAPE,)
    )
    for made in schema.rights():
        connection.execute(made)
    connection.execute(
        sql.SQL("GRANT CONNECT ON DATABASE {} TO {}").format(
            sql.Identifier(connection.info.dbname), sql.Identifier(schema.GROUP)
        )
    )


def _admit(connection: CentreConnection, site: str, station: str) -> Admitted:
    for part in schema.site_parts(site):
        connection.execute(part)
    name, password = schema.role(site, station), secrets.token_urlsafe(24)
    with_password = sql.SQL("LOGIN PASSWORD {}").format(sql.Literal(password))
    made = _make_role(connection, name, with_password)
    connection.execute(
        sql.SQL("GRANT {} TO {}").format(sql.Identifier(schema.GROUP), sql.Identifier(name))
    )
    for own in schema.station_part(site, station):
        connection.execute(own)
    return Admitted(site, station, name, password if made else "")


def _make_role(connection: CentreConnection, name: str, how: sql.Composable) -> bool:
    known = connection.execute("SELECT FROM pg_roles WHERE rolname = %s", (name,)).fetchone()
    if known is not None:
        return False
    connection.execute(sql.SQL("CREATE ROLE {} ").format(sql.Identifier(name)) + how)
    return True
