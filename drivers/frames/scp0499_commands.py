r"""Commands of SMA SCP-0499 (clause 4 of the standard): ``LF c [data] CR``, and ESC alone.

Level 1, answered by every scale of the standard: W, Z, D, A, B, ESC. Level 2: the others.
"""

from __future__ import annotations

import re

from drivers.errors import CommandError

ABORT = b"\x1b"
_PRESET = re.compile(r"(?:0|[1-9][0-9]*)(?:\.[0-9]+)?")
_UNIT = re.compile(r"[A-Za-z%]{1,3}")


def _command(letter: str, data: str = "") -> bytes:
    return f"\n{letter}{data}\r".encode("ascii")


def weight() -> bytes:
    """Ask for the weight now, at rest or not."""
    return _command("W")


def high_resolution() -> bytes:
    """Ask for the weight ten times finer; it is not the indication."""
    return _command("H")


def displayed() -> bytes:
    """Ask for the weight as displayed; look at its motion, not every scale waits for rest."""
    return _command("P")


def displayed_high_resolution() -> bytes:
    """Ask for the displayed weight ten times finer."""
    return _command("Q")


def repeat() -> bytes:
    """Ask for weights without end, until the next command."""
    return _command("R")


def repeat_high_resolution() -> bytes:
    """Ask for weights ten times finer without end; they are not the indication."""
    return _command("S")


def zero() -> bytes:
    """Set the scale to zero; the answer's condition says whether it did."""
    return _command("Z")


def tare() -> bytes:
    """Take the load on the pan as tare."""
    return _command("T")


def preset_tare(digits: str) -> bytes:
    """Set a known tare, in the scale's present unit.

    Args:
        digits: at most 10 characters, e.g. ``6`` or ``0.006``.

    Raises:
        CommandError: the digits are not a number of this form.
    """
    if not _PRESET.fullmatch(digits) or len(digits) > 10:
        raise CommandError(
            f"preset tare {digits!r} cannot be sent",
            "allowed are digits with at most one decimal point, no sign, 10 characters",
        )
    return _command("T", digits)


def report_tare() -> bytes:
    """Ask for the tare that is set."""
    return _command("M")


def clear_tare() -> bytes:
    """Forget the tare: the scale shows gross again."""
    return _command("C")


def next_unit() -> bytes:
    """Go to the scale's next unit."""
    return _command("U")


def select_unit(unit: str) -> bytes:
    """Choose a unit of the scale; it ignores one that it does not have.

    Raises:
        CommandError: the unit is not 1 to 3 letters.
    """
    if not _UNIT.fullmatch(unit):
        raise CommandError(f"unit {unit!r} cannot be sent", "allowed are 1 to 3 letters")
    return _command("U", unit.ljust(3))


def diagnostics() -> bytes:
    """Ask whether the scale's memory and calibration are sound."""
    return _command("D")


def about_first() -> bytes:
    """Ask for the first line about the scale: level and revision of the protocol."""
    return _command("A")


def about_next() -> bytes:
    """Ask for the next line about the scale, until ``END:``."""
    return _command("B")


def information_first() -> bytes:
    """Ask for the first line of what the scale can do."""
    return _command("I")


def information_next() -> bytes:
    """Ask for the next line of what the scale can do, until ``END:``."""
    return _command("N")


def abort() -> bytes:
    """End whatever the scale is doing; acted on at any place in the stream."""
    return ABORT
