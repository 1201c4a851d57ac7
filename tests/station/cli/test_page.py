"""Tables on a line of 80 letters: figures stay whole, and words break between words."""

from io import StringIO

from rich.console import Console

from station.cli.page import listing

COLUMNS = ("shipment", "customer", "left", "paper", "bags", "kg")
ROW = (
    "QHA1-26330-001",
    "Marshgate Grocers, Depot 4, Marshgate Wharf",
    "2026-11-26 08:50",
    "delivery note 1",
    "12",
    "1112.440",
)


def lines(columns, row, **named):
    console = Console(width=80, file=StringIO())
    console.print(listing(columns, [row], **named))
    return console.file.getvalue().splitlines()


def test_words_break_between_words_and_figures_are_whole():
    said = lines(COLUMNS, ROW, right="bags kg", wraps="customer left paper")
    found = " ".join(said).split()
    for word in " ".join(ROW).split():
        assert word in found, said


def test_where_there_is_no_room_a_figure_is_whole_and_a_word_breaks():
    long = ("X" * 40, "Quillhavenandmore", "1112.440", "Y" * 14)
    said = lines(("a", "place", "kg", "b"), long, right="kg", wraps="place")
    assert any("1112.440" in line for line in said)
    assert "Quillhavenandmore" not in " ".join(said)
