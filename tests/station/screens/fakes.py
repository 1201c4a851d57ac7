"""Stand-ins for what a screen talks to."""

from station.core.facts import Fact
from station.core.label_life import Reprint, Resolve
from station.line.state import RunChoice


class FakeIntents:
    """Keeps what was asked of the line."""

    def __init__(self) -> None:
        self.asked: list[tuple[str, object]] = []

    def set_aside(self, reason: str) -> None:
        self.asked.append(("set_aside", reason))

    def resume(self, who: str) -> None:
        self.asked.append(("resume", who))

    def start_run(self, choice: RunChoice) -> None:
        self.asked.append(("start_run", choice))

    def end_run(self, who: str) -> None:
        self.asked.append(("end_run", who))

    def enter(self, facts: tuple[Fact, ...], who: str) -> None:
        self.asked.append(("enter", (facts, who)))

    def reprint(self, wish: Reprint) -> None:
        self.asked.append(("reprint", wish))

    def resolve(self, answer: Resolve) -> None:
        self.asked.append(("resolve", answer))

    def bar(self, source: str, words: str) -> None:
        self.asked.append(("bar", (source, words)))


class FakeHand:
    """Keeps what was done at the simulated scale."""

    def __init__(self) -> None:
        self.done: list[tuple[str, float]] = []
        self.is_plugged = True
        self.is_taken = False

    def put_bag(self) -> bool:
        self.done.append(("put_bag", 0))
        return not self.is_taken

    def pour(self, grams: float) -> None:
        self.done.append(("pour", grams))

    def take_out(self, grams: float) -> None:
        self.done.append(("take_out", grams))

    def lift(self) -> None:
        self.done.append(("lift", 0))

    def press_zero(self) -> None:
        self.done.append(("press_zero", 0))

    def unplug(self) -> None:
        self.is_plugged = False
        self.done.append(("unplug", 0))

    def plug_in(self) -> None:
        self.is_plugged = True
        self.done.append(("plug_in", 0))
