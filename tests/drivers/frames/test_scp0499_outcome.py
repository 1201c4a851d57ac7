"""What became of a command, told from replies of the standard (SMA SCP-0499, 1st ed. 1999, 5.1)."""

import pytest

from drivers.frames import scp0499_commands as command
from drivers.frames.scp0499 import Scp0499Parser
from drivers.frames.scp0499_outcome import name_of, outcome, unanswered

ZERO = b"\nZ1G       0.000kg \r"
GROSS = b"\n 1G       1.250kg \r"
NET = b"\n 1N       1.250kg \r"
TARE = b"\n 1T       0.200kg \r"
FINE = b"\n 1g      5.0025lb \r"
ZERO_ERROR = b"\nE1GM ----------kg \r"
NO_FIRST_ZERO = b"\nI1G  ----------kg \r"
TARE_ERROR = b"\nT1GM ----------kg \r"


def told(sent: bytes, reply: bytes) -> tuple[bool, str] | None:
    (item,) = Scp0499Parser().feed(reply)
    became = outcome(sent, item)
    return became and (became.done, became.words)


@pytest.mark.parametrize(
    ("sent", "reply", "words"),
    [
        (command.weight(), GROSS, "weight: 1.250 kg gross"),
        (command.displayed(), GROSS, "displayed weight: 1.250 kg gross"),
        (command.high_resolution(), FINE, "high resolution: 5.0025 lb gross"),
        (command.zero(), ZERO, "zero: 0.000 kg gross"),
        (command.tare(), NET, "tare: 1.250 kg net"),
        (command.preset_tare("0.2"), NET, "tare: 1.250 kg net"),
        (command.report_tare(), TARE, "report of the tare: 0.200 kg tare"),
        (command.clear_tare(), GROSS, "clearing of the tare: 1.250 kg gross"),
        (command.select_unit("kg"), GROSS, "change of unit: 1.250 kg gross"),
        (command.next_unit(), GROSS, "change of unit: 1.250 kg gross"),
        (command.diagnostics(), b"\n    \r", "diagnosis: no fault"),
        (command.about_first(), b"\nSMA:2/1.0\r", "first line about the scale: SMA:2/1.0"),
        (command.information_next(), b"\nEND:\r", "next line of what it can do: END:"),
        (command.weight(), ZERO_ERROR, "weight: zero error"),
    ],
)
def test_done(sent: bytes, reply: bytes, words: str) -> None:
    assert told(sent, reply) == (True, words)


@pytest.mark.parametrize(
    ("sent", "reply", "words"),
    [
        (command.zero(), ZERO_ERROR, "the scale refused to set zero: empty the pan and let it"),
        (command.zero(), NO_FIRST_ZERO, "the scale found no zero when it was switched on"),
        (command.tare(), TARE_ERROR, "the scale refused the tare"),
        (command.clear_tare(), TARE_ERROR, "the scale refused the tare"),
        (command.zero(), b"\n?\r", "zero: the scale does not do that"),
        (command.tare(), b"\n!\r", "tare: it reached the scale damaged, nothing was done"),
        (command.diagnostics(), b"\n E  \r", "diagnosis: settings memory fault"),
        (b"\nX1\r", b"\n?\r", "command: the scale does not do that"),
    ],
)
def test_refused_in_words(sent: bytes, reply: bytes, words: str) -> None:
    done, said = told(sent, reply) or (True, "")
    assert not done
    assert words in said


@pytest.mark.parametrize(
    ("sent", "reply"),
    [
        (command.zero(), GROSS),
        (command.tare(), GROSS),
        (command.clear_tare(), NET),
        (command.report_tare(), GROSS),
        (command.high_resolution(), GROSS),
        (command.select_unit("lb"), GROSS),
        (command.about_first(), GROSS),
        (command.zero(), b"\nEND:\r"),
        (command.zero(), b"\n 1G\r"),
        (b"\x02\x02", GROSS),
    ],
)
def test_what_was_on_its_way_is_no_answer(sent: bytes, reply: bytes) -> None:
    assert told(sent, reply) is None


def test_silence_is_an_outcome() -> None:
    became = unanswered(command.zero(), "zero")
    assert not became.done
    assert became.words == "zero: the scale gave no answer, look at its display"
    assert name_of(command.report_tare()) == "report of the tare"
