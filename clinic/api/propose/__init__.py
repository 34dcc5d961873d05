"""What the engine says about a case: ``POST /api/v1/propose``. Nothing is stored."""
