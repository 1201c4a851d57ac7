"""Checks of QA beside the scale: gas, seal, temperatures, metal detector, label, wash record.

A check either measures one figure against the limits of its product, or is passed or failed by
eye. Limits and the time between checks are settings of a product; the entry keeps the limits that
held. Check values of common practice, without a source: cut room 38 °F (3.3 °C), coolers 34 to
38 °F (1.1 to 3.3 °C), about 2 % O2 in a low-oxygen bag.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import timedelta
from decimal import Decimal
from enum import StrEnum
from typing import Any

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value

GOOD, FAILED = "good", "failed"
_FIGURE = re.compile(r"-?[0-9]{1,4}(\.[0-9]{1,3})?")
LONGEST = 200


class QaError(ValueError):
    """A check that says nothing; the message says what is missing or allowed."""


class QaKind(StrEnum):
    """What is checked."""

    O2 = "O2"
    CO2 = "CO2"
    SEAL = "seal"
    PRODUCT_TEMPERATURE = "product temperature"
    ROOM_TEMPERATURE = "room temperature"
    COOLER_TEMPERATURE = "cooler temperature"
    METAL = "metal detector"
    LABEL = "label on bag"
    WASH = "wash record"


UNITS: Mapping[QaKind, tuple[str, ...]] = {
    QaKind.O2: ("%",),
    QaKind.CO2: ("%",),
    QaKind.PRODUCT_TEMPERATURE: ("°C", "°F"),
    QaKind.ROOM_TEMPERATURE: ("°C", "°F"),
    QaKind.COOLER_TEMPERATURE: ("°C", "°F"),
}
"""Kinds that measure a figure, with the units it may have; the others are passed or failed."""
NEEDS_BAG = (QaKind.O2, QaKind.CO2, QaKind.SEAL, QaKind.PRODUCT_TEMPERATURE, QaKind.LABEL)
"""Kinds made on a bag of the run, so that none can be made before its first bag."""
REFERENCE = QaKind.WASH
"""The wash step keeps its own record; the station keeps its name alone."""
_RANGE: Mapping[str, tuple[Decimal, Decimal]] = {
    "%": (Decimal(0), Decimal(100)),
    "°C": (Decimal(-60), Decimal(100)),
    "°F": (Decimal(-76), Decimal(212)),
}
"""What a figure can be at all; beyond it a decimal point was lost."""


@dataclass(frozen=True, slots=True)
class QaLimit:
    """One check of a product.

    Args:
        kind: what is checked.
        unit: of the figure; empty for a check without one.
        least, most: bounds of the figure, both allowed values; None for none.
        every: time between checks; None where only the start of a run wants one.
        at_start: whether a run begins with it.
        pieces: for the metal detector, its test pieces, such as ``2.0 mm Fe``.
    """

    kind: QaKind
    unit: str = ""
    least: Decimal | None = None
    most: Decimal | None = None
    every: timedelta | None = None
    at_start: bool = False
    pieces: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        allowed = UNITS.get(self.kind, ("",))
        if self.unit not in allowed:
            raise QaError(f"{self.kind} in {self.unit!r}: allowed is {' or '.join(allowed)!r}")
        bounds = [one for one in (self.least, self.most) if one is not None]
        if bounds and self.kind not in UNITS:
            raise QaError(f"{self.kind} has no figure: leave its bounds out")
        if self.kind in UNITS and not bounds:
            raise QaError(f"{self.kind} needs a least or a most figure")
        for bound in bounds:
            _in_range(bound, self.unit)
        if len(bounds) == 2 and bounds[0] > bounds[1]:
            raise QaError(f"{self.kind}: least {bounds[0]} is above most {bounds[1]}")
        if self.pieces and self.kind is not QaKind.METAL:
            raise QaError(f"{self.kind} has no test pieces")
        if self.kind is QaKind.METAL and not self.pieces:
            raise QaError("a metal detector is challenged with test pieces: name them")
        if self.every is None and not self.at_start:
            raise QaError(f"{self.kind} is never due: give every_minutes, or at_start = true")

    def __str__(self) -> str:
        match self.least, self.most:
            case None, None:
                return ", ".join(self.pieces)
            case None, most:
                return f"at most {most} {self.unit}"
            case least, None:
                return f"at least {least} {self.unit}"
            case least, most:
                return f"{least} to {most} {self.unit}"


@dataclass(frozen=True, slots=True)
class QaCheck:
    """One check as made.

    Args:
        limit: what held for it.
        product: code of the product it was made for.
        value: the figure; None for a check without one.
        passed: whether a check without a figure was passed; what a figure says stands in ``good``.
        found: test pieces the metal detector found and threw out.
        instrument: which one it was made with.
        note: serial of the bag, name of the wash record, what was seen.
        action: what was done after a failure.
    """

    limit: QaLimit
    product: str
    value: Decimal | None = None
    passed: bool = True
    found: tuple[str, ...] = ()
    instrument: str = ""
    note: str = ""
    action: str = ""

    def __post_init__(self) -> None:
        kind = self.limit.kind
        if (kind in UNITS) != (self.value is not None):
            needs = "a figure" if kind in UNITS else "no figure"
            raise QaError(f"{kind} needs {needs}")
        if self.value is not None:
            _in_range(self.value, self.limit.unit)
        if kind is REFERENCE and not self.note.strip():
            raise QaError("name the wash record: tank and number, as the wash step names it")
        for words in (self.instrument, self.note, self.action):
            if len(words) > LONGEST:
                raise QaError(f"{len(words)} characters: allowed are {LONGEST}")
        if not self.good and not self.action.strip():
            raise QaError(f"{kind} failed: write what is done about it before it is recorded")

    @property
    def good(self) -> bool:
        """Whether bags may be packed on what it says."""
        least, most, value = self.limit.least, self.limit.most, self.value
        if value is not None:
            return (least is None or value >= least) and (most is None or value <= most)
        if self.limit.kind is QaKind.METAL:
            return self.passed and set(self.limit.pieces) <= set(self.found)
        return self.passed

    @property
    def words(self) -> str:
        """What was found, for lists: ``2.4 %``, ``passed``."""
        if self.value is not None:
            return f"{self.value} {self.limit.unit}"
        if self.limit.kind is QaKind.METAL:
            lost = [piece for piece in self.limit.pieces if piece not in self.found]
            return f"missed {', '.join(lost)}" if lost else "all found"
        return "passed" if self.passed else "failed"


def qa_fact(check: QaCheck, uid: str, run: str = "") -> Fact:
    """The entry that keeps a check.

    Args:
        check: as made.
        uid: UUID version 7 as text.
        run: id of the open run; empty where none is open.
    """
    limit = check.limit
    pieces: list[Value] = list(limit.pieces)
    found: list[Value] = list(check.found)
    every = limit.every
    return Fact(
        EntryKind.QA_CHECK,
        uid,
        str(limit.kind),
        GOOD if check.good else FAILED,
        run,
        {
            "product": check.product,
            "value": _text(check.value),
            "unit": limit.unit,
            "least": _text(limit.least),
            "most": _text(limit.most),
            "every_minutes": None if every is None else int(every.total_seconds() // 60),
            "at_start": limit.at_start,
            "pieces": pieces,
            "found": found,
            "passed": check.passed,
            "instrument": check.instrument.strip(),
            "note": check.note.strip(),
            "action": check.action.strip(),
        },
    )


def qa_check_of(record: FactRecord) -> QaCheck:
    """The check of its entry, with the limits of its day."""
    details: Any = record.fact.details
    every = details["every_minutes"]
    limit = QaLimit(
        QaKind(record.fact.subject),
        details["unit"],
        _number(details["least"]),
        _number(details["most"]),
        None if every is None else timedelta(minutes=every),
        details["at_start"],
        tuple(details["pieces"]),
    )
    return QaCheck(
        limit,
        details["product"],
        _number(details["value"]),
        details["passed"],
        tuple(details["found"]),
        details["instrument"],
        details["note"],
        details["action"],
    )


def figure(text: str) -> Decimal:
    """The figure a person keyed in; a comma counts as the point.

    Raises:
        QaError: it is none.
    """
    digits = text.strip().replace(",", ".").replace("\u2212", "-")
    if not _FIGURE.fullmatch(digits):
        raise QaError(f"{text!r} is no figure: key in digits, such as 3.4")
    return Decimal(digits)


def _in_range(value: Decimal, unit: str) -> None:
    low, high = _RANGE[unit]
    if not value.is_finite() or not low <= value <= high:
        raise QaError(f"{value} {unit} cannot be: allowed is {low} to {high}")


def _text(number: Decimal | None) -> str | None:
    return None if number is None else format(number, "f")


def _number(text: str | None) -> Decimal | None:
    return None if text is None else Decimal(text)
