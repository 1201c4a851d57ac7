"""What is told about packs: on paper and in files."""
