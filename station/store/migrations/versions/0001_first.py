"""First shape: identity, journal with its guards, and the projections of packs.

The statements are written out and stay as they are, whatever ``station.store.tables`` becomes.
"""

from __future__ import annotations

from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None

_STATEMENTS = (
    """
    CREATE TABLE identity (
        id INTEGER NOT NULL CONSTRAINT ck_identity_one_row CHECK (id = 1),
        site TEXT NOT NULL,
        station TEXT NOT NULL,
        epoch INTEGER NOT NULL CONSTRAINT ck_identity_epoch CHECK (epoch > 0),
        created_at TEXT NOT NULL,
        CONSTRAINT pk_identity PRIMARY KEY (id)
    ) STRICT
    """,
    """
    CREATE TABLE journal (
        id INTEGER NOT NULL,
        epoch INTEGER NOT NULL,
        seq INTEGER NOT NULL CONSTRAINT ck_journal_seq CHECK (seq > 0),
        kind TEXT NOT NULL,
        hash BLOB NOT NULL CONSTRAINT ck_journal_hash CHECK (length(hash) = 32),
        canonical BLOB NOT NULL,
        CONSTRAINT pk_journal PRIMARY KEY (id)
    ) STRICT
    """,
    """
    CREATE TABLE lot (
        code TEXT NOT NULL,
        component TEXT NOT NULL,
        supplier TEXT NOT NULL,
        received TEXT NOT NULL,
        harvested TEXT,
        use_by TEXT,
        status TEXT NOT NULL,
        CONSTRAINT pk_lot PRIMARY KEY (code)
    ) STRICT
    """,
    """
    CREATE TABLE lot_set (
        id INTEGER NOT NULL,
        "key" TEXT NOT NULL,
        CONSTRAINT pk_lot_set PRIMARY KEY (id),
        CONSTRAINT uq_lot_set_key UNIQUE ("key")
    ) STRICT
    """,
    """
    CREATE TABLE lot_use (
        lot_set_id INTEGER NOT NULL,
        component TEXT NOT NULL,
        lot TEXT NOT NULL,
        CONSTRAINT pk_lot_use PRIMARY KEY (lot_set_id, component, lot),
        CONSTRAINT fk_lot_use_lot_set_id FOREIGN KEY (lot_set_id) REFERENCES lot_set (id),
        CONSTRAINT fk_lot_use_lot FOREIGN KEY (lot) REFERENCES lot (code)
    ) WITHOUT ROWID, STRICT
    """,
    """
    CREATE INDEX ix_lot_use_lot ON lot_use (lot)
    """,
    """
    CREATE TABLE run (
        id INTEGER NOT NULL,
        uid TEXT NOT NULL,
        entry_id INTEGER NOT NULL,
        line TEXT NOT NULL,
        product TEXT NOT NULL,
        version INTEGER NOT NULL,
        name TEXT NOT NULL,
        gtin TEXT NOT NULL,
        rule_set TEXT NOT NULL,
        rule_version TEXT NOT NULL,
        nominal_digits TEXT NOT NULL,
        nominal_unit TEXT NOT NULL,
        nominal_ug INTEGER NOT NULL,
        lead TEXT NOT NULL,
        operator TEXT NOT NULL,
        scale TEXT NOT NULL,
        software TEXT NOT NULL,
        order_size INTEGER,
        started_at TEXT NOT NULL,
        offset_minutes INTEGER NOT NULL,
        ended_at TEXT,
        ended_by TEXT,
        CONSTRAINT pk_run PRIMARY KEY (id),
        CONSTRAINT uq_run_uid UNIQUE (uid),
        CONSTRAINT ck_run_ended CHECK ((ended_at IS NULL) = (ended_by IS NULL)),
        CONSTRAINT fk_run_entry_id FOREIGN KEY (entry_id) REFERENCES journal (id)
    ) STRICT
    """,
    """
    CREATE TABLE blend (
        id INTEGER NOT NULL,
        run_id INTEGER NOT NULL,
        lot_set_id INTEGER NOT NULL,
        code TEXT NOT NULL,
        production_day TEXT NOT NULL,
        use_by TEXT NOT NULL,
        CONSTRAINT pk_blend PRIMARY KEY (id),
        CONSTRAINT uq_blend_run_id UNIQUE (run_id, lot_set_id, code, production_day, use_by),
        CONSTRAINT ck_blend_dates CHECK (use_by >= production_day),
        CONSTRAINT fk_blend_run_id FOREIGN KEY (run_id) REFERENCES run (id),
        CONSTRAINT fk_blend_lot_set_id FOREIGN KEY (lot_set_id) REFERENCES lot_set (id)
    ) STRICT
    """,
    """
    CREATE INDEX ix_blend_code ON blend (code)
    """,
    """
    CREATE INDEX ix_blend_lot_set_id ON blend (lot_set_id)
    """,
    """
    CREATE INDEX ix_blend_production_day ON blend (production_day)
    """,
    """
    CREATE TABLE pack (
        id INTEGER NOT NULL,
        epoch INTEGER NOT NULL,
        number INTEGER NOT NULL CONSTRAINT ck_pack_number CHECK (number > 0),
        serial TEXT NOT NULL,
        uid TEXT NOT NULL,
        entry_id INTEGER NOT NULL,
        blend_id INTEGER NOT NULL,
        gross_digits TEXT NOT NULL,
        gross_unit TEXT NOT NULL,
        gross_ug INTEGER NOT NULL,
        tare_digits TEXT NOT NULL,
        tare_unit TEXT NOT NULL,
        tare_ug INTEGER NOT NULL,
        net_digits TEXT NOT NULL,
        net_unit TEXT NOT NULL,
        net_ug INTEGER NOT NULL,
        verdict TEXT NOT NULL,
        quality TEXT NOT NULL,
        rejected INTEGER NOT NULL,
        reason TEXT NOT NULL,
        label TEXT NOT NULL,
        operator TEXT NOT NULL,
        judged_at TEXT NOT NULL,
        offset_minutes INTEGER NOT NULL,
        CONSTRAINT pk_pack PRIMARY KEY (id),
        CONSTRAINT uq_pack_serial UNIQUE (serial),
        CONSTRAINT ck_pack_rejected CHECK (rejected IN (0, 1)),
        CONSTRAINT ck_pack_reason CHECK (rejected = 0 OR reason <> ''),
        CONSTRAINT fk_pack_entry_id FOREIGN KEY (entry_id) REFERENCES journal (id),
        CONSTRAINT fk_pack_blend_id FOREIGN KEY (blend_id) REFERENCES blend (id)
    ) STRICT
    """,
    """
    CREATE INDEX ix_pack_blend_id ON pack (blend_id)
    """,
    """
    CREATE INDEX ix_pack_label_open ON pack (label)
        WHERE label IN ('recorded', 'submitted', 'spooled', 'in doubt')
    """,
    """
    CREATE INDEX ix_pack_rejected ON pack (blend_id) WHERE rejected = 1
    """,
    """
    CREATE TRIGGER journal_gapless BEFORE INSERT ON journal BEGIN
      SELECT RAISE(ABORT, 'journal: entry is not next to the last one')
      WHERE NEW.id IS NOT (SELECT COALESCE(MAX(id), 0) + 1 FROM journal)
         OR NEW.seq IS NOT 1 + COALESCE(
              (SELECT seq FROM journal WHERE id = NEW.id - 1 AND epoch = NEW.epoch), 0);
    END
    """,
    """
    CREATE TRIGGER journal_no_update BEFORE UPDATE ON journal BEGIN
      SELECT RAISE(ABORT, 'journal: nothing is changed or taken out');
    END
    """,
    """
    CREATE TRIGGER journal_no_delete BEFORE DELETE ON journal BEGIN
      SELECT RAISE(ABORT, 'journal: nothing is changed or taken out');
    END
    """,
    """
    CREATE TRIGGER identity_no_delete BEFORE DELETE ON identity BEGIN
      SELECT RAISE(ABORT, 'identity: nothing is changed or taken out');
    END
    """,
)


def upgrade() -> None:
    """Create everything; the file is empty."""
    for statement in _STATEMENTS:
        op.execute(statement)
