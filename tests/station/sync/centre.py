"""A centre of its own for each test, on one real server, and the stations that send to it."""

import itertools
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from station.store.outlet import JournalOutlet
from station.sync.address import CentreAddress, Tls
from station.sync.batch import Pace
from station.sync.connection import CentreConnection, connect
from station.sync.delivery import Delivery
from station.sync.founding import found
from station.sync.schema import role
from station.sync.sender import Sender
from tests.station.sync.server import Server

_NUMBER = itertools.count(1)
WAIT_S = 20.0


class Centre:
    """An empty database with the centre's tables.

    Args:
        server: where it is.
        stations: site and station of each that may send.
        copied_from: name of a database that is a centre already.
    """

    def __init__(self, server: Server, *stations: tuple[str, str], copied_from: str = "") -> None:
        self.server, self.name = server, f"centre_{next(_NUMBER)}"
        if copied_from:
            server.copy_database(copied_from, self.name)
        else:
            server.make_database(self.name)
            self.admit(*stations)

    def admit(self, *stations: tuple[str, str]):
        with self.owner() as connection:
            return found(connection, stations)

    def address(self, user: str, port: int | None = None) -> CentreAddress:
        return CentreAddress(self.server.url(self.name, user, port), Tls.OFF)

    def station(self, site: str, station: str, port: int | None = None) -> CentreAddress:
        """Address by which a station reaches it, over a proxy where a port is given."""
        return self.address(role(site, station), port)

    def owner(self) -> CentreConnection:
        return connect(self.address("packadmin"), "owner", WAIT_S)

    def ask(self, question: str, *values: object) -> list[tuple]:
        """Ask it as its owner, past everything a station uses."""
        with self.server.connect(self.name) as connection:
            return connection.execute(question, values).fetchall()

    def tell(self, statement: str, *values: object) -> None:
        with self.server.connect(self.name) as connection:
            connection.execute(statement, values)

    def close(self) -> None:
        self.server.drop_database(self.name)

    # --- what is in it ------------------------------------------------------------------------

    def entries(self, epoch: int) -> list[tuple[int, bytes]]:
        """Seq and hash of every entry of an epoch, in order."""
        rows = self.ask("SELECT seq, hash FROM centre.entry WHERE epoch = %s ORDER BY seq", epoch)
        return [(seq, bytes(digest)) for seq, digest in rows]

    def mark(self, epoch: int) -> int:
        rows = self.ask("SELECT seq FROM centre.watermark WHERE epoch = %s", epoch)
        return rows[0][0] if rows else 0

    def quarantine(self) -> list[tuple[int, str]]:
        return self.ask("SELECT seq, why FROM centre.quarantine ORDER BY seq, why")


def entries_of(home: Path) -> dict[int, list[tuple[int, bytes]]]:
    """Seq and hash of every entry of a record, by epoch."""
    with JournalOutlet(home) as outlet:
        return {
            span.epoch: [(one.seq, one.hash) for one in outlet.after(span, 0, span.last, 1 << 40)]
            for span in outlet.epochs()
        }


def assert_level(home: Path, centre: Centre) -> None:
    """Every entry of the record is at the centre, once, and nothing beside it."""
    for epoch, ours in entries_of(home).items():
        assert centre.entries(epoch) == ours
        assert centre.mark(epoch) == len(ours)


@contextmanager
def sender(home: Path, address: CentreAddress, pace: Pace | None = None) -> Iterator[Sender]:
    """A sender on a connection of its own; hands are not shaken yet."""
    with JournalOutlet(home) as outlet, connect(address, "station", WAIT_S) as connection:
        owner = outlet.owner()
        yield Sender(outlet, Delivery(connection, owner.site, owner.station, WAIT_S), pace)


def send_all(home: Path, address: CentreAddress, pace: Pace | None = None) -> int:
    """Bring a record to the centre; returns how many entries were sent."""
    with sender(home, address, pace) as one:
        one.shake_hands()
        return one.drain()
