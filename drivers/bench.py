"""A simulated scale on a real line, for the bench: speaks SMA SCP-0499, is worked by hand.

Pan, load cell, noise, settling and indicator are simulated; the line is a real pseudo-terminal (or
TCP port), so that a station reads it exactly as it reads a scale.
"""

from __future__ import annotations

import math
import os
import random
import threading
import time
from decimal import Decimal, InvalidOperation

from drivers.bench_indicator import GRAMS, Indicator
from drivers.bench_physics import Feel, Pan
from drivers.bench_wire import PtyWire, TcpWire, Wire
from drivers.errors import BenchError
from drivers.frames.base import WeightFrame
from drivers.frames.scp0499 import render

_IDLE_S = 0.02
_PLUG_TIMEOUT_S = 5.0


class BenchScale:
    """The simulated scale. All public methods may be called from any thread.

    Args:
        capacity: most it weighs, as digits in ``unit``.
        interval: the scale interval, as digits in ``unit``.
        unit: g, kg, lb or oz.
        frames_per_s: frames a second of real time, 1 to 1000.
        seed: same seed, same noise.
        speed: how much faster than real time everything on the pan goes, above 0.
        transport: ``pty`` or ``tcp``; None for what this system has.
        feel: how the load cell behaves; None for noise of a twentieth interval.
        serial: number it says is its own.

    Raises:
        BenchError: a value that is not allowed; the message names it and what is.
    """

    def __init__(
        self,
        capacity: str = "6000",
        interval: str = "1",
        unit: str = "g",
        *,
        frames_per_s: float = 20.0,
        seed: int = 1,
        speed: float = 1.0,
        transport: str | None = None,
        feel: Feel | None = None,
        serial: str = "1",
    ) -> None:
        if not 1 <= frames_per_s <= 1000:
            raise BenchError(f"{frames_per_s} frames a second", "allowed are 1 to 1000")
        if not 0 < speed < math.inf:
            raise BenchError(f"speed {speed} of the bench", "must be a number above 0")
        self._indicator = Indicator(
            _number("capacity", capacity), _number("interval", interval), unit, serial
        )
        feel = feel or Feel(noise_g=0.05 * float(interval) * GRAMS[unit])
        self._chance = random.Random(seed)
        self._pan = Pan(feel, self._chance)
        self._frame_s = 1.0 / frames_per_s
        self._wire = _wire(transport or ("pty" if os.name == "posix" else "tcp"))
        self._lock = threading.Lock()
        self._plug_changed = threading.Condition(self._lock)
        self._wants_plug = True
        self._plugged = False
        self._frozen = False
        self._noise = b""
        self._stopping = threading.Event()
        self._thread = threading.Thread(target=self._work, name="bench scale")
        self._lived_s = 0.0
        self._passed_s = 0.0
        self.speed = speed
        """How much faster than real time everything on the pan goes."""

    # --- life -------------------------------------------------------------------------------

    def start(self) -> str:
        """Switch the scale on; return where it can be opened, the same after replugging."""
        self._lived_s = time.monotonic()
        self._wire.plug()
        self._plugged = True
        self._thread.start()
        return self._wire.url

    def stop(self) -> None:
        """Switch the scale off and leave nothing behind."""
        self._stopping.set()
        if self._thread.ident is not None:
            self._thread.join()
        self._wire.remove()

    @property
    def url(self) -> str:
        """Where the scale can be opened."""
        return self._wire.url

    # --- by hand ----------------------------------------------------------------------------

    def put_bag(self, grams: float) -> None:
        """Put an empty bag on the pan.

        Raises:
            BenchError: there is one already, or the mass is not above 0.
        """
        _above_zero("a bag", grams)
        with self._lock:
            if self._pan.bag is not None:
                raise BenchError("a bag is on the pan already", "lift it first")
            self._pan.bag = float(grams)

    def pour(self, grams: float, over_s: float = 0.0) -> None:
        """Let product run into the bag for ``over_s`` seconds of the bench's time; returns at once.

        Without a bag it falls on the pan.

        Raises:
            BenchError: the mass is not above 0, or the time below 0.
        """
        _above_zero("product", grams)
        if not 0 <= over_s < math.inf:
            raise BenchError(f"pouring for {over_s} s", "must be a number, 0 or above")
        with self._lock:
            self._pan.pour(float(grams), float(over_s))

    def take_out(self, grams: float) -> float:
        """Take product out of the bag; return how much there was to take.

        Raises:
            BenchError: the mass is not above 0.
        """
        _above_zero("product taken out", grams)
        with self._lock:
            taken = min(float(grams), self._pan.content)
            self._pan.content -= taken
            return taken

    def lift(self) -> float:
        """Lift the bag with all in it; return its whole mass, 0 where there is none."""
        with self._lock:
            pan = self._pan
            lifted = (pan.bag or 0.0) + pan.content
            pan.stop_pouring()
            pan.bag, pan.content = None, 0.0
            return lifted

    def residue(self, grams: float) -> None:
        """Leave product on the pan itself; 0 wipes it clean.

        Raises:
            BenchError: the mass is below 0.
        """
        if not 0 <= grams < math.inf:
            raise BenchError(f"residue of {grams} g", "must be a number, 0 or above")
        with self._lock:
            self._pan.residue = float(grams)

    def drift(self, grams_per_min: float) -> None:
        """Let the cell drift from now on; 0 ends it.

        Raises:
            BenchError: no number.
        """
        if not math.isfinite(grams_per_min):
            raise BenchError(f"drift of {grams_per_min} g a minute", "must be a number")
        with self._lock:
            self._pan.drift_per_s = float(grams_per_min) / 60.0

    def press_zero(self) -> bool:
        """Press the zero key; return whether the scale did it."""
        with self._lock:
            return self._indicator.press_zero()

    def press_unit(self, unit: str) -> None:
        """Choose another unit at the scale.

        Raises:
            BenchError: the scale does not have it.
        """
        with self._lock:
            if not self._indicator.choose_unit(unit):
                raise BenchError(f"unit {unit!r} at the scale", f"it has {', '.join(GRAMS)}")

    def power_cycle(self) -> None:
        """Switch off and on: tare and unit are lost, zero is what lies on the pan."""
        with self._lock:
            self._indicator.switch_on()

    def freeze(self, frozen: bool) -> None:
        """Let the scale fall silent with its line open, or speak again."""
        with self._lock:
            self._frozen = frozen

    def noise_burst(self, n_bytes: int) -> None:
        """Put so many bytes of noise on the line.

        Raises:
            BenchError: not 1 to 100 000.
        """
        if not 1 <= n_bytes <= 100_000:
            raise BenchError(f"noise of {n_bytes} bytes", "allowed are 1 to 100 000")
        with self._lock:
            self._noise += self._chance.randbytes(n_bytes)

    def unplug(self) -> None:
        """Pull the plug of the line; the scale itself stays on. Returns once it is out.

        Raises:
            BenchError: the scale does not run.
        """
        self._plug(False)

    def plug_in(self) -> None:
        """Put the plug back. Returns once it is in.

        Raises:
            BenchError: the scale does not run.
        """
        self._plug(True)

    # --- what a person sees -----------------------------------------------------------------

    @property
    def load_grams(self) -> float:
        """True load on the pan."""
        with self._lock:
            return self._pan.load

    @property
    def content_grams(self) -> float:
        """True mass of what is in the bag."""
        with self._lock:
            return self._pan.content

    @property
    def has_bag(self) -> bool:
        """Whether a bag is on the pan."""
        with self._lock:
            return self._pan.bag is not None

    @property
    def is_plugged(self) -> bool:
        """Whether the line's plug is in."""
        with self._lock:
            return self._plugged

    @property
    def display(self) -> WeightFrame:
        """What the scale's own display shows."""
        with self._lock:
            return self._indicator.frame()

    # --- on the scale's thread ----------------------------------------------------------------

    def _plug(self, wanted: bool) -> None:
        with self._plug_changed:
            self._wants_plug = wanted
            if not self._thread.is_alive() or not self._plug_changed.wait_for(
                lambda: self._plugged is wanted, _PLUG_TIMEOUT_S
            ):
                raise BenchError("the bench scale does not run", "start it first")

    def _work(self) -> None:
        due_s = time.monotonic()
        while not self._stopping.is_set():
            wait_s = min(_IDLE_S, due_s - time.monotonic())
            received = self._receive(wait_s)
            now_s = time.monotonic()
            is_due = now_s >= due_s
            if is_due:
                due_s = max(due_s + self._frame_s, now_s)
            with self._plug_changed:
                self._move_plug()
                sent = self._live(now_s, received, is_due)
                plugged = self._plugged
            if sent and plugged:
                self._wire.write(sent)

    def _receive(self, wait_s: float) -> bytes:
        if self._plugged:  # written by this thread alone
            return self._wire.read(wait_s)
        self._stopping.wait(max(0.0, wait_s))
        return b""

    def _move_plug(self) -> None:
        if self._wants_plug is self._plugged:
            return
        if self._wants_plug:
            self._wire.plug()
        else:
            self._wire.unplug()
        self._plugged = self._wants_plug
        self._plug_changed.notify_all()

    def _live(self, now_s: float, received: bytes, is_due: bool) -> bytes:
        """Let the time pass; return what goes out on the line."""
        indicator = self._indicator
        step_s = (now_s - self._lived_s) * self.speed
        self._lived_s = now_s
        self._passed_s += step_s
        self._pan.advance(self._passed_s)
        indicator.update(self._pan.signal, self._pan.swing(), step_s)
        sent, self._noise = self._noise, b""
        if self._frozen:
            return sent
        sent += indicator.feed(received)
        if is_due and indicator.repeating:
            sent += render(indicator.frame(10 if indicator.repeating == "S" else 1))
        return sent


def _wire(transport: str) -> Wire:
    wires: dict[str, type[PtyWire | TcpWire]] = {"tcp": TcpWire}
    if os.name == "posix":
        wires["pty"] = PtyWire
    if transport not in wires:
        raise BenchError(f"transport {transport!r}", f"allowed here are {', '.join(wires)}")
    return wires[transport]()


def _number(name: str, digits: str) -> Decimal:
    try:
        number = Decimal(digits)
    except InvalidOperation:
        number = Decimal("NaN")
    if not number.is_finite():
        raise BenchError(f"{name} {digits!r} of the bench scale", "must be a number in its unit")
    return number


def _above_zero(what: str, grams: float) -> None:
    if not 0 < grams < math.inf:
        raise BenchError(f"{what} of {grams} g", "must be a number above 0")
