"""The headless demo as a script calls it: bytes on a tty to labels, then questions."""

import json
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest
import zxingcpp
from PIL import Image

PACKS = 40


def station(*words, code=0, timeout=240):
    done = subprocess.run(
        [sys.executable, "-m", "station.app.main", *map(str, words)],
        capture_output=True,
        text=True,
        timeout=timeout,
        check=False,
    )
    assert done.returncode == code, done.stderr
    return done


def answer(*words, code=0):
    return json.loads(station(*words, "--json", code=code).stdout)


@pytest.fixture(scope="module")
def packed(tmp_path_factory):
    home = tmp_path_factory.mktemp("demo") / "home"
    return home, answer("demo", "--headless", "--packs", PACKS, "--home", home)


def test_every_bag_has_one_record_and_one_label_that_reads_back_equal(packed):
    home, figures = packed
    rejects = answer("rejects", "--day", figures["day"], "--home", home)["rejects"]
    # On a crowded machine a hand may still fill on what was labelled: such a bag is taken back.
    taken_back = sum(one["label"] != "none" for one in rejects)
    assert figures["packs"] == PACKS
    assert figures["labels"] == PACKS + taken_back
    assert figures["read_back_equal"] == PACKS + taken_back
    assert figures["labels_applied"] == PACKS
    assert figures["duplicate_serials"] == 0
    assert figures["journal_whole"] is True
    assert figures["packs_per_s"] > 0
    for stage in ("stable_to_durable", "stable_to_label"):
        quantiles = figures["latency_ms"][stage]
        assert 0 < quantiles["p50"] <= quantiles["p99"]
    durable, label = figures["latency_ms"].values()
    assert durable["p50"] < label["p50"]


def test_the_journal_holds_and_answers(packed):
    home, figures = packed
    report = answer("journal", "verify", "--home", home)
    assert report["whole"] is True
    assert report["entries"] == figures["journal_entries"]


def test_rejects_of_the_day_are_the_ones_counted(packed):
    home, figures = packed
    document = answer("rejects", "--day", figures["day"], "--home", home)
    assert len(document["rejects"]) == figures["rejects"]


def test_labels_and_record_trace_each_other_both_ways(packed, need_tool, tmp_path):
    """The label is rasterised by poppler, not by what drew it, and its codes lead to the record."""
    home, _ = packed
    label = max((home / "labels").glob("*.pdf"))
    serial = label.stem
    page = tmp_path / "page"
    subprocess.run(
        [need_tool("pdftoppm"), "-r", "203.2", "-mono", label, page], check=True, timeout=30
    )
    [bitmap] = tmp_path.glob("page*")
    codes = zxingcpp.read_barcodes(np.asarray(Image.open(bitmap).convert("L")))
    read = b"\x1d".join(sorted(code.bytes for code in codes))
    assert {code.symbology_identifier for code in codes} == {"]C1"}
    assert serial.encode() in read
    pack = answer("trace", "--pack", serial, "--home", home)
    assert pack["blend_lot"].encode() in read
    for lot in pack["lots"]:
        forward = answer("trace", "--lot", lot["code"], "--home", home)
        assert serial in {one["serial"] for one in forward["packs"]}


def test_a_person_reads_the_same_figures_as_a_page(tmp_path):
    done = station("demo", "--headless", "--packs", 4, "--home", tmp_path / "home")
    assert "All labels read back equal" in done.stdout
    assert "station rejects --day" in done.stdout


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--packs", "0"), "give 1 to"),
        (("--packs", "two"), "--packs"),
        (("--config", "/no/such/folder"), "is no folder"),
    ],
)
def test_a_wrong_call_is_refused_in_words(words, said):
    done = station("demo", "--headless", *words, code=2)
    assert said in done.stderr
    assert "Traceback" not in done.stderr
    assert done.stdout == ""


def test_a_file_in_place_of_the_home_is_refused(tmp_path):
    home = tmp_path / "home"
    home.write_text("mine")
    assert "is a file" in station("demo", "--headless", "--home", home, code=2).stderr
    assert home.read_text() == "mine"


def test_a_second_demo_in_the_same_home_goes_on_with_new_serials(tmp_path):
    home = tmp_path / "home"
    first = answer("demo", "--headless", "--packs", 4, "--home", home)
    second = answer("demo", "--headless", "--packs", 4, "--seed", 2, "--home", home)
    assert first["packs"] == second["packs"] == second["labels"] == 4
    assert second["duplicate_serials"] == 0
    assert len(list((home / "labels").glob("*.pdf"))) == 8


def test_the_window_packs_on_its_own_and_closes(tmp_path):
    document = answer("demo", "--packs", 3, "--home", tmp_path / "home")
    assert document["packs"] == document["labels"] == 3


@pytest.mark.window
def test_the_window_opens_on_a_real_screen(tmp_path, need_tool):
    done = subprocess.run(
        [
            *(need_tool("xvfb-run"), "-a", "-s", "-screen 0 1280x800x24"),
            *("env", "QT_QPA_PLATFORM=xcb"),
            *(sys.executable, "-m", "station.app.main"),
            *("demo", "--packs", "2", "--json", "--home", tmp_path / "home"),
        ],
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert json.loads(done.stdout)["labels"] == 2


def test_no_screen_is_said_in_words(tmp_path, monkeypatch):
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    done = station("demo", "--home", tmp_path / "home", code=3)
    assert "there is no screen" in done.stderr
    assert "--headless" in done.stderr
    assert Path(tmp_path / "home").is_dir()
