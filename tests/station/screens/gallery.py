"""Draws every state of every screen as a picture: python -m tests.station.screens.gallery OUTDIR.

With codes of languages behind the folder (``es pa zh``, or ``all``) the packer's screen and what
the lead sees first are drawn in these instead.
Works without a display. The pictures are for people to look at; no test compares them.
"""

import os
import sys
import tempfile
from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_SCALE_FACTOR"] = "1"

from PySide6.QtWidgets import QApplication, QWidget

from station.app.places import demo_settings
from station.app.speed.long_record import make_long_record
from station.app.trace_desk import TraceDesk
from station.core.clearance import Gate
from station.core.facts import Fact
from station.core.journal import EntryKind
from station.core.languages import Language
from station.core.pauses import Reason
from station.line.state import EntryAnswer, RunChoice
from station.screens.alarms import AlarmsPage
from station.screens.bench import BenchWindow
from station.screens.bridge import Bridge
from station.screens.change import ChangePage
from station.screens.labels import LabelsPage
from station.screens.lead import LeadPanel
from station.screens.lots import LotsPage
from station.screens.numbers import NumbersPage
from station.screens.packer import PackerScreen
from station.screens.shipping import ShippingPage
from station.screens.signing import SignedIntents
from station.screens.signing_sheet import SigningSheet
from station.screens.theme import PALETTES
from station.screens.trace import TracePage
from station.screens.training import set_up_training
from station.screens.widgets.byte_strip import Strip
from station.screens.window import StationWindow
from station.store.queries import known_lots
from tests.station.screens import (
    change_states,
    labels_states,
    lots_states,
    numbers_states,
    shipping_states,
)
from tests.station.screens.alarm_states import MEAN, MISMATCH, PRINTER, ROLL, AlarmSourceStub
from tests.station.screens.checks_rig import ChecksRig, suspected
from tests.station.screens.fakes import FakeHand, FakeIntents
from tests.station.screens.gallery_languages import draw_languages
from tests.station.screens.quality_rig import QualityRig
from tests.station.screens.service_rig import WRONG, ServiceRig, marked_line
from tests.station.screens.signing_rig import CREW, PinSource
from tests.station.screens.states import (
    LONG_NAME,
    every_state,
    make_offer,
    make_product,
    make_run,
)
from tests.station.store.dock import shipped_record

SIZES = ((1920, 1080), (1280, 800))


def shoot(widget: QWidget, path: Path) -> None:
    for _ in range(3):  # a page settles its layout in steps
        QApplication.processEvents()
    widget.grab().save(str(path))


def packer(folder: Path) -> None:
    for wide, tall in SIZES:
        screen = PackerScreen(Bridge(), FakeIntents())
        screen.resize(wide, tall)
        screen.show()
        for name, state in every_state().items():
            screen.show_state(state)
            shoot(screen, folder / f"packer_{wide}_{name}.png")
        screen.show_state(every_state(make_run(make_product(name=LONG_NAME)))["short_t1"])
        shoot(screen, folder / f"packer_{wide}_long_name.png")
        screen.aside_button.click()
        shoot(screen, folder / f"packer_{wide}_reasons.png")
        screen.aside_button.click()
        screen.toggle_about()
        shoot(screen, folder / f"packer_{wide}_about.png")
        screen.close()


def lead(folder: Path) -> None:
    offer = make_offer()
    for wide, tall in SIZES:
        panel = LeadPanel(Bridge(), FakeIntents(), offer, in_doubt=("P1-7K-000131",))
        panel.resize(wide, tall)
        panel.show()
        states = every_state()
        panel.show_state(states["start_run"])
        shoot(panel, folder / f"lead_{wide}_1_product.png")
        panel.products.touched.emit("HARBOUR-250")
        panel.lots.touched.emit("ROM-2611")
        panel.lots.touched.emit("ROM-2609")
        shoot(panel, folder / f"lead_{wide}_2_lots.png")
        panel.lots.touched.emit("RAD-0418")
        panel.lots.touched.emit("CAR-7710")
        panel.steps[2].click()
        panel.crew.changed.emit("P01", "P02", "400")
        shoot(panel, folder / f"lead_{wide}_3_crew.png")
        panel.show_state(states["bag_on"])
        shoot(panel, folder / f"lead_{wide}_4_run.png")
        panel.show_state(states["stopped"])
        shoot(panel, folder / f"lead_{wide}_5_stopped.png")
        panel.close()


def numbers(folder: Path) -> None:
    states = {
        "safe": numbers_states.safe,
        "thin": numbers_states.thin,
        "failing": numbers_states.failing,
        "question": numbers_states.wandering,
        "begun": numbers_states.begun,
        "none": lambda: numbers_states.BagsSource(None),
    }
    for wide, tall in ((1024, 768), SIZES[0]):
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


def checks(folder: Path) -> None:
    for wide, tall in ((1024, 768), SIZES[0]):
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


