"""Legal-metrology rules: limits of a pack, verdicts of a batch, forecasts, checks of the scale."""
