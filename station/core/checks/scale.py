"""A check of the scale as an entry of the record, and back."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind, Value
from station.core.mass import Mass
from station.core.metrology.instrument_errors import ErrorSystem, ScaleClass, WeightClass
from station.core.metrology.scale_check import (
    CheckedLoad,
    CheckLoad,
    CheckReading,
    CheckResult,
    CheckStage,
    ScaleCheck,
    TestWeights,
)
from station.core.metrology.scale_suitability import Scale


class Trigger(StrEnum):
    """Why a check was made."""

    START = "start"
    HOURLY = "hourly"
    EVENT = "event"
    END = "end"


@dataclass(frozen=True, slots=True)
class CheckMade:
    """A check with all that its record needs to be judged again years later.

    Args:
        check: the check; its time is that of its entry.
        plate: what the plate of the scale says.
        scale: what identifies the scale.
        trigger: why it was made.
        certificate: of the test weights, as the packhouse names it.
    """

    check: ScaleCheck
    plate: Scale
    scale: str
    trigger: Trigger
    certificate: str


def check_fact(made: CheckMade, uid: str, run: str = "") -> Fact:
    """The entry that keeps a check.

    Args:
        made: the check.
        uid: UUID version 7 as text.
        run: id of the open run; empty where none is open.
    """
    plate = made.plate
    loads: list[Value] = [_load_body(load) for load in made.check.loads]
    return Fact(
        kind=EntryKind.SCALE_CHECK,
        uid=uid,
        subject=made.scale,
        result=str(made.check.result),
        run=run,
        details={
            "trigger": str(made.trigger),
            "stage": str(made.check.stage),
            "certificate": made.certificate,
            "class": str(plate.scale_class),
            "interval": str(plate.interval),
            "maximum": str(plate.maximum),
            "minimum": None if plate.minimum is None else str(plate.minimum),
            "system": str(plate.system),
            "loads": loads,
        },
    )


def check_of(record: FactRecord) -> CheckMade:
    """The check of its entry; its limits and results are those of its day."""
    details: Any = record.fact.details
    minimum = details["minimum"]
    return CheckMade(
        check=ScaleCheck(
            at=record.at.utc,
            stage=CheckStage(details["stage"]),
            loads=tuple(_load_of(load) for load in details["loads"]),
        ),
        plate=Scale(
            scale_class=ScaleClass(details["class"]),
            interval=Mass.parse(details["interval"]),
            maximum=Mass.parse(details["maximum"]),
            minimum=None if minimum is None else Mass.parse(minimum),
            system=ErrorSystem(details["system"]),
        ),
        scale=record.fact.subject,
        trigger=Trigger(details["trigger"]),
        certificate=details["certificate"],
    )


def held_true(made: CheckMade) -> bool:
    """Whether bags may be packed on what this check says."""
    return made.check.result is not CheckResult.FAILED


def _load_body(load: CheckedLoad) -> dict[str, Value]:
    reading = load.reading
    return {
        "load": str(reading.load),
        "weights": [str(one) for one in reading.weights.nominals],
        "weight_class": str(reading.weights.weight_class),
        "mass": str(load.mass),
        "indication": str(reading.indication),
        "added": None if reading.added is None else str(reading.added),
        "error": str(load.error),
        "warn_beyond": str(load.warn_beyond),
        "fail_beyond": str(load.fail_beyond),
        "result": str(load.result),
    }


def _load_of(body: Any) -> CheckedLoad:  # noqa: ANN401 - the body as read back
    weights = TestWeights(
        tuple(Mass.parse(one) for one in body["weights"]), WeightClass(body["weight_class"])
    )
    added = None if body["added"] is None else Mass.parse(body["added"])
    return CheckedLoad(
        reading=CheckReading(
            CheckLoad(body["load"]), weights, Mass.parse(body["indication"]), added
        ),
        mass=Mass.parse(body["mass"]),
        error=Mass.parse(body["error"]),
        warn_beyond=Mass.parse(body["warn_beyond"]),
        fail_beyond=Mass.parse(body["fail_beyond"]),
        result=CheckResult(body["result"]),
    )
