"""Third shape: Merkle roots, shipping, ends of rejects, what stands, less to write with a bag."""

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
    # A new bag's label is *recorded*. Left out here, its commit writes one page less; labels that
    # stayed so are looked for among the bags since the last start.
    "DROP INDEX ix_pack_label_open",
    """
    CREATE INDEX ix_pack_label_open ON pack (label)
        WHERE label IN ('submitted', 'spooled', 'in doubt')
    """,
    # Purges are found without the tables, which are made from what they leave.
    "CREATE INDEX ix_journal_purge ON journal (id) WHERE kind = 'purge'",
    # The same guard without a sum over the table: the entry before is there and next to this one,
    # or this is the very first; and none has its number yet, so that none is replaced.
    "DROP TRIGGER journal_gapless",
    """
    CREATE TRIGGER journal_gapless BEFORE INSERT ON journal
    WHEN EXISTS (SELECT 1 FROM journal WHERE id >= NEW.id)
      OR NOT EXISTS (
        SELECT 1 FROM journal WHERE id = NEW.id - 1
          AND NEW.seq = CASE epoch WHEN NEW.epoch THEN seq + 1 ELSE 1 END
      ) AND NOT (NEW.id = 1 AND NEW.seq = 1)
    BEGIN
      SELECT RAISE(ABORT, 'journal: entry is not next to the last one');
    END
    """,
)

_REJECTS = (
    """
    CREATE TABLE disposition (
        id INTEGER NOT NULL,
        serial TEXT NOT NULL,
        uid TEXT NOT NULL,
        result TEXT NOT NULL,
        into_serial TEXT,
        who TEXT NOT NULL,
        CONSTRAINT pk_disposition PRIMARY KEY (id),
        CONSTRAINT uq_disposition_serial UNIQUE (serial),
        CONSTRAINT uq_disposition_into_serial UNIQUE (into_serial)
    ) STRICT
    """,
)

_SHIPPING = (
    """
    CREATE TABLE shipment (
        id INTEGER NOT NULL,
        uid TEXT NOT NULL,
        number TEXT NOT NULL,
        customer TEXT NOT NULL,
        name TEXT NOT NULL,
        place TEXT NOT NULL,
        gln TEXT NOT NULL,
        reference TEXT NOT NULL,
        state TEXT NOT NULL,
        who TEXT NOT NULL,
        at TEXT NOT NULL,
        offset_minutes INTEGER NOT NULL,
        CONSTRAINT pk_shipment PRIMARY KEY (id),
        CONSTRAINT uq_shipment_number UNIQUE (number),
        CONSTRAINT ck_shipment_state CHECK (
            state IN ('shipped', 'shipment withdrawn', 'shipment came back')
        )
    ) STRICT
    """,
    "CREATE INDEX ix_shipment_customer ON shipment (customer)",
    """
    CREATE TABLE unit (
        id INTEGER NOT NULL,
        uid TEXT NOT NULL,
        sscc TEXT NOT NULL,
        kind TEXT NOT NULL,
        product TEXT NOT NULL,
        name TEXT NOT NULL,
        gtin TEXT NOT NULL,
        blend_lot TEXT NOT NULL,
        use_by TEXT NOT NULL,
        bags INTEGER NOT NULL,
        net_ug INTEGER NOT NULL,
        pallet_id INTEGER,
        shipment_id INTEGER,
        undone INTEGER NOT NULL,
        label TEXT NOT NULL,
        copies INTEGER NOT NULL,
        at TEXT NOT NULL,
        offset_minutes INTEGER NOT NULL,
        CONSTRAINT pk_unit PRIMARY KEY (id),
        CONSTRAINT uq_unit_sscc UNIQUE (sscc),
        CONSTRAINT ck_unit_undone CHECK (undone IN (0, 1)),
        CONSTRAINT ck_unit_bags CHECK (bags > 0),
        CONSTRAINT fk_unit_pallet_id FOREIGN KEY (pallet_id) REFERENCES unit (id),
        CONSTRAINT fk_unit_shipment_id FOREIGN KEY (shipment_id) REFERENCES shipment (id)
    ) STRICT
    """,
    "CREATE INDEX ix_unit_pallet_id ON unit (pallet_id)",
    "CREATE INDEX ix_unit_shipment_id ON unit (shipment_id)",
    """
    CREATE INDEX ix_unit_in_house ON unit (kind)
    WHERE undone = 0 AND pallet_id IS NULL AND shipment_id IS NULL
    """,
    """
    CREATE TABLE case_span (
        id INTEGER NOT NULL,
        unit_id INTEGER NOT NULL,
        head TEXT NOT NULL,
        "first" INTEGER NOT NULL,
        "last" INTEGER NOT NULL,
        undone INTEGER NOT NULL CONSTRAINT ck_case_span_undone CHECK (undone IN (0, 1)),
        CONSTRAINT pk_case_span PRIMARY KEY (id),
        CONSTRAINT ck_case_span_numbers CHECK ("first" > 0 AND "last" >= "first"),
        CONSTRAINT fk_case_span_unit_id FOREIGN KEY (unit_id) REFERENCES unit (id)
    ) STRICT
    """,
    "CREATE INDEX ix_case_span_unit_id ON case_span (unit_id)",
    'CREATE INDEX ix_case_span_head ON case_span (head, "first")',
)


