"""What is wrong with a record, and where."""

from __future__ import annotations


class Damage(Exception):
    """The record does not hold.

    Args:
        seq: the entry at fault, or None when the journal is whole and a table is not.
        why: what was found and where.
        page: number of the page of the file that is damaged, from 1, where SQLite names one.
    """

    def __init__(self, seq: int | None, why: str, page: int | None = None) -> None:
        super().__init__(why)
        self.seq = seq
        self.why = why
        self.page = page
