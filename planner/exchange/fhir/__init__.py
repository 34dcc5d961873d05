"""Records as HL7 FHIR R4 resources in a Bundle, and back.

``names``      the addresses of our code system and extensions, and of the open code systems that are used
``concepts``   our own codes with their definitions, shipped as a CodeSystem resource
``ledger``     the records to export: what each says, what replaced it and what was taken back
``carrying``   the record itself inside its main resource, sealed by its digest
``resources``  one module per kind of record
``exporting``  records to a Bundle
``ours``       resources of ours back to the records that they carry
``others``     Patient and deviation Observations of others to records; ``foreign`` reads one of them
``importing``  a Bundle to records, with a ``row`` for each resource

Ids: the main resource of a record has the record's id; what is derived from it has that id and a suffix. Codes are
ICD-10 where the engine suggests them, UCUM for units, HL7's own for status and category; everything else has a code of
our own with its definition. A resource of ours that was changed by hand no longer agrees with the record that it
carries, and is refused.
"""

from planner.exchange.fhir.concepts import code_system
from planner.exchange.fhir.exporting import Exporting, bundle
from planner.exchange.fhir.importing import Taking, take
from planner.exchange.fhir.intake import Bringer
from planner.exchange.fhir.ledger import Ledger, ledger_of

__all__ = ["Bringer", "Exporting", "Ledger", "Taking", "bundle", "code_system", "ledger_of", "take"]