STANDING = (
    """
    CREATE TABLE standing (
        kind TEXT NOT NULL,
        "key" TEXT NOT NULL,
        entry_id INTEGER NOT NULL,
        CONSTRAINT pk_standing PRIMARY KEY (kind, "key"),
        CONSTRAINT fk_standing_entry_id FOREIGN KEY (entry_id) REFERENCES journal (id)
    ) STRICT, WITHOUT ROWID
    """,
    "CREATE INDEX ix_fact_newest ON fact (kind)",
    "CREATE INDEX ix_lot_received ON lot (received)",
    # What facts of the shapes before begin and end, as station.core.standing has it.
    """
    CREATE TEMPORARY TABLE told AS
        SELECT fact.id, fact.uid, fact.kind, fact.subject, fact.result, fact.entry_id,
            json_extract(CAST(journal.canonical AS TEXT), '$.body.details') AS details
        FROM fact JOIN journal ON journal.id = fact.entry_id
        WHERE fact.kind IN ('label roll', 'scan back', 'suspect window', 'pause', 'hold', 'release',
            'target proposal', 'lot move', 'tare study')
    """,
    """
    INSERT INTO standing (kind, "key", entry_id)
    SELECT kind, uid, entry_id FROM told AS begun
    WHERE (kind = 'label roll' AND result = 'put in'
        OR kind = 'scan back' AND result = 'differs'
        OR kind = 'suspect window' AND details ->> 'decides' IS NULL
        OR kind = 'pause' AND result = 'stopped'
        OR kind = 'target proposal' AND result = 'proposed'
        OR kind = 'hold' AND coalesce(details ->> 'lot', '') <> '')
      AND uid NOT IN (
        SELECT coalesce(details ->> CASE kind WHEN 'label roll' THEN 'roll'
            WHEN 'scan back' THEN 'scan' WHEN 'suspect window' THEN 'decides'
            WHEN 'pause' THEN 'pause' WHEN 'target proposal' THEN 'answers'
            WHEN 'release' THEN 'hold' END, '')
        FROM told WHERE NOT (kind = 'label roll' AND result <> 'taken out')
            AND NOT (kind = 'scan back' AND result <> 'cleared'))
    """,
    """
    INSERT INTO standing (kind, "key", entry_id)
    SELECT kind, (details ->> 'line') || char(9) || subject, min(entry_id) FROM told AS begun
    WHERE kind = 'lot move' AND result IN ('loaded', 'rework') AND NOT EXISTS (
        SELECT 1 FROM told AS gone WHERE gone.kind = 'lot move' AND gone.id > begun.id
            AND gone.subject = begun.subject AND gone.result IN ('empty', 'returned')
            AND gone.details ->> 'line' = begun.details ->> 'line')
    GROUP BY 2
    """,
    """
    INSERT INTO standing (kind, "key", entry_id)
    SELECT kind, subject || char(9) || (details ->> 'film_lot'), max(entry_id) FROM told
    WHERE kind = 'tare study' GROUP BY 2
    """,
    """
    INSERT INTO standing (kind, "key", entry_id)
    SELECT kind, 'target' || char(9) || subject, max(entry_id) FROM told
    WHERE kind = 'target proposal' AND result = 'approved' GROUP BY 2
    """,
    """
    INSERT INTO standing (kind, "key", entry_id)
    SELECT 'label', '', max(id) FROM journal WHERE kind = 'start' HAVING max(id) IS NOT NULL
    """,
    "DROP TABLE told",
)


def upgrade() -> None:
    """Add tables, fill those of roots and of what stands; no row that was there changes."""
    for statement in (*_STATEMENTS, *_REJECTS, *_SHIPPING, *STANDING):
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
