"""A device that runs wild is told to wait; no other one notices."""

from hypothesis import given
from hypothesis import strategies as st

from clinic.api.pace import MOST_KNOWN, Buckets


def test_a_wild_device_waits_and_others_do_not(cast, settings):
    settings.SYNC_PER_MINUTE = 3
    statuses = [cast.surgeon.pull().status_code for _ in range(4)]
    response = cast.surgeon.pull()

    assert statuses == [200, 200, 200, 429]
    assert response.json()["errors"][0]["code"] == "throttled"
    assert 1 <= int(response.headers["Retry-After"]) <= 21
    assert cast.surgeon.push().status_code == 200
    assert cast.orthoptist.pull().status_code == 200


def test_whoever_waits_as_told_may_go_on():
    buckets = Buckets()
    for _ in range(6):
        buckets.wait_s("a", per_minute=6, now_s=0)
    wait = buckets.wait_s("a", per_minute=6, now_s=0)

    assert wait == 10
    assert buckets.wait_s("a", per_minute=6, now_s=wait + 0.001) == 0


@given(st.lists(st.floats(0, 5), min_size=1, max_size=200), st.integers(1, 60))
def test_no_minute_sees_more_than_twice_the_rate(gaps, per_minute):
    """A full bucket and its refill: at most twice the rate in any minute."""
    buckets, now, let_through = Buckets(), 0.0, []
    for gap in gaps:
        now += gap
        if buckets.wait_s("a", per_minute=per_minute, now_s=now) == 0:
            let_through.append(now)

    for start in let_through:
        assert sum(start <= at <= start + 60 for at in let_through) <= 2 * per_minute + 1


def test_memory_is_bounded():
    buckets = Buckets()
    for number in range(MOST_KNOWN + 50):
        buckets.wait_s(str(number), per_minute=6, now_s=0)

    assert len(buckets._left) == MOST_KNOWN  # noqa: SLF001 - what is promised is about it
