"""After the bag: cases of bags, pallets of cases, shipments to customers, and what undoes them.

Each is one entry that is never changed. A case is filled from bags of one blend lot, so that the
one lot and date on its label are true of every bag in it. A correction names the entry it undoes;
an SSCC is never given twice (GS1 General Specifications 2.2.1), so what was opened gets a new one.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from enum import StrEnum

from station.core.label_life import COPIED_FROM, MAY_BECOME, MOST_COPIES
from station.core.mass import Mass
from station.core.pack import LabelState

MOST_BAGS = 500
"""Bags of one case; more is a slip of the hand."""
MOST_UNITS = 400
"""Cases of a pallet, or units of a shipment."""

_SERIAL = re.compile(r"([0-9A-Z]{1,6}-[0-9A-Z]{2})-(\d{6,})", re.ASCII)
_MICRO_TO_KILO = Decimal("1e-9")

Span = tuple[str, str]
"""First and last serial of bags whose numbers follow one another."""


class ShippingError(ValueError):
    """What was asked cannot be; the message says which unit, why and what to do."""


class UnitKind(StrEnum):
    """What stands under an SSCC."""

    CASE = "case"
    PALLET = "pallet"


class Undoing(StrEnum):
    """How a unit or a shipment ends before its time."""

    OPENED = "case opened"
    BROKEN_UP = "pallet broken up"
    WITHDRAWN = "shipment withdrawn"
    """It was entered wrongly: nothing of it left."""
    CAME_BACK = "shipment came back"


@dataclass(frozen=True, slots=True)
class Case:
    """Bags of one blend lot in one box.

    Args:
        sscc: 18 digits on its label.
        product, version, name: what the bags are.
        gtin: article number of a bag.
        case_gtin: article number of the case; empty where it has none of its own.
        blend_lot: the one lot of all its bags.
        use_by: the one date of all its bags.
        spans: its bags.
        bags: how many.
        micrograms: exact sum of their net.
        date_words: words of the date on its label.
    """

    sscc: str
    product: str
    version: int
    name: str
    gtin: str
    case_gtin: str
    blend_lot: str
    use_by: date
    spans: tuple[Span, ...]
    bags: int
    micrograms: int
    date_words: str = "Use by"

    @property
    def kilograms(self) -> Decimal:
        """Net of its bags, exact."""
        return self.micrograms * _MICRO_TO_KILO


@dataclass(frozen=True, slots=True)
class Pallet:
    """Cases of one product, wrapped together.

    Args:
        sscc: 18 digits on its label.
        product, name: what is on it.
        gtin: what its label counts: of the case, or of the bag where a case has none.
        count: how many of those.
        blend_lots: of its cases, each once.
        use_by: the earliest date on it.
        cases: SSCCs of its cases.
        gross: what it weighs as it stands.
        date_words: words of the date on its label.
    """

    sscc: str
    product: str
    name: str
    gtin: str
    count: int
    blend_lots: tuple[str, ...]
    use_by: date
    cases: tuple[str, ...]
    gross: Mass
    date_words: str = "Use by"


@dataclass(frozen=True, slots=True)
class Customer:
    """Whom the packhouse ships to.

    Args:
        code: short code.
        name: of the business.
        place: where it takes goods in.
        gln: location number, 13 digits; empty where it has none.
    """

    code: str
    name: str
    place: str
    gln: str = ""


@dataclass(frozen=True, slots=True)
class Shipment:
    """Units that left for one customer under one paper.

    Args:
        number: of the packhouse's own.
        customer: as the settings had it on that day.
        reference: kind and number of the paper, such as ``delivery note 4711``.
        units: SSCCs of pallets and of cases that stand on none.
    """

    number: str
    customer: Customer
    reference: str
    units: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Correction:
    """What undoes an entry.

    Args:
        subject: SSCC or number of the shipment.
        how: what became of it.
        corrects: uid of the entry that it undoes.
        reason: why, in a person's words.
    """

    subject: str
    how: Undoing
    corrects: str
    reason: str


@dataclass(frozen=True, slots=True)
class UnitLabel:
    """How far the label of a case or pallet has come.

    Args:
        sscc: of the unit.
        state: as of a bag's label.
        copy: 0 for the first label, 1 and on for a copy.
        why: what is known beside it.
    """

    sscc: str
    state: LabelState
    copy: int = 0
    why: str = ""


# --- serials ----------------------------------------------------------------------------------


def serial_parts(serial: str) -> tuple[str, int]:
    """Head and number of a bag's serial.

    Raises:
        ShippingError: it has another form.
    """
    found = _SERIAL.fullmatch(serial)
    if found is None:
        raise ShippingError(f"{serial!r} is no serial of a bag, such as A1-7K-000042")
    return found[1], int(found[2])


def serials_between(first: str, last: str) -> tuple[str, ...]:
    """Every serial from one to another.

    Raises:
        ShippingError: they are of two counters, stand in the wrong order, or are too many.
    """
    (head, begin), (other, end) = serial_parts(first), serial_parts(last)
    if head != other:
        raise ShippingError(f"{first} and {last} are not of one row of numbers: scan each bag")
    if end < begin:
        raise ShippingError(f"{last} comes before {first}: give the first serial first")
    if end - begin >= MOST_BAGS:
        raise ShippingError(f"{first} to {last} are {end - begin + 1} bags, at most {MOST_BAGS}")
    return tuple(f"{head}-{number:06d}" for number in range(begin, end + 1))


def spans_of(serials: Iterable[str]) -> tuple[Span, ...]:
    """Serials as few spans, in order."""
    spans: list[tuple[str, int, int]] = []
    for head, number in sorted({serial_parts(one) for one in serials}):
        if spans and spans[-1][0] == head and spans[-1][2] == number - 1:
            spans[-1] = (head, spans[-1][1], number)
        else:
            spans.append((head, number, number))
    return tuple((f"{head}-{one:06d}", f"{head}-{last:06d}") for head, one, last in spans)


def serials_of(spans: Iterable[Span]) -> tuple[str, ...]:
    """Every serial of some spans."""
    return tuple(serial for first, last in spans for serial in serials_between(first, last))


# --- labels of units ------------------------------------------------------------------------


def unit_label_follows(now: UnitLabel, said: UnitLabel) -> None:
    """Pass when the label of a unit may become what is said of it.

    Raises:
        ShippingError: it may not; says what it is.
    """
    copied = said.copy == now.copy + 1 and said.state is LabelState.SUBMITTED
    if copied and now.state in COPIED_FROM and said.copy <= MOST_COPIES:
        return
    if said.copy == now.copy and said.state in MAY_BECOME[now.state]:
        return
    raise ShippingError(
        f"the label of {now.sscc} is {now.state}{f', copy {now.copy}' if now.copy else ''} and "
        f"cannot become {said.state}, copy {said.copy}"
    )
