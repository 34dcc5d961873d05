/** The app's own words: English until a language is chosen, and English on screens whose words were not taken up. */
import assert from 'node:assert/strict';
import { beforeEach, test } from 'node:test';

const ARABIC = { language: 'ar', direction: 'rtl', reviewed: null, plural: '5'.repeat(200), texts: { Back: 'رجوع', Stop: 'قف', Signed: 'تمّ التوقيع' } };
const page = { lang: '', dir: '' };
const storage = new Map();
let answers = 0;

globalThis.document = /** @type {any} */ ({ documentElement: page });
globalThis.localStorage = /** @type {any} */ ({ getItem: (key) => storage.get(key) ?? null, setItem: (key, value) => storage.set(key, value) });
globalThis.fetch = /** @type {any} */ (async () => ({ ok: ++answers > 1, status: 503, json: async () => ARABIC }));

const { language, marked, said, saidHere, say, sayHere, setLanguage, speakHere, spokenIn, startLanguage } = await import('../../../static/app/words/say.js');

beforeEach(() => speakHere(true));

test('before anything is chosen the app speaks English', async () => {
  await startLanguage();
  assert.deepEqual([language.get(), say('Back'), page.lang, page.dir], ['en', 'Back', 'en', 'ltr']);
});

test('a language whose words do not come is not taken up, and is asked for again', async () => {
  await assert.rejects(setLanguage('ar'));
  assert.deepEqual([language.get(), say('Back'), storage.get('language')], ['en', 'Back', undefined]);
  await setLanguage('ar');
  assert.deepEqual([language.get(), say('Back'), page.lang, page.dir, storage.get('language')], ['ar', 'رجوع', 'ar', 'rtl', 'ar']);
});

test('on a screen that is English only the frame speaks the chosen language', () => {
  speakHere(false);
  assert.deepEqual([page.lang, page.dir], ['en', 'ltr']);
  assert.deepEqual([sayHere('Stop'), saidHere('Signed'), say('Back')], ['Stop', 'Signed', 'رجوع']);
  assert.deepEqual(spokenIn(), { lang: 'ar', dir: 'rtl' });
  speakHere(true);
  assert.deepEqual([page.lang, page.dir, sayHere('Stop'), said(marked('Signed'))], ['ar', 'rtl', 'قف', 'تمّ التوقيع']);
});

test('the choice is remembered, and taken up when the app starts', async () => {
  await setLanguage('en');
  assert.deepEqual([say('Back'), page.dir, storage.get('language')], ['Back', 'ltr', 'en']);
  storage.set('language', 'ar');
  await startLanguage();
  assert.equal(say('Back'), 'رجوع');
  storage.set('language', 'tlh');
  await setLanguage('en');
  storage.set('language', 'tlh');
  await startLanguage();
  assert.equal(language.get(), 'en');
});
