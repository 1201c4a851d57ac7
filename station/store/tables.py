"""The tables: a journal that is the truth, and projections of it for questions.

``identity`` and ``journal`` are written once and never changed. All other tables are projections:
every value in them follows from the journal's bodies (see ``projections``), so they can be dropped
and built again. All tables are STRICT; every constraint has a name, because a migration can only
keep what it can name. Triggers, laid down by the first migration, refuse to change or take out a
journal entry or to leave a gap: a guard against a slip of a program, none against intent. A purge
(see ``purge``) alone empties entries, and names each of them in one of its own.

``tree_block`` keeps the Merkle roots of whole blocks of entries (see ``tree``), ``standing`` what
still counts when a station starts (see ``standing``).

A bag belongs to a *blend*: the bags of one run that share a lot set, a blend lot code and their
dates. A lot change in a run begins a new blend. A blend knows between which rows its bags lie, and
so answers for lots, runs, blend codes and days; while its bags are being packed its last one is
:data:`FILLING`. Once another one follows, it has the sums of its bags too (see ``blend_sums``).
"""

from __future__ import annotations

from sqlalchemy import (
    CheckConstraint,
    Column,
    ForeignKey,
    Index,
    Integer,
    LargeBinary,
    Table,
    Text,
    UniqueConstraint,
    and_,
    func,
    literal_column,
    text,
)

from station.core.dispositions import Disposition
from station.core.journal import EntryKind
from station.core.lots import LotStatus
from station.core.metrology.verdict import Verdict
from station.core.pack import LabelState, Quality
from station.store.columns import Day, Sha256, UtcDateTime, Word, mass_columns
from station.store.schema import metadata
from station.store.shipping_tables import case_span, shipment, unit

FILLING = 2**62
"""Stands for the last bag of the blend whose bags are being packed: more than any row."""

identity = Table(
    "identity",
    metadata,
    Column("id", Integer, CheckConstraint("id = 1", name="one_row"), primary_key=True),
    Column("site", Text, nullable=False),
    Column("station", Text, nullable=False),
    Column("epoch", Integer, CheckConstraint("epoch > 0", name="epoch"), nullable=False),
    Column("created_at", UtcDateTime, nullable=False),
    sqlite_strict=True,
)

journal = Table(
    "journal",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("epoch", Integer, nullable=False),
    Column("seq", Integer, CheckConstraint("seq > 0", name="seq"), nullable=False),
    Column("kind", Word(EntryKind), nullable=False),
    Column("hash", Sha256, CheckConstraint("length(hash) = 32", name="hash"), nullable=False),
    Column("canonical", LargeBinary, nullable=False),
    Index("ix_journal_purge", "id", sqlite_where=text("kind = 'purge'")),
    sqlite_strict=True,
)

lot = Table(
    "lot",
    metadata,
    Column("code", Text, primary_key=True),
    Column("component", Text, nullable=False),
    Column("supplier", Text, nullable=False),
    Column("received", Day, nullable=False),
    Column("harvested", Day),
    Column("use_by", Day),
    Column("status", Word(LotStatus), nullable=False),
    Index(None, "received"),
    sqlite_strict=True,
)

lot_set = Table(
    "lot_set",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("key", Text, nullable=False),
    UniqueConstraint("key"),
    sqlite_strict=True,
)

lot_use = Table(
    "lot_use",
    metadata,
    Column("lot_set_id", ForeignKey(lot_set.c.id), primary_key=True),
    Column("component", Text, primary_key=True),
    Column("lot", ForeignKey(lot.c.code), primary_key=True),
    Index(None, "lot"),
    sqlite_strict=True,
    sqlite_with_rowid=False,
)

run = Table(
    "run",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("uid", Text, nullable=False),
    Column("entry_id", ForeignKey(journal.c.id), nullable=False),
    Column("line", Text, nullable=False),
    Column("product", Text, nullable=False),
    Column("version", Integer, nullable=False),
    Column("name", Text, nullable=False),
    Column("gtin", Text, nullable=False),
    Column("rule_set", Text, nullable=False),
    Column("rule_version", Text, nullable=False),
    *mass_columns("nominal"),
    Column("lead", Text, nullable=False),
    Column("operator", Text, nullable=False),
    Column("scale", Text, nullable=False),
    Column("software", Text, nullable=False),
    Column("order_size", Integer),
    Column("started_at", UtcDateTime, nullable=False),
    Column("offset_minutes", Integer, nullable=False),
    Column("ended_at", UtcDateTime),
    Column("ended_by", Text),
    UniqueConstraint("uid"),
    CheckConstraint("(ended_at IS NULL) = (ended_by IS NULL)", name="ended"),
    sqlite_strict=True,
)

blend = Table(
    "blend",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("run_id", ForeignKey(run.c.id), nullable=False),
    Column("lot_set_id", ForeignKey(lot_set.c.id), nullable=False),
    Column("code", Text, nullable=False),
    Column("production_day", Day, nullable=False),
    Column("use_by", Day, nullable=False),
    Column("first_bag", Integer),
    Column("last_bag", Integer),
    Column("kept_ug", Integer),
    Column("aside_ug", Integer),
    UniqueConstraint("run_id", "lot_set_id", "code", "production_day", "use_by"),
    CheckConstraint("use_by >= production_day", name="dates"),
    Index(None, "lot_set_id"),
    Index(None, "code"),
    Index(None, "production_day"),
    sqlite_strict=True,
)

