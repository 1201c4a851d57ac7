"""What the system's answer about its time service means (adjtimex(2), Linux manual pages)."""

import sys

import pytest

from station.clock_sync import judged, synced
from station.core.clock_guard import Synced

STA_UNSYNC = 0x0040


@pytest.mark.parametrize(
    ("state", "status", "expected"),
    [
        (0, 0x2001, Synced.YES),  # TIME_OK, with STA_PLL and STA_NANO
        (1, 0x2011, Synced.YES),  # TIME_INS: a leap second is due
        (5, STA_UNSYNC, Synced.NO),  # TIME_ERROR
        (0, STA_UNSYNC, Synced.NO),
        (-1, 0, Synced.UNKNOWN),
    ],
)
def test_the_answer_is_read_as_the_manual_says(state, status, expected):
    assert judged(state, status) is expected


def test_the_system_answers(monkeypatch):
    assert synced() in tuple(Synced)
    monkeypatch.setattr(sys, "platform", "elsewhere")
    assert synced() is Synced.UNKNOWN
