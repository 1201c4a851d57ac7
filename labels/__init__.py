"""What is on a label and how it is drawn. Stands alone."""
