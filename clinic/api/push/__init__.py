"""Records on their way in: ``POST /api/v1/clinics/{clinic}/push``."""
