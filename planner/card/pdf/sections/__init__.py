"""The parts of the page, top to bottom, one module each: a function of the card and a scale that answers a block."""
