"""Stands in for Pillow on the phone: ReportLab imports it on the way in, and our pages hold no raster pictures."""
