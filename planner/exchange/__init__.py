"""What comes in from elsewhere and goes out to it, as pure values: JSON and text in, JSON and text out.

``notebook`` a surgeon's old cases from a table of text (CSV), for the audit and the calibration
``fhir``     records as HL7 FHIR R4 resources, and back

Nothing is dropped in silence: what cannot be taken is told with its place.
"""
