"""Decisions about rejects, as they change the bags; exactly one holds for each."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, Row, case, select, update
from sqlalchemy.dialects.sqlite import insert as upsert

from station.core.dispositions import (
    DECIDABLE,
    QUALITY_AFTER,
    Decided,
    Disposition,
    decided_of,
)
from station.core.journal import Entry
from station.core.pack import Quality
from station.store.blend_sums import BlendSums
from station.store.facts import fact_record
from station.store.hold_ranges import UnknownFact
from station.store.tables import disposition, pack


class DispositionFacts:
    """Applies decisions on the writer's connection, inside its transactions."""

    def __init__(self, connection: Connection, sums: BlendSums) -> None:
        self._connection, self._sums = connection, sums

    def decide(self, entry: Entry) -> None:
        """End a reject, or correct how it ended.

        Raises:
            UnknownFact: there is no such bag, it is no reject, it was decided already, or the bag
                that is to stand for it cannot.
        """
        made = fact_record(entry)
        decided = decided_of(made.fact)
        row = self._connection.execute(
            select(pack.c.id, pack.c.quality).where(pack.c.serial == decided.serial)
        ).one_or_none()
        if row is None:
            raise UnknownFact(f"bag {decided.serial} is not in the record: check the serial")
        last = self._connection.execute(
            select(disposition).where(disposition.c.serial == decided.serial)
        ).one_or_none()
        if decided.corrects:
            _check_correction(decided, last)
        else:
            _check_first(decided, row.quality, last)
        if decided.into:
            self._check_into(decided, row.id)
        self._keep(decided, made.fact.uid, made.who)
        self._sums.judged(row.id, row.quality, QUALITY_AFTER[decided.disposition])
        self._connection.execute(
            update(pack)
            .where(pack.c.id == row.id)
            .values(
                quality=QUALITY_AFTER[decided.disposition],
                rejected=1,
                reason=case((pack.c.reason == "", decided.reason), else_=pack.c.reason),
            )
        )

    def _keep(self, decided: Decided, uid: str, who: str) -> None:
        values = {
            "uid": uid,
            "result": decided.disposition,
            "into_serial": decided.into or None,
            "who": who,
        }
        statement = upsert(disposition).values(serial=decided.serial, **values)
        self._connection.execute(
            statement.on_conflict_do_update(index_elements=[disposition.c.serial], set_=values)
        )

    def _check_into(self, decided: Decided, row: int) -> None:
        new = self._connection.execute(
            select(pack.c.id).where(pack.c.serial == decided.into)
        ).scalar_one_or_none()
        if new is None:
            raise UnknownFact(f"bag {decided.into} is not in the record: scan the new label")
        if new <= row:
            raise UnknownFact(
                f"bag {decided.into} was packed before bag {decided.serial}: it cannot stand for it"
            )
        other = self._connection.execute(
            select(disposition.c.serial)
            .where(disposition.c.into_serial == decided.into)
            .where(disposition.c.serial != decided.serial)
        ).scalar_one_or_none()
        if other is not None:
            raise UnknownFact(f"bag {decided.into} stands for bag {other} already")


def _check_correction(decided: Decided, last: Row[Any] | None) -> None:
    if last is None or last.uid != decided.corrects:
        raise UnknownFact(
            f"bag {decided.serial}: decision {decided.corrects} is not its last one: look at it "
            "again"
        )
    if last.result is Disposition.REWORK:
        raise UnknownFact(
            f"the content of bag {decided.serial} is back on the line: that cannot be decided again"
        )


def _check_first(decided: Decided, quality: Quality, last: Row[Any] | None) -> None:
    if last is not None:
        raise UnknownFact(
            f"bag {decided.serial} was {last.result} by {last.who} already: correct that decision "
            "instead"
        )
    moved = decided.disposition is Disposition.REWORK and quality is Quality.REWORKED
    if quality not in DECIDABLE and not moved:
        raise UnknownFact(
            f"bag {decided.serial} is {quality}: only one that was set aside or is held can be "
            "decided"
        )
