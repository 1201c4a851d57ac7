"""States of the pages a lead packs with: numbers, checks, changeover, lots, labels, signatures."""

import os
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_SCALE_FACTOR"] = "1"

from PySide6.QtWidgets import QApplication, QWidget

from station.core.clearance import Gate
from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.pauses import Reason
from station.line.state import EntryAnswer, RunChoice
from station.screens.bridge import Bridge
from station.screens.change import ChangePage
from station.screens.labels import LabelsPage
from station.screens.lots import LotsPage
from station.screens.numbers import NumbersPage
from station.screens.signing import SignedIntents
from station.screens.signing_sheet import SigningSheet
from tests.station.screens import (
    change_states,
    labels_states,
    lots_states,
    numbers_states,
)
from tests.station.screens.checks_rig import ChecksRig, suspected
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.signing_rig import CREW, PinSource
from tests.station.screens.states import (
    every_state,
)

SIZES = ((1024, 768), (1920, 1080))
Sizes = tuple[tuple[int, int], ...]
Shoot = Callable[[QWidget, Path], None]
"""Takes a state that is ready, and the file it has in the gallery."""


def numbers(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    states = {
        "safe": numbers_states.safe,
        "thin": numbers_states.thin,
        "failing": numbers_states.failing,
        "question": numbers_states.wandering,
        "begun": numbers_states.begun,
        "none": lambda: numbers_states.BagsSource(None),
    }
    for wide, tall in sizes:
        for name, source in states.items():
            page = NumbersPage(Bridge(), FakeIntents(), source(), folder)
            page.resize(wide, tall)
            page.show()
            settle(page)
            page.work_button.click()
            settle(page)
            for tab in page.tabs if name in ("safe", "thin") else page.tabs[:1]:
                tab.click()
                shoot(page, folder / f"numbers_{wide}_{name}_{tab.text().lower()}.png")
            page.stop()
            page.close()


def settle(page: NumbersPage) -> None:
    """Wait until nothing is worked out any more."""
    QApplication.processEvents()
    while page.busy:
        QApplication.processEvents()


def checks(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    for wide, tall in sizes:
        rig = ChecksRig(size=(wide, tall))
        page = rig.page

        def picture(name: str, page: QWidget = page, wide: int = wide) -> None:
            shoot(page, folder / f"checks_{wide}_{name}.png")

        picture("scale_begin")
        page.scale.start_button.click()
        rig.rest("0")
        rig.show("8", steady=False)
        picture("scale_moving")
        rig.rest("6")
        rig.rest("262")
        picture("scale_warns")
        rig.rest("3004")
        rig.answer()
        picture("scale_fails")
        page.choose(1)
        page.tare.film.setText("F-0917")
        picture("tare_begin")
        page.tare.study_button.click()
        for number in range(12):
            rig.rest("0")
            rig.rest(str(6 + number % 2))
        picture("tare_study")
        page.stop()
        page.close()
        for name, windows in (
            ("none", ()),
            ("high", (suspected(),)),
            ("step", (suspected(step=True), suspected(-4))),
        ):
            rig = ChecksRig(windows, (wide, tall))
            rig.page.choose(2)
            while rig.page.suspect.busy:
                QApplication.processEvents()
            shoot(rig.page, folder / f"checks_{wide}_suspect_{name}.png")
            rig.page.suspect.decide_button.click()
            rig.page.suspect.people.touched.emit("P01")
            if windows:
                shoot(rig.page, folder / f"checks_{wide}_decide_{name}.png")
            rig.page.stop()
            rig.page.close()


def change(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    state = replace(every_state()["bag_on"], seals=change_states.SEALS)
    sources = {
        "1_count": change_states.SigningSource(),
        "2_clear": change_states.SigningSource((Gate.CLEARED,)),
        "3_stop": change_states.SigningSource(()),
        "4_stands": change_states.SigningSource((), reason=Reason.FILM),
    }
    for wide, tall in sizes:
        for name, source in sources.items():
            page = ChangePage(Bridge(), FakeIntents(), source, change_states.LEADS)
            page.resize(wide, tall)
            page.show()
            page.show_state(state)
            page.people[0].click()
            for digit in "310":
                page.count.pad.keys[digit].click()
            shoot(page, folder / f"change_{wide}_{name}.png")
            page.close()


def lots(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    for wide, tall in sizes:
        for name, rows in (
            ("1_overlap", lots_states.OVERLAP),
            ("2_crowded", lots_states.CROWDED),
            ("3_none", ()),
        ):
            source = lots_states.LotsSourceStub(rows)
            page = LotsPage(Bridge(), FakeIntents(), source, lots_states.PEOPLE)
            page.resize(wide, tall)
            page.show()
            page.show_state(every_state()["bag_on"])
            page.line.choose("ROM-26327-B" if rows else "")
            shoot(page, folder / f"lots_{wide}_{name}.png")
            if rows == lots_states.OVERLAP:
                page.line.mass_button.click()
                for digit in "1205":
                    page.line.pad.keys[digit].click()
                shoot(page, folder / f"lots_{wide}_{name}_kg.png")
            page.close()
        page = LotsPage(Bridge(), FakeIntents(), lots_states.LotsSourceStub(), lots_states.PEOPLE)
        page.resize(wide, tall)
        page.show()
        page.go_to(1)
        shoot(page, folder / f"lots_{wide}_4_receive.png")
        page.receive.scan.setText("01095212345432133102041250" + "13261124" + "10TR26-118")
        page.receive.scan.returnPressed.emit()
        page.receive.components.touched.emit("CAR")
        page.receive.suppliers.touched.emit("Tarn Roots")
        shoot(page, folder / f"lots_{wide}_5_scanned.png")
        page.receive.scan.setText("10TR26-119")
        page.receive.scan.returnPressed.emit()
        shoot(page, folder / f"lots_{wide}_6_contradiction.png")
        page.go_to(2)
        page.choose_person("P01")
        shoot(page, folder / f"lots_{wide}_7_who.png")
        page.close()


def labels(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    stub = labels_states.LabelsSourceStub
    sources = {
        "1_doubt": (0, stub(labels_states.DOUBTS)),
        "2_first_off": (1, stub()),
        "3_scan": (2, stub()),
        "4_scan_ok": (2, stub()),
        "5_scan_mismatch": (2, stub()),
        "6_roll_in": (3, stub(rolls=labels_states.ACCOUNTS[:1], roll_wanted=True)),
        "7_roll_out": (3, stub(roll="LR-0413", rolls=labels_states.ACCOUNTS)),
        "8_reprint": (4, stub()),
    }
    state = labels_states.state_with_bag()
    for wide, tall in sizes:
        for name, (tab, source) in sources.items():
            page = LabelsPage(Bridge(), FakeIntents(), source, labels_states.PEOPLE)
            page.resize(wide, tall)
            page.show_state(state)
            page.show()
            page.choose(tab)
            page.people.touched.emit("L01")
            assert state.run is not None
            if name.endswith("first_off"):
                page.people.touched.emit("Q01")
            if name.endswith("_ok"):
                page.scan.scanned.emit(source.symbols(state.run)[-1])
            if name.endswith("_mismatch"):
                page.scan.scanned.emit("]C1" + "0109521234000013" + "10OLD-LOT")
                page.show_answer(EntryAnswer((source.made[-1].uid,), True, "recorded"))
            if name.endswith("_out"):
                for digit in "655":
                    page.roll.pad.keys[digit].click()
            page.first_off.preview.wait()
            QApplication.processEvents()
            shoot(page, folder / f"labels_{wide}_{name}.png")
            page.close()


def signing(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    for wide, tall in sizes:
        page = QWidget()
        page.resize(wide, tall)
        signed = SignedIntents(FakeIntents(), PinSource(), Bridge(), CREW)
        sheet = SigningSheet(signed, parent=page)
        sheet.resize(wide, tall)
        page.show()
        signed.start_run(RunChoice("HARBOUR-250", 1, ("ROM-1",), "L01", "P01"))
        for digit in "4829":
            sheet.pad.press(digit)
        shoot(page, folder / f"signing_{wide}_1_pin.png")
        sheet.drop()
        signed.enter((Fact(EntryKind.RELEASE, "f", "ROM-1", "released"),), "Q01")
        sheet.message.say("This PIN is not right: wait 8 s", refused=True)
        shoot(page, folder / f"signing_{wide}_2_wrong.png")
        page.close()
