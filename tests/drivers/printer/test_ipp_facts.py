"""What a printer says of itself and of a job, and what that means for the label."""

from __future__ import annotations

import pytest

from drivers.printer.base import PrintState
from drivers.printer.ipp_facts import JobFacts, PrinterFacts
from drivers.printer.ipp_values import (
    Attribute,
    Group,
    GroupTag,
    Range,
    Resolution,
    ValueTag,
    attribute,
)


def job(state: int, *others: Attribute) -> JobFacts:
    base = (
        attribute("job-id", ValueTag.INTEGER, 7),
        attribute("job-name", ValueTag.NAME, "A1-000123"),
        attribute("job-state", ValueTag.ENUM, state),
    )
    facts = JobFacts.of(Group(GroupTag.JOB, (*base, *others)))
    assert facts is not None
    return facts


def reasons(*keywords: str) -> Attribute:
    return attribute("job-state-reasons", ValueTag.KEYWORD, *keywords)


NOT_BEGUN = attribute("time-at-processing", ValueTag.NO_VALUE, None)
BEGUN = attribute("time-at-processing", ValueTag.INTEGER, 0)
OUT = attribute("job-impressions-completed", ValueTag.INTEGER, 1)
NOT_OUT = attribute("job-impressions-completed", ValueTag.INTEGER, 0)


@pytest.mark.parametrize(
    ("state", "others", "expected", "words"),
    [
        # States by RFC 8011, 5.3.7.
        (3, (), PrintState.SPOOLED, ""),
        (4, (), PrintState.SPOOLED, "held until a person releases it"),
        (5, (reasons("job-printing"),), PrintState.SPOOLED, "it is printing"),
        (5, (reasons("processing-to-stop-point"),), PrintState.SPOOLED, "being cancelled"),
        (6, (reasons("printer-stopped"),), PrintState.SPOOLED, "printer has stopped"),
        (7, (NOT_BEGUN,), PrintState.FAILED, "cancelled before printing"),
        (7, (NOT_BEGUN, NOT_OUT), PrintState.FAILED, "cancelled before printing"),
        (7, (NOT_BEGUN, OUT), PrintState.SUBMITTED, "look whether a label came out"),
        (7, (BEGUN, NOT_OUT), PrintState.SUBMITTED, "look whether a label came out"),
        (7, (), PrintState.SUBMITTED, "look whether a label came out"),
        (7, (reasons("job-canceled-at-device"),), PrintState.SUBMITTED, "at the printer"),
        (8, (), PrintState.FAILED, "gave up"),
        (8, (NOT_OUT, reasons("document-format-error")), PrintState.FAILED, "cannot read the page"),
        (8, (OUT,), PrintState.SUBMITTED, "look whether the label is whole"),
        (9, (OUT, reasons("job-completed-successfully")), PrintState.DONE, ""),
        (9, (), PrintState.DONE, ""),
        (99, (), PrintState.SUBMITTED, "no known job state"),
    ],
)
def test_outcome_of_a_job(
    state: int, others: tuple[Attribute, ...], expected: PrintState, words: str
) -> None:
    outcome = job(state, *others).outcome()
    assert outcome.state is expected
    assert words in outcome.why
    assert bool(words) == bool(outcome.why)
    assert job(state, *others).is_over is (state in (7, 8, 9))


def test_job_without_a_number_is_none() -> None:
    assert JobFacts.of(Group(GroupTag.JOB)) is None


def printer(*attributes: Attribute) -> PrinterFacts:
    return PrinterFacts.of(Group(GroupTag.PRINTER, attributes))


@pytest.mark.parametrize(
    ("keyword", "words"),
    [
        # Each with a severity as printers and CUPS give it (RFC 8011, 5.4.12).
        ("media-empty", "no labels left: load a roll"),
        ("media-empty-warning", "no labels left: load a roll"),
        ("media-jam-error", "labels are jammed: clear them"),
        ("cover-open-error", "a cover is open: close it"),
        ("door-open-report", "a door is open: close it"),
        ("paused", "the printer is paused: press its button to go on"),
        ("offline-report", "the printer is offline: switch it on, check its cable"),
        ("marker-supply-empty-error", "ribbon or ink is used up: change it"),
        ("connecting-to-device-report", "the queue cannot reach the printer"),
    ],
)
def test_reasons_that_stop(keyword: str, words: str) -> None:
    facts = printer(attribute("printer-state-reasons", ValueTag.KEYWORD, "media-low", keyword))
    assert facts.trouble().startswith(words)
    assert "few labels left" in facts.remarks()


@pytest.mark.parametrize(
    ("keyword", "words"),
    [
        ("none", ""),
        ("media-low-warning", "few labels left"),
        ("marker-supply-low-report", "ribbon or ink is low"),
        ("x-own-fault-error", "the printer says 'x-own-fault'"),
        ("bell\x07\udcff", "the printer says 'bell ?'"),
    ],
)
def test_reasons_that_do_not_stop(keyword: str, words: str) -> None:
    facts = printer(attribute("printer-state-reasons", ValueTag.KEYWORD, keyword))
    assert facts.trouble() == ""
    assert facts.remarks() == words


def test_stopped_printer_stops_whatever_its_reason() -> None:
    state = attribute("printer-state", ValueTag.ENUM, 5)
    assert "has stopped" in printer(state).trouble()
    named = attribute("printer-state-reasons", ValueTag.KEYWORD, "x-own-fault-error")
    assert printer(state, named).trouble() == "the printer says 'x-own-fault'"
    assert printer(attribute("printer-state", ValueTag.ENUM, 3)).trouble() == ""


def test_printer_that_takes_no_jobs() -> None:
    facts = printer(attribute("printer-is-accepting-jobs", ValueTag.BOOLEAN, False))
    assert "takes no jobs now" in facts.trouble()


def test_resolutions_and_margins() -> None:
    facts = printer(
        attribute(
            "pwg-raster-document-resolution-supported",
            ValueTag.RESOLUTION,
            Resolution(203, 203),
            Resolution(203, 300),
            Resolution(120, 120, 4),
        ),
        attribute("media-top-margin-supported", ValueTag.INTEGER, 0, 300),
        attribute("media-left-margin-supported", ValueTag.RANGE, Range(0, 500)),
        attribute("media-right-margin-supported", ValueTag.INTEGER, 300),
    )
    assert facts.raster_resolutions == (203, 305)
    assert facts.borderless == ("media-top-margin", "media-left-margin")


def test_printer_that_says_nothing_supports_nothing_and_is_not_in_trouble() -> None:
    facts = printer()
    assert facts.trouble() == facts.remarks() == facts.name == ""
    assert not facts.formats
    assert not facts.takes
