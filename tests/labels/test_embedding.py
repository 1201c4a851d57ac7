"""Fonts cut down to the characters of a label."""

import pypdfium2
import pytest

from labels.document import Facts, Leaf, document
from labels.embedding import fonts_for
from labels.raster import pdfium_lock
from labels.typeface import Face, type_of


def letters_of(face: Face, count: int) -> str:
    """Return letters beyond ASCII a face has, `count` of them."""
    known = sorted(type_of(face).drawn.charToGlyph)
    return "".join(chr(point) for point in known if chr(point).isalpha() and point > 127)[:count]


def test_the_same_characters_give_the_same_fonts_and_a_serial_asks_for_no_new_one() -> None:
    first = fonts_for([(Face.CODE, "A1-000123"), (Face.TEXT, "Salat")])
    assert fonts_for([(Face.TEXT, "talaS"), (Face.CODE, "Z9/999999")]) is first


def test_another_subset_has_another_tag() -> None:
    """ISO 32000-1, 9.6.4: different subsets of one font have different tags."""
    tags = {
        fonts_for([(Face.TEXT, text)]).objects[0].split(b"/BaseFont /")[1][:7]
        for text in ("a", "ż", "ω", "ж")
    }
    assert len(tags) == 4
    assert all(tag.endswith(b"+") and tag[:6].isupper() for tag in tags)


@pytest.mark.parametrize("count", [1, 128, 129, 300])
def test_more_characters_than_a_font_has_codes_go_to_further_subsets(count: int) -> None:
    text = letters_of(Face.TEXT, count)
    assert len(text) == count
    fonts = fonts_for([(Face.TEXT, text)])
    shown = fonts.shown(Face.TEXT, text)
    assert len(shown) == -(-count // 128)
    body = " ".join(f"/{name} 4 Tf <{figures}> Tj" for name, figures in shown)
    marks = f"BT 1 0 0 1 5 5 Tm {body} ET".encode("ascii")
    pdf = document(fonts, [Leaf(2000, 20, marks)], Facts("t", "s", "m"))
    with pdfium_lock:
        opened = pypdfium2.PdfDocument(pdf)
        found = opened[0].get_textpage().get_text_bounded()
        opened.close()
    assert found == text
