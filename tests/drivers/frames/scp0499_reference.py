"""A slow parser of SMA SCP-0499 that shares no code with the station's: byte by byte, no pattern.

Written from the layout of the standard response (1st ed., 24 April 1999, clause 5.1). It says for
every stretch of a stream what it is; why something is no frame it does not say.
"""

DIGITS = "0123456789"
LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz%"
LONGEST = 64
Stretch = tuple[str, bytes, tuple | None]


def stretches(stream: bytes) -> tuple[list[Stretch], bytes]:
    """Return what the stream holds, in order, and what may still become something."""
    found: list[Stretch] = []
    run = b""
    for value in stream:
        byte = bytes([value])
        if byte == b"\n" and run:
            found.append(("garbage", run, None))
            run = byte
        else:
            run += byte
            if byte == b"\r" and run[:1] == b"\n":
                found.append(_reply(run))
                run = b""
        if len(run) == LONGEST:
            found.append(("garbage", run, None))
            run = b""
    return found, run


def _reply(run: bytes) -> Stretch:
    text = run[1:-1].decode("latin-1")
    weight = _weight(text)
    if weight is not None:
        return ("weight", run, weight)
    is_dialogue = (
        4 <= len(text) <= 29
        and text[3] == ":"
        and all(c in DIGITS + LETTERS[:26] + " " for c in text[:3])
        and all(" " <= c <= "~" for c in text)
    )
    is_diagnosis = (
        len(text) == 4
        and text[0] in "R "
        and text[1] in "E "
        and text[2] in "C "
        and " " <= text[3] <= "~"
    )
    if text in ("?", "!") or is_dialogue or is_diagnosis:
        return ("answer", run, None)
    return ("garbage", run, None)


def _weight(text: str) -> tuple | None:
    """Return digits, unit, letter, motion, status and range, or None."""
    if len(text) != 18:
        return None
    status, range_no, letter, motion, reserved = text[:5]
    number, unit = text[5:15].lstrip(" "), text[15:].rstrip(" _")
    if status not in " ZOUEITe" or range_no not in "123456789" or letter not in "GNTgn":
        return None
    if motion not in "M " or not " " <= reserved <= "~":
        return None
    if not unit or any(c not in LETTERS for c in unit):
        return None
    if status in "EITe":
        return (None, unit, letter, motion, status, range_no) if number == "-" * 10 else None
    bare = number.removeprefix("-")
    whole, point, part = bare.partition(".")
    if not whole or any(c not in DIGITS for c in whole + part):
        return None
    if (point and not part) or (len(whole) > 1 and whole[0] == "0"):
        return None
    return (number, unit, letter, motion, status, range_no)
