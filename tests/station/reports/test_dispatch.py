"""From lot to customer and back: recall, EPCIS and the sheets after cases, pallets, shipments."""

import csv
import io
import json
from datetime import UTC, datetime
from decimal import Decimal
from pathlib import Path

import jsonschema
import pypdfium2 as pdfium
import pytest

from station.core.balance import Water
from station.core.pack import LabelState
from station.core.shipping import Undoing
from station.reports.epcis import epcis_document
from station.reports.recall import Scope, recall
from station.reports.recall_back import look_back, place_words
from station.reports.recall_csv import recall_csv
from station.reports.recall_pdf import recall_pdf
from station.reports.recall_words import answer
from station.reports.traceability import of_day, of_lot
from station.reports.traceability_sheet import plain_text, sheets
from tests.station.reports.test_exports import FOLDERS, SCHEMA
from tests.station.store.conftest import DAY, World
from tests.station.store.dock import MARSHGATE, Dock

NOW = datetime(2026, 3, 4, 18, tzinfo=UTC)
GLN = "9521234000006"  # GS1's example prefix 952; check digit by GenSpecs 7.9.1
PLACE = "Hollow Ash Salads, Weir Lane 2"


class Packed:
    """Ten bags: three on a pallet that left, two in a case here, two loose, three rejects.

    A first shipment of the pallet was entered wrongly and withdrawn; one case was opened again.
    """

    def __init__(self, home):
        self.world = World(home)
        with self.world.stocked() as store:
            dock = self.dock = Dock(self.world, store)
            dock.store.end_run(dock.run.id, self.world.clock.now(), "p.marsh")
            self.good = dock.good
            self.first = dock.labelled(1, dock.good[:3])
            self.pallet = dock.pallet(2, self.first)
            uid = dock.ship("S-1", self.pallet.sscc, reference="=1+2 note")
            dock.undo("S-1", Undoing.WITHDRAWN, uid)
            dock.ship("S-2", self.pallet.sscc, reference="delivery note 12")
            self.opened = dock.labelled(3, dock.good[3:4])
            dock.undo(self.opened.sscc, Undoing.OPENED, dock.unit(self.opened).uid)
            self.second = dock.labelled(4, dock.good[3:5])
        self.home = home

    def ask(self, scope, asked):
        return recall([self.home], scope, asked, NOW)


@pytest.fixture(scope="module")
def packed(tmp_path_factory):
    return Packed(tmp_path_factory.mktemp("dispatch") / "home")


def test_bags_that_left_are_free_in_no_row_of_a_recall(packed):
    """The column adds up to what the heading says may still leave: two cased, two loose."""
    found = packed.ask(Scope.LOT, "LF-101")
    assert (found.where.gone.bags, found.where.free) == (3, 4)
    assert "4 of them are free to leave" in answer(found)
    for groups in ([one.group for one in found.blends], found.by_day.values(), (found.total,)):
        assert sum(one.free for one in groups) == 4


@pytest.mark.parametrize(("scope", "asked"), [(Scope.LOT, "LF-101"), (Scope.DAY, str(DAY))])
def test_a_recall_says_how_much_went_to_whom_and_the_parts_make_up_the_whole(packed, scope, asked):
    found = packed.ask(scope, asked)
    (sent,) = found.where.sent
    assert (sent.shipment.number, sent.shipment.customer) == ("S-2", MARSHGATE)
    assert sent.cases == (packed.first.sscc,)
    assert (sent.part.bags, sent.part.kilograms) == (3, Decimal("0.7575"))
    where = found.where
    assert [part.bags for part in (where.cased, where.loose, where.out)] == [2, 2, 3]
    parts = (where.gone, where.cased, where.loose, where.out)
    assert sum(part.micrograms for part in parts) == found.total.micrograms
    assert sum(part.bags for part in parts) == found.total.bags == 10
    assert answer(found).endswith("are with 1 customer; 4 of them are free to leave")
    assert not found.done


def test_a_pallet_and_a_case_lead_back_to_their_lots(packed):
    for unit, bags in ((packed.pallet, packed.good[:3]), (packed.second, packed.good[3:5])):
        found = packed.ask(Scope.UNIT, unit.sscc)
        assert [pack.serial for one in found.stations for pack in one.packs] == bags
        assert {one.lot.code for one in found.lots} == {"LF-101", "CR-201"}
    assert found.where.cased.bags == 2


def test_a_bag_says_where_it_is(packed):
    words = [place_words(look_back(packed.home, serial).place) for serial in packed.good]
    gone = f"case {packed.first.sscc}, pallet {packed.pallet.sscc}, left 2026-03-04 with S-2 to"
    assert words[0] == f"{gone} {MARSHGATE.name}"
    assert words[3] == f"case {packed.second.sscc}, in the house"
    assert words[6] == "in no case"


def test_table_and_paper_say_the_same(packed):
    found = packed.ask(Scope.LOT, "LF-101")
    rows = list(csv.DictReader(io.StringIO(recall_csv(found).decode())))
    by_serial = {row["serial"]: row for row in rows}
    assert by_serial[packed.good[0]]["customer"] == MARSHGATE.name
    assert by_serial[packed.good[4]]["case"] == packed.second.sscc
    assert by_serial[packed.good[4]]["shipment"] == ""
    document = pdfium.PdfDocument(recall_pdf(found))
    text = " ".join(" ".join(page.get_textpage().get_text_range() for page in document).split())
    assert "With customers 3 bags, 0.7575 kg" in text
    assert "Marshgate Grocers" in text


