"""When a scale is asked for what."""

from drivers.conversation import AskRules, Conversation

MS = 1_000_000
REPEAT, ASK = b"\nR\r", b"\nW\r"


def test_scale_that_repeats_is_asked_once() -> None:
    talk = Conversation(AskRules(), 0)
    assert talk.due(0) == REPEAT
    for n in range(1, 100):
        talk.heard_bytes(n * 50 * MS)
        talk.heard_weight(n * 50 * MS)
        assert talk.due(n * 50 * MS + 1) is None


def test_scale_that_does_not_repeat_is_asked_one_by_one() -> None:
    talk = Conversation(AskRules(), 0)
    assert talk.due(0) == REPEAT
    assert talk.due(999 * MS) is None
    for n in range(10):
        now = (1000 + 100 * n) * MS
        assert talk.due(now) == ASK
        assert talk.due(now + 99 * MS) is None
        talk.heard_bytes(now + 5 * MS)
        talk.heard_answer(now + 5 * MS)
        talk.heard_weight(now + 5 * MS)


def test_scale_that_refuses_to_repeat_is_asked_at_once() -> None:
    talk = Conversation(AskRules(), 0)
    talk.due(0)
    talk.heard_refusal(10 * MS)
    assert talk.due(10 * MS) == ASK


def test_repeating_scale_that_falls_silent_is_asked_to_repeat_again() -> None:
    talk = Conversation(AskRules(), 0)
    talk.due(0)
    for n in (1, 2):
        talk.heard_bytes(n * MS)
        talk.heard_weight(n * MS)
    assert talk.due(1002 * MS) == REPEAT
    assert talk.due(2002 * MS) == REPEAT


def test_silent_scale_is_asked_both_ways_in_turn() -> None:
    talk = Conversation(AskRules(), 0)
    sent = [asked for n in range(100) if (asked := talk.due(n * 100 * MS))]
    assert sent.count(REPEAT) >= 4
    assert sent.count(ASK) >= 4


def test_silence_is_told_once_and_then_now_and_again() -> None:
    talk = Conversation(AskRules(), 0)
    assert not talk.is_silence_to_tell(2000 * MS)
    assert talk.is_silence_to_tell(2001 * MS)
    assert not talk.is_silence_to_tell(2002 * MS)
    assert talk.is_silence_to_tell(12_001 * MS)
    talk.heard_bytes(13_000 * MS)
    assert not talk.is_silence_to_tell(14_000 * MS)
    assert talk.is_silence_to_tell(15_001 * MS)


def test_after_a_command_the_scale_is_asked_to_repeat_again() -> None:
    talk = Conversation(AskRules(), 0)
    talk.due(0)
    assert talk.may_send(5 * MS)
    talk.sent_command(5 * MS)
    talk.heard_weight(10 * MS)  # its answer, or a frame on its way: nobody can tell
    assert not talk.may_send(100 * MS)
    assert talk.due(304 * MS) is None
    assert talk.due(305 * MS) == REPEAT
    assert talk.may_send(306 * MS)
