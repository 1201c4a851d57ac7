"""Third shape: Merkle roots of whole blocks of 256 entries."""

from __future__ import annotations

from collections.abc import Iterator
from hashlib import sha256

from alembic import op
from sqlalchemy import Connection

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None

_BLOCK = 256

_STATEMENTS = (
    """
    CREATE TABLE tree_block (
        id INTEGER NOT NULL,
        epoch INTEGER NOT NULL,
        number INTEGER NOT NULL CONSTRAINT ck_tree_block_number CHECK (number >= 0),
        root BLOB NOT NULL CONSTRAINT ck_tree_block_root CHECK (length(root) = 32),
        CONSTRAINT pk_tree_block PRIMARY KEY (id),
        CONSTRAINT uq_tree_block_epoch UNIQUE (epoch, number)
    ) STRICT
    """,
)


def upgrade() -> None:
    """Add the table and fill it from the journal; nothing that was there changes."""
    for statement in _STATEMENTS:
        op.execute(statement)
    connection = op.get_bind()
    for epoch, number, root in _blocks(connection):
        connection.exec_driver_sql(
            "INSERT INTO tree_block (epoch, number, root) VALUES (?, ?, ?)", (epoch, number, root)
        )


def _blocks(connection: Connection) -> Iterator[tuple[int, int, bytes]]:
    leaves: list[bytes] = []
    for epoch, seq, entry in connection.exec_driver_sql(
        "SELECT epoch, seq, hash FROM journal ORDER BY id"
    ):
        if seq == 1:
            leaves = []
        leaves.append(sha256(b"\x00" + entry).digest())
        if len(leaves) == _BLOCK:
            yield epoch, seq // _BLOCK - 1, _root(leaves)
            leaves = []


def _root(level: list[bytes]) -> bytes:
    while len(level) > 1:
        pairs = zip(level[::2], level[1::2], strict=True)
        level = [sha256(b"\x01" + left + right).digest() for left, right in pairs]
    return level[0]
