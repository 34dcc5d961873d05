"""The theatre card as a PDF: ``GET /api/v1/clinics/{clinic}/cards/{signature}.pdf``."""
