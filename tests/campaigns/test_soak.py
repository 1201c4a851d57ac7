"""The short form of the campaign, and proof that its verdict can see."""

from dataclasses import replace

import pytest

from tests.campaigns import soak
from tests.campaigns.soak import Look, drift

STEADY = [Look(60.0 * n, 120, 4.0, 20.0, 100_000, 20, 12, 6_000_000) for n in range(1, 61)]


def grown(**most: float) -> list[Look]:
    """Looks at a station that takes more from one to the next."""
    last = len(STEADY) - 1
    return [
        replace(
            look,
            **{
                name: type(getattr(look, name))(
                    getattr(look, name) + (value - getattr(look, name)) * n / last
                )
                for name, value in most.items()
            },
        )
        for n, look in enumerate(STEADY)
    ]


def test_a_station_packs_for_some_seconds() -> None:
    assert soak.run(full=False) == 0


def test_what_stays_as_it_is_is_no_drift() -> None:
    assert drift(STEADY) == []
    warming = [replace(STEADY[0], memory=60_000, files=15, threads=9), *STEADY[1:]]
    assert drift(warming) == []
    busy = [replace(look, files=look.files + n % 2) for n, look in enumerate(STEADY)]
    assert drift(busy) == []


@pytest.mark.parametrize(
    ("looks", "words"),
    [
        (grown(memory=112_000), "memory grew"),
        (grown(files=30), "files grew from"),
        (grown(threads=14), "threads grew from"),
        (grown(half_ms=12.0), "ms to its record at first"),
        (grown(log=70 * 2**20), "the log grew to"),
    ],
)
def test_what_grows_is_told(looks: list[Look], words: str) -> None:
    (fault,) = drift(looks)
    assert words in fault
