"""Every string of the corpus as a text of the settings: kept as it stands, or refused in words."""

import json
import unicodedata

from station.config.load import load
from station.errors import BadInput
from tests.labels.corpus import CORPUS
from tests.station.config.conftest import TODAY


def test_texts_of_the_label_are_kept_whole_or_refused(folder):
    station, products = folder / "station.toml", folder / "products.toml"
    plain = station.read_text(encoding="utf-8"), products.read_text(encoding="utf-8")
    kept = 0
    for text in CORPUS:
        quoted = json.dumps(text, ensure_ascii=False).replace("\x7f", "\\u007f")
        origin = plain[1].replace('code = "SLAW-340"\n', f'code = "SLAW-340"\norigin = {quoted}\n')
        named = origin.replace('name = "Crunchy slaw mix"', f"name = {quoted}")
        products.write_bytes(named.encode("utf-8", "surrogatepass"))
        packer = plain[0].replace(
            'packer = "Packed by Ostermoor Leaf Room, Tidegate Lane 4, Quillhaven"',
            f"packer = {quoted}",
        )
        station.write_bytes(packer.encode("utf-8", "surrogatepass"))
        try:
            product = load(folder, TODAY).products["SLAW-340"]
        except BadInput as refused:
            said = str(refused)
            assert all(line.isprintable() for line in said.splitlines())
            assert len(said) < 5000
            continue
        normal = unicodedata.normalize("NFC", text)
        assert (product.name, product.label.origin, product.label.packer) == (normal,) * 3
        kept += 1
    assert kept > 100
