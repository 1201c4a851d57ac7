"""What the pages MANAGER and SERVICE say."""

from __future__ import annotations

MANAGER = (
    *("GIVEN AWAY", "LOSSES", "TIME", "PEOPLE", "SIGNS", "REASON TO REFUSE", "NEXT", "REFUSE"),
    *("KEEP CHART", "REPORT", "EVIDENCE", "GIVE UP", "YIELD OF LOTS", "STOPS", "EMPTY PAN"),
    *("BY PRODUCT", "BY HOUR", "BY POSITION", "BY DAY", "last 7 days", "all days", "NOBODY"),
    *("last day", "given away", "in money", "rate", "stood", "net", "held", "bags", "no price"),
    *("for every product", "nobody may ship them", "less the stops", "no rate yet"),
    *("minutes", "bag of the run", "empty pan", "time", "wipe", "stop"),
    "{mass} g a bag",
    "{number} % of nominal",
    "% of nominal",
    "% of the lot in bags",
    "100 % together",
    "{count} labels",
    "{count} stops",
    "{count} bags an hour",
    "No bag is on record yet.",
    *("Adding up …", "There is no chart to keep.", "Nothing waits for a signature."),
    "On record; it holds from the next run on.",
    "Written: {file} and {count} more in {folder}",
    "{number} of {whole}: {what}",
    *("not now", "figures do not convince", "customer's own limits"),
    "target of {product}",
    "product {product} version {version}, as it is set",
    *("gives away", "held up by", "use by", "holds from", "you approve", "without it"),
    "{count} bags of one run",
    "{count} days",
)

SERVICE = (
    *("LINE", "SCALE", "STATION", "TEACH", "SWAP", "HOLD STILL", "STOP RECORDING", "RECORD"),
    *("In the settings", "Plate in the settings", "Maker and model", "Serial number", "Its lines"),
    *("Commands of level 2", "not said", "In use", "Here", "none yet", "all reviewed"),
    "weights arrive and are used",
    *("the port is not open yet", "the port is open, no weight was read yet"),
    "{seconds} s: {frames} weights, {garbage} not understood ({percent} %, 5 % are allowed),"
    " {bytes} bytes",
    "a weight every {gap} ms",
    "Everything the scale sends goes into {file}",
    "The recording ended: {why}",
    "Recorded: {file}",
    "made by machine, not reviewed: {said}",
    *("LISTEN", "RECORDING", "TAKE LINE", "KEEP LINE", "PROPOSE", "SAVE", "START OVER", "NO MARKS"),
    *("name of the format", "digits it shows", "LOOK", "CHECK IT", "TAKE READING", "TAKE INTO USE"),
    *("serial number on its plate", "suits", "only just suits", "DOES NOT SUIT"),
    *("VALUE", "UNIT", "FLAG", "CHECK", "AT REST", "MOVING", "NET", "OVER", "value", "unit"),
    *("flag", "sign", "maintenance", "Station", "Disk", "ZERO", "asked by, as in W\\r\\n"),
    "verified, as in 2026-03-31",
    "bytes arrive but none is a frame: check baud rate and parity ({here})",
    "port {code}",
    "device {code}",
    "here: {line}",
    "verified {code}",
    "plate {code}",
    "{count} days ago",
    "Choose cells, then say what they are: VALUE and, where they are there, UNIT, FLAG, CHECK. Type"
    " the digits of the scale's display, its unit, and what else is true now.",
    "LISTEN to the scale, or open a RECORDING; put a known weight on the pan and TAKE a line.",
    "Take a line, mark its value and say the unit first.",
    "There is no recording: make one on the page WIRE.",
    "Choose the cells first: touch them, or use the arrow keys.",
    "The port is opened again. What the scale says of itself stands beside.",
    "A new scale: connect it, touch LOOK, then check it with the test weights.",
)

SENTENCES = (*MANAGER, *SERVICE)
