"""What an evidence pack says is open agrees with what QA is asked to settle."""

import csv

from station.core.dispositions import Decided, Disposition, disposition_fact
from station.reports.evidence import evidence_of_run, rejects_undecided
from station.reports.evidence_sheets import evidence_files
from station.software_id import software_id
from station.store.ledger import ledger
from tests.station.line.lot_rig import DAY, LotLine


def test_a_bag_that_stands_for_another_is_undecided_when_it_is_set_aside_itself(tmp_path):
    line = LotLine(tmp_path / "home")
    run = line.start("ROM-1", "CAR-7")
    topped, new = line.bag_aside(), line.bag_aside()
    line.bag()
    decided = Decided(topped, Disposition.TOP_UP, "burst seal", into=new)
    assert line.enter(disposition_fact(decided, "d1", run.id)).recorded
    line.end()
    line.close()
    found = evidence_of_run(line.home, run.id, software_id())
    assert [row.serial for row in ledger(line.home, DAY) if row.open] == [new]
    assert rejects_undecided(found.runs[0]) == (new,)
    rows = csv.DictReader(evidence_files(found, b"")["rejects.csv"].decode().splitlines())
    assert {row["serial"]: row["disposition_missing"] for row in rows} == {topped: "no", new: "yes"}
