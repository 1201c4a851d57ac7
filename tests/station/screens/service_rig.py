"""A service page with sources whose answers a test sets."""

from datetime import date
from pathlib import Path

from PySide6.QtCore import Qt

from drivers.errors import RecordingError
from drivers.frames.description import Description
from drivers.frames.scp0499 import Scp0499Parser
from drivers.wire import Passed
from drivers.wire_view import count_of, rows_of
from station.core.checks.scale import CheckMade, Trigger
from station.core.facts import Fact
from station.core.metrology.scale_suitability import Level
from station.core.scale_swap import ScaleIdentity, ScaleSwap, marks, swap_fact
from station.errors import BadInput
from station.line.guided import GuidedCheck
from station.line.state import EntryAnswer, LineState
from station.screens.bridge import Bridge
from station.screens.offer import Person
from station.screens.service import ServicePage
from station.screens.service_source import LinkNow, Named, ScaleCommand, WireNow
from tests.drivers.listening import frame
from tests.station.screens.checks_rig import ChecksRig, RigDesk
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.states import make_run

MS = 1_000_000
PEOPLE = (Person("M01", "Noor Tallow", "maintenance"), Person("P01", "Wren Ashby", "lead"))
GOOD = LinkNow("weights arrive and are used", True, "/dev/ttyUSB0", "12ab:0034/A1")
WRONG = LinkNow(
    "bytes arrive but none is a frame: check baud rate and parity (here: 9600 8N1)",
    False,
    "/dev/ttyUSB0",
)
STREAM = (
    Passed(0, b"\nR\r", sent=True),
    *(Passed(n * 100 * MS, frame(str(250 + n % 5), motion=n % 3 == 0)) for n in range(1, 40)),
    Passed(4000 * MS, b"\n 1G         2 4g  \r"),
    Passed(4100 * MS, frame("254")),
)


class Wire:
    """The line and the scale."""

    def __init__(self) -> None:
        self.link, self.passed, self.recording = GOOD, STREAM, ""
        self.refuses = ""
        self.given: list[ScaleCommand] = []
        self.outcome = (0, False, "")
        self.disk = True

    def wire(self) -> WireNow:
        rows = rows_of(self.passed, Scp0499Parser)
        count = count_of(self.passed, rows, 4200 * MS)
        return WireNow(self.link, rows, count, self.recording)

    def record(self) -> str:
        if not self.disk:
            raise RecordingError("recording x.rec", "no space left on device")
        self.recording = "recordings/x.rec"
        return self.recording

    def end_recording(self) -> str:
        ended, self.recording = self.recording, ""
        return ended

    def about_scale(self) -> tuple[Named, ...]:
        return (
            ("In the settings", "bench scale 1, scp0499, /dev/ttyUSB0, 9600 8N1"),
            ("Maker and model", "Wharfe W3"),
            ("Serial number", "not said"),
        )

    def commands(self) -> tuple[ScaleCommand, ...]:
        return (ScaleCommand("ZERO", b"\nZ\r"), ScaleCommand("TARE", b"\nT\r"))

    def give(self, command: ScaleCommand, state: LineState | None) -> str:
        if not self.refuses:
            self.given.append(command)
        return self.refuses

    def system(self) -> tuple[Named, ...]:
        return (("Station", "0.1.0, Python 3.11"), ("SQLite", "3.40.1"), ("Disk", "80 GB free"))


class Lesson:
    """Bytes to be taught."""

    units = ("g", "kg")

    def __init__(self) -> None:
        self.quiet: list[bool] = []
        self.asked: list[bytes] = []
        self.passed: tuple[Passed, ...] = ()
        self.tapes: tuple[Path, ...] = ()
        self.saved: list[Description] = []
        self.refuses = False

    def listen(self, on: bool) -> None:
        self.quiet.append(on)

    def ask(self, request: bytes) -> None:
        self.asked.append(request)

    def heard(self) -> tuple[Passed, ...]:
        return self.passed

    def recordings(self) -> tuple[Path, ...]:
        return self.tapes

    def play(self, recording: Path) -> tuple[Passed, ...]:
        if recording.name == "bad.rec":
            raise RecordingError("recording bad.rec", "is no ASCII text")
        return self.passed

    def save(self, description: Description) -> str:
        if self.refuses:
            raise BadInput("these lines are in kg", "the settings are in g")
        self.saved.append(description)
        return "kept as lantern.toml"

    def send(self, *lines: bytes, every_ms: int = 100) -> None:
        """Let a scale have sent lines, with part of one before and after."""
        last = self.passed[-1].at_ns if self.passed else 0
        more = [Passed(last + n * every_ms * MS, line) for n, line in enumerate(lines, start=1)]
        self.passed = (*self.passed, *more)


class Swap:
    """A scale to be taken into use."""

    in_use = "Wharfe W3 serial 1001, plate 1001, verified 2025-11-03, 387 days ago"
    today = date(2026, 11, 25)

    def __init__(self) -> None:
        self.here = "Wharfe W3 serial 1002"
        self.looked = 0
        self.level = Level.GOOD
        self.made: list[Fact] = []
        self._desk = RigDesk()

    def look(self) -> None:
        self.looked += 1

    def guided(self) -> GuidedCheck:
        return self._desk.guided(make_run())

    def fitness(self):
        return {"SPINACH-255": (self.level, "nominal 255 g against Min 20 g")}

    def swap(self, guided: GuidedCheck, serial: str, verified: str) -> ScaleSwap:
        number, day = marks(serial, verified, self.today)
        check = self._desk.judge(guided)
        made = CheckMade(check, self._desk.plate, "bench", Trigger.EVENT, "set 2")
        identity = ScaleIdentity("Wharfe", "W3", "1", "1002")
        return ScaleSwap(identity, number, day, made, {"SPINACH-255": self.level})

    def fact(self, swap: ScaleSwap) -> Fact:
        self.made.append(swap_fact(swap, f"u{len(self.made)}"))
        return self.made[-1]


class ServiceRig(ChecksRig):
    """A page and everything it asks; the scale is moved as in the rig of checks."""

    key = Qt.Key.Key_F9

    def __init__(self, size=(1024, 768)) -> None:
        self.bridge, self.intents = Bridge(), FakeIntents()
        self.wire, self.lesson, self.swap = Wire(), Lesson(), Swap()
        self.page = ServicePage(
            self.bridge, self.intents, self.wire, self.lesson, self.swap, PEOPLE
        )
        self.page.resize(*size)
        self.page.show()
        self._ns = 0
        self.open = False
        self.show("0")

    def answer(self, recorded: bool = True, words: str = "recorded") -> None:
        """The line says what became of the entry."""
        facts, _ = self.asked("enter")[-1]
        self.page._entered(EntryAnswer(tuple(one.uid for one in facts), recorded, words))


def marked_line(flag: str, value: str, unit: str = "g ") -> bytes:
    """A line of an invented format: a flag, eight characters of a value, a unit."""
    return f"{flag}={value:>8} {unit}\r\n".encode()
