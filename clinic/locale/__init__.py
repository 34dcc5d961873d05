"""The words of the app, the engine's counselling page and the server in other languages: one catalogue a language.

    fr/LC_MESSAGES/django.po   French
    ar/LC_MESSAGES/django.po   Arabic, which runs from right to left

The key of an entry is its English text. Every place that speaks writes it as a literal: ``say('...')``,
``sayCount('one', 'many', ...)`` and ``marked('...')`` in the app, ``says("...")`` in ``planner/counselling``,
``gettext("...")`` on the server. ``collecting`` finds them, ``manage.py catalogues`` adds the new ones empty and takes
the stale ones away, and tests/clinic/locale fails where an entry is missing, stale, empty or loses a placeholder.

``compiled`` makes of a catalogue what is read: gettext's own form for the server, and one small JSON file for the
phone, which the build puts into the release. ``middleware`` answers in the language that is asked for.

The header of a catalogue says whether a person has reviewed it: ``X-Reviewed-By`` and ``X-Reviewed-On``. While they are
empty the app says in both languages that the translation is machine-made.
"""
