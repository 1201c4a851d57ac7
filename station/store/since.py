"""The record as a failed check looks back on it: the last good check, and the bags since."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

from sqlalchemy import ColumnElement, Connection, not_, select, true

from station.core.checks.qa import GOOD
from station.core.checks.scale import check_of, held_true
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.mass import Mass
from station.core.pack import PackId, Residue
from station.line.suspected import PackSince, RunSince
from station.store import journal as j
from station.store.bodies import run_of
from station.store.columns import mass_of
from station.store.engine import reading
from station.store.facts import chosen, fact_record, facts, read_facts
from station.store.number_range import rows_after, rows_judged
from station.store.tables import OF_BLEND, blend, fact, identity, journal, pack, run


class RecordPast:
    """Implements station.line.failed_check.Past on the record in a folder; any thread."""

    def __init__(self, home: Path) -> None:
        self._home = home

    def last_good_check(self, scale: str) -> FactRecord | None:
        """The last check of a scale that did not fail, as found or as left; None without any."""
        checks = chosen((EntryKind.SCALE_CHECK,), subject=scale).execution_options(yield_per=20)
        with reading(self._home) as connection, connection.execute(checks) as newest_first:
            records = (fact_record(j.read_entry(kept)) for kept in newest_first.scalars())
            return next((one for one in records if held_true(check_of(one))), None)

    def last_good_qa(self, kind: str) -> FactRecord | None:
        """The last good check of QA of a kind, or None."""
        statement = (
            select(journal.c.canonical)
            .join(fact, fact.c.entry_id == journal.c.id)
            .where(fact.c.subject == kind, fact.c.kind == EntryKind.QA_CHECK)
            .where(fact.c.result == GOOD)
            .order_by(fact.c.id.desc())
            .limit(1)
        )
        with reading(self._home) as connection:
            found = read_facts(connection, statement)
        return found[0] if found else None

    def empty_bags(self, bag_item: str, run: str) -> tuple[FactRecord, ...]:
        """The empty bags of an item weighed in a run, oldest first."""
        return facts(self._home, (EntryKind.EMPTY_BAG,), subject=bag_item, run=run)

    def packs_after(
        self, check: FactRecord | None, until: FactRecord | None = None
    ) -> tuple[RunSince, ...]:
        """Bags recorded after a check (None for all), by run; whatever the clock said.

        Args:
            check: after it.
            until: and before this fact; None for all that follow.
        """
        with reading(self._home) as connection:
            after = true() if check is None else _after(connection, check)
            before = true() if until is None else not_(_after(connection, until))
            return _packs(connection, after & before)

    def packs_since(self, after: datetime, until: datetime) -> tuple[RunSince, ...]:
        """Bags judged after one moment and not after another, by run."""
        with reading(self._home) as connection:
            return _packs(connection, *rows_judged(connection, after, until))


def _packs(connection: Connection, *conditions: ColumnElement[bool]) -> tuple[RunSince, ...]:
    """Bags that meet one of some conditions, which none meets twice, in the order of bags."""
    columns = (
        *(pack.c[name] for name in ("epoch", "number", "judged_at", "quality")),
        *(pack.c[f"{name}_{part}"] for name in ("gross", "net") for part in ("digits", "unit")),
        *(pack.c.residue_digits, pack.c.residue_at),
        blend.c.run_id,
    )
    statement = select(*columns).select_from(pack).join(blend, OF_BLEND).order_by(pack.c.id)
    rows = [
        row for one in conditions for row in connection.execute(statement.where(one)).mappings()
    ]
    named = connection.execute(select(identity.c.site, identity.c.station)).first()
    entries = connection.execute(
        select(run.c.id, journal.c.canonical)
        .join(journal, run.c.entry_id == journal.c.id)
        .where(run.c.id.in_({row["run_id"] for row in rows}))
        .order_by(run.c.id)
    ).all()
    packs: dict[int, list[PackSince]] = {}
    for row in rows:
        assert named is not None
        residue = None
        if row["residue_at"] is not None:
            shown = Mass.of(row["residue_digits"], row["gross_unit"])
            residue = Residue(row["residue_at"], shown)
        packs.setdefault(row["run_id"], []).append(
            PackSince(
                id=PackId(named.site, named.station, row["epoch"], row["number"]),
                at=row["judged_at"],
                gross=mass_of(row, "gross"),
                net=mass_of(row, "net"),
                quality=row["quality"],
                residue=residue,
            )
        )
    return tuple(
        RunSince(run_of(j.read_entry(entry.canonical).body), tuple(packs[entry.id]))
        for entry in entries
    )


def _after(connection: Connection, one: FactRecord) -> ColumnElement[bool]:
    entry = select(fact.c.entry_id).where(fact.c.uid == one.fact.uid)
    return rows_after(connection, connection.execute(entry).scalar_one())
