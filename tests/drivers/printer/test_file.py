"""The folder that takes pages: whole or not at all, and never another content."""

import errno
import os
import subprocess
import sys
from pathlib import Path

import pytest

from drivers.errors import PrinterError
from drivers.printer.base import PrintJob, PrintState
from drivers.printer.file import FolderPrinter, cause_of

JOB = PrintJob("A1-000123", b"%PDF-1.4 one page", 100, 60)


def test_page_is_written_whole_under_its_name(tmp_path: Path) -> None:
    printer = FolderPrinter(tmp_path / "labels")
    assert printer.submit(JOB).state is PrintState.DONE
    assert [path.name for path in (tmp_path / "labels").iterdir()] == ["A1-000123.pdf"]
    assert (tmp_path / "labels" / "A1-000123.pdf").read_bytes() == JOB.document
    assert str(tmp_path / "labels") in printer.describe()


def test_same_page_again_changes_nothing(tmp_path: Path) -> None:
    printer = FolderPrinter(tmp_path)
    printer.submit(JOB)
    before = (tmp_path / "A1-000123.pdf").stat()
    assert printer.submit(JOB).state is PrintState.DONE
    after = (tmp_path / "A1-000123.pdf").stat()
    assert (before.st_ino, before.st_mtime_ns) == (after.st_ino, after.st_mtime_ns)


def test_other_content_under_a_used_name_is_refused(tmp_path: Path) -> None:
    printer = FolderPrinter(tmp_path)
    printer.submit(JOB)
    with pytest.raises(PrinterError, match="nothing is overwritten"):
        printer.submit(PrintJob(JOB.name, b"%PDF-1.4 another", 100, 60))
    assert (tmp_path / "A1-000123.pdf").read_bytes() == JOB.document
    assert len(list(tmp_path.iterdir())) == 1


def test_only_pdf(tmp_path: Path) -> None:
    with pytest.raises(PrinterError, match=r"application/pdf only"):
        FolderPrinter(tmp_path).submit(PrintJob("A1", b"x", 100, 60, "image/png"))


def test_folder_that_is_a_file(tmp_path: Path) -> None:
    (tmp_path / "labels").write_text("a file")
    with pytest.raises(PrinterError, match="no folder for labels"):
        FolderPrinter(tmp_path / "labels")


def test_folder_that_went_away(tmp_path: Path) -> None:
    printer = FolderPrinter(tmp_path / "labels")
    (tmp_path / "labels").rmdir()
    with pytest.raises(PrinterError, match="the folder is gone"):
        printer.submit(JOB)


if os.name == "posix":
    WRITE_BEYOND_A_LIMIT = """
import resource, signal, sys
from pathlib import Path
from drivers.errors import PrinterError
from drivers.printer.base import PrintJob
from drivers.printer.file import FolderPrinter

signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
printer = FolderPrinter(Path(sys.argv[1]))
resource.setrlimit(resource.RLIMIT_FSIZE, (1000, 1000))
try:
    printer.submit(PrintJob("A1", b"%PDF" * 1000, 100, 60))
except PrinterError as refused:
    print(refused)
"""

    def test_page_that_does_not_fit_leaves_nothing_behind(tmp_path: Path) -> None:
        """The system refuses the write halfway, as a full disk does."""
        writer = subprocess.run(
            [sys.executable, "-c", WRITE_BEYOND_A_LIMIT, str(tmp_path)],
            capture_output=True,
            text=True,
            timeout=60,
            check=True,
            cwd=Path(__file__).parents[3],
        )
        assert "A1.pdf was not written" in writer.stdout
        assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    ("code", "words"),
    [
        (errno.ENOSPC, "disk is full"),
        (errno.EROFS, "read-only"),
        (errno.EACCES, "may not write"),
        (errno.ENAMETOOLONG, "name too long"),
    ],
)
def test_cause_in_words(code: int, words: str) -> None:
    assert words in cause_of(OSError(code, os.strerror(code))).lower()
