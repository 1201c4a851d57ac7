"""States of other pages: shipping, trace, service, quality, alarms, and of training."""

import os
import tempfile
from dataclasses import replace
from datetime import UTC
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_SCALE_FACTOR"] = "1"

from PySide6.QtWidgets import QApplication, QWidget

from station.app.places import demo_settings
from station.app.speed.long_record import make_long_record
from station.app.trace_desk import TraceDesk
from station.screens.alarms import AlarmsPage
from station.screens.bridge import Bridge
from station.screens.shipping import ShippingPage
from station.screens.theme import PALETTES
from station.screens.tongue import spoken
from station.screens.trace import TracePage
from station.screens.training import set_up_training
from station.screens.widgets.byte_strip import Strip
from station.screens.window import StationWindow
from station.store.queries import known_lots
from tests.station.screens import (
    lots_states,
    shipping_states,
)
from tests.station.screens.alarm_states import MEAN, MISMATCH, PRINTER, ROLL, AlarmSourceStub
from tests.station.screens.fakes import FakeIntents
from tests.station.screens.gallery_pages import SIZES, Shoot, Sizes
from tests.station.screens.quality_rig import QualityRig
from tests.station.screens.service_rig import WRONG, ServiceRig, marked_line
from tests.station.screens.states import (
    every_state,
    make_offer,
)
from tests.station.store.dock import shipped_record


def shipping(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    stub = shipping_states.ShippingSourceStub
    for wide, tall in sizes:
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


def trace(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    for wide, tall in sizes:
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


def service(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    for wide, tall in sizes:
        rig = ServiceRig((wide, tall))
        page = rig.page

        def picture(name: str, page: QWidget = page, wide: int = wide) -> None:
            shoot(page, folder / f"service_{wide}_{name}.png")

        page.refresh()
        picture("1_wire")
        rig.wire.link = WRONG
        page.refresh()
        picture("2_wrong_wire")
        page.choose(1)
        page.scale.message.say("the scale refused to set zero: empty the pan", refused=True)
        picture("3_scale")
        page.choose(2)
        while page.work.busy:
            QApplication.processEvents()
        picture("4_station")
        page.choose(3)
        lesson = page.learn
        lesson.play()
        picture("5_no_recording")
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
        picture("5_kept")
        lesson.taught.append(replace(lesson.taught[0], line=marked_line("q", "12"), value="13"))
        lesson.propose()
        picture("6_refused")
        lesson.taught.pop()
        rig.lesson.send(*(marked_line("q", str(n)) for n in (12, 12, 12)), b"?!\r\n", b"q=")
        lesson.taught.append(replace(lesson.taught[0], line=marked_line("q", "12"), value="12"))
        lesson.propose()
        picture("6_proposed")
        page.choose(4)
        page.swap.check()
        rig.rest("0")
        rig.rest("6")
        picture("7_swap")
        rig.rest("260")
        rig.rest("3000")
        page.swap.people.touched.emit("M01")
        page.swap.sign_button.held.emit()
        picture("7_no_number")
        page.swap.serial.setText("1002")
        page.swap.verified.setText("2026-03-31")
        page.swap.sign_button.held.emit()
        rig.answer()
        picture("8_in_use")
        page.stop()
        page.close()


def quality(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    for wide, tall in sizes:
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


def alarms(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    for theme, palette in PALETTES.items():
        for wide, tall in sizes:
            source = AlarmSourceStub(MISMATCH, PRINTER, MEAN, ROLL)
            page = AlarmsPage(Bridge(), FakeIntents(), source, lots_states.PEOPLE, UTC, palette)
            page.resize(wide, tall)
            page.show()
            page.choose(PRINTER.uid)
            shoot(page, folder / f"alarms_{wide}_{theme}.png")
            page.close()


def training(folder: Path, shoot: Shoot, sizes: Sizes = SIZES) -> None:
    states = every_state()
    for theme, palette in PALETTES.items():
        for wide, tall in sizes:
            bridge = Bridge()
            whole = StationWindow(bridge, FakeIntents(), make_offer(), palette, language=spoken())
            set_up_training(whole, bridge, palette, tiles=True)
            whole.resize(wide, tall)
            whole.show()
            for name in ("short_t1", "short_far", "over_near", "bag_on"):
                bridge.followed.emit(states[name])
                shoot(whole, folder / f"training_{wide}_{theme}_{name}.png")
            whole.close()
