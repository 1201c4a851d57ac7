"""Real IPP printers for the tests, started when first asked for and surely gone afterwards."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest

from tests.drivers.printer.ipp_printer.rig import Announcer, TestPrinter


@pytest.fixture(scope="session")
def announcer(need_tool: Callable[[str], str]) -> Iterator[Announcer]:
    """What an ippeveprinter needs beside it."""
    # A socket's path may have 107 octets only: pytest's own folders can be longer.
    with TemporaryDirectory(prefix="bus-") as folder:
        running = Announcer(Path(folder), need_tool)
        yield running
        running.stop()


@pytest.fixture
def make_printer(
    announcer: Announcer, need_tool: Callable[[str], str], tmp_path: Path
) -> Iterator[Callable[..., TestPrinter]]:
    """Give a function that starts a printer of its own, with the abilities asked for."""
    made: list[TestPrinter] = []

    def make(**abilities: object) -> TestPrinter:
        folder = tmp_path / f"printer{len(made)}"
        folder.mkdir()
        made.append(TestPrinter(folder, announcer, need_tool, **abilities))
        return made[-1]

    yield make
    for printer in made:
        printer.daemon.stop()


@pytest.fixture
def printer(make_printer: Callable[..., TestPrinter]) -> TestPrinter:
    """A printer of 203 dots per inch that takes PDF and PWG Raster."""
    return make_printer()
