"""What holds for every finding of every examination that a clinic could make."""

from hypothesis import HealthCheck, given, settings

from planner.findings import find, target
from planner.measurement import measure
from planner.values.statement import Strength
from tests.planner.strategies import cases

MANY = settings(suppress_health_check=[HealthCheck.too_slow])


def findings_of(case):
    measurements = measure(case.examination)
    return find(measurements, target(measurements, case.aim)).statements


@MANY
@given(cases())
def test_every_finding_is_a_sentence_with_its_source(case):
    for finding in findings_of(case):
        assert finding.text.endswith(".")
        assert finding.text[0] == finding.text[0].upper()
        assert "δ" not in finding.text
        assert "  " not in finding.text
        assert len(finding.provenance.source) > len("measured")


@MANY
@given(cases())
def test_what_cannot_be_told_says_what_would_settle_it(case):
    for finding in findings_of(case):
        if finding.strength is Strength.CANNOT_TELL and "not valid" not in finding.text:
            assert finding.settle.endswith(".")


@MANY
@given(cases())
def test_every_figure_that_counts_says_how_it_was_read(case):
    measurements = measure(case.examination)
    for figure in (*measurements.horizontals.values(), *measurements.verticals.values()):
        assert figure.steps or figure.value_pd == figure.raw_pd
        assert (figure.agreement is None) == (figure.repeats == 1)
        assert figure.limits.half_width_pd > 0
        assert figure.reading in case.examination.readings
