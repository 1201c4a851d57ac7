"""Every string of the corpus through every field of every label: printed whole, or refused."""

import dataclasses
import unicodedata
from collections.abc import Callable

import pypdfium2
import pytest

from labels.content import InputLot, Translation
from labels.design import PACK_100_BY_60
from labels.errors import LabelError
from labels.frame_designs import CASE_100_BY_100, REJECT_100_BY_60
from labels.gs1 import Element
from labels.gs1_components import CSET_82
from labels.linear import gs1_128
from labels.logistics import CaseLabel
from labels.matrix import digital_link_qr, gs1_data_matrix
from labels.pdf import LabelDrawer
from labels.raster import pdfium_lock
from labels.release import release
from labels.texts import UNPRINTABLE
from tests.labels.corpus import CORPUS
from tests.labels.pictures import assert_reads
from tests.labels.test_frames import CASE, REJECT, UNIT

TEXTS = (
    *("product_name", "net_quantity_text", "use_by_words", "storage_text", "packer_text"),
    *("origin", "market", "copy_mark", "gtin", "language"),
)
ITEM = Element("01", "09521234543213")


def page_text(pdf: bytes) -> str:
    with pdfium_lock:
        document = pypdfium2.PdfDocument(pdf)
        text = " ".join(page.get_textpage().get_text_bounded() for page in document)
        document.close()
    return " ".join(text.split())


def shown_as(text: str) -> str:
    """Return a text as it is printed: normal form C, its blanks only where lines may end."""
    return "".join(unicodedata.normalize("NFC", text).split())


def drawn(make: Callable[[], bytes]) -> tuple[bytes, str]:
    """Return the page and no words, or no page and the words of the refusal."""
    try:
        return make(), ""
    except LabelError as refusal:
        return b"", str(refusal)


def test_the_corpus_is_large_enough_and_has_no_double() -> None:
    assert len(CORPUS) >= 300
    assert len(set(CORPUS)) == len(CORPUS)


@pytest.mark.parametrize("field", TEXTS)
def test_text_fields(make_label, drawer, field: str) -> None:
    for text in CORPUS:
        pdf, said = drawn(lambda text=text: drawer.draw(make_label(**{field: text})))
        assert said.isprintable()
        assert len(said) < 2000
        if said:
            continue
        assert not any(unicodedata.category(one) in UNPRINTABLE for one in text)
        assert b"/Subtype /Image" not in pdf
        assert b"/URI" not in pdf
        if field in ("product_name", "storage_text", "packer_text", "origin"):
            assert shown_as(text) in shown_as(page_text(pdf))


@pytest.mark.parametrize("field", ["blend_lot", "serial"])
def test_codes_read_back_equal_or_are_refused(make_label, field: str) -> None:
    drawer = LabelDrawer(PACK_100_BY_60)
    for text in CORPUS:
        try:
            label = make_label(**{field: text})
        except LabelError:
            assert not (1 <= len(text) <= 20 and set(text) <= CSET_82)
            continue
        assert set(text) <= CSET_82
        released = release(drawer, label)  # raises where a bar code reads otherwise
        assert any(text.encode() in symbol.expected_bytes for symbol in released.symbols) or (
            field == "serial"  # a long serial stands in words only
        )


def test_symbols_read_back_equal_or_the_element_is_refused() -> None:
    drawn = 0
    for text in CORPUS:
        try:
            lot = Element("10", text)
        except LabelError:
            continue
        row = (ITEM, lot, Element("21", "S"))
        assert_reads(gs1_128((lot,)))
        assert_reads(gs1_data_matrix(row))
        assert_reads(digital_link_qr("https://id.example.org", row))
        drawn += 1
    assert drawn > 100


@pytest.mark.parametrize(
    "make",
    [
        lambda label, text: dataclasses.replace(label, input_lots=(InputLot(text, "A-1"),)),
        lambda label, text: dataclasses.replace(label, input_lots=(InputLot("Romaine", text),)),
        lambda label, text: dataclasses.replace(label, ingredients=(text, "celery")),
        lambda label, text: dataclasses.replace(label, allergens=("celery", text)),
        lambda label, text: dataclasses.replace(
            label, second=Translation("fr", text, (text,) * 6, (), text)
        ),
    ],
    ids=["component", "input lot", "ingredient", "allergen", "second language"],
)
def test_lists(make_label, drawer, make) -> None:
    printed = 0
    for text in CORPUS:
        try:
            label = make(make_label(), text)
            pdf = drawer.draw(label)
        except LabelError:
            continue
        assert shown_as(text) in shown_as(page_text(pdf))
        printed += 1
    assert printed


@pytest.mark.parametrize(
    ("base", "field"),
    [
        *((REJECT, field) for field in ("serial", "product", "lot", "reason", "weight", "verdict")),
        *(
            (UNIT, field)
            for field in ("sscc", "product", "contents", "date_words", "lot", "packer")
        ),
        *((CASE, field) for field in ("first_serial", "last_serial")),
    ],
)
def test_tickets_cases_and_pallets(base, field: str) -> None:
    def make(**changes: str) -> bytes:
        changed = dataclasses.replace(base, **changes)
        label = CaseLabel(changed, "A", "B") if base is UNIT else changed
        design = REJECT_100_BY_60 if base is REJECT else CASE_100_BY_100
        return LabelDrawer(design).draw(label.framed())

    for text in CORPUS:
        _, said = drawn(lambda text=text: make(**{field: text}))
        assert said.isprintable()
