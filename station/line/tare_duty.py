"""The duty to weigh empty bags: no run without a tare that somebody weighed and that still holds.

At the start of a run, with a new film lot and after so many bags one empty bag is weighed. The
tare the run takes off must then rest on a study of that bag item and film lot, or on the tare the
packhouse declares for the bag item, where the settings accept that.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from fractions import Fraction

from station.core.checks.tare import EmptyBag, empty_bag_of, study_of
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.metrology.clause import RuleRefused
from station.core.metrology.tare import (
    TareRule,
    TareStudy,
    TareUse,
    empty_bag_due,
    stale_reason,
    tare_use,
)
from station.core.pack import PackRecord
from station.core.run import Run
from station.line.state import Notice

_WHERE = "RUN, then CHECKS (F4)"
_SOON = 50
"""So many bags before an empty one is due it is announced."""


OnRecord = Callable[[str, str], FactRecord | None]


def _nothing_on_record(_: str, __: str) -> FactRecord | None:
    """There is no study."""
    return None


class TareDuty:
    """Implements station.line.duties.Duty.

    Args:
        rule: thresholds.
        declared: the declared tare of a bag item may stand where there is no study of it.
        on_record: asks for the newest study of a bag item and film lot, once for each; any thread.
    """

    name = "TARE"

    def __init__(
        self, rule: TareRule, *, declared: bool, on_record: OnRecord = _nothing_on_record
    ) -> None:
        self._rule, self._declared, self._on_record = rule, declared, on_record
        self._studies: dict[tuple[str, str], TareStudy | None] = {}
        self._run: Run | None = None
        self._bag: EmptyBag | None = None
        self._packs = 0

    def study(self, bag_item: str, film_lot: str) -> TareStudy | None:
        """The newest study of a bag item and film lot, or None."""
        key = bag_item, film_lot
        if key not in self._studies:
            found = self._on_record(bag_item, film_lot)
            # One that was noted meanwhile is newer than what the record said.
            self._studies.setdefault(key, None if found is None else study_of(found))
        return self._studies[key]

    @property
    def film_lot(self) -> str:
        """The film lot in use; empty before the run's first empty bag."""
        return "" if self._bag is None else self._bag.film_lot

    def opened(self, run: Run, at: datetime) -> None:
        """Each run begins with an empty bag."""
        self._run, self._bag, self._packs = run, None, 0

    def packed(self, record: PackRecord) -> None:
        """Count the bags since the last empty one."""
        self._packs += 1

    def noted(self, record: FactRecord) -> None:
        """See studies and empty bags."""
        if record.fact.kind is EntryKind.TARE_STUDY:
            study = study_of(record)
            self._studies[study.bag_item, study.film_lot] = study
        elif record.fact.kind is EntryKind.EMPTY_BAG and self._run is not None:
            bag = empty_bag_of(record)
            if bag.bag_item == self._run.product.bag.code:
                self._bag, self._packs = bag, 0

    def closing(self, now: datetime) -> str:
        """Why no bag is taken."""
        why = "" if self._run is None else self._why(self._run, now)
        return f"{why}: {_WHERE}" if why else ""

    def due(self, now: datetime) -> Notice | None:
        """An empty bag, shortly before it is due."""
        left = self._rule.packs_between_checks - self._packs
        if self._bag is None or left > min(_SOON, self._rule.packs_between_checks // 10):
            return None
        return Notice(f"weigh an empty bag within {max(left, 0)} bags", now)

    def _why(self, run: Run, now: datetime) -> str:
        item, bag = run.product.bag, self._bag
        checked = None if bag is None else bag.film_lot
        due = empty_bag_due(self.film_lot, checked, self._packs, self._rule)
        if due is not None or bag is None:
            return due or ""
        if not bag.fits:
            return f"the empty bag of {bag.shown} does not fit its {bag.against}: weigh another"
        study = self.study(item.code, bag.film_lot)
        if study is None:
            if self._declared:
                return ""
            return f"bag {item.code}, film lot {bag.film_lot} has no tare study: make one"
        stale = stale_reason(study, item.code, bag.film_lot, now, self._rule)
        return stale or self._unfit(run, study)

    def _unfit(self, run: Run, study: TareStudy) -> str:
        """Why the run's tare may not rest on a study; empty when it may."""
        try:
            use = tare_use(study, run.window.limits, self._rule)
        except RuleRefused as refused:
            return str(refused)
        if use is TareUse.EACH_PACK:
            return f"the bags scatter too much for a mean tare ({study.shown()}): use other bags"
        item = run.product.bag
        unit = study.tares[0].unit
        if study.mean * Fraction(unit.grams) > Fraction(item.tare.grams):
            return (
                f"the study has {study.shown()}, more than the tare {item.tare} taken off: raise "
                f"the tare of {item.code}"
            )
        return ""
