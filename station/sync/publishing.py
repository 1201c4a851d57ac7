"""Puts snapshots of the centre into its database, signed with a key that does not lie there."""

from __future__ import annotations

from datetime import datetime

from station.core.journal import Value
from station.store.signing import StationKey
from station.sync.connection import CentreConnection
from station.sync.snapshot import (
    CentreStop,
    Kind,
    Snapshot,
    SnapshotRefused,
    check_content,
    opened,
    stops_of,
)

_WAIT_S = 30.0
_LAST = (
    "SELECT version, body, signature FROM centre.snapshot WHERE site = %s AND kind = %s "
    "ORDER BY version DESC LIMIT 1"
)
_PUT = "INSERT INTO centre.snapshot VALUES (%s, %s, %s, %s, %s) ON CONFLICT DO NOTHING"


def publish(
    connection: CentreConnection,
    key: StationKey,
    site: str,
    kind: Kind,
    content: Value,
    effective: datetime,
    made: datetime,
) -> Snapshot:
    """Sign the next version and put it where every station of the site finds it.

    Args:
        connection: as the centre's owner.
        key: the centre's, which the stations know.
        site: short code, or ``*``.
        kind: what it is about.
        content: all of it.
        effective: when it begins to hold.
        made: now.

    Raises:
        SnapshotRefused: the content is not of its kind, or another one was published meanwhile.
    """
    with connection.within(_WAIT_S), connection.transaction():
        row = connection.execute(_LAST, (site, str(kind))).fetchone()
        snapshot = Snapshot(site, kind, 1 if row is None else row[0] + 1, effective, made, content)
        check_content(snapshot)
        body = snapshot.body()
        signed = (site, str(kind), snapshot.version, body, key.sign(body))
        if connection.execute(_PUT, signed).rowcount != 1:
            raise SnapshotRefused(f"somebody else published {snapshot.name} just now: try again")
    return snapshot


def stops_now(connection: CentreConnection, key: StationKey, site: str) -> tuple[CentreStop, ...]:
    """The newest stop list of a site.

    Raises:
        SnapshotRefused: it is not signed with this key.
    """
    with connection.within(_WAIT_S):
        row = connection.execute(_LAST, (site, str(Kind.STOPS))).fetchone()
    if row is None:
        return ()
    return stops_of(opened(bytes(row[1]), bytes(row[2]), key.public))
