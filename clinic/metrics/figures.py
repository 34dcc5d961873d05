"""What is counted."""

from prometheus_client import CollectorRegistry, Counter, Histogram

REGISTRY = CollectorRegistry()
CALLS = Counter("clinic_calls", "Calls answered", ["method", "route", "status"], registry=REGISTRY)
SECONDS = Histogram(
    "clinic_call_seconds",
    "Time until the answer was ready",
    ["method", "route"],
    buckets=(0.005, 0.02, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 10),
    registry=REGISTRY,
)
