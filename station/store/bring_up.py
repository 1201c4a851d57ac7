"""What homes lack that opened with the newest shape before the shape had all of it.

The shape's number stays; ``PRAGMA user_version`` says whether this was done. What is brought up is
made from the journal, or from tables made from it, so that verifying finds it as it should be.
"""

from __future__ import annotations

from sqlalchemy import Connection

from station.store.blend_sums import add_up_all
from station.store.shape import KEPT
from station.store.standing import stand_moves
from station.store.tables import FILLING
from station.store.tree import keep_subtrees

_BAGS_OF_BLENDS = (
    "ALTER TABLE blend ADD COLUMN first_bag INTEGER",
    "ALTER TABLE blend ADD COLUMN last_bag INTEGER",
    """
    UPDATE blend SET (first_bag, last_bag) =
        (SELECT min(pack.id), max(pack.id) FROM pack WHERE pack.blend_id = blend.id)
    """,
    f"""
    UPDATE blend SET last_bag = {FILLING}
    WHERE id = (SELECT blend_id FROM pack ORDER BY id DESC LIMIT 1)
    """,
    "DROP INDEX ix_pack_blend_id",
)
"""Where the bags of each blend lie, instead of an index that each bag has to be entered in."""

_SUMS_OF_BLENDS = (
    "ALTER TABLE blend ADD COLUMN kept_ug INTEGER",
    "ALTER TABLE blend ADD COLUMN aside_ug INTEGER",
)

_STATEMENTS = (
    "CREATE INDEX IF NOT EXISTS ix_journal_purge ON journal (id) WHERE kind = 'purge'",
    # Approved versions of products, as station.core.standing has them.
    """
    INSERT INTO standing (kind, "key", entry_id)
    SELECT 'setting', 'product' || char(9) || fact.subject || char(9)
            || json_extract(CAST(canonical AS TEXT), '$.body.details.digest') || char(9)
            || coalesce(json_extract(CAST(canonical AS TEXT), '$.body.details.effective'), ''),
        max(fact.entry_id)
    FROM fact JOIN journal ON journal.id = fact.entry_id
    WHERE fact.kind = 'setting'
        AND json_extract(CAST(canonical AS TEXT), '$.body.details.what') = 'product'
    GROUP BY 2
    ON CONFLICT (kind, "key") DO UPDATE SET entry_id = excluded.entry_id
    """,
    f"PRAGMA user_version = {KEPT}",
)


def bring_up(connection: Connection) -> None:
    """Add it, inside a transaction; does nothing to a file that has all of it."""
    (done,) = connection.exec_driver_sql("PRAGMA user_version").one()
    if done >= KEPT:
        return
    keep_subtrees(connection)
    columns = {row[1] for row in connection.exec_driver_sql("PRAGMA table_info(blend)")}
    bags = () if "first_bag" in columns else _BAGS_OF_BLENDS
    sums = () if "kept_ug" in columns else _SUMS_OF_BLENDS
    for statement in (*bags, *sums, *_STATEMENTS):
        connection.exec_driver_sql(statement)
    add_up_all(connection, FILLING)
    stand_moves(connection)
