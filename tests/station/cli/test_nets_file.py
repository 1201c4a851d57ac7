"""Net weights from CSV files: every form that is read, and where each fault is."""

from decimal import Decimal
from pathlib import Path

import pytest

from station.cli.nets_file import read_nets
from station.core.mass import Mass, Unit
from station.errors import BadInput, EnvironmentFault


@pytest.fixture
def file(tmp_path):
    def write(content: bytes | str) -> Path:
        path = tmp_path / "nets.csv"
        path.write_bytes(content if isinstance(content, bytes) else content.encode())
        return path

    return write


@pytest.mark.parametrize(
    "content",
    [
        "net\n250.4\n0\n",
        "net\r\n250.4\r\n0",
        "net\n250.4\n0\n\n\n",
        'bag,"net"\n1,"250.4"\n2, 0 \n',
        'net,words\n250.4,"a, b\nc"\n0,\n',
        "net\n0.2504 kg\n0mg\n",
        " net , bag\n250.4 g,1\n0 g,2\n",
    ],
)
def test_forms_that_are_read(file, content):
    nets = read_nets(file(content), "net", Unit.GRAM)
    assert nets == (Mass.of("250.4"), Mass.of("0"))
    assert {net.unit for net in nets} == {Unit.GRAM}


def test_digits_stay_exact_and_ounces_become_pounds(file):
    assert read_nets(file("net\n250.40\n"), "net", Unit.GRAM)[0].digits == "250.40"
    assert read_nets(file("net\n8.8 oz\n"), "net", Unit.POUND)[0].amount == Decimal("0.55")


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"\xef\xbb\xbfnet\n250\n", ["line 1, column 1", "UTF-8 byte-order mark", "plain UTF-8"]),
        ("net\n250\n".encode("utf-16"), ["line 1, column 1", "byte-order mark of UTF-16"]),
        (b"net,who\n250,M\xfcller\n", ["line 2, byte 6", "is not UTF-8"]),
        ("bag;net\n1;250\n", ["line 1", "semicolons", "commas between columns"]),
        ("bag\tnet\n1\t250\n", ["line 1", "tabs"]),
        ("bag,net\n1;250\n", ["line 2", "cells: 1, but line 1 has 2", "semicolons"]),
        ("net\n250\n251;3\n", ["line 3, column net", "'251;3' has semicolons"]),
        ("net\n250,4\n", ["line 2", "cells: 2, but line 1 has 1", "decimal comma"]),
        ('net\n"250,4"\n', ["line 2, column net", "write a decimal point, as in 250.4"]),
        ("bag,net\n1,250\n2\n", ["line 3", "cells: 1, but line 1 has 2"]),
        ("bag,net\n1,250\n2,\n", ["line 3, column net", "is empty: every row needs a weight"]),
        ("net\n250\n\n251\n", ["line 3", "is empty: take it out"]),
        ("net\n250\nheavy\n", ["line 3, column net", "'heavy' is not a weight", "250.4 (in g)"]),
        ("net\n1e3\n", ["line 2, column net", "'1e3' is not a weight"]),
        ("net\nnan\n", ["line 2, column net", "'nan' is not a weight"]),
        ("net\n２５０\n", ["line 2, column net", "is not a weight"]),
        ("net\n8 oz\n1.5 lb\n250 g\n-1\n", ["line 5, column net", "-1 is below zero"]),
        (f"net\n{'9' * 13}\n", ["line 2, column net", "is not a weight"]),
        ("weight,bag\n250,1\n", ["line 1", "no column net: its columns are weight, bag"]),
        ("net,net\n250,1\n", ["line 1", "two columns are called net"]),
        ("net\n", ["line 2", "there is no weight"]),
        ("", ["line 1", "no column net: it is empty"]),
        ('net\n"250\n', ["line", "plain UTF-8"]),
        (b"net\n25\x000\n", ["line 2"]),
    ],
)
def test_faults_name_line_and_column_and_what_is_allowed(file, content, words):
    path = file(content)
    with pytest.raises(BadInput) as fault:
        read_nets(path, "net", Unit.GRAM)
    assert str(fault.value).startswith(str(path))
    for part in words:
        assert part in str(fault.value)


def test_grams_are_no_exact_pounds(file):
    with pytest.raises(BadInput, match=r"line 2, column net: 250 g has no exact value in lb"):
        read_nets(file("net\n250 g\n"), "net", Unit.POUND)


def test_no_such_file(tmp_path):
    for path in (tmp_path / "none.csv", tmp_path, tmp_path / "none.csv" / "x.csv"):
        with pytest.raises(BadInput, match="is no file: give a CSV file"):
            read_nets(path, "net", Unit.GRAM)


def test_a_file_that_cannot_be_read_is_a_fault_of_the_surroundings(file, monkeypatch):
    def refuse(self):
        raise PermissionError(13, "Permission denied")

    path = file("net\n250\n")
    monkeypatch.setattr(Path, "read_bytes", refuse)
    with pytest.raises(EnvironmentFault, match="Permission denied"):
        read_nets(path, "net", Unit.GRAM)


def test_a_fault_in_a_file_is_bad_input_on_the_command_line(station, file):
    asked = ("batch", "--rules", "eu-76-211", "--nominal", "250g", "--csv", file("net\n1,5\n"))
    found = station(*asked)
    assert (found.code, found.out, found.err.count("\n")) == (2, "", 1)
    assert "line 2: cells: 2" in found.err
    assert "no column mass" in station(*asked, "--column", "mass").err
    missing = station("batch", "--csv", "x.csv", "--rules", "eu-76-211")
    assert (missing.code, "needs --rules ID and --nominal MASS" in missing.err) == (2, True)
