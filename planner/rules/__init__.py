"""What must be said or refused: one module per family of safety rules."""
