"""Tables of cases, pallets and shipments; projections like all beside the journal."""

from __future__ import annotations

from sqlalchemy import CheckConstraint, Column, ForeignKey, Index, Integer, Table, Text, text
from sqlalchemy import UniqueConstraint as Unique

from station.core.pack import LabelState
from station.core.shipping import UnitKind
from station.store.columns import Day, Micrograms, UtcDateTime, Word
from station.store.schema import metadata

# SQLite uses a partial index only for a query that repeats its condition word for word.
CLOSED = text("case_span.undone = 0")
IN_HOUSE = text("unit.undone = 0 AND unit.pallet_id IS NULL AND unit.shipment_id IS NULL")

shipment = Table(
    "shipment",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("uid", Text, nullable=False),
    Column("number", Text, nullable=False),
    Column("customer", Text, nullable=False),
    Column("name", Text, nullable=False),
    Column("place", Text, nullable=False),
    Column("gln", Text, nullable=False),
    Column("reference", Text, nullable=False),
    Column("state", Text, nullable=False),
    Column("who", Text, nullable=False),
    Column("at", UtcDateTime, nullable=False),
    Column("offset_minutes", Integer, nullable=False),
    Unique("number"),
    CheckConstraint(
        "state IN ('shipped', 'shipment withdrawn', 'shipment came back')", name="state"
    ),
    Index(None, "customer"),
    sqlite_strict=True,
)

unit = Table(
    "unit",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("uid", Text, nullable=False),
    Column("sscc", Text, nullable=False),
    Column("kind", Word(UnitKind), nullable=False),
    Column("product", Text, nullable=False),
    Column("name", Text, nullable=False),
    Column("gtin", Text, nullable=False),
    Column("blend_lot", Text, nullable=False),
    Column("use_by", Day, nullable=False),
    Column("bags", Integer, nullable=False),
    Column("net_ug", Micrograms, nullable=False),
    Column("pallet_id", ForeignKey("unit.id")),
    Column("shipment_id", ForeignKey(shipment.c.id)),
    Column("undone", Integer, nullable=False),
    Column("label", Word(LabelState), nullable=False),
    Column("copies", Integer, nullable=False),
    Column("at", UtcDateTime, nullable=False),
    Column("offset_minutes", Integer, nullable=False),
    Unique("sscc"),
    CheckConstraint("undone IN (0, 1)", name="undone"),
    CheckConstraint("bags > 0", name="bags"),
    Index(None, "pallet_id"),
    Index(None, "shipment_id"),
    Index(
        "ix_unit_in_house",
        "kind",
        sqlite_where=text("undone = 0 AND pallet_id IS NULL AND shipment_id IS NULL"),
    ),
    sqlite_strict=True,
)

case_span = Table(
    "case_span",
    metadata,
    Column("id", Integer, primary_key=True),
    Column("unit_id", ForeignKey(unit.c.id), nullable=False),
    Column("head", Text, nullable=False),
    Column("first", Integer, nullable=False),
    Column("last", Integer, nullable=False),
    Column("undone", Integer, nullable=False),
    CheckConstraint("first > 0 AND last >= first", name="numbers"),
    CheckConstraint("undone IN (0, 1)", name="undone"),
    Index(None, "unit_id"),
    Index(None, "head", "first"),
    sqlite_strict=True,
)
