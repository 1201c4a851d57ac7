"""The centre's tables, and who may do what with them.

Evidence (``entry``, ``quarantine``, ``settled``) is only ever added to. Its keys come from the
stations; no column has a default, a sequence or a trigger. What may change (``watermark``,
``register``, ``projected``) is no evidence. Everything else is a projection of the entries and can
be made again.
The statements of a station keep to what PostgreSQL-wire engines have in common: inserts ON CONFLICT
DO NOTHING without a target, and every condition begins with site and station. The tables themselves
are PostgreSQL's own and have to be laid out anew for another engine.
"""

from __future__ import annotations

from typing import LiteralString

from psycopg import sql

SHAPE = 1
"""Goes up with every change of the tables; a station sends only to a shape it knows."""
GROUP = "packroom_station"
READER = "packroom_reader"

_OWN = "('station_' || site || '_' || station) = current_user"
_KEY: LiteralString = "site text NOT NULL, station text NOT NULL, epoch bigint NOT NULL"
_PLACE: LiteralString = f"{_KEY}, seq bigint NOT NULL"
_AT: LiteralString = "at timestamptz NOT NULL, offset_minutes integer NOT NULL"

TABLES: tuple[LiteralString, ...] = (
    "CREATE SCHEMA IF NOT EXISTS centre",
    "CREATE TABLE IF NOT EXISTS centre.shape (shape integer PRIMARY KEY)",
    # --- evidence -----------------------------------------------------------------------------
    f"""CREATE TABLE IF NOT EXISTS centre.entry ({_PLACE},
        kind text NOT NULL, hash bytea NOT NULL CHECK (octet_length(hash) = 32),
        canonical bytea NOT NULL,
        PRIMARY KEY (site, station, epoch, seq)) PARTITION BY LIST (site)""",
    f"""CREATE TABLE IF NOT EXISTS centre.quarantine ({_PLACE},
        hash bytea NOT NULL, canonical bytea NOT NULL, why text NOT NULL,
        found_at timestamptz NOT NULL,
        PRIMARY KEY (site, station, epoch, seq, hash, why))""",
    f"""CREATE TABLE IF NOT EXISTS centre.settled ({_PLACE}, hash bytea NOT NULL,
        who text NOT NULL, reason text NOT NULL, at timestamptz NOT NULL,
        PRIMARY KEY (site, station, epoch, seq, hash))""",
    # --- how far each station has come --------------------------------------------------------
    f"""CREATE TABLE IF NOT EXISTS centre.watermark ({_PLACE}, hash bytea NOT NULL,
        PRIMARY KEY (site, station, epoch)) WITH (fillfactor = 50)""",
    f"""CREATE TABLE IF NOT EXISTS centre.register ({_KEY},
        head_seq bigint NOT NULL, head_hash bytea NOT NULL, oldest_unsent timestamptz,
        station_utc timestamptz NOT NULL, contact timestamptz NOT NULL,
        software text NOT NULL, words text NOT NULL,
        PRIMARY KEY (site, station)) WITH (fillfactor = 50)""",
    f"""CREATE TABLE IF NOT EXISTS centre.projected ({_PLACE}, hash bytea NOT NULL,
        PRIMARY KEY (site, station, epoch)) WITH (fillfactor = 50)""",
    # --- downwards ----------------------------------------------------------------------------
    """CREATE TABLE IF NOT EXISTS centre.snapshot (
        site text NOT NULL, kind text NOT NULL, version bigint NOT NULL,
        body bytea NOT NULL, signature bytea NOT NULL,
        PRIMARY KEY (site, kind, version))""",
    # --- projections --------------------------------------------------------------------------
    f"""CREATE TABLE IF NOT EXISTS centre.pack ({_PLACE},
        number bigint NOT NULL, serial text NOT NULL, run text NOT NULL, line text NOT NULL,
        product text NOT NULL, version integer NOT NULL, verdict text NOT NULL,
        quality text NOT NULL, reason text NOT NULL, net_ug bigint NOT NULL,
        nominal_ug bigint NOT NULL, lot_set text NOT NULL, blend_lot text NOT NULL,
        production_day date NOT NULL, use_by date NOT NULL, operator text NOT NULL, {_AT},
        PRIMARY KEY (site, station, epoch, seq)) PARTITION BY LIST (site)""",
    "CREATE INDEX IF NOT EXISTS pack_serial ON centre.pack (serial)",
    "CREATE INDEX IF NOT EXISTS pack_set ON centre.pack (site, station, epoch, lot_set)",
    "CREATE INDEX IF NOT EXISTS pack_day ON centre.pack (production_day, site, station)",
    """CREATE INDEX IF NOT EXISTS pack_reject ON centre.pack (production_day)
        WHERE quality = 'reject'""",
    f"""CREATE TABLE IF NOT EXISTS centre.lot_use ({_KEY}, lot_set text NOT NULL,
        component text NOT NULL, lot text NOT NULL,
        PRIMARY KEY (site, station, epoch, lot_set, component, lot))""",
    "CREATE INDEX IF NOT EXISTS lot_use_lot ON centre.lot_use (lot)",
    f"""CREATE TABLE IF NOT EXISTS centre.lot ({_PLACE}, code text NOT NULL,
        component text NOT NULL, supplier text NOT NULL, received date NOT NULL, use_by date,
        PRIMARY KEY (site, station, epoch, seq))""",
    "CREATE INDEX IF NOT EXISTS lot_code ON centre.lot (code)",
    f"""CREATE TABLE IF NOT EXISTS centre.run ({_PLACE}, uid text NOT NULL, line text NOT NULL,
        product text NOT NULL, version integer NOT NULL, name text NOT NULL,
        rule_set text NOT NULL, rule_version text NOT NULL, production_day date NOT NULL,
        lead text NOT NULL, operator text NOT NULL, {_AT},
        PRIMARY KEY (site, station, epoch, seq))""",
    "CREATE INDEX IF NOT EXISTS run_uid ON centre.run (uid)",
    f"""CREATE TABLE IF NOT EXISTS centre.run_end ({_PLACE}, uid text NOT NULL,
        who text NOT NULL, {_AT}, PRIMARY KEY (site, station, epoch, seq))""",
    f"""CREATE TABLE IF NOT EXISTS centre.fact ({_PLACE}, kind text NOT NULL, uid text NOT NULL,
        subject text NOT NULL, result text NOT NULL, run text NOT NULL, who text NOT NULL, {_AT},
        PRIMARY KEY (site, station, epoch, seq))""",
    "CREATE INDEX IF NOT EXISTS fact_kind ON centre.fact (kind, at)",
    "CREATE INDEX IF NOT EXISTS fact_subject ON centre.fact (subject)",
    f"""CREATE TABLE IF NOT EXISTS centre.pack_change ({_PLACE}, serial text NOT NULL,
        quality text NOT NULL, reason text NOT NULL, who text NOT NULL, {_AT},
        PRIMARY KEY (site, station, epoch, seq, serial))""",
    "CREATE INDEX IF NOT EXISTS pack_change_serial ON centre.pack_change (site, station, serial)",
    f"""CREATE TABLE IF NOT EXISTS centre.hold_range ({_PLACE}, hold text NOT NULL,
        pack_epoch bigint NOT NULL, first bigint NOT NULL, last bigint NOT NULL,
        PRIMARY KEY (site, station, epoch, seq, pack_epoch, first))""",
    """CREATE INDEX IF NOT EXISTS hold_range_bags
        ON centre.hold_range (site, station, pack_epoch, first, last)""",
    f"""CREATE TABLE IF NOT EXISTS centre.hold_end ({_PLACE}, hold text NOT NULL,
        PRIMARY KEY (site, station, epoch, seq))""",
    "CREATE INDEX IF NOT EXISTS hold_end_hold ON centre.hold_end (site, station, hold)",
    """CREATE OR REPLACE VIEW centre.pack_now AS
        SELECT p.*, coalesce(
            (SELECT c.quality FROM centre.pack_change c WHERE c.site = p.site
                AND c.station = p.station AND c.serial = p.serial
                ORDER BY max(c.at) OVER (PARTITION BY c.epoch) DESC, c.seq DESC LIMIT 1),
            CASE WHEN p.quality <> 'good' THEN p.quality
                WHEN EXISTS (SELECT FROM centre.hold_range r WHERE r.site = p.site
                    AND r.station = p.station AND r.pack_epoch = p.epoch
                    AND p.number BETWEEN r.first AND r.last
                    AND NOT EXISTS (SELECT FROM centre.hold_end e WHERE e.site = r.site
                        AND e.station = r.station AND e.hold = r.hold)) THEN 'held'
                WHEN EXISTS (SELECT FROM centre.hold_range r WHERE r.site = p.site
                    AND r.station = p.station AND r.pack_epoch = p.epoch
                    AND p.number BETWEEN r.first AND r.last) THEN 'released'
                ELSE 'good' END) AS now
        FROM centre.pack p""",
)

