"""Every catalogue says everything that is spoken, with its figures and its sides, and nothing that is not."""

import gettext
import json
import re
from pathlib import Path

import polib
import pytest
from django.conf import settings
from django.utils.translation import get_language_info

from clinic.locale.collecting import NotALiteral, collect
from clinic.locale.compiled import CatalogueWrong, catalogue_files, for_the_phone, plural_digits
from clinic.locale.keeping import bring_up

PROJECT = Path(settings.BASE_DIR)
FILES = catalogue_files(PROJECT)
CATALOGUES = {language: polib.pofile(str(path)) for language, path in FILES.items()}
ALL = pytest.mark.parametrize("language", sorted(FILES))

SIDES = {
    # the patient's right, the patient's left; written by hand, to be compared by somebody who reads the language
    "fr": ("œil DROIT", "œil GAUCHE"),
    "ar": ("العين اليمنى", "العين اليسرى"),
}
SIDE_WORDS = {"fr": ("DROIT", "GAUCHE"), "ar": ("يمن", "يسر")}
"""What no other translation may contain; a straight eye is ``droit`` in French, in small letters."""


def entries(language):
    return list(CATALOGUES[language])


def forms(entry):
    return list(entry.msgstr_plural.values()) or [entry.msgstr]


def named(text):
    return set(re.findall(r"\{(\w+)\}", text))


def figures(text):
    """Whole numbers, however thousands are parted."""
    return sorted(re.findall(r"\d+", re.sub(r"(?<=\d)[,\u202f\u00a0 ](?=\d{3})", "", text)))


@ALL
def test_what_is_spoken_has_an_entry_and_no_entry_is_stale(language):
    spoken = {(each.text, each.many) for each in collect(PROJECT)}

    assert len(spoken) > 300
    assert {(entry.msgid, entry.msgid_plural) for entry in entries(language)} == spoken


@ALL
def test_every_entry_is_translated_in_every_form_that_the_language_has(language):
    count = int(re.search(r"nplurals=(\d)", CATALOGUES[language].metadata["Plural-Forms"])[1])

    for entry in entries(language):
        assert all(form.strip() for form in forms(entry)), entry.msgid
        assert not entry.fuzzy
        assert len(forms(entry)) == (count if entry.msgid_plural else 1), entry.msgid


@ALL
def test_placeholders_and_figures_are_those_of_the_english_text(language):
    for entry in entries(language):
        for form in forms(entry):
            assert named(form) == named(entry.msgid), entry.msgid
            if not entry.msgid_plural:
                assert figures(form) == figures(entry.msgid), entry.msgid


@ALL
def test_the_sides_are_those_of_the_table_and_stand_nowhere_else(language):
    found = {entry.msgid: entry.msgstr for entry in entries(language)}
    right, left = SIDES[language]

    assert (found["RIGHT eye"], found["LEFT eye"]) == (right, left)
    others = [entry for entry in entries(language) if entry.msgid not in {"RIGHT eye", "LEFT eye"}]
    for word in SIDE_WORDS[language]:
        assert [entry.msgid for entry in others if any(word in form for form in forms(entry))] == []


@ALL
def test_two_texts_of_the_plan_are_never_translated_alike(language):
    """A resection that reads like a recession would be another operation."""
    plan = [entry for entry in entries(language) if ("planner/counselling/muscles.py", "") in entry.occurrences]

    assert len(plan) > 15
    assert len({entry.msgstr for entry in plan}) == len(plan)


@ALL
def test_a_catalogue_counts_as_machine_made_until_a_person_and_a_day_stand_in_it(language, tmp_path):
    def told(**reviewed):
        catalogue = polib.pofile(str(FILES[language]))
        catalogue.metadata.update({f"X-Reviewed-{name.title()}": value for name, value in reviewed.items()})
        path = tmp_path / "django.po"
        catalogue.save(str(path))
        return json.loads(for_the_phone(path))["reviewed"]

    assert told(by="", on="") is None
    assert told(by="Somebody", on="") is None
    assert told(by="Somebody", on="2026-12-01") == {"by": "Somebody", "on": "2026-12-01"}


@ALL
def test_the_phones_file_says_the_same_with_gettexts_own_plural_forms(language):
    phone = json.loads(for_the_phone(FILES[language]))
    expression = CATALOGUES[language].metadata["Plural-Forms"].partition("plural=")[2].rstrip(";")
    form = gettext.c2py(expression)

    assert len(phone["texts"]) == len(entries(language))
    assert phone["direction"] == ("rtl" if get_language_info(language)["bidi"] else "ltr")
    for number in (*range(400), 1000, 1001, 1002, 1003, 1011, 123456):
        digit = phone["plural"][number if number < 200 else 100 + number % 100]
        assert int(digit) == form(number)


def test_app_server_and_catalogues_have_the_same_languages():
    app = (PROJECT / "static/app/words/languages.js").read_text(encoding="utf-8")
    listed = dict(re.findall(r"code: '(\w+)', .*direction: '(\w+)'", app))

    assert listed.pop("en") == "ltr"
    assert listed == {language: json.loads(for_the_phone(path))["direction"] for language, path in FILES.items()}
    assert {code for code, _ in settings.LANGUAGES} == {"en-gb", *FILES}


def test_a_language_whose_plurals_do_not_come_round_at_a_hundred_is_refused():
    with pytest.raises(CatalogueWrong):
        plural_digits("nplurals=2; plural=(n > 500);")
    with pytest.raises(CatalogueWrong):
        plural_digits("none")


@pytest.mark.parametrize(
    ("name", "source"),
    [
        ("static/app/part.js", "import { say } from './words/say.js';\nsay(`made of ${parts}`);"),
        ("static/app/part.js", "import { say } from './words/say.js';\nsay(text);"),
        ("planner/counselling/part.py", "says(text)"),
        ("clinic/part.py", "gettext(f'{text}')"),
    ],
)
def test_words_that_a_translator_would_never_see_are_refused(tmp_path, name, source):
    path = tmp_path / name
    path.parent.mkdir(parents=True)
    path.write_text(source)

    with pytest.raises(NotALiteral):
        collect(tmp_path)


def test_new_texts_come_in_empty_and_stale_ones_go(tmp_path):
    app = tmp_path / "static/app/part.js"
    app.parent.mkdir(parents=True)
    app.write_text(
        "import { say } from './words/say.js';\n"
        "say('It\\'s “new”');\nsayCount('{count} day', \"{count} days\", n);\nspeaker.say('Not this');\n"
    )
    path = tmp_path / "django.po"
    old = polib.POFile()
    old.metadata = {"Language": "ar", "Plural-Forms": "nplurals=6; plural=0;"}
    old.append(polib.POEntry(msgid="Stale", msgstr="x"))
    old.save(str(path))

    assert bring_up(path, collect(tmp_path)) == (2, 1)
    assert [(entry.msgid, entry.msgid_plural) for entry in polib.pofile(str(path))] == [
        ("It's “new”", ""),
        ("{count} day", "{count} days"),
    ]
    assert bring_up(path, collect(tmp_path)) == (0, 0)
