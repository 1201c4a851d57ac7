"""Records for others: EPCIS against its published schema, spreadsheets without a formula."""

import csv
import io
import json
import os
import shutil
import subprocess
import zipfile
from datetime import UTC, date, datetime
from decimal import Decimal
from pathlib import Path

import jsonschema
import openpyxl
import pytest

from station.core.balance import Water
from station.core.dispositions import Decided, Disposition, disposition_fact
from station.core.facts import FactRecord
from station.core.ids import new_uid
from station.core.line_lots import LotMove, Move
from station.core.mass import Mass
from station.core.pack import Moment
from station.core.purging import Purge, PurgedRun, purge_fact
from station.core.receiving import Delivery, delivery_fact
from station.errors import BadInput
from station.line.events import SetAside
from station.reports.epcis import epcis_document
from station.reports.traceability import of_day, of_lot, of_run
from station.reports.traceability_sheet import csv_of, plain_text, sheets, xlsx
from station.store.purged import GoneRun
from station.store.queries import trace_pack
from tests.station.line.lot_rig import DAY, LotLine, lot

GLN = "9521234000006"  # GS1's example prefix 952; check digit by GenSpecs 7.9.1
MADE = datetime(2026, 11, 25, 18, tzinfo=UTC)
PLACE = "Quince Hollow Salads, Weir Lane 2, Quince Hollow"

SCHEMA = "epcis-json-schema-2.0.1.json"
"""Schema of EPCIS 2.0.1 ($id ref.gs1.org); a third party's, so it is not part of the project."""
FOLDERS = (
    Path(os.environ.get("EPCIS_SCHEMAS", ".")),
    *Path(__file__).parents[4].glob("*/reference/epcis"),
)


@pytest.fixture(scope="module")
def packed(tmp_path_factory):
    """One delivery that a spreadsheet would reckon with, a lot change, one bag taken out again."""
    line = LotLine(tmp_path_factory.mktemp("export") / "home")
    new = lot("ROM-9")
    delivery = Delivery(
        new, Mass.parse("412.50 kg"), reference="=1+2 note 4711", code_source="+Aldermoor"
    )
    line.store.record((delivery_fact(delivery, "01980000-0000-7000-8000-000000000001"),),
                      line.clock.now(), "P01")  # fmt: skip
    line.book._put(new)
    line.start("ROM-1", "CAR-7")
    line.bags(3)
    line.load("ROM-9", "100")
    line.empty("ROM-1")
    line.bags(4)
    line.bag()
    line.take(SetAside("seal"))
    run = line.run.id
    line.end()
    line.close()
    return line.home, run


@pytest.fixture(scope="module")
def found(packed):
    return of_day(packed[0], DAY, Water())


@pytest.fixture(scope="module")
def document(found):
    return json.loads(epcis_document(found, GLN, MADE), parse_float=Decimal)


def events(document, kind):
    return [one for one in document["epcisBody"]["eventList"] if one["type"] == kind]


def published():
    """What checks a document by the published schema, formats too."""
    schema = next((one / SCHEMA for one in FOLDERS if (one / SCHEMA).is_file()), None)
    if schema is None:
        pytest.xfail(f"{SCHEMA} is not here: name its folder in EPCIS_SCHEMAS")
    rules = json.loads(schema.read_text(encoding="utf-8"))
    return jsonschema.Draft7Validator(
        rules, format_checker=jsonschema.Draft7Validator.FORMAT_CHECKER
    )


def test_the_document_is_valid_by_the_published_schema_with_formats_checked(document, found):
    check = published()
    whole = json.loads(epcis_document(found, GLN, MADE))
    assert [f"{list(e.absolute_path)} {e.message}" for e in check.iter_errors(whole)] == []
    whole["epcisBody"]["eventList"][0]["eventTime"] = "2026-11-25T09:00:00"  # without its zone
    assert not check.is_valid(whole), "formats are checked"


def gone():
    """A purged run."""
    run = PurgedRun(
        uid="01980000-0000-7000-8000-000000000002",
        product="HA-250",
        name="Leaf 250 g",
        blend_lots=("L1-1", "L1-2"),
        inputs=("CAR-7", "ROM-1"),
        first_day=date(2020, 11, 25),
        last_day=date(2020, 11, 26),
        bags=70,
        serials=(("A1-AB", 1, 70),),
        entries=((7, 2, 281),),
        root="0" * 64,
        kinds="1" * 64,
    )
    purge = Purge("p1", MADE, 3, "out", "a" * 64, "the years are over", 1, 1, (run,))
    at = Moment(MADE, 0, "UTC", 0)
    return GoneRun(run, purge, FactRecord(purge_fact(purge), at, "M01", 9))


