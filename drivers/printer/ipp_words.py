"""What an IPP printer's answers mean, in words for a person at the line.

Keywords and numbers: RFC 8011 (sections 5.3.7, 5.3.8, 5.4.11, 5.4.12, appendix B) and the IANA
registry of IPP; ``offline`` and ``connecting-to-device`` are CUPS's own.
"""

from __future__ import annotations

from collections.abc import Iterable
from enum import IntEnum


class Operation(IntEnum):
    """What a request asks for (RFC 8011, 5.4.15)."""

    PRINT_JOB = 0x0002
    VALIDATE_JOB = 0x0004
    CANCEL_JOB = 0x0008
    GET_JOB_ATTRIBUTES = 0x0009
    GET_JOBS = 0x000A
    GET_PRINTER_ATTRIBUTES = 0x000B


class Status(IntEnum):
    """Those statuses of a reply that are acted on; below 0x0100 all went well."""

    NOT_POSSIBLE = 0x0404
    NOT_FOUND = 0x0406
    GONE = 0x0407
    BUSY = 0x0507


LAST_SUCCESS = 0x00FF

_STATUSES = {
    0x0400: "the printer does not understand the request",
    0x0401: "the printer does not allow it",
    0x0402: "the printer wants a login, which this station does not give",
    0x0403: "this station is not allowed to",
    0x0404: "it is not possible in the state things are in",
    0x0405: "the printer had waited too long",
    0x0406: "the printer does not know of it",
    0x0407: "it is gone",
    0x0408: "the page is too large for the printer",
    0x0409: "a value is too long for the printer",
    0x040A: "the printer does not take this document format",
    0x040B: "the printer cannot do what was asked",
    0x040C: "the printer does not know this kind of address",
    0x040D: "the printer does not know this character set",
    0x040E: "the printer cannot do all that was asked at once",
    0x040F: "the printer does not know this compression",
    0x0410: "the printer cannot unpack the page",
    0x0411: "the printer cannot read the page; it may be damaged",
    0x0500: "the printer has a fault inside",
    0x0501: "the printer cannot do this at all",
    0x0502: "the printer's service is not there now",
    0x0503: "the printer does not speak this version of IPP",
    0x0504: "the printer's device reports a fault",
    0x0505: "the printer has a fault for the moment",
    0x0506: "the printer takes no jobs now",
    0x0507: "the printer is busy with another job",
    0x0508: "the job was cancelled",
    0x0509: "the printer takes one page a job at most",
}

# Reasons that wait for a person or a thing to come back: nothing may be sent while one stands,
# whatever its severity (CUPS says offline-report and, from supplies, media-empty-warning).
_STOPS = {
    "connecting-to-device": "the queue cannot reach the printer: switch it on, check its cable",
    "cover-open": "a cover is open: close it",
    "cutter-at-end-of-life": "the cutter is worn out: change it",
    "cutter-failure": "the cutter has a fault",
    "door-open": "a door is open: close it",
    "input-media-supply-empty": "no labels left: load a roll",
    "input-tray-missing": "the roll holder is missing: put it in",
    "interlock-open": "a safety lock is open: close it",
    "marker-supply-empty": "ribbon or ink is used up: change it",
    "marker-supply-missing": "ribbon or ink is missing: put it in",
    "media-empty": "no labels left: load a roll",
    "media-jam": "labels are jammed: clear them",
    "media-needed": "other labels must be loaded",
    "moving-to-paused": "the printer is pausing",
    "offline": "the printer is offline: switch it on, check its cable",
    "output-area-full": "labels are not taken away: take them away",
    "paused": "the printer is paused: press its button to go on",
    "power-down": "the printer is switching off",
    "printer-manual-reset": "the printer must be reset by hand",
    "shutdown": "the printer is switched off",
    "spool-area-full": "the printer's memory is full",
    "stopped-partly": "a part of the printer has stopped",
    "stopping": "the printer is stopping",
    "timed-out": "the printer's device does not answer",
}
_WARNINGS = {
    "marker-supply-low": "ribbon or ink is low",
    "media-low": "few labels left",
    "output-area-almost-full": "labels should be taken away soon",
    "other": "the printer has something to report; see its panel",
    "hold-new-jobs": "the printer holds new jobs until a person releases them",
}
_JOB_REASONS = {
    "aborted-by-system": "the printer gave up",
    "account-authorization-failed": "this station is not allowed to print there",
    "compression-error": "the printer cannot unpack the page",
    "document-format-error": "the printer cannot read the page",
    "document-unprintable-error": "the printer cannot print the page",
    "job-canceled-at-device": "it was cancelled at the printer",
    "job-canceled-by-operator": "it was cancelled by an operator of the queue",
    "job-canceled-by-user": "it was cancelled by this station's user",
    "job-hold-until-specified": "it is held until a person releases it",
    "job-printing": "it is printing",
    "printer-stopped": "the printer has stopped",
    "printer-stopped-partly": "a part of the printer has stopped",
    "processing-to-stop-point": "it is being cancelled",
    "queued-in-device": "it waits inside the printer",
    "resources-are-not-ready": "labels or ribbon are not ready",
    "unsupported-document-format": "the printer does not take this document format",
}
_SILENT = {
    "none",
    "job-completed-successfully",
    "job-incoming",
    "job-queued",
    "job-transforming",
    "cups-waiting-for-job-completed",
}
_SEVERITIES = ("-error", "-warning", "-report")


def printable(text: str) -> str:
    """Return a printer's own words without what could not be shown."""
    shown = text.encode("utf-8", "replace").decode("utf-8")
    return "".join(sign if sign.isprintable() else " " for sign in shown)[:200].strip()


def status_words(status: int, message: str = "") -> str:
    """Say what a reply's status means; the printer's own message stands behind it."""
    known = _STATUSES.get(status, "the printer refused")
    own = printable(message)
    return f"{known} (0x{status:04x}{': ' + own if own else ''})"


def _bare(reason: str) -> str:
    for severity in _SEVERITIES:
        reason = reason.removesuffix(severity)
    return reason


def is_stop(reason: str) -> bool:
    """Whether a printer's reason means that nothing may be sent now."""
    return _bare(reason) in _STOPS


def reason_words(reasons: Iterable[str]) -> str:
    """Say in words what reasons of a printer or job mean; empty when there is nothing to say."""
    told: dict[str, None] = {}
    for reason in reasons:
        bare = _bare(reason)
        if bare not in _SILENT:
            # A job's reasons have no severity, but some end like one: document-format-error.
            words = _JOB_REASONS.get(reason) or _STOPS.get(bare) or _WARNINGS.get(bare)
            told[words or f"the printer says {printable(bare)!r}"] = None
    return "; ".join(told)
