"""Plays the sounds of the line through the system's player, on a thread of its own.

A sound says nothing that the screen does not say too, so a machine without a player, or without a
loudspeaker, is only silent.
"""

from __future__ import annotations

import queue
import shutil
import subprocess
import sys
import tempfile
import threading
from collections.abc import Callable, Sequence
from pathlib import Path

from station.app.tones import wav
from station.line.effects import Cue, Sound

PLAYERS: tuple[tuple[str, ...], ...] = (
    ("pw-play",),
    ("paplay",),
    ("aplay", "-q"),
    ("afplay",),
)
"""Commands that systems bring for playing a WAV file, named last."""
_LONGEST_S = 3.0

Sink = Callable[[bytes], None]
"""Plays a WAV file and returns when it is over."""


def system_sink() -> Sink | None:
    """Return what plays sounds on this machine; None where there is nothing."""
    if sys.platform == "win32":
        import winsound  # that system's own

        return lambda sound: winsound.PlaySound(sound, winsound.SND_MEMORY)
    for command, *options in PLAYERS:
        found = shutil.which(command)
        if found is not None:
            return command_sink([found, *options])
    return None


def command_sink(command: Sequence[str]) -> Sink:
    """Return a sink that hands each sound to a command as a file."""

    def play(sound: bytes) -> None:
        with tempfile.TemporaryDirectory(prefix="sound-") as folder:
            file = Path(folder) / "sound.wav"
            file.write_bytes(sound)
            subprocess.run(
                [*command, str(file)],
                stdin=subprocess.DEVNULL,
                stdout=subprocess.DEVNULL,
                stderr=subprocess.DEVNULL,
                timeout=_LONGEST_S,
                check=False,
            )

    return play


class Sounds:
    """The newest sound that waits is played; one that came before it is not made up for.

    Args:
        sink: plays a sound; None for silence.
    """

    def __init__(self, sink: Sink | None) -> None:
        self._sink = sink
        self._queue: queue.SimpleQueue[Cue | None] = queue.SimpleQueue()
        self._thread = threading.Thread(target=self._work, name="sounds", daemon=True)

    def start(self) -> None:
        """Start the thread; for silence there is none."""
        if self._sink is not None:
            self._thread.start()

    def stop(self) -> None:
        """Let the sound that is playing end, and the thread with it."""
        if self._thread.is_alive():
            self._queue.put(None)
            self._thread.join(2 * _LONGEST_S)

    def play(self, sound: Sound) -> None:
        """Play a sound soon; returns at once."""
        if self._sink is not None:
            self._queue.put(sound.cue)

    def _work(self) -> None:
        assert self._sink is not None
        while True:
            cue = self._queue.get()
            while not self._queue.empty() and cue is not None:
                cue = self._queue.get()
            if cue is None:
                return
            try:
                self._sink(wav(cue))
            except (OSError, RuntimeError, subprocess.TimeoutExpired):
                continue  # the screen says it all the same
