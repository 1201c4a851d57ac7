"""Second shape: facts beside bags, ranges of held bags, the empty pan's reading, label copies."""

from __future__ import annotations

from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None

_STATEMENTS = (
    "ALTER TABLE pack ADD COLUMN residue_digits TEXT",
    "ALTER TABLE pack ADD COLUMN residue_at TEXT",
    "ALTER TABLE pack ADD COLUMN copies INTEGER NOT NULL DEFAULT 0",
    """
    CREATE TABLE fact (
        id INTEGER NOT NULL,
        uid TEXT NOT NULL,
        entry_id INTEGER NOT NULL,
        kind TEXT NOT NULL,
        subject TEXT NOT NULL,
        result TEXT NOT NULL,
        run TEXT NOT NULL,
        who TEXT NOT NULL,
        at TEXT NOT NULL,
        offset_minutes INTEGER NOT NULL,
        CONSTRAINT pk_fact PRIMARY KEY (id),
        CONSTRAINT uq_fact_uid UNIQUE (uid),
        CONSTRAINT fk_fact_entry_id FOREIGN KEY (entry_id) REFERENCES journal (id)
    ) STRICT
    """,
    "CREATE INDEX ix_fact_kind ON fact (kind, at)",
    "CREATE INDEX ix_fact_run ON fact (run, kind)",
    "CREATE INDEX ix_fact_subject ON fact (subject, kind)",
    """
    CREATE TABLE hold_range (
        id INTEGER NOT NULL,
        hold TEXT NOT NULL,
        epoch INTEGER NOT NULL,
        "first" INTEGER NOT NULL,
        "last" INTEGER NOT NULL,
        released INTEGER NOT NULL CONSTRAINT ck_hold_range_released CHECK (released IN (0, 1)),
        CONSTRAINT pk_hold_range PRIMARY KEY (id),
        CONSTRAINT ck_hold_range_numbers CHECK ("first" > 0 AND "last" >= "first")
    ) STRICT
    """,
    "CREATE INDEX ix_hold_range_hold ON hold_range (hold)",
    """
    CREATE INDEX ix_hold_range_open ON hold_range (epoch, "first") WHERE released = 0
    """,
)


def upgrade() -> None:
    """Add them; nothing that was there changes."""
    for statement in _STATEMENTS:
        op.execute(statement)
