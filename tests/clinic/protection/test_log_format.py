"""A log line says what failed and where, and quotes nobody."""

import json
import logging
import sys

from clinic.protection.log_format import AsJson, WithoutData


def formatted(raise_it):
    try:
        raise_it()
    except (ValueError, KeyError):
        record = logging.LogRecord("clinic", logging.ERROR, __file__, 1, "it failed", (), sys.exc_info())
    return WithoutData().format(record)


def failing():
    raise ValueError("Failing row contains (Ines Ferreira, 2019-04-02)")


def chained():
    try:
        failing()
    except ValueError as error:
        raise KeyError("H-1042") from error


def test_an_exception_is_written_as_type_and_places():
    line = formatted(failing)

    assert "ERROR clinic it failed" in line
    assert "ValueError at " in line
    assert "in failing" in line


def test_no_exceptions_words_are_written_nor_those_of_its_cause():
    for raise_it in (failing, chained):
        line = formatted(raise_it)
        assert "Ferreira" not in line
        assert "H-1042" not in line


def test_a_json_line_has_the_same_facts_and_quotes_nobody_either():
    try:
        failing()
    except ValueError:
        record = logging.LogRecord("clinic", logging.ERROR, __file__, 1, "it %s", ("failed",), sys.exc_info())
    line = AsJson().format(record)
    facts = json.loads(line)

    assert "\n" not in line
    assert (facts["level"], facts["logger"], facts["message"]) == ("ERROR", "clinic", "it failed")
    assert facts["exception"].startswith("ValueError at ")
    assert "Ferreira" not in line
