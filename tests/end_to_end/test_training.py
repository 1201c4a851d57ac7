"""Training: the whole chain on the simulated scale, and nothing of it that passes as work.

That people may practise without a trace among the records of work is common practice.
"""

from datetime import date

import pypdfium2
import pytest
from PySide6.QtWidgets import QApplication

from drivers.packer import SimulatedPacker
from labels.design import DESIGNS
from labels.pdf import drawer_of
from labels.raster import pdfium_lock
from labels.release import release
from station.app.places import demo_settings
from station.app.practice import habits_for, run_choice
from station.app.practice_window import practice_line
from station.app.station_window import station_window
from station.app.training import training_home, training_house
from station.clock import SystemClock
from station.config.load import load
from station.core.journal import EntryKind
from station.core.training import CODE, MARK, NO_PRODUCT
from station.errors import BadInput
from station.line.opening import calendar_day
from station.reports.label_facts import pack_label
from station.screens.theme import LIGHT
from station.screens.training import set_up_training
from station.screens.widgets.training_strip import TrainingStrip
from station.store.facts import facts
from station.store.first_day import first_day
from station.store.outlet import JournalOutlet
from station.store.writer import StationStore
from tests.end_to_end.line import without_gates, without_papers

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints")  # Qt's offscreen platform only
BAGS, SPEED, PATIENCE_S = 4, 40.0, 60.0


@pytest.fixture(scope="module")
def house(tmp_path_factory):
    real = load(demo_settings(), calendar_day(SystemClock("Europe/Dublin").now()))
    home = tmp_path_factory.mktemp("home")
    return real, training_house(real, home, calendar_day(SystemClock("Europe/Dublin").now()))


@pytest.fixture(scope="module")
def trained(house, qapp):
    """A bag or four packed in training, through the real window; the record left behind."""
    practice_house = without_papers(without_gates(house[1]))
    home = practice_house.settings.home
    home.mkdir(parents=True)
    with practice_line(practice_house, home, 3, SPEED) as practice:
        product = practice_house.products["ROCKET-SPINACH-200"]
        day = calendar_day(practice.station.clock.now())
        practice.line.start_run(run_choice(practice_house, product, day, BAGS))
        window = station_window(practice.bridge, practice.station, practice_house)
        window.make_pages()
        set_up_training(window, practice.bridge, LIGHT, tiles=True)
        window.resize(1280, 800)
        window.show()
        hands = SimulatedPacker(practice.bench, practice.watch.cue, habits_for(product), 3)
        hands.start()
        last = practice.watch.until(lambda state: state.tally.good >= BAGS, PATIENCE_S)
        hands.stop()
        QApplication.processEvents()
        window.packer.call_button.click()
        assert practice.watch.next_entry(PATIENCE_S).recorded
        strips = [
            (page, strip.isVisible(), strip.geometry().intersects(window.screens.geometry()))
            for page in range(window.screens.count())
            for strip in [_show(window, page)]
        ]
        practice.line.end_run("TRAINER")
        window.close()
        window.deleteLater()
    return home, last, strips


def _show(window, page):
    window.screens.setCurrentIndex(page)
    QApplication.processEvents()
    return window.findChild(TrainingStrip)


def _words(pdf):
    with pdfium_lock:
        opened = pypdfium2.PdfDocument(pdf)
        found = opened[0].get_textpage().get_text_bounded()
        opened.close()
    return found


def test_every_page_stands_under_the_strip(trained):
    _, _, strips = trained
    assert len(strips) == 13  # packer, lead and eleven doors
    assert all(visible and not over for _, visible, over in strips)


def test_a_call_for_the_lead_is_on_record(trained):
    home, last, _ = trained
    [call] = facts(home, (EntryKind.CALL,))
    assert (call.who, call.fact.run) == (last.run.operator, last.run.id)


def test_every_label_serial_and_lot_says_training(trained):
    home, last, _ = trained
    papers = sorted((home / "labels").glob("*.pdf"))
    assert len(papers) >= BAGS
    for paper in papers:
        assert MARK in _words(paper.read_bytes())
        assert f"{CODE}-" in paper.stem
    assert last.run.blend_lot.startswith(CODE)
    assert all(use.lot.startswith(f"{CODE}-") for use in last.run.lot_set.uses)
    assert first_day(home) == last.run.dating.production_day


def test_neither_record_is_opened_as_the_other(trained, house, tmp_path):
    home, _, _ = trained
    clock = SystemClock("Europe/Dublin")
    with pytest.raises(BadInput, match=r"this is the record of training.* never mix"):
        StationStore.open(home, "QH", "A1", clock)
    StationStore.open(tmp_path, "QH", "A1", clock).close()
    with pytest.raises(BadInput, match=r"station A1, no training.* never mix"):
        StationStore.open(tmp_path, "QH", CODE, clock)
    StationStore.open(home, "QH", CODE, clock).close()


def test_nothing_of_it_reaches_a_centre_a_printer_or_a_shipment(trained, house):
    home, _, _ = trained
    _, practice_house = house
    settings = practice_house.settings
    assert (settings.sync, settings.scanner, practice_house.shipping) == (None, None, None)
    assert settings.printer.kind == "folder"
    assert settings.printer.folder.parent == home == training_home(home.parent)
    outlet = JournalOutlet(home)
    with pytest.raises(BadInput, match="nothing of it goes to a centre"):
        outlet.owner()
    outlet.close()


@pytest.mark.parametrize("design", DESIGNS)
def test_each_design_bears_the_mark_and_reads_back(trained, design):
    _, last, _ = trained
    run, serial = last.run, f"{CODE}-ZZ-999999"
    label = pack_label(serial, run, "Packed by Ostermoor Leaf Room", "R1")
    assert label.copy_mark == MARK
    released = release(drawer_of(DESIGNS[design]), label)
    read = b" ".join(symbol.expected_bytes for symbol in released.symbols).decode()
    assert serial in read or run.blend_lot in read, read


def test_lots_are_made_up_for_every_component(house):
    real, practice_house = house
    made = {lot.component for lot in practice_house.lots.values()}
    assert made == set(real.components)
    assert not set(practice_house.lots) & set(real.lots)
    long_ago = training_house(real, real.settings.home, date(2026, 2, 3))
    assert next(iter(long_ago.lots)) == f"{CODE}-01-26034"


def test_strip_says_it(qtbot):
    strip = TrainingStrip(LIGHT)
    qtbot.addWidget(strip)
    assert strip.accessibleName() == f"{MARK}: {NO_PRODUCT}"
