"""``station printers``: a folder, a real IPP printer, one that is gone, and bad addresses."""

from pathlib import Path
from shutil import copytree

import pytest

from tests.drivers.printer.conftest import announcer, make_printer, printer
from tests.drivers.printer.ipp_printer.rig import free_port

__all__ = ["announcer", "make_printer", "printer"]
DEMO = Path(__file__).parents[3] / "demo_config"


@pytest.fixture
def asked(station, tmp_path):
    """Ask for the printer of the demo's settings with another ``[printer]`` table."""

    def ask(table, *options):
        folder = copytree(DEMO, tmp_path / "settings")
        file = folder / "station.toml"
        before, rest = file.read_text(encoding="utf-8").split("[printer]\n", 1)
        after = rest.partition("\n[")[2]
        file.write_text(f"{before}[printer]\n{table}\n\n[{after}", encoding="utf-8")
        return station("printers", "--config", folder, *options)

    return ask


def test_a_folder_is_ready(station):
    found = station("printers", "--config", DEMO, "--json")
    assert (found.code, found.document["kind"], found.document["trouble"]) == (0, "folder", "")


def test_an_ipp_printer_says_what_it_takes(asked, printer):
    found = asked(f'kind = "ipp"\nurl = "{printer.address}"', "--json")
    assert (found.code, found.document["where"]) == (0, printer.address)
    assert {"application/pdf", "image/pwg-raster"} <= set(found.document["formats"])
    assert found.document["trouble"] == ""


@pytest.mark.parametrize(("head", "dpi", "yes"), [(300, 300, True), (300, 203, False)])
def test_a_head_of_other_dots_than_the_settings_say_is_named(asked, make_printer, head, dpi, yes):
    fine = make_printer(dots_per_inch=head)
    found = asked(f'kind = "ipp"\nurl = "{fine.address}"\ndpi = {dpi}', "--json")
    assert found.code == (0 if yes else 1)
    assert ("set dpi under [printer]" in found.document["trouble"]) is not yes


def test_a_printer_that_is_gone_is_named(asked):
    url = f"ipp://127.0.0.1:{free_port()}/ipp/print"
    found = asked(f'kind = "ipp"\nurl = "{url}"', "--json")
    assert (found.code, found.error["exit"]) == (3, 3)
    assert url in found.error["title"]


@pytest.mark.parametrize(
    "table",
    [
        'kind = "ipp"',
        'kind = "ipp"\nurl = "http://printer/ipp/print"',
        'kind = "folder"\nurl = "ipp://printer/ipp/print"',
    ],
)
def test_a_bad_address_is_named(asked, table):
    found = asked(table)
    assert (found.code, found.out) == (2, "")
    assert "printer.url" in found.err
