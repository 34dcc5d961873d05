"""The counter where JSON requests are answered, the same for phone, server and command line.

A request is ``{"ask": NAME, ...}``; the answer is ``{"answer": ...}`` or
``{"faults": [{code, text, field, value, allowed}, ...]}``, never a traceback.

=================  ======================================================  ===========================================
ask                with                                                    answer
=================  ======================================================  ===========================================
about                                                                      ``{engine_version, tables: [TableStamp]}``
check              ``kind``, ``body`` of a record                          ``{}``
read_table         ``text`` of a file, TOML or JSON                        ``DoseTable``
propose            ``case``                                                ``Proposal``
draft_plan         ``case``, ``option``, ids and digests, ``note``         ``Plan``
compare_drawing    ``option``, ``drawn``                                   ``Comparison``
sign               ``plan``, ``plan_id``, ``drawn``, ``acknowledged``,     ``Signature``
                   ``signer_name``, ``signed_at``
card               ``patient``, ``plan``, ``signature``, ``patient_now``,  ``Card``
                   ``other_entries``, ``set_up``, ``practice``
card_pdf           the same, ``card_key``                                  ``{pdf: base64}``
card_code          the same                                                ``{code}``
read_card_code     ``text``, ``card_keys``                                 ``{card, plan_id, plan_digest, patient_id}``
follow_check       a ``Round`` without its ``plan_digest``                 ``Progress``
close_check        ``round``, ``signature_id``, ``after``, ``closed_at``   ``TheatreCheck``
draft_operation    ``plan``, ``signature``, ``signature_id``,              ``OperationDraft``
                   ``operated_on``, ``surgeon_name``
review_operation   ``plan``, ``signature``, ``operation``                  ``Review``
operation_note     ``patient``, ``plan``, ``signature``, ``operation``,    ``OperationNote``
                   ``adjustment`` or null, ``others``
operation_note_pdf  the same                                               ``{pdf: base64}``
review_adjustment  ``operation``, ``adjustment``                           ``AdjustmentReview``
previous_operations  ``operations`` as done, ``adjustments``               ``[EarlierMuscle]``
set_up             ``patient``, ``plan``, ``signature``, ``on``,           ``SetUpSheet``
                   ``wishes``, ``overrides``, ``practice``
practice_form      ``practice``                                            ``PracticeForm``
day_list           ``list``, ``held`` for each entry, ``practice``         ``DayList``
packing            ``days`` with their needs, ``practice``                 ``Packing``
set_up_pdf, ...    the same, also ``day_list_pdf`` and ``packing_pdf``     ``{pdf: base64}``
outcomes           ``operations: [{id, care}]``, ``notebooks``,            ``[Outcome]``
                   ``window``
notebook_template                                                          ``{text, columns}``
read_notebook      ``text`` of a file, ``title``, ``surgeon_name``,        ``NotebookReading``
                   ``held`` notebooks
fhir_export        ``records``, ``cards``, ``export_id``, ``exported_at``  a FHIR Bundle
fhir_import        ``bundle``, ``bringer``                                 ``Taking``
results            ``results``, ``by``, visits, what is expected           ``[GroupReport]``
audit              the same, ``own``, ``only``, ``clinic``, ``untold``     ``Audit``
audit_pdf          the same, ``on``                                        ``{pdf: base64}``
audit_export       ``cases: [{result, person, born_on}]``,                 ``Exported``
                   ``shifts_days`` by person, visits that count
calibrate          ``family``, ``cases``, ``window``                      ``Calibration``
counselling        ``plan``                                                ``CounsellingPage``
suggest            ``case``, ``families: [{family, cases}]``, ``window``     ``OwnColumn``
course             ``plan``, ``operation``, ``adjustment``,             ``Course``
                   ``attended``: follow-ups with examinations, ``today``
visits_due         ``today``, ``operations`` each with ``follow_ups``,     ``Attendance``
                   ``usual`` visits where they are the clinic's own
visits_watched     ``operations: [{id, care}]``                            ``[Watched]``
draft_follow_up    ``operated_on``, ``seen_on``, ``follow_ups``, ``usual``  ``VisitDraft``
review_follow_up   ``care`` and the ``visit`` with its examination         ``VisitReview``
self_test                                                                  ``{cases: n}``
=================  ======================================================  ===========================================

Each is a module of its own in :mod:`planner.desk.asks`.
Digests are made from the JSON as it came, for a record's body may leave out what has a default.
"""

from __future__ import annotations

import json

from planner.codec import parse, write
from planner.codec.faults import shorten
from planner.desk.asks import ASKS
from planner.desk.fields import Fields
from planner.errors import Fault, Refused

__all__ = ["ASKS", "answer"]


def answer(request: str) -> str:
    """The JSON answer to a JSON request."""
    try:
        name, fields = _read_request(request)
        said: Fields = {"answer": ASKS[name](fields)}
    except Refused as refusal:
        said = {"faults": [write(fault) for fault in refusal.faults]}
    return json.dumps(said, ensure_ascii=False, separators=(",", ":"))


def _read_request(request: str) -> tuple[str, Fields]:
    fields = parse(request)
    if not isinstance(fields, dict):
        raise Refused(Fault(code="wrong_type", text="A request is an object.", allowed='{"ask": ...}'))
    name = fields.pop("ask", None)
    if not isinstance(name, str) or name not in ASKS:
        allowed = ", ".join(ASKS)
        raise Refused(
            Fault(
                code="unknown_ask", text="There is no such question.", field="ask", value=shorten(name), allowed=allowed
            )
        )
    return name, fields
