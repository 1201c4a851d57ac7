"""The few kinds of error the station knows, and what each one promises.

Foreign exceptions are turned into one of these at the border module that meets them.
"""


class StationError(Exception):
    """Root of all errors of the station.

    Args:
        title: one short line a person can act on.
        detail: what was given, where, and what is allowed; may be empty.
    """

    def __init__(self, title: str, detail: str = "") -> None:
        super().__init__(title if not detail else f"{title}: {detail}")
        self.title = title
        self.detail = detail


class BadInput(StationError):
    """A person, a file or a command line gave something that is not allowed (exit code 2)."""


class EnvironmentFault(StationError):
    """Disk, port, printer, clock or network does not serve (exit code 3)."""


class StationBug(StationError):
    """The station broke one of its own promises; never shown as the user's fault."""
