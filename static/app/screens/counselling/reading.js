/** The language in which a patient or parent reads; it is not the surgeon's, and it is remembered on this phone. */
import { observable, useObservable } from '../../observable.js';
import { useEffect, useState } from '../../vendor/preact.js';
import { catalogueOf, isLanguage } from '../../words/languages.js';
import { speakerOf } from '../../words/speaker.js';

/** @typedef {import('../../words/languages.js').Code} Code */

const KEY = 'reading-language';

/** @type {import('../../observable.js').Observable<Code>} */
export const reading = observable(remembered());

/** @param {Code} code */
export function setReading(code) {
  localStorage.setItem(KEY, code);
  reading.set(code);
}

/** @returns {{speaker: import('../../words/speaker.js').Speaker | null, isMissing: boolean}} null until its words are there */
export function useReader() {
  const code = useObservable(reading);
  const [speaker, setSpeaker] = useState(/** @type {import('../../words/speaker.js').Speaker | null} */ (null));
  const [isMissing, setMissing] = useState(false);
  useEffect(() => {
    let isWanted = true;
    setMissing(false);
    (code === 'en' ? Promise.resolve(null) : catalogueOf(code)).then(
      (catalogue) => isWanted && setSpeaker(speakerOf(catalogue)),
      () => isWanted && setMissing(true),
    );
    return () => {
      isWanted = false;
    };
  }, [code]);
  return { speaker: speaker?.language === code ? speaker : null, isMissing };
}

/** @returns {Code} */
function remembered() {
  const kept = globalThis.localStorage?.getItem(KEY);
  return isLanguage(kept) ? kept : 'en';
}
