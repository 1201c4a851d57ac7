"""The demo's lead at the packing table: cases what was packed, stacks the cases, ships them."""

from __future__ import annotations

import time
from decimal import Decimal
from fractions import Fraction
from itertools import cycle

from station.app.shipping_desk import ShippingDesk
from station.app.watch import Watch
from station.core.facts import Fact
from station.core.mass import Mass, Unit
from station.core.pack import LabelState
from station.core.shipping_lines import UnitLine
from station.errors import EnvironmentFault
from station.line.state import Intents

_PATIENCE_S = 60.0
_LOOK_S = 0.01
_EMPTY_KG, _BOX_KG = Decimal(22), Decimal("0.4")
"""An empty pallet, and an empty case; common practice."""
_ON = (LabelState.SPOOLED, LabelState.APPLIED)


class PracticeShipping:
    """Cases, stacks and ships by real acts: labels are printed, scanned, and recorded.

    Args:
        desk: makes the facts.
        line: takes them.
        watch: tells what became of entries.
        who: id of the lead.
    """

    def __init__(self, desk: ShippingDesk, line: Intents, watch: Watch, who: str) -> None:
        self._desk, self._line, self._watch, self._who = desk, line, watch, who
        self._papers = 0
        self._customers = cycle(desk.customers) if desk.on else None

    def send_run(self) -> None:
        """Case every full case of the run packed last, and ship them on one pallet.

        Raises:
            EnvironmentFault: an entry was refused, or a label was not printed.
        """
        if self._customers is None:
            return
        cases: list[UnitLine] = []
        while bags := self._desk.next_case():
            if len(bags) < self._desk.full(bags[0].product):
                break  # the rest waits for more bags
            cases.append(self._labelled(self._desk.fill([bag.serial for bag in bags])))
        if not cases:
            return
        net = sum(one.net_ug for one in cases)
        gross = Decimal(round(Fraction(net, 10**8))) / 10 + _EMPTY_KG + _BOX_KG * len(cases)
        codes = [one.sscc for one in cases]
        pallet = self._labelled(self._desk.stack(codes, Mass(gross, Unit.KILOGRAM)))
        self._papers += 1
        whom = next(self._customers)
        self._enter(self._desk.ship(whom.code, f"delivery note {self._papers}", [pallet.sscc]))

    def _labelled(self, facts: tuple[Fact, ...]) -> UnitLine:
        """Enter a new unit and wait for its label."""
        self._enter(facts)
        sscc, ends = facts[-1].subject, time.monotonic() + _PATIENCE_S
        while (unit := self._desk.unit(sscc)).label not in _ON:
            if unit.label is LabelState.IN_DOUBT or time.monotonic() > ends:
                raise EnvironmentFault(f"the label of {sscc}", f"is {unit.label}")
            time.sleep(_LOOK_S)
        return unit

    def _enter(self, facts: tuple[Fact, ...]) -> None:
        self._line.enter(facts, self._who)
        answer = self._watch.next_entry(_PATIENCE_S)
        if not answer.recorded:
            raise EnvironmentFault(f"the {facts[-1].kind} was not recorded", answer.words)
