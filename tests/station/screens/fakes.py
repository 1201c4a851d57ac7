"""Stand-ins for what a screen talks to."""

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
