"""``[checks]`` and ``[tare]`` of station.toml: what must be checked in time, and with what."""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal
from typing import Annotated

from station.config.check import check_table
from station.config.faults import Faults
from station.config.fields import Flag, MassText, Percent, Rule, one_of, printable, whole
from station.config.gates import CheckSettings, TareSettings
from station.config.settings import Shape
from station.config.toml_file import Table
from station.core.mass import Mass
from station.core.metrology.check_plan import WeightSet
from station.core.metrology.clause import RuleRefused
from station.core.metrology.instrument_errors import WeightClass
from station.core.metrology.scale_check import CheckSchedule
from station.core.metrology.tare import TareRule

KEYS = ("checks", "tare")
_MOST_WEIGHTS = 40


class ChecksTable(Shape):
    """``[checks]``: the scale's checks with test weights."""

    on: Flag
    scale_every_minutes: Annotated[int, whole(5, 720, "minutes")] = 60
    grace_minutes: Annotated[int, whole(0, 60, "minutes")] = 10
    weights: Annotated[
        list[MassText],
        Rule(
            f'a list of 1 to {_MOST_WEIGHTS} masses, such as ["1 kg", "200 g"]', lambda all_: all_
        ),
    ]
    weight_class: Annotated[str, one_of(*(str(one) for one in WeightClass))]
    certificate: Annotated[str, printable(60)]
    clearance: Flag = True


class TareTable(Shape):
    """``[tare]``: when a mean tare may be taken off."""

    on: Flag
    declared_may_stand: Flag
    small_share_percent: Percent = Decimal(5)
    least_bags: Annotated[int, whole(10, 200, "bags")] = 25
    most_age_days: Annotated[int, whole(1, 365, "days")] = 90
    packs_between_checks: Annotated[int, whole(20, 100_000, "bags")] = 1000


def read_checks(
    table: Table, capacity: Mass | None, file: str, faults: Faults
) -> CheckSettings | None:
    """Return ``[checks]``, or None after noting what is wrong with it.

    Args:
        table: the whole file.
        capacity: of the scale, where that is known.
        file: its name.
        faults: takes what is wrong.
    """
    checks = check_table(ChecksTable, table, "checks", file, faults)
    if checks is None:
        return None
    if not 1 <= len(checks.weights) <= _MOST_WEIGHTS:
        faults.add(file, "checks.weights", f"are {len(checks.weights)}", f"1 to {_MOST_WEIGHTS}")
        return None
    try:
        weights = WeightSet(
            tuple(checks.weights), WeightClass(checks.weight_class), checks.certificate
        )
    except RuleRefused as refused:
        faults.add(file, "checks.weights", str(refused), "weights of R 111, 1 g to 20 kg")
        return None
    if capacity is not None and weights.total_g() < capacity.grams * Decimal("0.8"):
        why = f"come to {weights.total_g()} g, the scale weighs {capacity}"
        faults.add(file, "checks.weights", why, "at least 80 % of its capacity, for near Max")
        return None
    schedule = CheckSchedule(
        timedelta(minutes=checks.scale_every_minutes), timedelta(minutes=checks.grace_minutes)
    )
    return CheckSettings(checks.on, schedule, weights, checks.clearance)


def read_tare(table: Table, file: str, faults: Faults) -> TareSettings | None:
    """Return ``[tare]``, or None after noting what is wrong with it."""
    tare = check_table(TareTable, table, "tare", file, faults)
    if tare is None:
        return None
    rule = TareRule(
        least_bags=tare.least_bags,
        small_share=tare.small_share_percent / 100,
        most_age=timedelta(days=tare.most_age_days),
        packs_between_checks=tare.packs_between_checks,
    )
    return TareSettings(tare.on, tare.declared_may_stand, rule)
