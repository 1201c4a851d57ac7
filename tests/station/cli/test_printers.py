"""``station printers``: what a printer says of itself, asked for real."""

from shutil import copytree

import pytest

from tests.drivers.printer.conftest import announcer, make_printer, printer
from tests.drivers.printer.ipp_printer.rig import free_port
from tests.station.cli.conftest import DEMO

__all__ = ["announcer", "make_printer", "printer"]


@pytest.fixture
def named(tmp_path):
    """Give a function that names an IPP printer in a copy of the demo's settings."""

    def name(url):
        folder = copytree(DEMO, tmp_path / "settings")
        file = folder / "station.toml"
        text = file.read_text(encoding="utf-8")
        asked = text.replace('kind = "folder"', f'kind = "ipp"\nurl = "{url}"')
        file.write_text(asked, encoding="utf-8")
        return folder

    return name


def test_a_printer_that_answers_is_ready(station, named, printer):
    done = station("printers", "--config", named(printer.address), "--json")
    assert done.code == 0
    assert (done.document["kind"], done.document["trouble"]) == ("ipp", "")
    assert {"application/pdf", "image/pwg-raster"} <= set(done.document["formats"])
    assert done.document["resolution"] == 203


def test_a_printer_that_does_not_answer_is_a_fault_of_the_surroundings(station, named):
    done = station("printers", "--config", named(f"ipp://localhost:{free_port()}/p"), "--json")
    assert done.code == 3
    assert "does not answer" in done.error["title"]


def test_a_folder_needs_nothing(station):
    done = station("printers", "--config", DEMO, "--json")
    assert (done.code, done.document["kind"]) == (0, "folder")
