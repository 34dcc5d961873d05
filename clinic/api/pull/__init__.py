"""Records on their way out: ``GET /api/v1/clinics/{clinic}/pull``."""