PROJECTIONS = (
    "pack", "lot_use", "lot", "run", "run_end", "fact", "pack_change", "hold_range", "hold_end",
)  # fmt: skip

_OWNED = ("entry", "quarantine", "settled", "watermark", "register")
_GRANTS: tuple[LiteralString, ...] = (
    "GRANT USAGE ON SCHEMA centre TO packroom_station, packroom_reader",
    "GRANT SELECT, INSERT ON centre.entry, centre.quarantine TO packroom_station",
    "GRANT SELECT, INSERT, UPDATE ON centre.watermark, centre.register TO packroom_station",
    "GRANT SELECT ON centre.snapshot, centre.shape, centre.settled TO packroom_station",
    "GRANT SELECT ON ALL TABLES IN SCHEMA centre TO packroom_reader",
)


def rights() -> tuple[sql.SQL | sql.Composed, ...]:
    """Statements that let each station add to and see its own rows, and nothing else."""
    found: list[sql.SQL | sql.Composed] = [sql.SQL(text) for text in _GRANTS]
    for name in _OWNED:
        table = sql.Identifier("centre", name)
        found += [
            sql.SQL("ALTER TABLE {} ENABLE ROW LEVEL SECURITY").format(table),
            sql.SQL("DROP POLICY IF EXISTS own ON {}").format(table),
            sql.SQL("DROP POLICY IF EXISTS reader ON {}").format(table),
            sql.SQL(
                "CREATE POLICY own ON {} TO packroom_station USING (" + _OWN + ") "
                "WITH CHECK (" + _OWN + ")"
            ).format(table),
            sql.SQL("CREATE POLICY reader ON {} FOR SELECT TO packroom_reader USING (true)").format(
                table
            ),
        ]
    return tuple(found)


