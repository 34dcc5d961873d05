"""The demo: an invented clinic on this machine, from an empty folder to a running server with one command.

    scenario.py    the invented clinic in ``fixtures/demo/``
    loading.py     puts it into the database, once
    database.py    brings the database up, or says why it cannot be used
    serving.py     the server, on this machine's own address only

``uv run manage.py demo`` builds first (:mod:`clinic.build`). Every step can be broken off and repeated. What stands in
the way and cannot be repaired here is told as an :class:`clinic.demo.obstacle.Obstacle`: what is wrong, and what to do.
"""
