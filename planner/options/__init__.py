"""What may be done: one module per family of operations."""
