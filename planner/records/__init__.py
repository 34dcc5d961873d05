"""What people enter: the bodies of records, and the case that the engine plans from."""
