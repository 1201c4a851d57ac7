"""The three sounds: whole WAV files, told apart by rhythm and direction."""

import io
import itertools
import wave

import numpy as np
import pytest

from station.app.tones import NOTES, RATE, wav
from station.line.effects import Cue


def samples(cue):
    with wave.open(io.BytesIO(wav(cue))) as reader:
        form = (reader.getnchannels(), reader.getsampwidth(), reader.getframerate())
        assert form == (1, 2, RATE)
        return np.frombuffer(reader.readframes(reader.getnframes()), "<i2") / 32768


@pytest.mark.parametrize("cue", Cue)
def test_each_note_sounds_as_high_and_as_long_as_written(cue):
    heard, at = samples(cue), 0
    for hertz, seconds in NOTES[cue]:
        count = round(seconds * RATE)
        note, at = heard[at : at + count], at + count
        spectrum = np.abs(np.fft.rfft(note, RATE))  # a bin a hertz
        if hertz:
            assert abs(int(spectrum.argmax()) - hertz) <= 8
            assert 0.7 < np.abs(note).max() <= 0.81
        else:
            assert not note.any()
    assert at == len(heard)


@pytest.mark.parametrize("cue", Cue)
def test_no_sound_clicks(cue):
    heard = samples(cue)
    edges = np.concatenate(([0.0], heard, [0.0]))
    assert np.abs(np.diff(edges)).max() < 0.3


def test_the_sounds_differ_in_length_and_direction():
    lengths = sorted(len(samples(cue)) for cue in Cue)
    assert all(more > 1.5 * less for less, more in itertools.pairwise(lengths))
    rises = {cue: np.sign(NOTES[cue][-1][0] - NOTES[cue][0][0]) for cue in Cue}
    assert rises == {Cue.ACCEPT: 1, Cue.WRONG_WAY: 0, Cue.STOP: -1}
