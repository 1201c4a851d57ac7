"""Work beside the screen: told, given up at once, and broken off inside the record."""

import threading
import time

import pytest
from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtWidgets import QWidget
from sqlalchemy import text

from station.core.long_work import GivenUp
from station.errors import BadInput
from station.screens.theme import LIGHT, Ruler
from station.screens.widgets.wait_card import LEAST_SHOWN_MS, SHOWN_AFTER_MS, WaitCard
from station.screens.work import Work
from station.store.engine import reading

AT_ONCE_S = 0.2
"""Of the processor, which an endless question uses up; others on the machine add nothing to it."""
ENDLESS = text("SELECT count(*) FROM journal a, journal b, journal c, journal d")
"""Thousands of millions of rows of the smallest record."""


def count_all(home):
    with reading(home) as connection:
        return connection.execute(ENDLESS).scalar_one()


@pytest.fixture
def work(qapp):
    one = Work("test")
    yield one
    one.stop()
    one.wait()


def test_a_question_to_the_record_is_broken_off(work, week, qtbot):
    heard = []
    work.done.connect(heard.append)
    work.failed.connect(heard.append)
    assert work.begin(lambda _: count_all(week.home))
    [thread] = work._threads
    qtbot.wait(50)
    assert thread.is_alive()
    began = time.process_time()
    work.stop()
    assert not work.busy
    thread.join(60)
    assert not thread.is_alive()
    assert time.process_time() - began < AT_ONCE_S
    assert work.begin(lambda _: "next")
    qtbot.waitUntil(lambda: not work.busy)
    assert heard == ["next"]


def test_what_was_given_up_says_nothing_any_more(work, qtbot):
    heard = []
    work.counted.connect(heard.append)
    work.done.connect(heard.append)

    def endless(tried):
        for count in range(10**9):
            tried(count % 100)

    work.begin(endless)
    qtbot.waitUntil(lambda: bool(heard))
    work.stop()
    before = len(heard)
    work.wait()
    qtbot.wait(20)
    assert len(heard) == before


def test_refusals_and_faults_end_a_piece(work, qtbot, monkeypatch):
    heard, faults = [], []
    monkeypatch.setattr("threading.excepthook", lambda args: faults.append(args.exc_value))
    work.failed.connect(heard.append)

    def refuse(_):
        raise BadInput("the bag", "is not here")

    def give_up(_):
        raise GivenUp

    def fault(_):
        raise RuntimeError("nobody foresaw it")

    for task in (refuse, give_up, fault):
        work.begin(task)
        qtbot.waitUntil(lambda: not work.busy)
    assert heard == ["the bag: is not here"]
    qtbot.waitUntil(lambda: [str(one) for one in faults] == ["nobody foresaw it"])


@pytest.fixture
def page(qtbot, work):
    page = QWidget()
    page.resize(1024, 768)
    page.card = WaitCard(LIGHT, page)
    page.card.follow(work)
    qtbot.addWidget(page)
    page.show()
    return page


def test_a_quick_question_shows_no_card(page, work, qtbot):
    work.begin(lambda _: 1)
    qtbot.waitUntil(lambda: not work.busy)
    qtbot.wait(SHOWN_AFTER_MS + 100)
    assert page.card.isHidden()
    assert not page.card._coming.isActive()


def test_a_long_one_shows_how_far_it_is_and_is_given_up(page, work, week, qtbot):
    card = page.card

    def task(tried):
        tried(40)
        return count_all(week.home)

    began = time.monotonic()
    work.begin(task)
    qtbot.waitUntil(card.isVisible)
    assert time.monotonic() - began >= SHOWN_AFTER_MS / 1000 - 0.05
    qtbot.waitUntil(lambda: card.bar.value() == 40)
    assert page.rect().contains(card.geometry())
    least = Ruler.of(page.screen()).touch()
    assert min(card.button.width(), card.button.height()) >= least
    began = time.process_time()
    qtbot.mouseClick(card.button, Qt.MouseButton.LeftButton)
    assert card.isHidden()
    assert not work.busy
    assert time.process_time() - began < AT_ONCE_S


class Seen(QObject):
    """When a card came and went."""

    def __init__(self):
        super().__init__()
        self.at = {}

    def eventFilter(self, watched, event):  # noqa: N802  Qt's name
        self.at[event.type()] = time.monotonic()
        return False


def test_a_card_that_came_stays_long_enough_to_be_seen(page, work, qtbot):
    seen = Seen()
    page.card.installEventFilter(seen)
    page.card._coming.setInterval(0)
    go_on = threading.Event()
    work.begin(lambda _: go_on.wait(60))
    qtbot.waitUntil(page.card.isVisible)
    go_on.set()
    qtbot.waitUntil(page.card.isHidden)
    assert not work.busy
    shown_s = seen.at[QEvent.Type.Hide] - seen.at[QEvent.Type.Show]
    assert shown_s > LEAST_SHOWN_MS / 1000 - 0.05


def test_whoever_leaves_the_page_gives_its_work_up(page, work, week, qtbot):
    work.begin(lambda _: count_all(week.home))
    [thread] = work._threads
    page.hide()
    assert not work.busy
    thread.join(60)
    assert not thread.is_alive()
