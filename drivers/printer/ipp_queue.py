"""The questions this station asks an IPP printer, and the answers as facts (RFC 8011, 4)."""

from __future__ import annotations

import ssl
from itertools import count

from drivers.errors import PrinterError
from drivers.printer.ipp_facts import JOB_ATTRIBUTES, PRINTER_ATTRIBUTES, JobFacts, PrinterFacts
from drivers.printer.ipp_link import Address, IppLink, ReplyLost
from drivers.printer.ipp_values import Attribute, Group, GroupTag, Message, ValueTag, attribute
from drivers.printer.ipp_words import LAST_SUCCESS, Operation, Status, printable, status_words

_MOST_HISTORY = 100
"""Finished jobs looked through for a name; printers give the newest first."""


class Busy(PrinterError):
    """The printer has another job; it did not take this one."""


class NoSuchJob(PrinterError):
    """The printer does not know the job, or knows another under its number."""


class IppQueue:
    """One printer's queue.

    Args:
        address: where the printer is.
        user: name the jobs go under; one that may see its own jobs' names.
        tls: how its certificate is checked; None trusts what the system trusts.
    """

    def __init__(self, address: Address, user: str, tls: ssl.SSLContext | None = None) -> None:
        self._address = address
        self._user = user
        self._link = IppLink(address, tls)
        self._numbers = count(1)

    def printer(self, wait_s: float) -> PrinterFacts:
        """Ask the printer for its state and abilities.

        Raises:
            PrinterError: no answer, or a refusal.
        """
        wanted = attribute("requested-attributes", ValueTag.KEYWORD, *PRINTER_ATTRIBUTES)
        reply = self._ask(Operation.GET_PRINTER_ATTRIBUTES, (wanted,), wait_s)
        _demand_success(reply, f"printer {self._address.text} tells nothing")
        return PrinterFacts.of(reply.group(GroupTag.PRINTER))

    def validate(
        self, name: str, mime: str, settings: tuple[Attribute, ...], wait_s: float
    ) -> None:
        """Ask whether a job of this kind would be taken; nothing is printed.

        Raises:
            PrinterError: it would not be, and why.
        """
        reply = self._ask(Operation.VALIDATE_JOB, _about(name, mime), wait_s, settings)
        _demand_success(reply, f"printer {self._address.text} would not take {name}")

    def print_job(
        self,
        name: str,
        mime: str,
        document: bytes,
        settings: tuple[Attribute, ...],
        wait_s: float,
    ) -> tuple[JobFacts, str]:
        """Send a page and return the job made of it, and what the printer ignored, in words.

        Raises:
            Busy: not taken, because of another job.
            ReplyLost: perhaps taken.
            PrinterError: not taken.
        """
        reply = self._ask(Operation.PRINT_JOB, _about(name, mime), wait_s, settings, document)
        _demand_success(reply, f"printer {self._address.text} did not take {name}")
        job = JobFacts.of(reply.group(GroupTag.JOB))
        if job is None:
            raise ReplyLost(f"garbled reply from printer {self._address.text}", "no job number")
        return job, _ignored(reply)

    def job(self, number: int, name: str, wait_s: float) -> JobFacts:
        """Ask for one job.

        Raises:
            NoSuchJob: the printer does not know it; a printer that restarted counts from 1 again,
                so a job of another name is not it either.
            PrinterError: no answer, or a refusal.
        """
        wanted = attribute("requested-attributes", ValueTag.KEYWORD, *JOB_ATTRIBUTES)
        reply = self._ask(Operation.GET_JOB_ATTRIBUTES, (_number(number), wanted), wait_s)
        if reply.code in (Status.NOT_FOUND, Status.GONE):
            raise NoSuchJob(f"printer {self._address.text} does not know job {name}")
        _demand_success(reply, f"printer {self._address.text} tells nothing of job {name}")
        job = JobFacts.of(reply.group(GroupTag.JOB))
        if job is None or job.number != number or job.name != name:
            raise NoSuchJob(f"printer {self._address.text} has another job in place of {name}")
        return job

    def find(self, name: str, wait_s: float) -> JobFacts | None:
        """Look for a job by its name, among those that wait and the newest of those that are over.

        One that is not over comes before one that is, the newest first.

        Raises:
            PrinterError: no answer, or a refusal.
        """
        for which in ("not-completed", "completed"):
            reply = self._ask(
                Operation.GET_JOBS,
                (
                    attribute("limit", ValueTag.INTEGER, _MOST_HISTORY),
                    attribute("requested-attributes", ValueTag.KEYWORD, *JOB_ATTRIBUTES),
                    attribute("which-jobs", ValueTag.KEYWORD, which),
                ),
                wait_s,
            )
            _demand_success(reply, f"printer {self._address.text} does not list its jobs")
            listed = [JobFacts.of(group) for group in reply.groups if group.tag == GroupTag.JOB]
            named = [job for job in listed if job is not None and job.name == name]
            if named:
                return max(named, key=lambda job: job.number)
        return None

    def cancel(self, number: int, wait_s: float) -> None:
        """Ask the printer to drop a job; one that is over stays as it is.

        Raises:
            PrinterError: no answer, or a refusal.
        """
        reply = self._ask(Operation.CANCEL_JOB, (_number(number),), wait_s)
        if reply.code not in (Status.NOT_POSSIBLE, Status.NOT_FOUND, Status.GONE):
            _demand_success(reply, f"printer {self._address.text} did not cancel job {number}")

    def _ask(
        self,
        operation: Operation,
        about: tuple[Attribute, ...],
        wait_s: float,
        settings: tuple[Attribute, ...] = (),
        document: bytes = b"",
    ) -> Message:
        head = (
            attribute("attributes-charset", ValueTag.CHARSET, "utf-8"),
            attribute("attributes-natural-language", ValueTag.LANGUAGE, "en"),
            attribute("printer-uri", ValueTag.URI, self._address.text),
            attribute("requesting-user-name", ValueTag.NAME, self._user),
        )
        # RFC 8011, 4.1.5 and 4.2.6: target first, a job's number right behind it.
        numbers = tuple(one for one in about if one.name == "job-id")
        others = tuple(one for one in about if one.name != "job-id")
        groups = [Group(GroupTag.OPERATION, head[:3] + numbers + head[3:] + others)]
        if settings:
            groups.append(Group(GroupTag.JOB, settings))
        request = Message(operation, next(self._numbers), tuple(groups), document)
        return self._link.ask(request, wait_s)


def _number(number: int) -> Attribute:
    return attribute("job-id", ValueTag.INTEGER, number)


def _about(name: str, mime: str) -> tuple[Attribute, ...]:
    return (
        attribute("job-name", ValueTag.NAME, name),
        attribute("ipp-attribute-fidelity", ValueTag.BOOLEAN, True),
        attribute("document-format", ValueTag.MIME_TYPE, mime),
    )


def _demand_success(reply: Message, title: str) -> None:
    if reply.code <= LAST_SUCCESS:
        return
    why = status_words(reply.code, reply.group(GroupTag.OPERATION).text("status-message"))
    if named := _ignored(reply):
        why += f"; not possible: {named}"
    if reply.code == Status.BUSY:
        raise Busy(title, why)
    raise PrinterError(title, why)


def _ignored(reply: Message) -> str:
    """Name the attributes that the printer does not support as asked."""
    names = (printable(one.name) for one in reply.group(GroupTag.UNSUPPORTED).attributes)
    return ", ".join(dict.fromkeys(names))
