"""The errors of the drivers, which stand alone."""

from __future__ import annotations


class DriverError(Exception):
    """Root of all errors of the drivers.

    Args:
        title: one short line a person can act on.
        detail: what was given, where, what is allowed, what to do; may be empty.
    """

    def __init__(self, title: str, detail: str = "") -> None:
        super().__init__(title if not detail else f"{title}: {detail}")
        self.title = title
        self.detail = detail


class PortError(DriverError):
    """A port cannot be opened or was lost; names the port, the cause and what to do."""


class CommandError(DriverError):
    """A command that the protocol cannot carry; names what was given and what is allowed."""


class DescriptionError(DriverError):
    """A description of a scale's lines cannot be used; names the place and what is allowed."""


class RecordingError(DriverError):
    """A recording of a scale cannot be written or read; names the file, the place and the cause."""


class BenchError(DriverError):
    """The bench scale was asked for something that cannot happen on a real one."""


class PrinterError(DriverError):
    """A printer did not take a page; names the page, the cause and what to do."""
