"""Options of the verbs that speak to the centre, and the connection they make."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, TypeVar

import typer

from station.errors import BadInput, EnvironmentFault

if TYPE_CHECKING:
    from station.sync.address import CentreAddress
    from station.sync.connection import CentreConnection
    from station.sync.questions import Plant

_Found = TypeVar("_Found")
_WAIT_S = 10.0

Url = Annotated[
    str,
    typer.Option(
        "--centre",
        metavar="URL",
        envvar="STATION_CENTRE",
        help="postgresql://user@host:port/database, no password.",
    ),
]
Authority = Annotated[
    Path | None,
    typer.Option("--authority", metavar="FILE", help="Certificate of the server's authority."),
]
TlsWord = Annotated[
    str,
    typer.Option(
        "--tls", metavar="WORD", help="verify-full; or say openly: verify-ca, require, disable."
    ),
]
PasswordFile = Annotated[
    Path | None, typer.Option("--password-file", metavar="FILE", help="File with the password.")
]


def address_from(
    url: str, authority: Path | None, tls: str, password_file: Path | None
) -> CentreAddress:
    """The address that the options give.

    Raises:
        BadInput: the address or the check is not allowed.
    """
    from station.sync.address import CentreAddress, Tls, read_password  # slow to load

    if tls not in set(Tls):
        raise BadInput("--tls", f"{tls!r}: one of {', '.join(Tls)}")
    password = "" if password_file is None else read_password(password_file)
    return CentreAddress(url, Tls(tls), authority, password=password)


@contextmanager
def centre_of(
    url: str, authority: Path | None, tls: str, password_file: Path | None
) -> Iterator[CentreConnection]:
    """Connect to the centre.

    Raises:
        BadInput: the address or the check is not allowed.
        EnvironmentFault: nobody answers, or the connection is lost.
    """
    from station.sync.connection import connect  # slow to load

    address = address_from(url, authority, tls, password_file)
    with serving(address), connect(address, "station centre", _WAIT_S) as connection:
        yield connection


@contextmanager
def serving(address: CentreAddress) -> Iterator[None]:
    """Say in words when a centre does not serve.

    Raises:
        EnvironmentFault: nobody answers, or the connection is lost.
    """
    from station.sync.errors import CentreGone  # slow to load

    try:
        yield
    except CentreGone as gone:
        raise EnvironmentFault(f"the centre {address.shown} does not serve", str(gone)) from gone


def asked(
    connection: CentreConnection, ask: Callable[[Plant], _Found]
) -> tuple[_Found, tuple[str, ...]]:
    """Bring the tables up to the entries and ask; with the answer, what it may lack."""
    from station.sync.errors import CentreGone  # slow to load
    from station.sync.founding import check_shape
    from station.sync.projector import bring_up
    from station.sync.questions import Plant

    lacks: list[str] = []
    with connection.within(_WAIT_S):
        check_shape(connection)
    try:
        bring_up(connection)
    except CentreGone as refused:
        if connection.closed:
            raise
        lacks.append(f"the tables could not be brought up to the entries: {refused}")
    plant = Plant(connection)
    lacks += [
        f"station {one.name} may hold more: {since(one.silent_s)}"
        for one in plant.stations()
        if one.silent_s is None or one.silent_s > SILENT_S or one.oldest_unsent is not None
    ]
    return ask(plant), tuple(lacks)


SILENT_S = 600.0
"""A station that has not spoken for so long is told."""


def since(silent_s: float | None) -> str:
    """How long a station has been silent, in words."""
    if silent_s is None:
        return "it has not spoken yet"
    if silent_s < 120:
        return f"it spoke {silent_s:.0f} s ago"
    if silent_s < 7200:
        return f"it spoke {silent_s / 60:.0f} min ago"
    return f"it spoke {silent_s / 3600:.0f} h ago"
