"""The products a line may run, with the targets a manager approved; kept up while it runs."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from datetime import date, datetime

from typing_extensions import override

from station.core.approvals import (
    TargetAnswer,
    VersionApproval,
    digest_of,
    open_proposals,
    target_answer,
    version_approval,
    why_not,
    with_target,
)
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.pack import PackRecord
from station.core.product import Product
from station.core.run import Run
from station.line.state import Notice


class ProductBook(Mapping[str, Product]):
    """Implements station.line.duties.Duty too. Written by the line's thread; any thread may read.

    Args:
        products: as the settings have them, by article code.
        approval_needed: a version that nobody approved as it is set is not run.
        past: proposals nobody answered, the last approved target of each product, and approvals of
            these products' versions, oldest first.
    """

    name = ""

    def __init__(
        self,
        products: Mapping[str, Product],
        *,
        approval_needed: bool = False,
        past: Iterable[FactRecord] = (),
    ) -> None:
        self._set, self._needed = dict(products), approval_needed
        self._targets: dict[str, TargetAnswer] = {}
        self._approvals: tuple[tuple[FactRecord, VersionApproval], ...] = ()
        self._proposals: tuple[FactRecord, ...] = ()
        for record in past:
            self.noted(record)

    @override
    def __getitem__(self, code: str) -> Product:
        return with_target(self._set[code], self._targets.get(code))

    @override
    def __iter__(self) -> Iterator[str]:
        return iter(self._set)

    @override
    def __len__(self) -> int:
        return len(self._set)

    @property
    def approval_needed(self) -> bool:
        """Whether a version that nobody approved is refused."""
        return self._needed

    @property
    def as_set(self) -> Mapping[str, Product]:
        """The products as the settings have them."""
        return self._set

    def refusal(self, code: str, day: date) -> str:
        """Why a product may not be run on a production day; empty when it may."""
        product = self._set.get(code)
        if product is None or not self._needed:
            return ""
        return why_not(product, (one for _, one in self._approvals), day)

    def approval(self, code: str) -> FactRecord | None:
        """The newest approval of a product as it is set now, or None."""
        product = self._set[code]
        digest = digest_of(product)
        mine = (record for record, one in self._approvals if one.digest == digest)
        return next((one for one in reversed(list(mine)) if one.fact.subject == code), None)

    def proposals(self) -> tuple[FactRecord, ...]:
        """Proposals that nobody answered, oldest first."""
        return open_proposals(self._proposals)

    # --- the duty -----------------------------------------------------------------------------

    def opened(self, run: Run, at: datetime) -> None:
        """A run has its product frozen."""

    def packed(self, record: PackRecord) -> None:
        """Bags change nothing."""

    def noted(self, record: FactRecord) -> None:
        """See proposals, answers and approvals."""
        if record.fact.kind is EntryKind.PROPOSAL:
            self._proposals = (*self._proposals, record)
        answer = target_answer(record)
        if answer is not None and answer.approved:
            self._targets = {**self._targets, answer.product: answer}
        approval = version_approval(record)
        if approval is not None:
            self._approvals = (*self._approvals, (record, approval))

    def closing(self, now: datetime) -> str:
        """Nothing is closed while bags are packed."""
        return ""

    def due(self, now: datetime) -> Notice | None:
        """Nothing by a time."""
        return None
