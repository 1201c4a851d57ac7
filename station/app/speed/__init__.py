"""Speed as a ratio to a bare floor, both measured side by side in one run."""
