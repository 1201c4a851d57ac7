"""The suspect window after a failed scale check: what the packs since the last good one may weigh.

Principle (common practice): trace back to the last passed check, hold everything since, weigh the
consequence. The error may have arisen at any moment, so two bounds are worked out in exact
rationals: the whole error from the first pack on, and an error growing evenly from the last good
check to the failed one. A third case, a step at a dated moment, narrows the window when the empty
scale's own readings show it (see `zero_trace`). QA decides; the bounds are an aid.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum
from fractions import Fraction

from station.core.mass import Mass, Unit
from station.core.metrology.clause import RuleRefused
from station.core.metrology.plans import PlanKind
from station.core.metrology.rule_set import Limits, RuleSet
from station.core.metrology.scale_check import CheckResult, ScaleCheck

_MICROSECOND = timedelta(microseconds=1)


class ErrorSign(StrEnum):
    """Which way the scale was wrong."""

    HIGH = "the scale read high: packs may be short"
    LOW = "the scale read low: product was given away"
    MIXED = "the scale read high at some loads and low at others"
    NONE = "no error at any load"


@dataclass(frozen=True, slots=True)
class SuspectPack:
    """One pack of the window as weighed.

    Args:
        serial: its serial.
        at: when it was weighed.
        gross: gross indication; the error of the scale is taken at this load.
        net: net as recorded, in the unit of the nominal quantity.
    """

    serial: int
    at: datetime
    gross: Mass
    net: Mass


@dataclass(frozen=True, slots=True)
class CaseVerdict:
    """The batch of the window under one case.

    Args:
        name: the case in words.
        n: packs.
        mean: exact mean of the corrected nets, in the unit of the nominal quantity.
        t1_count: packs below T1.
        t2_count: packs below T2.
        accepted: the fully weighed batch would pass.
    """

    name: str
    n: int
    mean: Fraction
    t1_count: int
    t2_count: int
    accepted: bool


@dataclass(frozen=True, slots=True)
class Reweigh:
    """A pack to weigh again: nets under both bounds, in the unit of the nominal quantity."""

    pack: SuspectPack
    worst_net: Fraction
    drift_net: Fraction


@dataclass(frozen=True, slots=True)
class SuspectWindow:
    """Packs held after a failed check.

    Args:
        opened: time of the last good check; packs after it are suspect.
        closed: time of the failed check.
        sign: which way the scale was wrong.
        held: every pack of the window, in order of time.
        as_weighed: verdict on the nets as recorded.
        worst: verdict with the whole error from the first pack on.
        drift: verdict with the error growing evenly.
        stepped: verdict with the whole error from a dated step on, or ``None``.
        reweigh: packs in order of risk, the lightest under the worst case first.
    """

    opened: datetime
    closed: datetime
    sign: ErrorSign
    held: tuple[SuspectPack, ...]
    as_weighed: CaseVerdict
    worst: CaseVerdict
    drift: CaseVerdict
    stepped: CaseVerdict | None
    reweigh: tuple[Reweigh, ...]


def open_window(
    good: ScaleCheck,
    failed: ScaleCheck,
    packs: Sequence[SuspectPack],
    rules: RuleSet,
    limits: Limits,
    step_at: datetime | None = None,
) -> SuspectWindow:
    """Open the suspect window of a failed check.

    Args:
        good: last check that did not fail.
        failed: the failed one, as found.
        packs: packs of the run; those after ``good`` up to ``failed`` are taken.
        rules: rule set of the run.
        limits: limits of the nominal quantity.
        step_at: moment of a zero step, when the trace of the empty scale dates one.

    Raises:
        RuleRefused: the second check did not fail, the first one did, or no pack is concerned.
    """
    if good.result is CheckResult.FAILED or failed.result is not CheckResult.FAILED:
        raise RuleRefused("a suspect window lies between a check that held and one that failed")
    if failed.at <= good.at:
        raise RuleRefused(f"the failed check of {failed.at} is not after the good one of {good.at}")
    held = sorted((one for one in packs if good.at < one.at <= failed.at), key=lambda one: one.at)
    if not held:
        raise RuleRefused("no pack was weighed between the two checks: nothing is suspect")
    unit = limits.nominal.unit
    curve = _ErrorCurve(failed, unit)
    nets = [Fraction(one.net.in_unit(unit).amount) for one in held]
    errors = [curve.at(one.gross) for one in held]
    span = failed.at - good.at
    grown = [
        error * Fraction((one.at - good.at) // _MICROSECOND, span // _MICROSECOND)
        for one, error in zip(held, errors, strict=True)
    ]
    worst = [net - error for net, error in zip(nets, errors, strict=True)]
    drift = [net - error for net, error in zip(nets, grown, strict=True)]
    stepped = None
    if step_at is not None:
        after = [
            net - (error if one.at >= step_at else 0)
            for one, net, error in zip(held, nets, errors, strict=True)
        ]
        stepped = _verdict("the whole error from the dated step on", after, rules, limits)
    order = sorted(range(len(held)), key=lambda index: (worst[index], held[index].serial))
    return SuspectWindow(
        opened=good.at,
        closed=failed.at,
        sign=curve.sign,
        held=tuple(held),
        as_weighed=_verdict("as weighed", nets, rules, limits),
        worst=_verdict("the whole error from the first pack on", worst, rules, limits),
        drift=_verdict("an error growing evenly", drift, rules, limits),
        stepped=stepped,
        reweigh=tuple(Reweigh(held[index], worst[index], drift[index]) for index in order),
    )


class _ErrorCurve:
    """Error of the scale by load: straight lines between the loads checked, flat beyond them."""

    def __init__(self, check: ScaleCheck, unit: Unit) -> None:
        self._points = [
            (Fraction(load.mass.grams), Fraction(load.error.grams)) for load in check.loads
        ]
        self._grams = Fraction(unit.grams)
        errors = [error for _, error in self._points]
        if any(error > 0 for error in errors) and any(error < 0 for error in errors):
            self.sign = ErrorSign.MIXED
        elif any(error > 0 for error in errors):
            self.sign = ErrorSign.HIGH
        elif any(error < 0 for error in errors):
            self.sign = ErrorSign.LOW
        else:
            self.sign = ErrorSign.NONE

    def at(self, load: Mass) -> Fraction:
        """Error at a load, in the unit of the nominal quantity."""
        mass = Fraction(load.grams)
        before = self._points[0]
        for point in self._points:
            if mass <= point[0]:
                return self._between(before, point, mass) / self._grams
            before = point
        return before[1] / self._grams

    @staticmethod
    def _between(
        low: tuple[Fraction, Fraction], high: tuple[Fraction, Fraction], mass: Fraction
    ) -> Fraction:
        if low[0] == high[0]:
            return high[1]
        share = (mass - low[0]) / (high[0] - low[0])
        return low[1] + share * (high[1] - low[1])


def _verdict(name: str, nets: Sequence[Fraction], rules: RuleSet, limits: Limits) -> CaseVerdict:
    plan = rules.plan(len(nets), PlanKind.FULL)
    t1, t2 = Fraction(limits.t1.amount), Fraction(limits.t2.amount)
    mean = sum(nets, Fraction(0)) / len(nets)
    below_t1, below_t2 = sum(net < t1 for net in nets), sum(net < t2 for net in nets)
    return CaseVerdict(
        name,
        len(nets),
        mean,
        below_t1,
        below_t2,
        accepted=mean >= Fraction(limits.nominal.amount)
        and below_t1 <= plan.accept
        and (plan.t2_accept is None or below_t2 <= plan.t2_accept),
    )
