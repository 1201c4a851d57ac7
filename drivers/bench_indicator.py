"""The indicator of the simulated scale: from the cell's signal to digits and replies. Pure.

Speaks SMA SCP-0499 (1st ed., 1999), Level 2. What the standard leaves to the scale follows common
practice: zero is set only at rest and within 2 % of capacity, the first zero within 10 %; more than
9 intervals above capacity is over, 20 below zero is under; centre of zero is a quarter interval; an
empty pan's zero is tracked by half an interval a second. The cell's signal ends at twice the
capacity, either side.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from decimal import Decimal

from drivers.errors import BenchError
from drivers.frames.base import Condition, Kind, WeightFrame
from drivers.frames.scp0499 import render

GRAMS = {"g": 1.0, "kg": 1000.0, "lb": 453.59237, "oz": 28.349523125}
"""Units of the bench scale; pound and ounce by their international definition."""

_HYSTERESIS = 0.1
_DIGITS = 10
_COMMAND = re.compile(rb"\n([^\n\r]{0,30})\r")
_DASHED = {Condition.ZERO_ERROR, Condition.INITIAL_ZERO_ERROR, Condition.TARE_ERROR}
_UNKNOWN = b"\n?\r"
_LINE_ERROR = b"\n!\r"
_SMA = "SMA:2/1.0"


def step_in(unit: str, interval: Decimal, base: str) -> Decimal:
    """Return the interval in ``unit``: the least 1, 2 or 5 × 10ⁿ not below the base's.

    Args:
        unit: unit shown.
        interval: the scale's interval in its base unit.
        base: the scale's base unit.
    """
    if unit == base:
        return interval
    wanted = float(interval) * GRAMS[base] / GRAMS[unit]
    power = -9
    while True:
        for digit in (1, 2, 5):
            step = Decimal(digit).scaleb(power)
            if float(step) >= wanted * (1 - 1e-9):
                return step if power <= 0 else step.quantize(Decimal(1))
        power += 1


def _longest(capacity: Decimal, interval: Decimal, base: str) -> list[str]:
    """The longest weight in each unit: the cell at its lower end, with the largest tare."""
    steps = {unit: step_in(unit, interval, base) / 10 for unit in GRAMS}
    lowest_g = -3 * float(capacity) * GRAMS[base]
    return [f"{step * round(lowest_g / float(step) / GRAMS[u]):f}" for u, step in steps.items()]


class Indicator:
    """Shows and sends the weight.

    Args:
        capacity: most it weighs, in ``unit``.
        interval: the scale interval, in ``unit``.
        unit: one of GRAMS; the base unit.
    """

    def __init__(self, capacity: Decimal, interval: Decimal, unit: str, serial: str = "1") -> None:
        if unit not in GRAMS:
            raise BenchError(f"unit {unit!r} of the bench scale", f"allowed are {', '.join(GRAMS)}")
        if not interval > 0 or not capacity > interval or capacity % interval:
            raise BenchError(
                f"bench scale of {capacity} {unit} by {interval} {unit}",
                "the interval must be above 0 and the capacity a multiple of it",
            )
        if any(len(shown) > _DIGITS for shown in _longest(capacity, interval, unit)):
            raise BenchError(
                f"bench scale of {capacity} {unit} by {interval} {unit}",
                f"its weights do not fit the {_DIGITS} characters of the protocol in every unit",
            )
        self._base = unit
        self._serial = serial
        self._capacity = capacity
        self._capacity_g = float(capacity) * GRAMS[unit]
        self._interval = interval
        self._interval_g = float(interval) * GRAMS[unit]
        self._unit = unit
        self._signal = 0.0
        self._motion = False
        self._zero_g = 0.0
        self._first_zero_g = 0.0
        self._no_first_zero = False
        self._tare_g = 0.0
        self._counts = 0
        self._pending = b""
        self._dialogue: list[str] = []
        self.repeating: str | None = None
        """R or S while it sends without end."""

    # --- from the cell ----------------------------------------------------------------------

    def update(self, signal_g: float, swing_g: float, passed_s: float) -> None:
        """Take in the cell's signal, its swing within the rest time, and the time passed."""
        most_g = 2 * self._capacity_g
        self._signal = max(-most_g, min(most_g, signal_g))
        self._motion = swing_g > 0.5 * self._interval_g
        gross = self._gross_g
        if not self._motion and abs(gross) < 0.5 * self._interval_g and not self._tare_g:
            most = 0.5 * self._interval_g * passed_s
            self._zero_g += max(-most, min(most, gross))
        step_g = self._step_g(1)
        exact = (self._gross_g - self._tare_g) / step_g
        if abs(exact - self._counts) > 0.5 + _HYSTERESIS:
            self._counts = round(exact)

    def switch_on(self) -> None:
        """Start as after a power cut: tare and unit are lost, zero is what lies on the pan."""
        self._unit, self._tare_g, self.repeating, self._dialogue = self._base, 0.0, None, []
        self._pending = b""
        self._no_first_zero = abs(self._signal) > 0.10 * self._capacity_g
        if not self._no_first_zero:
            self._zero_g = self._first_zero_g = self._signal

    @property
    def _gross_g(self) -> float:
        return self._signal - self._zero_g

    def _step(self, finer: int) -> Decimal:
        return step_in(self._unit, self._interval, self._base) / finer

    def _step_g(self, finer: int) -> float:
        return float(self._step(finer)) * GRAMS[self._unit]

    # --- what it shows ----------------------------------------------------------------------

    def frame(self, finer: int = 1) -> WeightFrame:
        """Return the present weight; ``finer`` is 10 in high resolution."""
        condition = self._condition()
        step = self._step(finer)
        counts = self._counts
        if finer > 1:
            counts = round((self._gross_g - self._tare_g) / self._step_g(finer))
        return self._frame(condition, None if condition in _DASHED else step * counts, finer > 1)

    def _frame(
        self, condition: Condition, value: Decimal | None, fine: bool, kind: Kind | None = None
    ) -> WeightFrame:
        return WeightFrame(
            digits=None if value is None else f"{value:f}",
            unit=self._unit,
            kind=kind or (Kind.NET if self._tare_g else Kind.GROSS),
            high_resolution=fine,
            motion=self._motion,
            condition=condition,
            range_no=1,
        )

    def _condition(self) -> Condition:
        gross, step = self._gross_g, self._interval_g
        if self._no_first_zero:
            return Condition.INITIAL_ZERO_ERROR
        if gross > self._capacity_g + 9 * step:
            return Condition.OVER_CAPACITY
        if gross < -20 * step:
            return Condition.UNDER_CAPACITY
        shows_zero = bool(self._tare_g) or self._counts == 0
        if not self._motion and abs(gross) <= 0.25 * step and shows_zero:
            return Condition.CENTRE_OF_ZERO
        return Condition.NORMAL

    # --- commands ---------------------------------------------------------------------------

    def feed(self, received: bytes) -> bytes:
        """Take what came over the line; return the replies, in order."""
        replies = b""
        if b"\x1b" in received:
            self.repeating = None
            self._pending, received = b"", received.rpartition(b"\x1b")[2]
        self._pending = (self._pending + received)[-256:]
        while found := _COMMAND.search(self._pending):
            self._pending = self._pending[found.end() :]
            replies += self._obey(found[1])
        return replies

    def _obey(self, command: bytes) -> bytes:
        self.repeating = None  # any command ends the repeating
        if any(byte >= 0x80 for byte in command):
            return _LINE_ERROR
        letter, data = command[:1].decode(), command[1:].decode()
        handler = self._COMMANDS.get(letter)
        if handler is None or (data and letter not in "TU"):
            return _UNKNOWN
        return handler(self, data)

    def press_zero(self) -> bool:
        """Set zero; return whether it was allowed (at rest, within 2 % of capacity)."""
        away = abs(self._signal - self._first_zero_g)
        if self._motion or self._no_first_zero or away > 0.02 * self._capacity_g:
            return False
        self._zero_g = self._signal
        self._counts = 0
        self._tare_g = 0.0
        return True

    def choose_unit(self, unit: str) -> bool:
        """Show another unit; return whether the scale has it."""
        if unit not in GRAMS:
            return False
        self._unit = unit
        self._counts = round((self._gross_g - self._tare_g) / self._step_g(1))
        return True

    def _weight(self, _: str) -> bytes:
        return render(self.frame())

    def _fine(self, _: str) -> bytes:
        return render(self.frame(10))

    def _repeat(self, _: str) -> bytes:
        self.repeating = "R"
        return b""

    def _repeat_fine(self, _: str) -> bytes:
        self.repeating = "S"
        return b""

    def _zero(self, _: str) -> bytes:
        done = self.press_zero()
        return render(self.frame() if done else self._frame(Condition.ZERO_ERROR, None, False))

    def _tare(self, data: str) -> bytes:
        step_g = self._step_g(1)
        if data:
            try:
                tare = round(float(data) * GRAMS[self._unit] / step_g) * step_g
            except ValueError:
                return _UNKNOWN
        else:
            tare = round(self._gross_g / step_g) * step_g
        if tare <= 0 or tare > self._capacity_g or (self._motion and not data):
            return render(self._frame(Condition.TARE_ERROR, None, False))
        return self._with_tare(tare)

    def _clear_tare(self, _: str) -> bytes:
        return self._with_tare(0.0)

    def _with_tare(self, tare_g: float) -> bytes:
        self._tare_g = tare_g
        self._counts = round((self._gross_g - tare_g) / self._step_g(1))
        return render(self.frame())

    def _report_tare(self, _: str) -> bytes:
        tare = round(self._tare_g / self._step_g(1)) * self._step(1)
        return render(self._frame(Condition.NORMAL, tare, False, Kind.TARE))

    def _choose_unit(self, data: str) -> bytes:
        units = list(GRAMS)
        following = units[(units.index(self._unit) + 1) % len(units)]
        self.choose_unit(data.strip(" _") or following)
        return render(self.frame())

    def _diagnose(self, _: str) -> bytes:
        return b"\n    \r"

    def _about(self, _: str) -> bytes:
        about = ("MFG:simulated", "MOD:bench scale", "REV:1.0", f"SN :{self._serial}", "END:")
        self._dialogue = list(about)
        return _line(_SMA)

    def _information(self, _: str) -> bytes:
        decimals = max(0, -int(self._interval.normalize().as_tuple().exponent))
        count = int(self._interval.scaleb(decimals))
        capacity = f"CAP:{self._base:3}:{self._capacity:f}:{count}:{decimals}"
        self._dialogue = ["TYP:S", capacity, "CMD:HPQTMCURS", "END:"]
        return _line(_SMA)

    def _next_line(self, _: str) -> bytes:
        return _line(self._dialogue.pop(0)) if self._dialogue else _UNKNOWN

    _COMMANDS: dict[str, Callable[[Indicator, str], bytes]] = {  # noqa: RUF012  a fixed table
        "W": _weight,
        "P": _weight,
        "H": _fine,
        "Q": _fine,
        "R": _repeat,
        "S": _repeat_fine,
        "Z": _zero,
        "T": _tare,
        "M": _report_tare,
        "C": _clear_tare,
        "U": _choose_unit,
        "D": _diagnose,
        "A": _about,
        "B": _next_line,
        "I": _information,
        "N": _next_line,
    }


def _line(text: str) -> bytes:
    return f"\n{text}\r".encode("ascii")
