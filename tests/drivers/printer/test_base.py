"""What may be a print job."""

import pytest

from drivers.errors import PrinterError
from drivers.printer.base import PrintJob


def test_usual_job() -> None:
    job = PrintJob("A1-000123.R1", b"%PDF-", 100, 60)
    assert job.format == "application/pdf"


@pytest.mark.parametrize("name", ["", "../evil", "a/b", ".hidden", "a b", "x" * 101, "ñ", "a\n"])
def test_name_is_an_id_only(name: str) -> None:
    with pytest.raises(PrinterError, match="allowed are"):
        PrintJob(name, b"%PDF-", 100, 60)


@pytest.mark.parametrize("size", [(0, 60), (100, -1), (float("nan"), 60)])
def test_size_is_above_zero(size: tuple[float, float]) -> None:
    with pytest.raises(PrinterError, match="must be above 0"):
        PrintJob("A1", b"%PDF-", *size)


def test_empty_document_is_refused() -> None:
    with pytest.raises(PrinterError, match="nothing to print"):
        PrintJob("A1", b"", 100, 60)
