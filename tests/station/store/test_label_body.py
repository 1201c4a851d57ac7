"""The label's part of a run's body."""

import json

from hypothesis import given
from hypothesis import strategies as st

from station.core.product_label import USUAL, ProductLabel, Wording
from station.store.label_body import label_body, label_of

texts = st.text(max_size=12)
wordings = st.builds(
    Wording, texts, texts, texts, st.lists(st.tuples(texts, texts), max_size=3).map(tuple)
)
labels = st.builds(
    ProductLabel, texts, texts, texts, st.none() | wordings, st.booleans(), texts, texts
)


@given(labels)
def test_choices_come_back_through_json(label):
    assert label_of(json.loads(json.dumps(label_body(label)))) == label


def test_a_run_of_the_first_shape_keeps_the_usual_choices():
    assert label_of(None) == USUAL