def test_purged_runs_stand_beside_the_events_in_a_namespace_of_ours(found):
    """As the schema's names of a document's properties allow it: its own, or a URI with a colon."""
    document = json.loads(epcis_document(found, GLN, MADE, (gone(),)))
    plain = json.loads(epcis_document(found, GLN, MADE))
    assert document["epcisBody"] == plain["epcisBody"]
    (told,) = document["packhouse:purgedRuns"]
    assert told == {
        "packhouse:run": "01980000-0000-7000-8000-000000000002",
        "packhouse:product": "HA-250",
        "packhouse:blendLots": ["L1-1", "L1-2"],
        "packhouse:inputLots": ["CAR-7", "ROM-1"],
        "packhouse:firstProductionDay": "2020-11-25",
        "packhouse:lastProductionDay": "2020-11-26",
        "packhouse:bags": 70,
        "packhouse:purged": "2026-11-25T18:00:00.000+00:00",
        "packhouse:keptYears": 3,
        "packhouse:export": "out",
        "packhouse:manifestSha256": "a" * 64,
    }
    assert document["@context"][1]["packhouse"] == f"https://id.gs1.org/414/{GLN}#"


def test_a_document_that_names_purged_runs_is_valid_by_the_published_schema(found):
    check = published()
    document = json.loads(epcis_document(found, GLN, MADE, (gone(),)))
    assert [f"{list(e.absolute_path)} {e.message}" for e in check.iter_errors(document)] == []
    document["purgedRuns"] = document.pop("packhouse:purgedRuns")
    assert not check.is_valid(document), "a name without a namespace is none of an extension"


def test_a_delivery_is_received_with_its_exact_kilograms(document):
    (event,) = events(document, "ObjectEvent")
    assert event["eventID"] == "urn:uuid:01980000-0000-7000-8000-000000000001"
    assert (event["bizStep"], event["action"]) == ("receiving", "OBSERVE")
    assert event["quantityList"] == [
        {
            "epcClass": f"https://id.gs1.org/414/{GLN}#lot/ROM-9",
            "quantity": Decimal("412.5"),
            "uom": "KGM",
        }
    ]


def test_each_set_of_lots_is_a_transformation_and_a_correction_declares_the_first_in_error(
    document,
):
    made = events(document, "TransformationEvent")
    lots = [
        [one["epcClass"].rpartition("/")[2] for one in each["inputQuantityList"]] for each in made
    ]
    assert lots[0] == ["CAR-7", "ROM-1"]
    assert lots[-1] == ["CAR-7", "ROM-9"]
    wrong, right = made[-2:]
    assert "errorDeclaration" not in right
    assert wrong["errorDeclaration"] == {
        "declarationTime": "2026-11-25T18:00:00.000+00:00",
        "reason": "incorrect_data",
        "correctiveEventIDs": [right["eventID"]],
    }
    counts = [each["outputQuantityList"][0]["quantity"] for each in made]
    assert counts[-2] == counts[-1] + 1
    assert all("action" not in each for each in made)


def test_the_same_bags_are_the_same_events(packed, document):
    again = json.loads(epcis_document(of_run(*packed, Water()), GLN, MADE))
    ids = [one["eventID"] for one in document["epcisBody"]["eventList"]]
    assert [one["eventID"] for one in again["epcisBody"]["eventList"]] == ids
    assert len(set(ids)) == len(ids)


def test_a_wrong_location_number_is_refused(found):
    with pytest.raises(BadInput, match="EPCIS"):
        epcis_document(found, "9521234000007", MADE)


def test_the_workbook_has_a_sheet_for_each_event_and_no_formula_cell(found):
    content = xlsx(sheets(found, PLACE), MADE)
    book = openpyxl.load_workbook(io.BytesIO(content))
    assert book.sheetnames == ["receiving", "transformation", "shipping"]
    cells = [cell for sheet in book for row in sheet.iter_rows() for cell in row]
    assert {cell.data_type for cell in cells} <= {"s", "n", "inlineStr"}
    values = {cell.value for cell in cells}
    assert "=1+2 note 4711" in values
    with zipfile.ZipFile(io.BytesIO(content)) as parts:
        pages = [parts.read(name).decode() for name in parts.namelist() if "worksheets" in name]
    assert not any("<f>" in page or "<f " in page for page in pages)
    receiving = list(book["receiving"].values)
    row = dict(zip(receiving[0], next(r for r in receiving if r[0] == "ROM-9"), strict=True))
    assert (row["quantity"], row["unit"], row["receiving_location"]) == (412.5, "kg", PLACE)
    assert xlsx(sheets(found, PLACE), MADE) == content


