"""The three sounds of the line as WAV files, made with the standard library.

They differ in rhythm and direction, so that they are told apart through ear defenders, where high
notes are lost: one short rising call, two low knocks, and three long falling notes.
"""

from __future__ import annotations

import io
import math
import wave
from array import array
from collections.abc import Mapping
from functools import cache

from station.line.effects import Cue

RATE = 22_050
"""Samples a second."""
_LOUD = 0.8 * 32767
_EDGE_S = 0.006
"""Each note swells and fades so long, or it would click."""

Note = tuple[int, float]
"""Hertz, 0 for silence; seconds."""

NOTES: Mapping[Cue, tuple[Note, ...]] = {
    Cue.ACCEPT: ((784, 0.07), (1175, 0.11)),
    Cue.WRONG_WAY: ((262, 0.12), (0, 0.08), (262, 0.12)),
    Cue.STOP: ((988, 0.25), (740, 0.25), (554, 0.45)),
}


@cache
def wav(cue: Cue) -> bytes:
    """Return a sound as a WAV file: mono, 16 bits, :data:`RATE` samples a second."""
    samples = array("h")
    for hertz, seconds in NOTES[cue]:
        samples.extend(_note(hertz, seconds))
    file = io.BytesIO()
    with wave.open(file, "wb") as writer:
        writer.setnchannels(1)
        writer.setsampwidth(2)
        writer.setframerate(RATE)
        writer.writeframes(_little_endian(samples))
    return file.getvalue()


def _note(hertz: int, seconds: float) -> list[int]:
    count, edge = round(seconds * RATE), _EDGE_S * RATE
    turn = 2 * math.pi * hertz / RATE
    return [
        round(_LOUD * min(1.0, at / edge, (count - at) / edge) * math.sin(turn * at))
        for at in range(count)
    ]


def _little_endian(samples: array[int]) -> bytes:
    """WAV files are little-endian on every machine."""
    if array("h", [1]).tobytes() != b"\x01\x00":
        samples.byteswap()
    return samples.tobytes()
