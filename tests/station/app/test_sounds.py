"""Sounds go to a real command, the newest first; no player is only silence."""

import sys
import threading

import pytest

from station.app.sounds import Sounds, command_sink
from station.app.tones import wav
from station.line.effects import Cue, Sound

KEEP = "import shutil, sys; shutil.copy(sys.argv[2], sys.argv[1])"


@pytest.fixture
def playing():
    started = []

    def begin(sink):
        sounds = Sounds(sink)
        sounds.start()
        started.append(sounds)
        return sounds

    yield begin
    for one in started:
        one.stop()


def test_a_command_gets_the_sound_as_a_file(tmp_path):
    kept = tmp_path / "kept.wav"
    command_sink([sys.executable, "-c", KEEP, str(kept)])(wav(Cue.STOP))
    assert kept.read_bytes() == wav(Cue.STOP)


def test_what_waits_behind_a_sound_is_only_the_newest(playing):
    heard, free, done = [], threading.Event(), threading.Event()

    def sink(sound):
        heard.append(sound)
        if len(heard) == 1:
            free.wait(10)
        else:
            done.set()

    sounds = playing(sink)
    sounds.play(Sound(Cue.ACCEPT))
    while not heard:
        pass
    for cue in (Cue.WRONG_WAY, Cue.ACCEPT, Cue.STOP):
        sounds.play(Sound(cue))
    free.set()
    assert done.wait(10)
    sounds.stop()
    assert heard == [wav(Cue.ACCEPT), wav(Cue.STOP)]


def test_a_player_that_fails_is_tried_again_with_the_next_sound(playing):
    tried, done = [], threading.Event()

    def sink(sound):
        tried.append(sound)
        if len(tried) == 2:
            done.set()
        raise OSError("no such device")

    sounds = playing(sink)
    sounds.play(Sound(Cue.ACCEPT))
    while not tried:
        pass
    sounds.play(Sound(Cue.STOP))
    assert done.wait(10)


def test_without_a_player_nothing_happens(playing):
    playing(None).play(Sound(Cue.STOP))
