"""``python -m planner < case.json``: the proposal for a case, as indented JSON on standard output.

    $ python -m planner < planner/examples/esotropia-40.json
    {
      "schema": 1,
      "engine_version": "1.0.0",
      ...

``--canonical`` prints the same as one line of canonical JSON (RFC 8785), to be compared byte by byte or digested.
A case that is refused, or is no JSON, gives ``{"faults": [...]}`` on standard error and exit status 2. The form of a
case is :class:`planner.records.case.Case`; ``planner/examples/`` holds cases to start from.
"""

from __future__ import annotations

import json
import sys

from planner.canonical import canonical
from planner.codec import parse, read, write
from planner.codec.text import MOST_CHARACTERS
from planner.errors import Fault, Refused
from planner.proposal import propose
from planner.records.case import Case

REFUSED = 2


def main(arguments: list[str]) -> int:
    """Answer the case on standard input; the exit status is 0 or 2."""
    try:
        in_one_line = _wants_canonical(arguments)
        proposal = write(propose(read(Case, parse(_text()))))
    except Refused as refusal:
        faults = [write(fault) for fault in refusal.faults]
        sys.stderr.write(json.dumps({"faults": faults}, ensure_ascii=False, indent=2) + "\n")
        return REFUSED
    sys.stdout.write((canonical(proposal) if in_one_line else _indented(proposal)) + "\n")
    return 0


def _wants_canonical(arguments: list[str]) -> bool:
    if arguments not in ([], ["--canonical"]):
        text = "The case is read from standard input; there is no such argument."
        value = " ".join(arguments)[:80]
        raise Refused(Fault(code="unknown_argument", text=text, value=value, allowed="nothing, or --canonical"))
    return bool(arguments)


def _text() -> str:
    try:
        return sys.stdin.buffer.read(4 * MOST_CHARACTERS + 1).decode("utf-8-sig")
    except UnicodeDecodeError:
        raise Refused(Fault(code="bad_json", text="The input is not UTF-8 text.", allowed="JSON text")) from None


def _indented(value: object) -> str:
    return json.dumps(value, ensure_ascii=False, indent=2)


if __name__ == "__main__":
    for stream in (sys.stdout, sys.stderr):
        stream.reconfigure(encoding="utf-8")  # type: ignore[union-attr]
    sys.exit(main(sys.argv[1:]))
