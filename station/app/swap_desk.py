"""Takes a scale into use: which it is, what its check says, which products it suits."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from zoneinfo import ZoneInfo

from drivers.link import ScaleLink
from station.config.packhouse import Packhouse
from station.core.checks.scale import CheckMade, Trigger
from station.core.facts import Fact
from station.core.ids import new_uid
from station.core.metrology.check_plan import plan_loads
from station.core.metrology.clause import RuleRefused
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.scale_check import CheckStage
from station.core.metrology.scale_suitability import Level, check_scale, worst
from station.core.scale_swap import ScaleIdentity, ScaleSwap, age_words, marks, swap_fact
from station.line.guided import GuidedCheck
from station.line.ports import Clock
from station.line.swap_duty import SwapDuty


class SwapDesk:
    """Implements station.screens.service_source.SwapSource; any thread.

    Args:
        house: the settings.
        clock: tells the time.
        duty: knows the scale that is there and the one in use.
        link: to the scale.
        dwell_ns: how long a reading must stand before it is taken by itself.
    """

    def __init__(
        self, house: Packhouse, clock: Clock, duty: SwapDuty, link: ScaleLink, dwell_ns: int
    ) -> None:
        self._house, self._clock, self._duty, self._link = house, clock, duty, link
        self._dwell_ns = dwell_ns
        self._checked: ScaleIdentity | None = None
        """The scale that was there when the newest check began."""

    @property
    def here(self) -> str:
        """The scale that is there, in words."""
        return "no scale yet" if self._duty.here is None else self._duty.here.words

    @property
    def in_use(self) -> str:
        """The scale taken into use last, in words."""
        last = self._duty.last
        if last is None:
            return "none was taken into use on record yet"
        age = age_words(last.verified, self._clock.now().utc)
        return f"{last.identity.words}, plate {last.serial}, {age}"

    @property
    def today(self) -> date:
        """The plant's calendar day."""
        zone = ZoneInfo(self._house.settings.zone)
        return self._clock.now().utc.astimezone(zone).date()

    def look(self) -> None:
        """Take whatever device is plugged in now for the scale, and ask it about itself."""
        self._link.take_any_device()

    def guided(self) -> GuidedCheck:
        """A check at the empty pan, near the tare and the gross of the heaviest product, near Max.

        Raises:
            RuleRefused: the test weights do not make them up.
        """
        settings = self._house.settings
        product = max(self._house.products.values(), key=lambda one: one.nominal.grams)
        plate, weights = settings.scale.plate, settings.checks.weights
        planned = plan_loads(plate, weights, product.bag.tare, product.nominal)
        self._checked = self._duty.here
        return GuidedCheck(plate, planned, self._dwell_ns)

    def fitness(self) -> Mapping[str, tuple[Level, str]]:
        """For each product, how well the scale suits it and the weightiest reason."""
        plate = self._house.settings.scale.plate
        found: dict[str, tuple[Level, str]] = {}
        for product in self._house.products.values():
            rules, bag = rule_set(product.rule_set), product.bag
            try:
                findings = check_scale(plate, rules, product.nominal, bag.tare, product.upper)
            except RuleRefused as refused:
                found[product.code] = (Level.REFUSE, str(refused))
                continue
            level = worst(findings)
            words = next(one.words for one in findings if one.level is level)
            found[product.code] = (level, words)
        return found

    def swap(self, guided: GuidedCheck, serial: str, verified: str) -> ScaleSwap:
        """The scale with everything known of it.

        Raises:
            ValueError: serial number or day are not allowed, or another scale was checked.
            RuleRefused: a test weight is too coarse for the scale.
        """
        settings, here = self._house.settings, self._duty.here
        if here is not None and self._checked is not None and here.is_other(self._checked):
            raise ValueError(
                f"checked was {self._checked.words}, here is {here.words}: CHECK IT again"
            )
        plate_serial, day = marks(serial, verified, self.today)
        check = guided.check(self._clock.now().utc, CheckStage.AS_LEFT)
        made = CheckMade(
            check,
            settings.scale.plate,
            settings.scale.id,
            Trigger.EVENT,
            settings.checks.weights.certificate,
        )
        levels = {code: level for code, (level, _) in self.fitness().items()}
        return ScaleSwap(here or ScaleIdentity(), plate_serial, day, made, levels)

    def fact(self, swap: ScaleSwap) -> Fact:
        """The fact that keeps it."""
        return swap_fact(swap, new_uid(self._clock.now()))
