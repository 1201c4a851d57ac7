"""``station label``: the label of a stored bag and a specimen, as files."""

from pathlib import Path
from shutil import copytree

import numpy as np
import pytest
from PIL import Image

from labels.raster import rasterise_pages

DEMO = Path(__file__).parents[3] / "demo_config"


def test_the_label_of_a_stored_bag_is_drawn_from_its_record(station, packed, tmp_path):
    page, picture = tmp_path / "label.pdf", tmp_path / "label.png"
    serial = packed.serials[0]
    done = station(
        *("label", "--pack", serial, "--home", packed.home, "--pdf", page),
        *("--png", picture, "--dpi", "300", "--json"),
    )
    assert done.code == 0, done.err
    told = done.document
    assert told["serial"] == serial
    assert told["mark"] == "COPY"
    assert told["labels"] == 1
    assert told["blend_lot"] == packed.run.blend_lot
    assert told["use_by"] == packed.run.dating.use_by.isoformat()
    assert any(serial in symbol for symbol in told["symbols"])
    (dots,) = rasterise_pages(page.read_bytes(), 12)
    with Image.open(picture) as shown:
        assert shown.info["dpi"] == pytest.approx((304.8, 304.8), abs=0.1)
        assert (np.asarray(shown) == dots).all()


def test_the_same_bag_gives_the_same_bytes(station, packed, tmp_path):
    pages = [tmp_path / "one.pdf", tmp_path / "two.pdf"]
    for page in pages:
        serial = packed.serials[1]
        station("label", "--pack", serial, "--home", packed.home, "--pdf", page)
    assert pages[0].read_bytes() == pages[1].read_bytes()


def test_a_specimen_of_a_product(station, tmp_path):
    page = tmp_path / "specimen.pdf"
    done = station("label", "--specimen", "--product", "SLAW-340", "--config", DEMO, "--pdf", page)
    assert done.code == 0, done.err
    assert "Specimen of label A1-00-000000" in done.out
    assert page.read_bytes().startswith(b"%PDF-")


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        ((), "give one of them"),
        (("--pack", "A", "--specimen"), "give one of them"),
        (("--specimen",), "goes with --specimen"),
        (("--pack", "A", "--product", "SLAW-340"), "goes with --specimen"),
        (("--pack", "A", "--dpi", "72"), "203, 300, 400, 600"),
        (("--specimen", "--product", "SLAW-340"), "name their folder"),
        (("--specimen", "--product", "SLAW", "--config", DEMO), "SLAW-340"),
        (("--pack", "A"), "no home is named"),
    ],
)
def test_a_wrong_call_is_refused_in_words(station, tmp_path, arguments, words):
    done = station("label", *arguments, "--pdf", tmp_path / "x.pdf")
    assert done.code == 2
    assert words in done.err
    assert not (tmp_path / "x.pdf").exists()


def test_a_bag_that_was_set_aside_has_no_label(station, packed, tmp_path):
    aside = packed.serials[2]
    page = tmp_path / "x.pdf"
    done = station("label", "--pack", aside, "--home", packed.home, "--pdf", page)
    assert done.code == 2
    assert "has no label" in done.err


def test_an_unknown_serial_is_refused_with_close_ones(station, packed, tmp_path):
    near = packed.serials[0][:-1] + "9"
    page = tmp_path / "x.pdf"
    done = station("label", "--pack", near, "--home", packed.home, "--pdf", page)
    assert done.code == 2
    assert packed.serials[1] in done.err


def test_a_file_that_cannot_be_written_is_a_fault_of_the_surroundings(station, packed, tmp_path):
    page = tmp_path / "none" / "x.pdf"
    done = station("label", "--pack", packed.serials[0], "--home", packed.home, "--pdf", page)
    assert done.code == 3
    assert "cannot be written" in done.err


def test_input_lots_on_a_second_label_are_told_and_drawn(station, tmp_path):
    config = copytree(DEMO, tmp_path / "settings")
    products = config / "products.toml"
    text = products.read_text(encoding="utf-8")
    row = 'code = "LEAF-MIX-907"\n'
    products.write_text(text.replace(row, f'{row}design = "pack 60 x 40"\n'), encoding="utf-8")
    picture = tmp_path / "leaf.png"
    done = station(
        *("label", "--specimen", "--product", "LEAF-MIX-907", "--config", config, "--json"),
        *("--pdf", tmp_path / "leaf.pdf", "--png", picture),
    )
    assert done.code == 0, done.err
    told = done.document
    assert told["design"] == "pack 60 x 40"
    assert told["labels"] == 2
    second = tmp_path / "leaf-2.png"
    assert told["files"][1:] == [str(picture), str(second)]
    assert all(Path(file).is_file() for file in told["files"])
