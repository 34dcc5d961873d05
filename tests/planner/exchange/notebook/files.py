"""Files of old cases, made from the template's one row."""

import csv
import io

from planner.exchange.notebook import NotebookReading, read_notebook, template

SURGEON = "Dr Orsolya Brandt"
NAMES, EXAMPLE = list(csv.reader(io.StringIO(template())))


def row(**cells):
    return dict(zip(NAMES, EXAMPLE, strict=True)) | {"reference": "17-2025"} | cells


def file_of(*rows, delimiter=","):
    text = io.StringIO()
    lines = csv.DictWriter(text, NAMES, delimiter=delimiter)
    lines.writeheader()
    lines.writerows(rows)
    return text.getvalue()


def dry_run(*rows, held=(), delimiter=",") -> NotebookReading:
    return read_notebook(file_of(*rows, delimiter=delimiter), title="cases.csv", surgeon_name=SURGEON, held=held)
