"""The file around the pages: its table of objects, its facts, and readers that share no code."""

import re
import subprocess

import pypdfium2
import pytest

from labels.design import DESIGNS
from labels.document import Facts, Leaf, document
from labels.embedding import fonts_for
from labels.pdf import LabelDrawer
from labels.typeface import Face

FONTS = fonts_for([(Face.TEXT, "ab")])
FACTS = Facts("Title", "Subject", "Maker")


def objects_by_table(pdf: bytes) -> dict[int, bytes]:
    """Return each object as the table of the file says where it begins (ISO 32000-1, 7.5.4)."""
    start = int(re.search(rb"startxref\n(\d+)\n%%EOF\n\Z", pdf)[1])
    head, count, rows = re.match(
        rb"(xref)\n0 (\d+)\n((?:.{20})+?)trailer", pdf[start:], re.DOTALL
    ).groups()
    assert head == b"xref"
    lines = [rows[place : place + 20] for place in range(0, len(rows), 20)]
    assert len(lines) == int(count)
    assert lines[0] == b"0000000000 65535 f \n"
    return {n: pdf[int(line[:10]) :] for n, line in enumerate(lines[1:], start=1)}


@pytest.mark.parametrize("name", sorted(DESIGNS))
def test_every_object_begins_where_the_table_says(make_label, name: str) -> None:
    label = make_label(input_lots=make_label().input_lots[:3])
    objects = objects_by_table(LabelDrawer(DESIGNS[name]).draw(label))
    for number, content in objects.items():
        assert content.startswith(b"%d 0 obj\n" % number)
        length = re.match(rb".*?/Length (\d+) >>\nstream\n", content, re.DOTALL)
        if length and b"endobj" not in length[0]:
            assert content[length.end() + int(length[1]) :].startswith(b"\nendstream\nendobj\n")


def test_pages_have_their_sizes_and_the_file_its_facts() -> None:
    leaves = [Leaf(100, 50, b""), Leaf(30.5, 20.25, b"")]
    pdf = document(FONTS, leaves, Facts("Salat (2) \\ Łódź", "plain (1)", "Maker"))
    opened = pypdfium2.PdfDocument(pdf)
    try:
        assert [page.get_size() for page in opened] == [(100, 50), (30.5, 20.25)]
        facts = opened.get_metadata_dict()
        assert facts["Title"] == "Salat (2) \\ Łódź"
        assert facts["Subject"] == "plain (1)"
        assert facts["CreationDate"] == ""  # no time enters
    finally:
        opened.close()


def test_the_same_pages_give_the_same_bytes() -> None:
    once = document(FONTS, [Leaf(10, 10, b"0 g")], FACTS)
    assert document(FONTS, [Leaf(10, 10, b"0 g")], FACTS) == once


@pytest.mark.system("pdffonts", "pdftotext")
def test_poppler_finds_no_fault_and_every_font(make_label, tmp_path, need_tool) -> None:
    file = tmp_path / "label.pdf"
    file.write_bytes(LabelDrawer(DESIGNS["pack 100 x 60"]).draw(make_label()))
    done = subprocess.run(
        [need_tool("pdffonts"), str(file)], capture_output=True, text=True, timeout=60, check=True
    )
    assert done.stderr == ""
    rows = done.stdout.splitlines()[2:]
    assert len(rows) == 4
    for row in rows:  # embedded, subset, with a map to Unicode
        assert re.search(r"TrueType\s+\S+\s+yes yes yes", row)
