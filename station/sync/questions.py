"""Questions to the whole of a business: every site, every station, in one answer."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta, timezone
from typing import LiteralString, TypeVar

from psycopg.rows import class_row

from station.sync.connection import CentreConnection

_Row = TypeVar("_Row")
_WAIT_S = 120.0


@dataclass(frozen=True, slots=True)
class StationRow:
    """One station as the centre knows it.

    Args:
        site, station: its name.
        epoch, seq: how far the centre has come in its newest epoch.
        head_seq: its last entry as it said itself; None before its first heartbeat.
        oldest_unsent: when the oldest entry that was not sent then was made.
        contact: when it spoke last, by the centre's clock.
        silent_s: seconds since then.
        ahead_s: seconds its clock was before the centre's.
        quarantined: its entries in quarantine that nobody has settled.
        software: version of its program.
        words: what it needs somebody for.
    """

    site: str
    station: str
    epoch: int
    seq: int
    head_seq: int | None
    oldest_unsent: datetime | None
    contact: datetime | None
    silent_s: float | None
    ahead_s: float | None
    quarantined: int
    software: str | None
    words: str | None

    @property
    def name(self) -> str:
        """Site and station."""
        return f"{self.site}/{self.station}"


@dataclass(frozen=True, slots=True)
class RejectRow:
    """One bag set aside."""

    site: str
    station: str
    line: str
    serial: str
    at: datetime
    offset_minutes: int
    product: str
    net_ug: int
    reason: str
    now: str
    operator: str


@dataclass(frozen=True, slots=True)
class BagGroup:
    """Bags of one blend at one station that are worth the same.

    Args:
        now: what they are worth now.
        bags, net_ug: how many, and the exact sum of their net.
        first, last: the first and the last serial.
    """

    site: str
    station: str
    line: str
    product: str
    blend_lot: str
    production_day: date
    use_by: date
    now: str
    bags: int
    net_ug: int
    first: str
    last: str


@dataclass(frozen=True, slots=True)
class LotRow:
    """A lot as one station took it in."""

    site: str
    station: str
    code: str
    component: str
    supplier: str
    received: date


@dataclass(frozen=True, slots=True)
class PackRow:
    """One bag, with the lots that could be in it."""

    site: str
    station: str
    line: str
    serial: str
    at: datetime
    offset_minutes: int
    product: str
    version: int
    net_ug: int
    verdict: str
    now: str
    blend_lot: str
    production_day: date
    use_by: date
    operator: str
    run: str
    lots: list[str]


@dataclass(frozen=True, slots=True)
class Quarantined:
    """One entry in quarantine; ``settled`` says who looked and what was found, if anybody did."""

    site: str
    station: str
    epoch: int
    seq: int
    hash: bytes
    size: int
    why: str
    found_at: datetime
    settled: str | None


@dataclass(frozen=True, slots=True)
class GivenAway:
    """What one product of one line had above its nominal quantity on a day.

    Args:
        bags: that are, or may yet be, sold.
        net_ug, nominal_ug: exact sums over them.
    """

    site: str
    station: str
    line: str
    product: str
    bags: int
    net_ug: int
    nominal_ug: int


@dataclass(frozen=True, slots=True)
class Reached:
    """How far a lot or blend lot reaches.

    Args:
        groups: bags by station, blend and worth.
        lots: every entry of lots of that code; two suppliers or components under one code show.
    """

    groups: Sequence[BagGroup]
    lots: Sequence[LotRow]


_STATIONS: LiteralString = """
    SELECT w.site, w.station, w.epoch, w.seq, r.head_seq, r.oldest_unsent, r.contact,
        extract(epoch FROM clock_timestamp() - r.contact)::float8 AS silent_s,
        extract(epoch FROM r.station_utc - r.contact)::float8 AS ahead_s,
        (SELECT count(*) FROM centre.quarantine q
            LEFT JOIN centre.settled s USING (site, station, epoch, seq, hash)
            WHERE q.site = w.site AND q.station = w.station AND s.who IS NULL) AS quarantined,
        r.software, r.words
    FROM centre.watermark w LEFT JOIN centre.register r USING (site, station)
    WHERE r.epoch IS NULL OR r.epoch = w.epoch ORDER BY 1, 2"""
_QUARANTINED: LiteralString = """
    SELECT q.site, q.station, q.epoch, q.seq, q.hash, octet_length(q.canonical) AS size, q.why,
        q.found_at, s.who || ': ' || s.reason AS settled
    FROM centre.quarantine q LEFT JOIN centre.settled s USING (site, station, epoch, seq, hash)
    ORDER BY q.site, q.station, q.found_at, q.seq LIMIT 1000"""
_REJECTS: LiteralString = """
    SELECT site, station, line, serial, at, offset_minutes, product, net_ug,
        CASE WHEN quality = 'reject' THEN reason ELSE coalesce((SELECT c.reason
            FROM centre.pack_change c WHERE c.site = p.site AND c.station = p.station
            AND c.serial = p.serial
            ORDER BY max(c.at) OVER (PARTITION BY c.epoch), c.seq LIMIT 1), '') END AS reason,
        now, operator
    FROM centre.pack_now p WHERE production_day = %s AND (quality = 'reject' OR EXISTS (
        SELECT FROM centre.pack_change c WHERE c.site = p.site AND c.station = p.station
        AND c.serial = p.serial))
    ORDER BY site, station, at"""
_GROUPED: LiteralString = """
    SELECT site, station, line, product, blend_lot, production_day, use_by, now, count(*) AS bags,
        sum(net_ug)::int8 AS net_ug, min(serial) AS first, max(serial) AS last FROM found
    GROUP BY 1, 2, 3, 4, 5, 6, 7, 8 ORDER BY site, production_day, line, blend_lot, now"""
_OF_LOT: LiteralString = f"""
    WITH found AS (SELECT p.* FROM (SELECT DISTINCT site, station, epoch, lot_set
        FROM centre.lot_use WHERE lot = %s) u
        JOIN centre.pack_now p USING (site, station, epoch, lot_set)) {_GROUPED}"""
_OF_BLEND: LiteralString = f"""
    WITH found AS (SELECT * FROM centre.pack_now WHERE blend_lot = %s) {_GROUPED}"""
_LOTS: LiteralString = """
    SELECT DISTINCT site, station, code, component, supplier, received FROM centre.lot
    WHERE code = %s ORDER BY site, station, received"""
_PACK: LiteralString = """
    SELECT site, station, line, serial, at, offset_minutes, product, version, net_ug, verdict, now,
        blend_lot, production_day, use_by, operator, run,
        (SELECT coalesce(array_agg(u.lot ORDER BY u.component, u.lot), '{}')
            FROM centre.lot_use u WHERE u.site = p.site AND u.station = p.station
            AND u.epoch = p.epoch AND u.lot_set = p.lot_set) AS lots
    FROM centre.pack_now p WHERE serial = %s ORDER BY site, station"""
_GIVEN: LiteralString = """
    SELECT site, station, line, product, count(*) AS bags, sum(net_ug)::int8 AS net_ug,
        sum(nominal_ug)::int8 AS nominal_ug
    FROM centre.pack_now WHERE production_day = %s AND now IN ('good', 'held', 'released')
    GROUP BY 1, 2, 3, 4 ORDER BY 1, 3, 4"""


class Plant:
    """Asks; the tables must have been brought up before.

    Args:
        connection: of a role that may read every station's rows.
    """

    def __init__(self, connection: CentreConnection) -> None:
        self._connection = connection

    def stations(self) -> list[StationRow]:
        """Every station in its newest epoch."""
        return self._ask(StationRow, _STATIONS)

    def quarantined(self) -> list[Quarantined]:
        """Entries in quarantine, the first thousand."""
        return self._ask(Quarantined, _QUARANTINED)

    def rejects(self, day: date) -> list[RejectRow]:
        """Bags set aside on a production day, also those set aside after their label was made."""
        return self._ask(RejectRow, _REJECTS, day)

    def recall(self, lot: str) -> Reached:
        """Every bag that could hold a lot."""
        return Reached(self._ask(BagGroup, _OF_LOT, lot), self.lots(lot))

    def blend(self, code: str) -> list[BagGroup]:
        """Every bag of a blend lot."""
        return self._ask(BagGroup, _OF_BLEND, code)

    def lots(self, code: str) -> list[LotRow]:
        """Every station's entries about a lot code."""
        return self._ask(LotRow, _LOTS, code)

    def packs(self, serial: str) -> list[PackRow]:
        """Bags of a serial: one, or one of each site where two sites have a station of one code."""
        return self._ask(PackRow, _PACK, serial)

    def given_away(self, day: date) -> list[GivenAway]:
        """What every line gave away on a production day."""
        return self._ask(GivenAway, _GIVEN, day)

    def _ask(self, form: type[_Row], question: LiteralString, *values: object) -> list[_Row]:
        with (
            self._connection.within(_WAIT_S),
            self._connection.cursor(row_factory=class_row(form)) as cursor,
        ):
            return cursor.execute(question, values).fetchall()


def local(at: datetime, offset_minutes: int) -> datetime:
    """A moment in the plant's time of then."""
    return at.astimezone(timezone(timedelta(minutes=offset_minutes)))
