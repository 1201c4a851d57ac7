"""Qt's print support, as far as its own PDF writer: every dot of a label, one page a sheet."""

import threading
from datetime import UTC, date, datetime

import numpy as np
import pypdfium2
import pytest

from drivers.errors import PrinterError
from drivers.printer.base import PrintJob, PrintState
from labels.design import PACK_100_BY_60
from labels.pdf import LabelDrawer
from labels.raster import rasterise
from labels.readback import scan
from station.app.places import demo_settings
from station.config.load import load
from station.core.ids import new_uid
from station.core.mass import Unit
from station.core.pack import Moment
from station.line.lot_offer import free_lots
from station.line.opening import Catalogue, open_run
from station.line.state import RunChoice
from station.reports.label_facts import pack_label
from station.screens.queue_printer import QueuePrinter, queues


def job(pdf, name="A1-7K-000041", size=(100, 60)):
    return PrintJob(name, pdf, *size)


@pytest.fixture(scope="module")
def label():
    day = date(2026, 11, 25)
    house = load(demo_settings(), day)
    product = house.products["SLAW-340"]
    catalogue = Catalogue(
        house.products, house.lots, "L1", house.settings.cut_off, "bench", Unit.GRAM, "test"
    )
    choice = RunChoice(product.code, 3, free_lots(product, house.lots, day), "L01", "P01")
    at = Moment(datetime(2026, 11, 25, 9, tzinfo=UTC), 0, "Europe/Dublin", 0)
    run = open_run(choice, catalogue, at, 1, new_uid(at))
    facts = pack_label("A1-7K-000041", run, house.settings.packer)
    return LabelDrawer(PACK_100_BY_60).draw(facts)


@pytest.mark.parametrize("dots_per_mm", [8, 12])
def test_every_dot_of_a_label_comes_out_where_it_was_drawn(qapp, tmp_path, label, dots_per_mm):
    file = tmp_path / "label.pdf"
    printer = QueuePrinter("label printer", dots_per_mm, file)
    assert printer.submit(job(label)).state is PrintState.SPOOLED
    wanted = rasterise(label, dots_per_mm) < 128
    found = _dots(file, wanted.shape) < 128
    rows, columns = (min(a, b) for a, b in zip(found.shape, wanted.shape, strict=True))
    assert columns >= 100 * dots_per_mm - 2
    assert np.array_equal(found[:rows, :columns], wanted[:rows, :columns])


def test_its_bar_codes_still_read(qapp, tmp_path, label):
    file = tmp_path / "label.pdf"
    QueuePrinter("label printer", 8, file).submit(job(label))
    assert [code.data for code in scan(file.read_bytes())] == [code.data for code in scan(label)]


def test_a_page_has_the_size_of_the_label(qapp, tmp_path, label):
    file = tmp_path / "label.pdf"
    QueuePrinter("label printer", 8, file).submit(job(label))
    document = pypdfium2.PdfDocument(file)
    assert len(document) == 1
    wide, tall = document[0].get_size()
    document.close()
    assert (wide / 72 * 25.4, tall / 72 * 25.4) == pytest.approx((100, 60), abs=0.5)


def test_it_works_on_the_printer_s_own_thread(qapp, tmp_path, label):
    file = tmp_path / "label.pdf"
    outcomes = []
    printer = QueuePrinter("label printer", 8, file)
    thread = threading.Thread(target=lambda: outcomes.append(printer.submit(job(label))))
    thread.start()
    thread.join(30)
    assert [outcome.state for outcome in outcomes] == [PrintState.SPOOLED]


def test_a_queue_nobody_knows_is_refused_in_words(qapp):
    with pytest.raises(PrinterError, match="there is no print queue 'nowhere'"):
        QueuePrinter("nowhere")
    assert "nowhere" not in queues()


@pytest.mark.qt_log_ignore("QPainter::begin")
def test_a_file_that_cannot_be_written_is_refused_before_anything_is_printed(qapp, tmp_path, label):
    printer = QueuePrinter("label printer", 8, tmp_path / "missing" / "label.pdf")
    with pytest.raises(PrinterError, match="does not take page"):
        printer.submit(job(label))


def test_what_is_no_pdf_is_refused(qapp, tmp_path):
    printer = QueuePrinter("label printer", 8, tmp_path / "label.pdf")
    with pytest.raises(PrinterError, match="cannot be drawn"):
        printer.submit(job(b"no pdf"))
    with pytest.raises(PrinterError, match="takes application/pdf only"):
        printer.submit(PrintJob("a", b"x", 100, 60, "image/pwg-raster"))


def _dots(file, shape):
    """The picture inside the page, as it was put there."""
    document = pypdfium2.PdfDocument(file)
    (picture,) = [one for one in document[0].get_objects() if one.type == 3]
    grey = picture.get_bitmap().to_numpy().copy()
    document.close()
    return grey[..., 0] if grey.ndim == 3 else grey