def site_parts(site: str) -> tuple[sql.Composed, ...]:
    """Statements that make a site's own part of the large tables."""
    made = sql.SQL("CREATE TABLE IF NOT EXISTS {} PARTITION OF {} FOR VALUES IN ({})")
    cut = sql.SQL(
        "CREATE TABLE IF NOT EXISTS {} PARTITION OF {} FOR VALUES IN ({}) "
        "PARTITION BY LIST (station)"
    )
    value = sql.Literal(site)
    return (
        cut.format(_part("entry", site), sql.Identifier("centre", "entry"), value),
        made.format(_part("pack", site), sql.Identifier("centre", "pack"), value),
    )


def station_part(site: str, station: str) -> tuple[sql.Composed, ...]:
    """Statements that make a station's own part of the entries, for its role alone.

    COPY does not go together with row security, so the role is let into this part by name; its
    bounds see to it that nobody else's entries come in.
    """
    part = sql.Identifier("centre", leaf(site, station))
    return (
        sql.SQL("CREATE TABLE IF NOT EXISTS {} PARTITION OF {} FOR VALUES IN ({})").format(
            part, _part("entry", site), sql.Literal(station)
        ),
        sql.SQL("GRANT INSERT ON {} TO {}").format(part, sql.Identifier(role(site, station))),
    )


def leaf(site: str, station: str) -> str:
    """Name of a station's own part of the entries."""
    return f"entry_{site}_{station}".lower()


def _part(table: str, site: str) -> sql.Identifier:
    return sql.Identifier("centre", f"{table}_{site.lower()}")


def role(site: str, station: str) -> str:
    """Name of a station's role; letters and digits of both codes cannot run together."""
    return f"station_{site}_{station}"
