"""One step each; a step that was released is never edited."""