# --- records for others -----------------------------------------------------------------------


@pytest.fixture(scope="module")
def found(packed):
    return of_day(packed.home, DAY, Water())


def test_shipping_rows_name_recipient_lot_and_paper_and_leave_out_what_was_withdrawn(found, packed):
    """21 CFR 1.1340(a): lot code, quantity and unit, description, recipient, place, date, paper."""
    shipping = sheets(found, PLACE)[2]
    (row,) = (dict(zip(shipping.head, row, strict=True)) for row in shipping.rows)
    assert row == {
        "traceability_lot_code": packed.first.blend_lot,
        "quantity": Decimal(3),
        "unit": "bag",
        "product_description": "Hollow Ash mix 250 g",
        "recipient": f"{MARSHGATE.name}, {MARSHGATE.place}",
        "ship_from_location": PLACE,
        "date_shipped": "2026-03-04",
        "lot_code_source": PLACE,
        "reference_document": "delivery note 12",
        "gtin": "09521234543213",
        "net_kg": Decimal("0.7575"),
        "shipment": "S-2",
        "recipient_location_number": MARSHGATE.gln,
    }


def test_plain_text_goes_one_step_forward(found, packed):
    lines = plain_text(found, PLACE).decode().split("\r\n")
    (shipped,) = [line.split("\t") for line in lines if line.startswith("shipped")]
    assert shipped[2] == packed.first.blend_lot
    assert shipped[3] == f"{MARSHGATE.name}, {MARSHGATE.place}"
    assert shipped[4:7] == ["2026-03-04", "3", "bag"]


def test_a_lot_alone_tells_the_same_of_what_left(found, packed):
    assert of_lot(packed.home, "LF-101", Water()).dispatch == found.dispatch


@pytest.fixture(scope="module")
def events(found):
    document = json.loads(epcis_document(found, GLN, NOW))
    return document["epcisBody"]["eventList"]


def test_cases_and_pallets_are_aggregations_and_an_opened_case_is_taken_apart(events, packed):
    made = [one for one in events if one["type"] == "AggregationEvent"]
    told = [(one["parentID"].rpartition("/")[2], one["action"], len(one["childEPCs"]))
            for one in made]  # fmt: skip
    assert told == [
        (packed.first.sscc, "ADD", 3),
        (packed.opened.sscc, "ADD", 1),
        (packed.opened.sscc, "DELETE", 0),
        (packed.second.sscc, "ADD", 2),
        (packed.pallet.sscc, "ADD", 1),
    ]
    gtin = packed.dock.run.product.gtin.zfill(14)
    assert made[0]["childEPCs"][0] == f"https://id.gs1.org/01/{gtin}/21/{packed.good[0]}"
    assert made[-1]["childEPCs"] == [f"https://id.gs1.org/00/{packed.first.sscc}"]


def test_a_withdrawn_shipment_is_declared_in_error_and_the_right_one_stands(events):
    wrong, right = [one for one in events if one.get("bizStep") == "shipping"]
    assert wrong["packhouse:shipment"] == "S-1"
    assert wrong["errorDeclaration"]["reason"] == "did_not_occur"
    assert "errorDeclaration" not in right
    assert right["destinationList"] == [
        {"type": "location", "destination": f"https://id.gs1.org/414/{MARSHGATE.gln}"}
    ]


def test_a_shipment_that_came_back_is_returned(tmp_path):
    world = World(tmp_path / "home")
    with world.stocked() as store:
        dock = Dock(world, store)
        case = dock.fill(1, dock.good[:3])
        dock.label(case.sscc, LabelState.SUBMITTED, LabelState.SPOOLED, LabelState.APPLIED)
        dock.undo("S-1", Undoing.CAME_BACK, dock.ship("S-1", case.sscc))
    whole = of_day(world.home, DAY, Water())
    document = json.loads(epcis_document(whole, GLN, NOW))
    moved = [one for one in document["epcisBody"]["eventList"] if "epcList" in one]
    assert [(one["bizStep"], one["disposition"]) for one in moved] == [
        ("shipping", "in_transit"),
        ("receiving", "returned"),
    ]
    assert sheets(whole, PLACE)[2].rows == ()
    _valid(document)


def test_all_of_it_is_valid_by_the_published_schema_with_formats_checked(found):
    _valid(json.loads(epcis_document(found, GLN, NOW)))


def _valid(document):
    schema = next((one / SCHEMA for one in FOLDERS if (one / SCHEMA).is_file()), None)
    if schema is None:
        pytest.xfail(f"{SCHEMA} is not here: name its folder in EPCIS_SCHEMAS")
    rules = json.loads(Path(schema).read_text(encoding="utf-8"))
    check = jsonschema.Draft7Validator(
        rules, format_checker=jsonschema.Draft7Validator.FORMAT_CHECKER
    )
    assert [f"{list(e.absolute_path)} {e.message}" for e in check.iter_errors(document)] == []
