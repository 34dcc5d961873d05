"""The places at which a request can kill its server (:mod:`tests.fault.site.doom`), in the order of its work."""

PUSHING = ("reading", "locked", "inserted", "committed", "answered")
"""The whole body is there; the feed is locked; rows are in, uncommitted; committed; the answer is made, not sent."""

PULLING = ("reading", "read", "answered")