def test_csv_says_the_same_and_starts_no_formula(found):
    receiving, made, shipping = (
        list(csv.DictReader(io.StringIO(csv_of(one).decode()))) for one in sheets(found, PLACE)
    )
    (row,) = [one for one in receiving if one["traceability_lot_code"] == "ROM-9"]
    assert row["reference_document"] == "'=1+2 note 4711"
    assert row["lot_code_source"] == "'+Aldermoor"
    assert shipping == []
    bags = {one["new_lot_code"]: Decimal(one["quantity"]) for one in made}
    assert sum(bags.values()) == 7
    for one in made:
        least, likely, most = (
            Decimal(one[name]) for name in ("input_least", "input_quantity", "input_most")
        )
        assert least <= likely <= most


def test_a_spreadsheet_program_opens_every_file_and_reckons_nothing(found, tmp_path):
    """LibreOffice itself reads them and writes each cell as text; a formula would be named."""
    office = shutil.which("soffice")
    if office is None:
        pytest.xfail("LibreOffice is not here: install it to let it open the files")
    tables = sheets(found, PLACE)
    files = {"book.xlsx": xlsx(tables, MADE), "plain.txt.csv": plain_text(found, PLACE)}
    files |= {f"sheet{number}.csv": csv_of(one) for number, one in enumerate(tables)}
    for name, content in files.items():
        (tmp_path / name).write_bytes(content)
    profile = f"-env:UserInstallation={(tmp_path / 'profile').as_uri()}"
    subprocess.run(
        [office, profile, "--headless", "--convert-to", "fods", "--outdir", tmp_path / "read",
         *(tmp_path / name for name in files)],
        check=True, capture_output=True, timeout=240,
    )  # fmt: skip
    read = {one.stem: one.read_text(encoding="utf-8") for one in (tmp_path / "read").iterdir()}
    assert read.keys() == {Path(name).stem for name in files}
    assert not [name for name, text in read.items() if "table:formula=" in text]
    assert "=1+2 note 4711" in read["book"]


def test_plain_text_is_one_table_that_standard_software_reads(found):
    text = plain_text(found, PLACE).decode()
    rows = list(csv.DictReader(io.StringIO(text), delimiter="\t"))
    assert {row["record"] for row in rows} == {"received", "packed"}
    came = next(row for row in rows if row["lot_code"] == "ROM-9")
    packed = {row["lot_code"] for row in rows if row["record"] == "packed"}
    assert set(came["made_into_lot_code"].split()) <= packed


def test_bags_count_once_where_others_stand_for_them_or_their_content_went_back(tmp_path):
    """Whatever became of a bag, what was packed is told as what is in bags, and no gram twice."""
    line = LotLine(tmp_path / "home")
    line.start("ROM-1", "CAR-7")
    topped, sampled, given, reworked = (line.bag_aside() for _ in range(4))
    new = line.bags(3)[0]
    for serial, end, into in (
        (topped, Disposition.TOP_UP, new),
        (sampled, Disposition.SAMPLE, ""),
        (given, Disposition.DOWNGRADE, ""),
    ):
        decided = Decided(serial, end, "burst seal", into=into)
        made = disposition_fact(decided, new_uid(line.clock.now()), line.run.id)
        assert line.enter(made).recorded
    bag = trace_pack(line.home, reworked).record.draft
    back = LotMove(
        Move.REWORK,
        bag.blend_lot,
        quantity=bag.weighing.net,
        members=line.run.lot_set.uses,
        use_by=bag.use_by,
        packed_at=bag.judged_at.utc,
        serials=(reworked,),
    )
    assert line.move(back).recorded
    line.bag()
    run = line.run.id
    line.end()
    line.close()
    made = of_run(line.home, run, Water()).transformations
    assert sum(one.kept.bags for one in made) == 3 + 1 + 1  # good, what holds rework, given away
    used = sum(span.likely for one in made for _, span in one.inputs)
    assert used == (3 + 1 + 1 + 1) * 252  # and the sample; not the bag that was filled again


def test_a_lot_alone_tells_only_what_could_hold_it(packed):
    found = of_lot(packed[0], "ROM-1", Water())
    assert all(any(use.lot == "ROM-1" for use in one.blend.uses) for one in found.transformations)
    assert sum(one.kept.bags for one in found.transformations) == 3
