"""Commands of SMA SCP-0499, 1st ed. 1999: LF, one letter, data, CR; ESC alone."""

import pytest

from drivers.errors import CommandError
from drivers.frames import scp0499_commands as command


@pytest.mark.parametrize(
    ("sent", "expected"),
    [
        (command.weight(), "0a 57 0d"),
        (command.high_resolution(), "0a 48 0d"),
        (command.displayed(), "0a 50 0d"),
        (command.displayed_high_resolution(), "0a 51 0d"),
        (command.repeat(), "0a 52 0d"),
        (command.repeat_high_resolution(), "0a 53 0d"),
        (command.zero(), "0a 5a 0d"),
        (command.tare(), "0a 54 0d"),
        (command.preset_tare("0.006"), "0a 54 30 2e 30 30 36 0d"),
        (command.report_tare(), "0a 4d 0d"),
        (command.clear_tare(), "0a 43 0d"),
        (command.next_unit(), "0a 55 0d"),
        (command.select_unit("kg"), "0a 55 6b 67 20 0d"),
        (command.diagnostics(), "0a 44 0d"),
        (command.about_first(), "0a 41 0d"),
        (command.about_next(), "0a 42 0d"),
        (command.information_first(), "0a 49 0d"),
        (command.information_next(), "0a 4e 0d"),
        (command.abort(), "1b"),
    ],
)
def test_bytes_of_the_standard(sent: bytes, expected: str) -> None:
    assert sent.hex(" ") == expected


@pytest.mark.parametrize(
    "digits", ["", "-1", "1,5", "1.", ".5", "01", "1e3", "12345678.90", "6\r\nZ"]
)
def test_preset_tare_refuses(digits: str) -> None:
    with pytest.raises(CommandError, match="allowed are digits"):
        command.preset_tare(digits)


@pytest.mark.parametrize("unit", ["", "gram", "k\r", "k g"])
def test_unit_refuses(unit: str) -> None:
    with pytest.raises(CommandError, match="1 to 3 letters"):
        command.select_unit(unit)
