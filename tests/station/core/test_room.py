"""When the disk counts as full; both sides of each figure."""

import shutil
import subprocess

import pytest

from station.core.room import Level, RoomRules, Space, level_of, needed

MIB = 2**20
RULES = RoomRules(80, stop=100 * MIB, reserve=10 * MIB)
LARGE = 10_000 * MIB


def space(free):
    return Space(LARGE - free, free)


@pytest.mark.parametrize(
    ("free", "before", "reserve", "level"),
    [
        (2_001 * MIB, Level.AMPLE, True, Level.AMPLE),
        (2_000 * MIB, Level.AMPLE, True, Level.LOW),
        (100 * MIB, Level.LOW, True, Level.LOW),
        (100 * MIB - 1, Level.LOW, True, Level.SHUT),
        (125 * MIB - 1, Level.SHUT, True, Level.SHUT),
        (125 * MIB, Level.SHUT, True, Level.LOW),
        (2_001 * MIB, Level.AMPLE, False, Level.RESERVE),
        (9_000 * MIB, Level.RESERVE, True, Level.AMPLE),
    ],
)
def test_levels_on_both_sides_of_each_figure(free, before, reserve, level):
    assert level_of(space(free), RULES, before, reserve=reserve) is level


def test_on_a_small_medium_a_twentieth_is_kept():
    small = RULES.on(Space(15 * MIB, 5 * MIB))
    assert (small.stop, small.reserve, small.brink) == (MIB, MIB, MIB // 4)
    assert RULES.on(space(1)) == RULES
    assert RULES.brink == MIB


def test_what_must_be_freed_leaves_room_for_the_reserve_too():
    assert needed(space(100 * MIB), RULES, reserve=True) == 25 * MIB
    assert needed(space(100 * MIB), RULES, reserve=False) == 35 * MIB


def test_percent_is_that_of_df(tmp_path, need_tool):
    df = [need_tool("df"), "--output=pcent", str(tmp_path)]
    told = subprocess.run(df, capture_output=True, text=True, check=True).stdout.split()[-1]
    usage = shutil.disk_usage(tmp_path)
    assert abs(Space(usage.used, usage.free).percent - int(told.rstrip("%"))) <= 1
