"""What checks of scale and tare leave in the record: facts and their meaning."""
