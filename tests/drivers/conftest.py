"""Bench scales on real lines, twenty times faster than life."""

from collections.abc import Iterator

import pytest

from drivers.bench import BenchScale


def bench(transport: str) -> Iterator[BenchScale]:
    running = BenchScale(frames_per_s=200, speed=20, transport=transport)
    running.start()
    yield running
    running.stop()


@pytest.fixture(params=["pty", "tcp"])
def scale(request: pytest.FixtureRequest) -> Iterator[BenchScale]:
    yield from bench(request.param)


@pytest.fixture
def tty_scale() -> Iterator[BenchScale]:
    yield from bench("pty")