def change(folder: Path) -> None:
    state = replace(every_state()["bag_on"], seals=change_states.SEALS)
    sources = {
        "1_count": change_states.SigningSource(),
        "2_clear": change_states.SigningSource((Gate.CLEARED,)),
        "3_stop": change_states.SigningSource(()),
        "4_stands": change_states.SigningSource((), reason=Reason.FILM),
    }
    for wide, tall in ((1024, 768), SIZES[0]):
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


def lots(folder: Path) -> None:
    for wide, tall in ((1024, 768), SIZES[0]):
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


def labels(folder: Path) -> None:
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
    for wide, tall in ((1024, 768), SIZES[0]):
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


def shipping(folder: Path) -> None:
    stub = shipping_states.ShippingSourceStub
    for wide, tall in ((1024, 768), SIZES[0]):
        page = ShippingPage(Bridge(), FakeIntents(), stub(), lots_states.PEOPLE)
        page.resize(wide, tall)
        page.show()
        page.show_state(every_state()["bag_on"])
        shoot(page, folder / f"shipping_{wide}_1_begin.png")
        page.case.buttons["NEXT CASE"].click()
        shoot(page, folder / f"shipping_{wide}_2_case.png")
        page.case.scanned.emit(shipping_states.serial(3))
        shoot(page, folder / f"shipping_{wide}_3_twice.png")
        page.go_to(1)
        for code in (shipping_states.FIRST, shipping_states.SECOND):
            page.pallet.scanned.emit(code)
        for digit in "1215":
            page.pad.keys[digit].click()
        shoot(page, folder / f"shipping_{wide}_4_pallet.png")
        page.go_to(2)
        page.ship.scanned.emit(shipping_states.PALLET)
        page.customers.touched.emit("MARSHGATE")
        page.reference.setText("delivery note 4713")
        shoot(page, folder / f"shipping_{wide}_5_ship.png")
        page.ship.scanned.emit(shipping_states.HELD)
        shoot(page, folder / f"shipping_{wide}_6_held.png")
        page.go_to(3)
        page.house.choose(shipping_states.FIRST)
        shoot(page, folder / f"shipping_{wide}_7_house.png")
        page.close()


def trace(folder: Path) -> None:
    for wide, tall in ((1024, 768), SIZES[0]):
        with tempfile.TemporaryDirectory() as home:
            record = make_long_record(demo_settings(), Path(home), 12_000)
            page = TracePage(TraceDesk(record.home))
            page.resize(wide, tall)
            page.show()
            lot = next(one for one in known_lots(record.home) if one.component == "CARROT")
            for name, asked in (("1_lot", record.lot), ("2_shared", lot.code)):
                page.ask(asked)
                while page.work.busy:
                    QApplication.processEvents()
                shoot(page, folder / f"trace_{wide}_{name}.png")
            page.close()
            shipped = shipped_record(Path(home) / "shipped")
            page = TracePage(TraceDesk(shipped.home))
            page.resize(wide, tall)
            page.show()
            for name, asked in (
                ("3_shipped", "LF-101"), ("4_pallet", shipped.pallet), ("5_bag", shipped.good[4]),
            ):  # fmt: skip
                page.ask(asked)
                while page.work.busy:
                    QApplication.processEvents()
                shoot(page, folder / f"trace_{wide}_{name}.png")
            page.close()


def service(folder: Path) -> None:
    for wide, tall in ((1024, 768), SIZES[0]):
        rig = ServiceRig((wide, tall))
        page = rig.page

        def picture(name: str, page: QWidget = page, wide: int = wide) -> None:
            shoot(page, folder / f"service_{wide}_{name}.png")

        page.refresh()
        picture("1_line")
        rig.wire.link = WRONG
        page.refresh()
        picture("2_wrong_line")
        page.choose(1)
        page.scale.message.say("the scale refused to set zero: empty the pan", refused=True)
        picture("3_scale")
        page.choose(2)
        while page.work.busy:
            QApplication.processEvents()
        picture("4_station")
        page.choose(3)
        lesson = page.learn
        lesson.listen_button.click()
        rig.lesson.send(b"x\r\n", *(marked_line("w", str(n)) for n in (3, 40, 254)), b"q=")
        lesson.take()
        for field, begin, end in (("flag", 0, 1), ("value", 2, 10), ("unit", 11, 13)):
            lesson.strip.set(Strip(lesson.strip.view.line, lesson.strip.view.marks, begin, end))
            lesson.mark(field)
        lesson.shown.setText("254")
        lesson.choose_unit("g")
        picture("5_marked")
        lesson.keep()
        rig.lesson.send(*(marked_line("q", str(n)) for n in (12, 12, 12)), b"?!\r\n", b"q=")
        lesson.taught.append(replace(lesson.taught[0], line=marked_line("q", "12"), value="12"))
        lesson.propose()
        picture("6_proposed")
        page.choose(4)
        page.swap.check()
        rig.rest("0")
        rig.rest("6")
        picture("7_swap")
        page.stop()
        page.close()


