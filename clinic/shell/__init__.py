"""The app's shell: the page, the service worker, the manifest, and how the built files are served.

    release.py      the newest release, as the build left it
    views.py        ``/``, ``/sw.js`` and ``/manifest.webmanifest``: always asked for again, never stale
    files.py        WhiteNoise's rules for everything else: a release or an engine bundle never changes
    draw_icons.py   draws the files in ``static/icons/``

A file that is not there is an honest 404: no other file ever stands in for it.
"""
