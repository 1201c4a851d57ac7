"""What can go wrong on the way to the centre, by what has to be done about it."""

from __future__ import annotations

import psycopg


class CentreGone(Exception):
    """The centre cannot be reached or did not answer in time; trying again later is right.

    What was under way may or may not have been done; the next handshake tells.
    """


class TakenElsewhere(Exception):
    """Somebody else sent for this station meanwhile; ask the centre again."""


class TwoRecords(Exception):
    """The centre holds other entries of this station's epoch than the station does.

    Two stations have one name, or an older copy of the record was put back. Nothing more of the
    epoch may be sent until a person has looked.
    """

    def __init__(self, words: str, seq: int) -> None:
        super().__init__(words)
        self.seq = seq


class DeadlinePassed(psycopg.OperationalError):
    """The other side did not answer in time; the connection is closed."""


class Abandoned(psycopg.OperationalError):
    """The station stops; the connection is closed."""


REFUSALS = (psycopg.DataError, psycopg.IntegrityError)
"""The centre understood and refused a row: the row is at fault, not the way."""
