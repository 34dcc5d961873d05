"""What the readings say: one module per finding."""