def quality(folder: Path) -> None:
    for wide, tall in ((1024, 768), SIZES[0]):
        with tempfile.TemporaryDirectory() as home:
            rig = QualityRig(Path(home) / "home", (wide, tall), bags=115)
            page = rig.page
            page.show()

            def picture(name: str, page: QWidget = page, wide: int = wide) -> None:
                shoot(page, folder / f"quality_{wide}_{name}.png")

            rig.sign("Q01", "M01")
            rig.show()
            rig.tab(3)
            page.checks.choose("seal")
            page.checks.outcome.touched.emit("failed")
            page.checks.action.setText("jaw cleaned, bags held")
            picture("3_seal_fails")
            page.checks.enter_button.held.emit()
            rig.settle()
            picture("3_checks_made")
            page.checks.choose("room temperature")
            for key in "2.8":
                page.checks.pad.keys[key].click()
            picture("3_room")
            page.checks.choose("metal detector")
            picture("3_metal")
            rig.tab(0)
            picture("0_inbox")
            rig.tab(1)
            page.rejects.table.touch(rig.rejects[3])
            rig.settle()
            picture("1_rejects")
            page.rejects.decide_button.click()
            page.rejects.decide.choose("topped up")
            picture("1_decide")
            page.rejects.pages.setCurrentIndex(0)
            page.rejects.filter_button.click()
            picture("1_filter")
            page.rejects.bin_button.click()
            picture("1_bin")
            rig.tab(2)
            page.holds.table.touch(rig.run.id)
            picture("2_holds")
            page.holds.hold_button.click()
            picture("2_new_hold")
            rig.tab(4)
            page.look_up.show_bag(rig.serials[40])
            rig.settle()
            picture("4_look_up")
            rig.tab(5)
            picture("5_batches")
            if page.inspector.batches:
                page.inspector.list.touch(page.inspector.batches[0].key)
                page.inspector.draw_button.click()
                for shown in ("0", "351", "0"):
                    rig.rest(shown)
                picture("5_test")
            rig.tab(6)
            picture("6_who")
            rig.close()


def alarms(folder: Path) -> None:
    for theme, palette in PALETTES.items():
        for wide, tall in ((1024, 768), SIZES[0]):
            source = AlarmSourceStub(MISMATCH, PRINTER, MEAN, ROLL)
            page = AlarmsPage(Bridge(), FakeIntents(), source, lots_states.PEOPLE, UTC, palette)
            page.resize(wide, tall)
            page.show()
            page.choose(PRINTER.uid)
            shoot(page, folder / f"alarms_{wide}_{theme}.png")
            page.close()


def training(folder: Path) -> None:
    states = every_state()
    for theme, palette in PALETTES.items():
        for wide, tall in ((1024, 768), SIZES[0]):
            bridge = Bridge()
            whole = StationWindow(bridge, FakeIntents(), make_offer(), palette)
            set_up_training(whole, bridge, palette, tiles=True)
            whole.resize(wide, tall)
            whole.show()
            for name in ("short_t1", "short_far", "over_near", "bag_on"):
                bridge.state_changed.emit(states[name])
                shoot(whole, folder / f"training_{wide}_{theme}_{name}.png")
            whole.close()


def settle(page: NumbersPage) -> None:
    """Wait until nothing is worked out any more."""
    QApplication.processEvents()
    while page.busy:
        QApplication.processEvents()


def signing(folder: Path) -> None:
    for wide, tall in ((1024, 768), SIZES[0]):
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


def window(folder: Path) -> None:
    bridge = Bridge()
    whole = StationWindow(bridge, FakeIntents(), make_offer())
    whole.resize(*SIZES[1])
    whole.show()
    whole.packer.show_state(every_state()["short_t1"])
    whole.packer.call_button.click()
    whole.band.say("The disk is nearly full: 180 MB are left. Call maintenance.")
    shoot(whole, folder / "window_bands.png")
    whole.close()
    bench = BenchWindow(FakeHand())
    bench.show()
    bench.bag_button.click()
    bench.drawing.grams = 170
    shoot(bench, folder / "bench.png")
    bench.close()


def main(folder: Path, codes: Sequence[str] = ()) -> None:
    folder.mkdir(parents=True, exist_ok=True)
    application = QApplication.instance() or QApplication([])
    if codes:
        chosen = list(Language) if "all" in codes else [Language(code) for code in codes]
        draw_languages(folder, chosen, shoot)
        return
    pages = (numbers, checks, change, lots, labels, shipping, trace, signing, service, quality)
    parts = (packer, lead, *pages, alarms, training, window)
    for part in parts:
        part(folder)
    application.processEvents()


if __name__ == "__main__":
    main(Path(sys.argv[1]), sys.argv[2:])
