"""A printer that puts each page into a folder as a file, whole or not at all."""

from __future__ import annotations

import errno
import os
import secrets
from pathlib import Path

from drivers.errors import PrinterError
from drivers.printer.base import PDF, PrintJob, PrintOutcome, PrintState

_CAUSES = {
    errno.ENOSPC: "the disk is full: free some space, then print again",
    errno.EDQUOT: "the space allowed for this user is used up: free some, then print again",
    errno.EFBIG: "the file would be larger than this system allows",
    errno.EROFS: "the disk is read-only",
    errno.EACCES: "this user may not write there",
    errno.EPERM: "this user may not write there",
    errno.ENOENT: "the folder is gone",
    errno.ENOTDIR: "a part of the path is a file, not a folder",
    errno.EEXIST: "there is a file of that name where the folder should be",
    errno.EIO: "the disk reports a fault",
}


class FolderPrinter:
    """Writes ``<job name>.pdf`` into a folder; a name once written keeps its content.

    Args:
        folder: made if it is missing.

    Raises:
        PrinterError: the folder cannot be made.
    """

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        try:
            folder.mkdir(parents=True, exist_ok=True)
        except OSError as fault:
            raise PrinterError(f"no folder for labels at {folder}", cause_of(fault)) from fault

    def describe(self) -> str:
        """Name the folder."""
        return f"folder {self._folder}"

    def submit(self, job: PrintJob) -> PrintOutcome:
        """Write the page durably: temporary file, sync, link under its name, sync the folder.

        The same page again is no error and changes nothing.

        Raises:
            PrinterError: the page is no PDF, its name has other content, or it cannot be written;
                then no file of that name was made.
        """
        if job.format != PDF:
            raise PrinterError(f"page {job.name} is {job.format}", f"a folder takes {PDF} only")
        path = self._folder / f"{job.name}.pdf"
        try:
            self._write(path, job.document)
        except FileExistsError:
            self._compare(path, job.document)
        except OSError as fault:
            raise PrinterError(f"page {path} was not written", cause_of(fault)) from fault
        return PrintOutcome(PrintState.DONE)

    @property
    def tells_end(self) -> bool:
        """A page that was written is out."""
        return True

    def settle(self, name: str, wait_s: float) -> PrintOutcome:
        """A page that was written is out."""
        return PrintOutcome(PrintState.DONE)

    def cancel(self, name: str, wait_s: float) -> PrintOutcome:
        """A page that was written stays."""
        return PrintOutcome(PrintState.DONE)

    def trouble(self) -> str:
        """Say that the folder is gone; a full disk shows at the page itself."""
        if self._folder.is_dir():
            return ""
        return f"the folder for labels is gone: make {self._folder} again"

    def _write(self, path: Path, document: bytes) -> None:
        temporary = self._folder / f".{path.name}.{secrets.token_hex(4)}.part"
        try:
            with temporary.open("xb") as file:
                file.write(document)
                file.flush()
                os.fsync(file.fileno())
            _give_name(temporary, path)
        finally:
            temporary.unlink(missing_ok=True)
        _sync_folder(self._folder)

    def _compare(self, path: Path, document: bytes) -> None:
        try:
            same = path.read_bytes() == document
        except OSError as fault:
            raise PrinterError(f"page {path} cannot be read back", cause_of(fault)) from fault
        if not same:
            raise PrinterError(
                f"page {path} is there with other content",
                "nothing is overwritten: one name stands for one page; use another name",
            )


def cause_of(fault: OSError) -> str:
    """Say the cause of a disk fault, and what to do, in words."""
    known = _CAUSES.get(fault.errno or 0)
    return known or fault.strerror or str(fault)


def _give_name(temporary: Path, path: Path) -> None:
    """Give a file its name in one step; FileExistsError where the name is taken."""
    if os.name == "nt":
        temporary.rename(path)  # refuses a taken name there
    else:
        os.link(temporary, path)  # rename would replace a taken name here


def _sync_folder(folder: Path) -> None:
    """Make the new name itself durable; Windows has no such call."""
    if os.name == "nt":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
