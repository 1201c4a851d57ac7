"""Somebody looked at what lies in quarantine: signed, and never taken out."""

from __future__ import annotations

from station.sync.connection import CentreConnection

_WAIT_S = 30.0
_SIGN = """
    INSERT INTO centre.settled
    SELECT DISTINCT site, station, epoch, seq, hash, %s, %s, clock_timestamp()
    FROM centre.quarantine WHERE site = %s AND station = %s ON CONFLICT DO NOTHING"""


def settle(connection: CentreConnection, station: tuple[str, str], who: str, reason: str) -> int:
    """Sign for every entry of a station that lies in quarantine now; returns how many were open.

    Args:
        connection: as the centre's owner.
        station: site and station.
        who: id of the person.
        reason: what was found.
    """
    with connection.within(_WAIT_S):
        return connection.execute(_SIGN, (who, reason, *station)).rowcount
