"""Says in words what may be wrong with a line whose bytes are no frames. Pure."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable

from drivers.frames.base import FrameParser, Garbage, WeightFrame

ENOUGH = 60
"""From this many bytes on, three frames, a line can be judged."""


_AGAIN = 3
"""So often the same bytes come by no accident: noise never damages lines alike."""


def diagnose(
    sample: bytes,
    frames_seen: bool,
    line: str,
    new_parser: Callable[[], FrameParser],
    refused: Iterable[Garbage] = (),
    sent: bytes = b"",
) -> str:
    """Say what to check.

    Args:
        sample: the newest bytes of the line.
        frames_seen: whether any frame was read on this connection.
        line: the port's settings as a scale's menu gives them, e.g. ``9600 8N1``; empty where they
            are those of a converter, which the station cannot set.
        new_parser: makes the parser of this line.
        refused: what was no frame since the newest weight.
        sent: what was sent to the scale last; empty for nothing.
    """
    check = "check baud rate and parity of the converter"
    if line:
        check = f"check baud rate and parity (here: {line})"
    parity = _parity_found(sample, new_parser)
    if parity and not line:
        return (
            f"the scale sends 7 data bits with {parity}: set the same on the converter, or 8N1 on"
            " the scale"
        )
    if parity:
        return (
            f"the scale sends 7 data bits with {parity}: set bits 7 and {parity} for this"
            f" port (here: {line}), or 8N1 on the scale"
        )
    if frames_seen and (why := _said_again(refused)):
        return (
            f"one line comes again and again and is no weight ({why}): see what the scale shows,"
            " such as an error, another unit or another mode, and set it back"
        )
    if frames_seen:
        return (
            "many frames arrive damaged: check plug and cable, keep it away from motors, and see"
            " that no other program reads this port"
        )
    if len(sent) > 1 and sample.count(sent) >= _AGAIN:
        return (
            "what the station sends comes back in front of the answers: switch the echo of the"
            " converter or of the scale off"
        )
    high = sum(byte >= 0x80 or byte == 0 for byte in sample)
    if high * 5 >= len(sample):
        return f"bytes arrive but none is a frame: {check}"
    start = new_parser().frame_start
    if not any(byte < 0x20 for byte in sample) and not (start and start in sample):
        return f"bytes arrive but no line ever starts or ends: {check}, and that this is the scale"
    return (
        "text arrives but none of it is a weight of this protocol: is another device on this port,"
        f" or another output format set on the scale? If not, {check}"
    )


def _said_again(refused: Iterable[Garbage]) -> str:
    """Why a line that comes again and again, the same each time, is no frame; else empty."""
    most = Counter((one.raw, one.why) for one in refused).most_common(1)
    return most[0][0][1] if most and most[0][1] >= _AGAIN else ""


def _parity_found(sample: bytes, new_parser: Callable[[], FrameParser]) -> str:
    """Return which parity it is where the sample makes frames once bit 7 is taken for parity."""
    if not any(byte >= 0x80 for byte in sample):
        return ""
    stripped = bytes(byte & 0x7F for byte in sample)
    items = new_parser().feed(stripped)
    frames = [item for item in items if isinstance(item, WeightFrame)]
    if len(frames) < 2 or len(frames) * 2 < len(items):
        return ""
    odd = sum(byte.bit_count() % 2 for byte in sample)
    if odd * 20 > len(sample) * 19:
        return "odd parity"
    return "even parity" if odd * 20 < len(sample) else ""
