"""About and Information dialogues (SMA SCP-0499, 1st ed. 1999, as reproduced publicly)."""

from decimal import Decimal

import pytest

from drivers.frames import scp0499_commands as command
from drivers.frames.base import Answer, AnswerKind, Garbage
from drivers.frames.scp0499_facts import Discovery, Range, ScaleFacts, misfit, with_line

MS = 1_000_000
ABOUT = ["SMA:2/1.0", "MFG:Tarn Benchworks", "MOD:T6", "REV:3", "SN :0012", "END:"]
INFORMATION = ["SMA:2/1.0", "TYP:S", "CAP:kg :6000:1:0", "CAP:lb :13.2:2:3", "CMD:HPTMCR", "END:"]


def text(line: str) -> Answer:
    return Answer(AnswerKind.TEXT, line)


def talk(replies: dict[bytes, list[Answer | None]]) -> tuple[ScaleFacts, list[bytes], int]:
    """Ask until nothing is left; None is silence. Gives facts, what was sent, and how long."""
    sent, now = [], 0
    discovery = Discovery(now)
    while not discovery.over:
        asked = discovery.due(now)
        now += 10 * MS
        if asked is None:
            continue
        sent.append(asked)
        waiting = replies.get(asked, [])
        reply = waiting.pop(0) if waiting else None
        if reply is not None:
            discovery.heard(reply)
    return discovery.facts, sent, now // MS


def whole() -> dict[bytes, list[Answer | None]]:
    return {
        command.about_first(): [text(ABOUT[0])],
        command.about_next(): [text(line) for line in ABOUT[1:]],
        command.information_first(): [text(INFORMATION[0])],
        command.information_next(): [text(line) for line in INFORMATION[1:]],
    }


def test_both_dialogues_to_their_ends() -> None:
    facts, sent, _ = talk(whole())
    assert facts == ScaleFacts(
        level=2,
        revision="1.0",
        maker="Tarn Benchworks",
        model="T6",
        version="3",
        serial="0012",
        ranges=(
            Range("kg", Decimal(6000), Decimal(1)),
            Range("lb", Decimal("13.2"), Decimal("0.002")),
        ),
        commands="HPTMCR",
    )
    assert sent.count(command.about_next()) == len(ABOUT) - 1
    assert facts.can("T")
    assert facts.can("W")
    assert not facts.can("U")


def test_silent_scale_is_left_alone_within_a_second() -> None:
    facts, sent, ms = talk({})
    assert facts == ScaleFacts()
    assert sent == [command.about_first(), command.information_first()]
    assert ms < 1000


def test_level_1_scale_refuses_the_second_dialogue() -> None:
    replies = whole() | {command.information_first(): [Answer(AnswerKind.UNKNOWN_COMMAND, "")]}
    facts, sent, _ = talk(replies)
    assert facts.model == "T6"
    assert command.information_next() not in sent


def test_last_answer_taken_in_late_ends_it_without_a_fault() -> None:
    """A busy machine may look again only when the wait for an answer is over."""
    discovery, now = Discovery(0), 0
    while not discovery.over:
        if discovery.due(now) is not None:
            discovery.heard(text("END:"))
        now += 10 * MS
    assert discovery.due(now + 60_000 * MS) is None
    assert discovery.over


def test_endless_dialogue_is_ended() -> None:
    replies = whole() | {command.about_next(): [text("MOD:T6")] * 1000}
    _, sent, _ = talk(replies)
    assert sent.count(command.about_next()) <= 16


def test_weights_and_damage_between_mean_nothing() -> None:
    discovery = Discovery(0)
    assert discovery.due(0) == command.about_first()
    discovery.heard(Garbage(b"x", "noise"))
    assert discovery.due(1) is None
    discovery.heard(text("SMA:1/1.0"))
    assert discovery.due(2) == command.about_next()
    assert discovery.facts.level == 1


@pytest.mark.parametrize(
    "line", ["", "SMA:", "CAP:kg", "CAP:kg :x:1:0", "MODE:T", "SMA:22/1", "TYP:S"]
)
def test_line_that_means_nothing_changes_nothing(line: str) -> None:
    assert with_line(ScaleFacts(level=2), line) == ScaleFacts(level=2)


@pytest.mark.parametrize(
    ("unit", "interval", "capacity", "words"),
    [
        ("kg", "0.002", "6", ""),
        ("g", "2", "6000", "weighs in kg, the settings say g"),
        ("kg", "0.001", "6", "intervals of 0.002 kg, the settings say 0.001 kg"),
        ("kg", "0.002", "15", "weighs up to 6 kg, the settings say 15 kg"),
    ],
)
def test_settings_that_do_not_fit_are_told(
    unit: str, interval: str, capacity: str, words: str
) -> None:
    facts = ScaleFacts(ranges=(Range("kg", Decimal(6), Decimal("0.002")),))
    said = misfit(facts, unit, Decimal(interval), Decimal(capacity))
    assert words in said
    assert bool(said) is bool(words)


def test_scale_that_said_nothing_fits() -> None:
    assert misfit(ScaleFacts(), "kg", Decimal(1), Decimal(6)) == ""
