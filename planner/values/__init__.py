"""What the engine answers: statements, options, the proposal and the card, all frozen."""
