"""What the page NUMBERS says, on its plate, beside its figures and under its charts."""

from __future__ import annotations

FIGURES = (
    *("NO FORECAST", "no run yet", "SAFE", "THIN", "FAILING", "TARGET", "WEIGHTS", "SPREAD"),
    *("THIS HOUR", "WHOLE RUN", "Mean so far", "Mean needed", "Given away", "Below T1", "Target"),
    *("ASKED", "Same product?", "no good bag yet", "no proposal worked out yet"),
    "this hour: {count} of about {all} bags",
    "whole run: {count} of about {all} bags",
    "this hour: all {count} bags",
    "whole run: all {count} bags",
    "nominal {mass}",
    "no bag is expected any more",
    "on the {count} bags to come",
    "on the {count} bags to come, any above the floor will do",
    "net below {mass}",
    "net below {mass}; {count} below T2",
    "{number} of {whole} allowed",
    "{mass} a bag",
    "{mass} this run",
    "{mass} this run, {money} in money",
    "{mass} now",
    "{mass} proposed",
    "{what} was {usual}, now {seen}: is this still the same product?",
    "net fill",
    "No target can be proposed: {why}.",
    "{count} fills are too few for a proposal: weigh {least} or more",
    "no target meets every clause: the fills scatter too much",
    "Target {target} instead of {now}, held up by {what}: {then} given away a bag instead of"
    " {old}.",
    "This run stays as it is.",
    "A manager approves a proposal as a new version of the product.",
    *("mean of the whole batch", "T1 packs of the whole batch", "mean in the official sample"),
    *("T1 packs in the official sample", "T2 packs in the long run"),
    *("T2 packs in the official sample", "the floor"),
    "a forecast needs at least two packs",
    "{count} packs are weighed already, more than the {lot} expected",
    "the plan takes {count} packs, the batch will have only {lot}",
)

CHARTS = (
    "The line is the lowest mean that holds for a spread. Touch it to read it.",
    "Solid: mean so far, dotted: its limits. Dashed: mean of about 40 bags. Touch a bag.",
    "How many bags have which net. Touch a bar to read it.",
    *("spread of the fills", "mean net", "nominal", "knee", "target", "upper", "bags"),
    "target {mass} now",
    "target {mass} proposed",
    "spread {spread}: a mean of {mean} or more, by the {what} rule",
    "{name}: mean {mean}, spread {spread}",
    "{time}: {mass}; mean so far {mean}",
    "{mean} OUTSIDE {least} to {most}",
    "{mean} within {least} to {most}",
    "weighted average {mean}",
    "{mass}: {count} bags, {percent} %",
)

WORK = (
    *("Given up.", "There is nothing to keep yet.", "Working a target out from the bags …"),
    "Working a target out from the bags: {count} tried …",
    "The proposal is on record. A manager approves it, as a new version.",
    "Kept as {name} (PNG, SVG, CSV) in {folder}",
    "Not kept: {why}, {folder}",
)

SENTENCES = (*FIGURES, *CHARTS, *WORK)
