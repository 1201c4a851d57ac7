"""What is wrong with a record, and where."""

from __future__ import annotations


class Damage(Exception):
    """The record does not hold.

    Args:
        seq: the entry at fault, or None when the journal is whole and a table is not.
        why: what was found and where.
    """

    def __init__(self, seq: int | None, why: str) -> None:
        super().__init__(why)
        self.seq = seq
        self.why = why
