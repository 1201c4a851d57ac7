"""The lots a line may take, kept up with deliveries, holds and releases while it runs."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import replace

from typing_extensions import override

from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.lots import InputLot, LotStatus
from station.core.receiving import delivery_of, held_lot, open_holds


def _nothing_on_record(_: str) -> InputLot | None:
    """There is no such lot."""
    return None


class LotBook(Mapping[str, InputLot]):
    """Lots by code. Written by the line's thread alone; any thread may read.

    It goes through the lots that may still be used; one of long ago is known by its code.

    Args:
        lots: as the record knows them at the start.
        past: holds that nobody released, oldest first.
        on_record: asks for a lot that is not among ``lots``, once for each code; any thread.
        given: lots as the settings have them; what they hold no person's release lets go.
    """

    def __init__(
        self,
        lots: Iterable[InputLot],
        past: Iterable[FactRecord] = (),
        on_record: Callable[[str], InputLot | None] = _nothing_on_record,
        given: Iterable[InputLot] = (),
    ) -> None:
        self._lots = {lot.code: lot for lot in lots}
        self._on_record = on_record
        self._held_by_settings = {lot.code for lot in given if lot.status is LotStatus.HELD}
        self._asked: dict[str, InputLot | None] = {}
        self._holds = {
            code: {one.fact.uid: one for one in found}
            for code, found in open_holds(tuple(past)).items()
        }

    @override
    def __getitem__(self, code: str) -> InputLot:
        known = self._lots.get(code)
        if known is None:
            if code not in self._asked:
                self._asked[code] = self._on_record(code)
            known = self._asked[code]
        if known is None:
            raise KeyError(code)
        return known

    @override
    def __iter__(self) -> Iterator[str]:
        return iter(self._lots)

    @override
    def __len__(self) -> int:
        return len(self._lots)

    def holds(self, code: str) -> tuple[FactRecord, ...]:
        """The holds on a lot that nobody released, oldest first."""
        return tuple(self._holds.get(code, {}).values())

    def noted(self, record: FactRecord) -> None:
        """See a fact that was recorded."""
        fact = record.fact
        if fact.kind is EntryKind.DELIVERY:
            self._put(delivery_of(fact).lot)
            return
        code = held_lot(fact)
        if not code:
            return
        holds = dict(self._holds.get(code, {}))
        if fact.kind is EntryKind.HOLD:
            holds[fact.uid] = record
        else:
            holds.pop(str(fact.details["hold"]), None)
        self._holds = {**self._holds, code: holds}
        lot = self.get(code)
        if lot is None or lot.status is LotStatus.EXPIRED:
            return
        held = holds or code in self._held_by_settings
        self._put(replace(lot, status=LotStatus.HELD if held else LotStatus.FREE))

    def _put(self, lot: InputLot) -> None:
        self._lots = {**self._lots, lot.code: lot}  # anew: another thread may be going through it
