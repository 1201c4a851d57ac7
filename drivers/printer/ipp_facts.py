"""What an IPP printer says about itself and about a job, read from its attributes."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from enum import IntEnum

from drivers.printer.base import PrintOutcome, PrintState
from drivers.printer.ipp_values import Group, Range, Resolution
from drivers.printer.ipp_words import is_stop, printable, reason_words

_STOPPED = 5
_MARGINS = ("media-top-margin", "media-bottom-margin", "media-left-margin", "media-right-margin")

PRINTER_ATTRIBUTES = (
    "printer-name",
    "printer-make-and-model",
    "printer-state",
    "printer-state-reasons",
    "printer-is-accepting-jobs",
    "document-format-supported",
    "pwg-raster-document-resolution-supported",
    "pwg-raster-document-type-supported",
    "printer-resolution-default",
    "media-col-supported",
    "job-creation-attributes-supported",
    "copies-supported",
    "print-scaling-supported",
    *(f"{margin}-supported" for margin in _MARGINS),
)
JOB_ATTRIBUTES = (
    "job-id",
    "job-name",
    "job-state",
    "job-state-reasons",
    "job-impressions-completed",
    "time-at-processing",
)


@dataclass(frozen=True, slots=True)
class PrinterFacts:
    """A printer at one moment.

    Args:
        name: its name or model, as it states it.
        stopped: it says that it has stopped.
        accepting: it takes jobs.
        reasons: keywords of its state.
        formats: MIME types of documents it takes.
        raster_resolutions: dots per inch at which it takes raster pages, square ones only.
        resolution: dots per inch it prints at when nothing is said; None where it says nothing.
        raster_types: keywords for how a dot may be written.
        takes: names of job attributes that it takes.
        scalings: keywords of ``print-scaling`` that it takes.
        borderless: names of margins that may be 0.
    """

    name: str
    stopped: bool
    accepting: bool
    reasons: tuple[str, ...]
    formats: tuple[str, ...]
    raster_resolutions: tuple[int, ...]
    resolution: int | None
    raster_types: tuple[str, ...]
    takes: frozenset[str]
    scalings: tuple[str, ...]
    borderless: tuple[str, ...]

    @classmethod
    def of(cls, group: Group) -> PrinterFacts:
        """Read the printer's attributes; what is absent counts as not supported."""
        takes = set(group.texts("job-creation-attributes-supported"))
        takes |= {n for n in ("copies", "print-scaling") if group.all(f"{n}-supported")}
        if "media-size" in group.texts("media-col-supported"):
            takes.add("media-col")
        default = tuple(_square(group, "printer-resolution-default"))
        return cls(
            name=printable(group.text("printer-make-and-model") or group.text("printer-name")),
            stopped=group.integer("printer-state") == _STOPPED,
            accepting=False not in group.all("printer-is-accepting-jobs"),
            reasons=group.texts("printer-state-reasons"),
            formats=group.texts("document-format-supported"),
            raster_resolutions=tuple(_square(group, "pwg-raster-document-resolution-supported")),
            resolution=default[0] if default else None,
            raster_types=group.texts("pwg-raster-document-type-supported"),
            takes=frozenset(takes),
            scalings=group.texts("print-scaling-supported"),
            borderless=tuple(m for m in _MARGINS if _allows_zero(group, f"{m}-supported")),
        )

    def trouble(self) -> str:
        """Say why nothing may be sent now; empty when the printer is ready."""
        if stops := [reason for reason in self.reasons if is_stop(reason)]:
            return reason_words(stops)
        if self.stopped:
            return reason_words(self.reasons) or "the printer has stopped: see its panel"
        return "" if self.accepting else "the printer takes no jobs now: let its queue accept jobs"

    def remarks(self) -> str:
        """Say all that the printer reports, in words; empty when there is nothing."""
        return reason_words(self.reasons)


def _square(group: Group, name: str) -> Iterator[int]:
    per_inch = {3: 1.0, 4: 2.54}
    for found in group.all(name):
        if isinstance(found, Resolution) and found.cross_feed == found.feed:
            yield round(found.feed * per_inch.get(found.unit, 1.0))


def _allows_zero(group: Group, name: str) -> bool:
    return any(
        content.low <= 0 <= content.high if isinstance(content, Range) else content == 0
        for content in group.all(name)
    )


class JobState(IntEnum):
    """States of a job (RFC 8011, 5.3.7)."""

    PENDING = 3
    HELD = 4
    PROCESSING = 5
    STOPPED = 6
    CANCELLED = 7
    ABORTED = 8
    COMPLETED = 9


@dataclass(frozen=True, slots=True)
class JobFacts:
    """A job at one moment.

    Args:
        number: the printer's number for it.
        name: the name it was given.
        state: its state; None for one that RFC 8011 does not know.
        reasons: keywords of its state.
        impressions: pages the printer says are out; None where it says nothing.
        began: whether printing of it began, as far as the printer says; None where it says nothing.
    """

    number: int
    name: str
    state: JobState | None
    reasons: tuple[str, ...]
    impressions: int | None
    began: bool | None

    @classmethod
    def of(cls, group: Group) -> JobFacts | None:
        """Read a job's attributes; None where even its number is missing."""
        number, state = group.integer("job-id"), group.integer("job-state")
        if number is None:
            return None
        known = state in frozenset(JobState)
        began = group.all("time-at-processing")
        return cls(
            number=number,
            name=group.text("job-name"),
            state=JobState(state) if known and state is not None else None,
            reasons=group.texts("job-state-reasons"),
            impressions=group.integer("job-impressions-completed"),
            began=began[0] is not None if began else None,
        )

    @property
    def is_over(self) -> bool:
        """Whether the printer will do nothing more with it."""
        return self.state in (JobState.CANCELLED, JobState.ABORTED, JobState.COMPLETED)

    def outcome(self) -> PrintOutcome:
        """Say what became of the page.

        A printer's word is no proof: completed means that it says so, and a cancelled job whose
        printing had begun may come out all the same. Only an end before anything was printed is
        FAILED; any doubt is SUBMITTED.
        """
        words = reason_words(self.reasons)
        out = bool(self.impressions)
        match self.state:
            case JobState.COMPLETED:
                return PrintOutcome(PrintState.DONE)
            case JobState.CANCELLED if self.began is False and not out:
                return PrintOutcome(PrintState.FAILED, words or "it was cancelled before printing")
            case JobState.CANCELLED:
                return PrintOutcome(
                    PrintState.SUBMITTED,
                    f"{words or 'it was cancelled'}, after printing may have begun: "
                    "look whether a label came out",
                )
            case JobState.ABORTED if not out:
                return PrintOutcome(PrintState.FAILED, words or "the printer gave up")
            case JobState.ABORTED:
                return PrintOutcome(
                    PrintState.SUBMITTED,
                    f"{words or 'the printer gave up'}, after a page was out: "
                    "look whether the label is whole",
                )
            case JobState.HELD:
                return PrintOutcome(
                    PrintState.SPOOLED, words or "it is held until a person releases it"
                )
            case None:
                return PrintOutcome(PrintState.SUBMITTED, "the printer gives no known job state")
            case _:
                return PrintOutcome(PrintState.SPOOLED, words)
