"""Commands whose outcome shows in the weights alone."""

from dataclasses import replace
from pathlib import Path

import pytest

import drivers.frames.descriptions as shipped
from drivers.connection import LinkRules
from drivers.conversation import LISTEN
from drivers.errors import DescriptionError
from drivers.frames.base import Answer, AnswerKind, Condition, Kind, WeightFrame
from drivers.frames.description_file import (
    load_description,
    read_description,
    write_description,
)
from drivers.frames.plain_commands import PlainCommands
from drivers.frames.scp0499_outcome import Outcome
from tests.drivers.listening import bare_line, frame, linked

FOLDER = Path(next(iter(shipped.__path__)))
TOLD = PlainCommands(b"z", b"t", {"kg": b"k", "g": b"g"})
ZERO = WeightFrame("0", "g", Kind.GROSS, False, False, Condition.NORMAL, 1)


@pytest.mark.parametrize(
    ("sent", "frame", "done"),
    [
        (b"z", ZERO, True),
        (b"z", ZERO._replace(digits="0.0"), True),
        (b"z", ZERO._replace(digits=None, condition=Condition.CENTRE_OF_ZERO), True),
        (b"z", ZERO._replace(digits="1"), False),
        (b"z", ZERO._replace(motion=True), False),
        (b"z", ZERO._replace(kind=Kind.NET), False),
        (b"t", ZERO._replace(kind=Kind.NET, digits="-6"), True),
        (b"t", ZERO, True),
        (b"t", ZERO._replace(digits="6"), False),
        (b"k", ZERO._replace(unit="kg", digits="0.3"), True),
        (b"k", ZERO, False),
        (b"z", Answer(AnswerKind.TEXT, "report"), False),
    ],
)
def test_next_weights_show_what_was_done(sent: bytes, frame: WeightFrame, done: bool) -> None:
    became = TOLD.outcome(sent, frame)
    assert (became is not None and became.done) is done


def test_commands_have_names() -> None:
    assert [TOLD.name_of(one) for one in (b"z", b"t", b"k")] == ["zero", "tare", "change of unit"]


def test_commands_are_written_and_read_back() -> None:
    heron = load_description(FOLDER / "heron.toml")
    assert heron.commands.zero == b"?z;"
    more = replace(heron, commands=PlainCommands(b"\x02z\r\n", b"", {"g": b"u\n"}))
    assert read_description(write_description(more)) == more
    with pytest.raises(DescriptionError, match="'kg': is no unit of this line"):
        replace(heron, commands=PlainCommands(units={"kg": b"k"}))


@pytest.mark.parametrize(("shows", "done"), [("0", True), ("3", False)])
def test_scale_that_answers_nothing_is_judged_by_what_it_shows(shows: str, done: bool) -> None:
    ask = replace(LISTEN, outcome_ns=150_000_000)
    rules = LinkRules(ask=ask, outcome=TOLD.outcome, name_of=TOLD.name_of)
    with bare_line() as line, linked_to(line.name, rules) as (heard, link):
        heard.up()
        link.send(b"z")
        assert line.read() == b"z"
        line.write(frame(shows))
        became = heard.next(Outcome)
    assert (became.done, became.command) == (done, b"z")
    assert became.words.startswith("zero: ")


def linked_to(name: str, rules: LinkRules):
    from drivers.port import PortSettings

    return linked(PortSettings(name), rules=rules)


def test_scale_that_is_only_listened_to_is_asked_nothing() -> None:
    with bare_line() as line, linked_to(line.name, LinkRules()) as (heard, link):
        assert line.read() == b"\nR\r"
        heard.up()
        link.listen_only(True)
        line.write(frame("1"))
        heard.next(object, lambda item: getattr(item, "digits", "") == "1")
        link.send(b"?w;")
        assert line.read() == b"?w;"
        link.listen_only(False)
        assert line.read() == b"\nR\r"
