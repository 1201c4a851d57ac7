"""The last label is drawn off the GUI thread, and the newest wins."""

import datetime
import threading
from decimal import Decimal

import numpy as np
import pytest
from PySide6.QtGui import QImage

from labels.content import InputLot, PackLabel
from labels.design import PACK_100_BY_60
from labels.pdf import LabelDrawer
from station.screens.theme import LIGHT
from station.screens.widgets import label_preview
from station.screens.widgets.label_preview import LabelPreview, first_page

LABEL = PackLabel(
    product_name="Harbour leaf mix",
    net_quantity_text="250 g",
    nominal_grams=Decimal(250),
    market="EU",
    use_by=datetime.date(2026, 12, 1),
    use_by_words="Use by",
    packed_on=datetime.date(2026, 11, 25),
    blend_lot="A2632901",
    input_lots=(InputLot("Romaine lettuce", "ROM-2611"), InputLot("Carrot", "CAR-7710")),
    ingredients=("romaine lettuce", "carrot"),
    allergens=(),
    storage_text="Keep cold, 0 to 4 °C",
    packer_text="Harbour Packhouse, Quay 3, Tarnmouth",
    serial="P1-7K-000131",
    gtin="9521234000013",
)


@pytest.fixture(scope="module")
def pdf() -> bytes:
    return LabelDrawer(PACK_100_BY_60).draw(LABEL)


@pytest.fixture
def preview(qtbot) -> LabelPreview:
    widget = LabelPreview(LIGHT)
    qtbot.addWidget(widget)
    widget.resize(200, 120)
    widget.show()
    return widget


def dark_share(widget: LabelPreview) -> float:
    image = widget.grab().toImage().convertToFormat(QImage.Format.Format_Grayscale8)
    bits = np.frombuffer(image.constBits(), np.uint8)
    return float((bits < 100).mean())


def test_the_page_has_the_labels_shape(pdf: bytes) -> None:
    page = first_page(pdf)
    assert page.width / page.height == pytest.approx(100 / 60, rel=0.01)
    assert len(page.pixels) == page.width * page.height
    assert min(page.pixels) < 40
    assert max(page.pixels) == 255


def test_a_label_is_shown_and_drawn_on_another_thread(
    qtbot, preview: LabelPreview, pdf: bytes, monkeypatch: pytest.MonkeyPatch
) -> None:
    threads = []

    def noted(data: bytes) -> label_preview.Page:
        threads.append(threading.current_thread())
        return first_page(data)

    monkeypatch.setattr(label_preview, "first_page", noted)
    empty = dark_share(preview)
    preview.show_pdf(pdf)
    qtbot.waitUntil(lambda: preview.view is not None)
    preview.wait()
    assert threads[0] is not threading.main_thread()
    assert dark_share(preview) > empty + 0.02


def test_of_many_labels_only_the_newest_must_be_drawn(
    qtbot, preview: LabelPreview, pdf: bytes, monkeypatch: pytest.MonkeyPatch
) -> None:
    go, drawn = threading.Event(), []

    def slow(data: bytes) -> label_preview.Page:
        go.wait(5)
        drawn.append(data)
        return first_page(pdf)

    monkeypatch.setattr(label_preview, "first_page", slow)
    labels = [pdf + bytes([n]) for n in range(50)]
    for one in labels:
        preview.show_pdf(one)
    go.set()
    qtbot.waitUntil(lambda: bool(drawn) and drawn[-1] == labels[-1])
    preview.wait()
    assert len(drawn) <= 2


@pytest.mark.expects_log("last label cannot be shown")
def test_a_broken_label_leaves_the_screen_alive(qtbot, preview: LabelPreview, pdf: bytes) -> None:
    preview.show_pdf(b"this is no label")
    preview.wait()
    preview.show_pdf(pdf)
    qtbot.waitUntil(lambda: preview.view is not None)
    preview.wait()
