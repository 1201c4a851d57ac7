"""When to ask the scale for what. Pure: times come in as values.

A scale that repeats by itself is asked once and then listened to. One that does not is asked for
each weight, and for the next one when it has answered: questions that pile up are answered late,
and a weight that is seconds old looks like one of now. A command of ours ends the repeating (the
standard says: until the next command), so after its answer the scale is asked to repeat again.
"""

from __future__ import annotations

from collections import deque
from dataclasses import dataclass

MS = 1_000_000


@dataclass(frozen=True, slots=True)
class AskRules:
    """How a scale is asked for weights.

    Args:
        repeat: command that makes it send without end.
        ask: command for one weight.
        first_frame_ns: how long to wait for a frame after ``repeat`` before asking one by one.
        ask_every_ns: how often to ask one by one.
        answer_ns: how long a command may take until the scale is asked to repeat again.
        outcome_ns: how long it may take until it counts as not done.
        lost_ns: a weight that was asked for and did not come for this long comes no more; less for
            a scale that answers quickly, but never less than ``answer_ns``.
        silent_after_ns: no byte for this long is a silent scale, to be reported.
        tell_again_ns: how often silence is reported while it lasts.
    """

    repeat: bytes = b"\nR\r"
    ask: bytes = b"\nW\r"
    first_frame_ns: int = 1_000 * MS
    ask_every_ns: int = 100 * MS
    answer_ns: int = 300 * MS
    outcome_ns: int = 300 * MS
    lost_ns: int = 1_000 * MS
    silent_after_ns: int = 2_000 * MS
    tell_again_ns: int = 10_000 * MS


LISTEN = AskRules(repeat=b"", ask=b"")
"""For a scale that sends by itself and is asked nothing."""


class Conversation:
    """Decides what to send on one connection.

    Args:
        rules: how this scale is asked.
        now_ns: steady count when the connection was opened.
    """

    def __init__(self, rules: AskRules, now_ns: int) -> None:
        self._rules = rules
        self._repeats = False
        """The scale sent more weights than it was asked for."""
        self._asking = False
        """One by one."""
        self._due_ns = now_ns
        self._asked_repeat_ns: int | None = None
        self._heard_ns = now_ns
        self._told_silent_ns: int | None = None
        self._frames_since_asked = 0
        self._awaited_ns: int | None = None
        """When the weight was asked for that is still to come."""
        self._took: deque[int] = deque(maxlen=8)
        """How long the newest answers took, in nanoseconds."""
        self._late = False
        """A weight was given up; it may come yet, and answers then run behind the questions."""

    def due(self, now_ns: int) -> bytes | None:
        """Return what to send now, or None."""
        if now_ns < self._due_ns:
            return None
        rules = self._rules
        if self._asked_repeat_ns is not None and not self._repeats:
            self._asking = True
        if self._asking and not self._wants_repeat(now_ns):
            return self._one(now_ns)
        self._asking = False
        if rules.repeat == rules.ask:
            self._awaited_ns = now_ns
        self._asked_repeat_ns = now_ns
        self._frames_since_asked = 0
        self._due_ns = now_ns + rules.first_frame_ns
        return rules.repeat

    def _one(self, now_ns: int) -> bytes | None:
        """Ask for one weight, unless the one before may still come."""
        rules, awaited = self._rules, self._awaited_ns
        if awaited is not None and now_ns - max(awaited, self._heard_ns) < self._patience_ns:
            return None
        self._late = awaited is not None
        self._awaited_ns = now_ns
        self._due_ns = now_ns + rules.ask_every_ns
        return rules.ask

    @property
    def _patience_ns(self) -> int:
        """How long an answer is waited for: a lost one must not make the line seem silent."""
        if not self._took:
            return self._rules.lost_ns
        return min(self._rules.lost_ns, max(self._rules.answer_ns, 3 * max(self._took)))

    def _wants_repeat(self, now_ns: int) -> bool:
        """Whether a scale asked one by one has been silent for so long that it may be a new one."""
        asked = self._asked_repeat_ns
        silent = now_ns - self._heard_ns > self._rules.silent_after_ns
        return silent and asked is not None and now_ns - asked > self._rules.silent_after_ns

    def heard_bytes(self, now_ns: int) -> None:
        """Something came in, whatever it is."""
        self._heard_ns = now_ns
        self._told_silent_ns = None

    def heard_answer(self, now_ns: int) -> None:
        """Something whole came in, readable or not: no weight is awaited any more.

        Where one was given up, all answers that are late come in before the next question.
        """
        if self._awaited_ns is not None and not self._late:
            self._took.append(now_ns - self._awaited_ns)
        self._awaited_ns = None
        if self._asking and self._late:
            self._due_ns = max(self._due_ns, now_ns + self._rules.answer_ns)

    def heard_weight(self, now_ns: int) -> None:
        """A weight came in: while the scale repeats nothing need be sent."""
        self._frames_since_asked += 1
        if self._asking or self._asked_repeat_ns is None:
            return
        if self._frames_since_asked >= 2:
            self._repeats = True
        self._due_ns = now_ns + self._rules.first_frame_ns

    def heard_refusal(self, now_ns: int) -> None:
        """The scale does not know a command: one that never repeated is asked one by one."""
        if not self._repeats and self._asked_repeat_ns is not None:
            self._asking = True
            self._due_ns = now_ns

    def may_send(self, now_ns: int) -> bool:
        """Whether a person's command may go out: the one before had its time to be answered."""
        return self._asked_repeat_ns is not None or now_ns >= self._due_ns

    def sent_command(self, now_ns: int) -> None:
        """A command of a person was sent: it ended the repeating."""
        self._asking = False
        self._awaited_ns = self._asked_repeat_ns = None
        self._due_ns = now_ns + self._rules.answer_ns

    def is_silence_to_tell(self, now_ns: int) -> bool:
        """Whether the scale's silence has to be reported now: at first, then now and again."""
        if now_ns - self._heard_ns <= self._rules.silent_after_ns:
            return False
        told = self._told_silent_ns
        if told is not None and now_ns - told < self._rules.tell_again_ns:
            return False
        self._told_silent_ns = now_ns
        return True
