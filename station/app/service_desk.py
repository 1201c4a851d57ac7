"""Answers the service page about the scale's line; hears everything the link says."""

from __future__ import annotations

import threading
from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from drivers.errors import RecordingError
from drivers.frames import scp0499_commands as command
from drivers.frames.base import FrameParser
from drivers.frames.scp0499_facts import ScaleFacts
from drivers.frames.scp0499_outcome import Outcome
from drivers.link import ScaleLink
from drivers.link_items import LinkDegraded, LinkDown, LinkItem, LinkUp
from drivers.steady import Reading
from drivers.wire import WireLog
from drivers.wire_view import count_of, rows_of
from drivers.zero_gate import asks_for_zero
from station.app.scale_line import commands_of
from station.config.packhouse import ScaleSettings
from station.core.scale_swap import ScaleIdentity
from station.line.guided import steady_indication
from station.line.ports import Clock
from station.line.state import LineState, Phase
from station.screens.service_source import LinkNow, Named, ScaleCommand, WireNow

_SHOWN = 60
_FREE = {Phase.CLOSED, Phase.CLEAR_PAN, Phase.READY, Phase.STOPPED}
"""Phases in which no bag is weighed."""


class ServiceDesk:
    """Implements station.screens.service_source.ServiceSource; ``hear`` is for the link's thread.

    Args:
        scale: of the settings.
        home: recordings go to its folder ``recordings``.
        clock: tells the time.
        log: of the line.
        link: to the scale.
        new_parser: makes the parser of the line.
        found: told of each scale that is there.
        system: what is known of the station beside its scale.
    """

    def __init__(
        self,
        scale: ScaleSettings,
        home: Path,
        clock: Clock,
        log: WireLog,
        link: ScaleLink,
        new_parser: Callable[[], FrameParser],
        found: Callable[[ScaleIdentity], None],
        system: Callable[[], tuple[Named, ...]],
    ) -> None:
        self._scale, self._clock, self._log, self._link = scale, clock, log, link
        self._parser, self._found, self.system = new_parser, found, system
        self.folder = home / "recordings"
        self._lock = threading.Lock()
        self._now = LinkNow("the port is not open yet", good=False, port=scale.port.url)
        self._facts = ScaleFacts()
        self._outcome = (0, False, "")
        self._asks_for_zero = False
        """The newest reading may not be used until the scale is set to zero."""

    # --- on the link's thread -------------------------------------------------------------------

    def hear(self, item: LinkItem) -> None:
        """Take in what the link says."""
        if isinstance(item, Reading | LinkDown | LinkDegraded):
            self._asks_for_zero = isinstance(item, Reading) and asks_for_zero(item)
        match item:
            case Reading(fault=None):
                if not self._now.good:
                    self._say("weights arrive and are used", good=True)
            case Reading(fault=str(fault)):
                if self._now.good:
                    self._say(fault, good=False)
            case LinkUp(port, _, identity):
                self._facts = ScaleFacts()
                words = "the port is open, no weight was read yet"
                self._now = LinkNow(words, good=False, port=port, identity=identity)
                self._found(ScaleIdentity(device=identity))
            case LinkDown(_, why, _) | LinkDegraded(_, _, why):
                self._say(why, good=False)
            case ScaleFacts():
                self._facts = item
                self._found(
                    ScaleIdentity(
                        item.maker, item.model, item.version, item.serial, self._now.identity
                    )
                )
            case Outcome(_, done, words):
                with self._lock:
                    self._outcome = (self._outcome[0] + 1, done, words)
            case _:
                pass

    def _say(self, words: str, good: bool) -> None:
        self._now = LinkNow(words, good, self._now.port, self._now.identity)

    # --- any thread -----------------------------------------------------------------------------

    @property
    def outcome(self) -> tuple[int, bool, str]:
        """How many commands had an outcome, whether the last was done, and its words."""
        with self._lock:
            return self._outcome

    def wire(self) -> WireNow:
        """What passes over the line now."""
        passed = self._log.newest()
        rows = rows_of(passed, self._parser)
        return WireNow(
            self._now,
            rows[-_SHOWN:],
            count_of(passed, rows, self._clock.monotonic_ns()),
            str(self._log.recording or ""),
            self._log.broken,
        )

    def record(self) -> str:
        """Start a recording in a fresh file; returns its place.

        Raises:
            RecordingError: it cannot be made.
        """
        at: datetime = self._clock.now().utc
        path = self.folder / f"scale-{at:%Y%m%d-%H%M%S}.rec"
        try:
            self.folder.mkdir(parents=True, exist_ok=True)
        except OSError as fault:
            raise RecordingError(f"folder {self.folder}", (fault.strerror or "").lower()) from fault
        self._log.record(path)
        return str(path)

    def end_recording(self) -> str:
        """End the recording; returns its place.

        Raises:
            RecordingError: its end may be missing.
        """
        path = self._log.recording
        self._log.end_recording()
        return str(path or "")

    def about_scale(self) -> tuple[Named, ...]:
        """What the scale said about itself, and what the settings say."""
        scale, facts = self._scale, self._facts
        settings = (
            ("In the settings", f"{scale.id}, {scale.protocol}, {_line(scale)}"),
            (
                "Plate in the settings",
                f"class {scale.scale_class}, interval {scale.interval}, Max {scale.capacity}",
            ),
        )
        if scale.description is not None:
            return (*settings, ("Its lines", scale.description.name))
        said = (
            ("Maker and model", f"{facts.maker} {facts.model}".strip()),
            ("Version", facts.version),
            ("Serial number", facts.serial),
            (
                "Protocol",
                f"SMA SCP-0499 level {facts.level}, {facts.revision}" if facts.level else "",
            ),
            *(
                ("Range", f"Max {one.capacity:f} {one.unit}, interval {one.interval:f} {one.unit}")
                for one in facts.ranges
            ),
            ("Commands of level 2", " ".join(facts.commands)),
        )
        return (*settings, *((name, words or "not said") for name, words in said))

    def commands(self) -> tuple[ScaleCommand, ...]:
        """What the scale can be told."""
        told = commands_of(self._scale)
        if told is not None:
            given = (
                ScaleCommand("ZERO", told.zero, in_run=True),
                ScaleCommand("TARE", told.tare),
                *(ScaleCommand(f"UNIT {unit}", data) for unit, data in told.units.items()),
            )
            return tuple(one for one in given if one.data)
        unit = str(self._scale.unit)
        listed = (
            ("Z", ScaleCommand("ZERO", command.zero(), in_run=True)),
            ("T", ScaleCommand("TARE", command.tare())),
            ("C", ScaleCommand("CLEAR TARE", command.clear_tare(), in_run=True)),
            ("U", ScaleCommand(f"UNIT {unit}", command.select_unit(unit), in_run=True)),
            ("D", ScaleCommand("DIAGNOSE", command.diagnostics(), False, in_run=True)),
        )
        return tuple(one for letter, one in listed if self._facts.can(letter))

    def give(self, command: ScaleCommand, state: LineState | None) -> str:
        """Send a command; returns why it may not be given now, or nothing."""
        if state is None or not self._now.port:
            return "the scale's line is not open"
        if state.run is not None and not command.in_run:
            return f"{command.name} would change what the bags of the open run weigh: end the run"
        if state.run is not None and state.phase not in _FREE:
            return f"{command.name} waits: a bag is on the pan"
        still = self._asks_for_zero or steady_indication(state) is not None
        if command.touches_pan and command.name == "ZERO" and not still:
            return "wait until the scale stands still: it is never set to zero in motion"
        self._link.send(command.data)
        return ""


def _line(scale: ScaleSettings) -> str:
    port = scale.port
    return f"{port.url}, {port.baud} {port.bits}{port.parity[0].upper()}{port.stop_bits}"
