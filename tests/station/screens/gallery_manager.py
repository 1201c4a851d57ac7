"""States of the manager's page on a week, of the page of date and time, and of leaving."""

import atexit
import os
import shutil
import tempfile
from collections.abc import Callable
from datetime import date
from functools import cache
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_SCALE_FACTOR"] = "1"

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication

from station.app.places import demo_settings
from station.app.week.make import Week
from station.app.week.plan import LEAST_BAGS, plan_week
from station.config.load import load
from station.core.facts import Fact, FactRecord
from station.core.journal import EntryKind
from station.core.pack import Moment
from station.core.people import left_fact
from station.screens.bridge import Bridge
from station.screens.change import ChangePage
from station.screens.kiosk import HOW, Kiosk
from station.screens.manager import ManagerPage
from station.screens.manager_source import Period
from station.screens.signing import SignedIntents
from station.screens.theme import LIGHT
from station.screens.tongue import spoken
from station.screens.window import StationWindow
from tests.station.screens import change_states
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.gallery_pages import SIZES, Shoot, Sizes
from tests.station.screens.manager_rig import NOW, ManagerRig
from tests.station.screens.signing_rig import CREW, PinSource
from tests.station.screens.states import every_state, make_offer

_WEEK_ENDS = date(2026, 11, 20)
_PROPOSAL = {
    "version": 3, "unit": "g", "target": "337.000000", "mean": "341.500000",
    "mean_now": "344.700000", "giveaway": "1.500000", "governing": "mean of the whole batch",
    "fills": 4000,
}  # fmt: skip


@cache
def week_home() -> Path:
    """A week of five days with every planted fault, made once; it goes with the program."""
    home = Path(tempfile.mkdtemp())
    atexit.register(shutil.rmtree, home, ignore_errors=True)
    house = load(demo_settings(), _WEEK_ENDS)
    Week(house, home, plan_week(house, LEAST_BAGS, 1, _WEEK_ENDS), seed=1).make()
    return home


def _wait(holds: Callable[[], bool]) -> None:
    while not holds():
        QApplication.processEvents()


def manager(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    for wide, tall in sizes:
        rig = ManagerRig(week_home(), folder / "charts")
        fact = Fact(EntryKind.PROPOSAL, "p1", "SLAW-340", "proposed", "", dict(_PROPOSAL))
        rig.book.noted(FactRecord(fact, Moment(NOW, 0, "UTC", 0), "L01", 1))
        page = rig.page
        page._period = Period.ALL
        rig.show(_wait, (wide, tall))

        def picture(name: str, rig: ManagerRig = rig, wide: int = wide) -> None:
            shoot(rig.page, folder / f"manager_{wide}_{name}.png")

        for tab, turns in ((0, 5), (1, 2), (2, 2)):
            page.tabs[tab].click()
            for turn in range(turns):
                picture(f"{tab}_{turn}")
                for number, place in enumerate(_places(page)):
                    page._read(page.pages.currentWidget().reading(place))
                    picture(f"{tab}_{turn}_read_{number}")
                page.turn_button.click()
        page._keep()
        picture("2_kept")
        page.tabs[3].click()
        picture("3_target")
        page.sign.next_button.click()
        picture("3_version")
        page.tabs[4].click()
        for turn in range(4):
            picture(f"4_{turn}")
            page.turn_button.click()
        page.stop()
        page.close()


def _places(page: ManagerPage) -> tuple[int, ...]:
    """Values a pointer reads: the first, or the first of each kind of a timeline."""
    money = page._money
    if page.pages.currentWidget() is not page.timeline or money is None:
        return (0,)
    kinds = [(one.row, one.bad) for one in money.happenings]
    return tuple(kinds.index(one) for one in dict.fromkeys(kinds))


def clock(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    for wide, tall in sizes:
        for name, source in (("open", change_states.ClockStub()),
                             ("none", change_states.ClockStub(""))):  # fmt: skip
            page = ChangePage(
                Bridge(), FakeIntents(), change_states.SigningSource(()), change_states.LEADS,
                clock=source,
            )  # fmt: skip
            page.resize(wide, tall)
            page.show()
            page.tabs[-1].click()
            shoot(page, folder / f"clock_{wide}_{name}.png")
            page.people[0].click()
            page.sign_button.held.emit()
            shoot(page, folder / f"clock_{wide}_{name}_refused.png")
            page.close()


def leaving(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    for wide, tall in sizes:
        bridge = Bridge()
        source = PinSource()
        source.signed_on = "L01"
        signed = SignedIntents(FakeIntents(), source, bridge, CREW)
        whole = StationWindow(bridge, signed, make_offer(), language=spoken(), signing=signed)
        kiosk = Kiosk(whole, LIGHT, bridge, FakeIntents(), lambda: left_fact("u1"))
        whole.resize(wide, tall)
        whole.show()
        whole.packer.show_state(every_state()["short_t1"])
        whole.band.say(HOW)
        shoot(whole, folder / f"leaving_{wide}_how.png")
        whole.show_lead()
        whole.lead.more_button.click()
        shoot(whole, folder / f"leaving_{wide}_doors.png")
        kiosk.ask()
        shoot(whole, folder / f"leaving_{wide}_sheet.png")
        kiosk.release()
        whole.close()
        whole.deleteLater()
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
