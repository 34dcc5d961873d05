"""Stands in for the package that would import every kind of bar code; the phone needs the QR encoder alone."""
