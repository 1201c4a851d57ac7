"""What the pages SHIPPING and TRACE say."""

from __future__ import annotations

GATHER = (
    *("CASE", "PALLET", "SHIP", "HOUSE", "NEXT CASE", "START OVER", "FILL CASE", "CLOSE PALLET"),
    *("scan the bags", "scan the cases", "scan pallets and cases", "paper: delivery note 12"),
    *("gross weight", "Scan the cases of the pallet", "Scan the pallets and cases that leave"),
    "Scan the bags, type first..last, or touch NEXT CASE",
    "{number} of {whole} bags",
    "{number} bags",
    "{begin_code} to {end_code}",
    "{count} case",
    "{count} cases",
    "{count} unit",
    "{count} units",
    "{count} BAGS HELD OR OUT",
    "LABEL {state}",
    "Case {sscc} is filled; its label comes.",
    "Pallet {sscc} is closed; its label comes.",
    "Shipment {number} is on record.",
    "A copy of {sscc} comes.",
    "{sscc} is undone.",
)

REFUSED = (
    "the station fills no cases: customers.toml is missing",
    "bag {serial} was scanned already",
    "{what} was scanned already",
    "{sscc} is on pallet {pallet}",
    "{sscc} is gone with {shipment}",
    "{sscc} is undone",
    *("{count} bags held or out", "QA decides"),
    "no labelled bag of the last run is loose",
    "scan the bags of the case first",
    "scan the cases of the pallet first",
    "scan the pallets and cases that leave",
    "whom does it go to? Choose a customer",
    "{sscc} had its use-by date on {day}: it must not leave",
    "{sscc} is a pallet: a pallet holds cases",
    "bag {serial} is of blend lot {lot}, the case of {other}: close this case and begin another",
    "{text} is no serial of a bag, such as A1-7K-000042",
    "{last} comes before {first}: give the first serial first",
    "case {code}",
    "pallet {code}",
)

HOUSE = (
    *("UNDO", "CAME BACK", "PRINT AGAIN", "a numbered copy", "scan a case or pallet", "Shipments"),
    "No case stands here",
    "{count} cases and pallets stand here",
    *("case opened", "pallet broken up", "shipment withdrawn", "shipment came back"),
)

TRACE = (
    "bag, case, pallet or lot",
    *("INPUT LOTS", "BLENDS", "RUNS", "BAGS", "CASES", "PALLETS", "CUSTOMERS"),
    *("in no case", "in the house", "no bag", "1 bag", "this bag in it"),
    "with {customer}",
    "one of {count} bags",
    "{count} with customers",
    "received {day}",
    "use by {day}",
    "packed {day}",
    "line {code}",
    "lead {code}",
    "from {code}",
    "{count} held or set aside",
    "and {count} more",
    "Written: {file}",
)

SENTENCES = (*GATHER, *REFUSED, *HOUSE, *TRACE)