# SQLite uses a partial index only for a query that repeats its condition word for word.
LABEL_OPEN = text("pack.label IN ('submitted', 'spooled', 'in doubt')")
"""Labels past *recorded* whose fate is open; what a new bag is, no index holds."""
REJECTED = text("pack.rejected = 1")

pack = Table(
    "pack",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("epoch", Integer, nullable=False),
    Column("number", Integer, CheckConstraint("number > 0", name="number"), nullable=False),
    Column("serial", Text, nullable=False),
    Column("uid", Text, nullable=False),
    Column("entry_id", ForeignKey(journal.c.id), nullable=False),
    Column("blend_id", ForeignKey(blend.c.id), nullable=False),
    *mass_columns("gross"),
    *mass_columns("tare"),
    *mass_columns("net"),
    Column("verdict", Word(Verdict), nullable=False),
    Column("quality", Word(Quality), nullable=False),
    Column("rejected", Integer, nullable=False),
    Column("reason", Text, nullable=False),
    Column("label", Word(LabelState), nullable=False),
    Column("operator", Text, nullable=False),
    Column("judged_at", UtcDateTime, nullable=False),
    Column("offset_minutes", Integer, nullable=False),
    Column("residue_digits", Text),
    Column("residue_at", UtcDateTime),
    Column("copies", Integer, nullable=False, server_default=text("0")),
    UniqueConstraint("serial"),
    CheckConstraint("rejected IN (0, 1)", name="rejected"),
    CheckConstraint("rejected = 0 OR reason <> ''", name="reason"),
    Index("ix_pack_rejected", "blend_id", sqlite_where=text("rejected = 1")),
    Index(
        "ix_pack_label_open",
        "label",
        sqlite_where=text("label IN ('submitted', 'spooled', 'in doubt')"),
    ),
    sqlite_strict=True,
)

OF_BLEND = and_(
    pack.c.blend_id == blend.c.id,
    func.likelihood(pack.c.id >= blend.c.first_bag, literal_column("0.01")),
    func.likelihood(pack.c.id <= blend.c.last_bag, literal_column("0.01")),
)
"""Joins bags with their blends, either way round.

No index holds the blend of a bag: its page would be written with each one. A blend's bags lie
between its first and its last, and there are few others between. SQLite takes a range for a
quarter of the table where nobody says how likely it is.
"""

fact = Table(
    "fact",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("uid", Text, nullable=False),
    Column("entry_id", ForeignKey(journal.c.id), nullable=False),
    Column("kind", Word(EntryKind), nullable=False),
    Column("subject", Text, nullable=False),
    Column("result", Text, nullable=False),
    Column("run", Text, nullable=False),
    Column("who", Text, nullable=False),
    Column("at", UtcDateTime, nullable=False),
    Column("offset_minutes", Integer, nullable=False),
    UniqueConstraint("uid"),
    Index("ix_fact_newest", "kind"),
    Index(None, "kind", "at"),
    Index(None, "run", "kind"),
    Index(None, "subject", "kind"),
    sqlite_strict=True,
)

hold_range = Table(
    "hold_range",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("hold", Text, nullable=False),
    Column("epoch", Integer, nullable=False),
    Column("first", Integer, nullable=False),
    Column("last", Integer, nullable=False),
    Column("released", Integer, nullable=False),
    CheckConstraint("first > 0 AND last >= first", name="numbers"),
    CheckConstraint("released IN (0, 1)", name="released"),
    Index(None, "hold"),
    Index("ix_hold_range_open", "epoch", "first", sqlite_where=text("released = 0")),
    sqlite_strict=True,
)

standing = Table(
    "standing",
    metadata,
    Column("kind", Word(EntryKind), primary_key=True),
    Column("key", Text, primary_key=True),
    Column("entry_id", ForeignKey(journal.c.id), nullable=False),
    sqlite_strict=True,
    sqlite_with_rowid=False,
)

tree_block = Table(
    "tree_block",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("epoch", Integer, nullable=False),
    Column("number", Integer, CheckConstraint("number >= 0", name="number"), nullable=False),
    Column("root", Sha256, CheckConstraint("length(root) = 32", name="root"), nullable=False),
    UniqueConstraint("epoch", "number"),
    sqlite_strict=True,
)

disposition = Table(
    "disposition",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("serial", Text, nullable=False),
    Column("uid", Text, nullable=False),
    Column("result", Word(Disposition), nullable=False),
    Column("into_serial", Text),
    Column("who", Text, nullable=False),
    UniqueConstraint("serial"),
    UniqueConstraint("into_serial"),
    sqlite_strict=True,
)

TRUTH = (identity, journal)
PROJECTIONS = (
    *(lot, lot_set, lot_use, run, blend, pack, fact, hold_range, disposition, standing),
    *(tree_block, shipment, unit, case_span),
)
"""Parents before children: fill in this order, empty in the reverse one."""
