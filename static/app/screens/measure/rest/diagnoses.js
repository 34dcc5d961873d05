/** Known diagnoses: one touch each; then of which eye, where one can be named. */
import { Choice } from '../../../parts/choice/choice.js';
import { html } from '../../../vendor/preact.js';
import { EYES, EYE_WORDS } from '../../../words/anatomy.js';
import { DIAGNOSES } from './known.js';

/** @typedef {import('../examination.js').Diagnosed} Diagnosed */

const EYE_OPTIONS = [...EYES.map((eye) => ({ value: eye, words: EYE_WORDS[eye] })), { value: null, words: 'both, or neither by itself' }];

/** @param {{diagnoses: Diagnosed[], onChange: (diagnoses: Diagnosed[]) => void}} props */
export function Diagnoses({ diagnoses, onChange }) {
  /** @param {string} diagnosis */
  const isKnown = (diagnosis) => diagnoses.some((known) => known.diagnosis === diagnosis);
  /** @param {string} diagnosis */
  const turn = (diagnosis) =>
    onChange(
      isKnown(diagnosis)
        ? diagnoses.filter((known) => known.diagnosis !== diagnosis)
        : DIAGNOSES.flatMap((each) => diagnoses.find((known) => known.diagnosis === each) ?? (each === diagnosis ? [{ diagnosis, eye: null }] : [])),
    );
  return html`<div class="stack">
    <div class="known" role="group" aria-label="Diagnoses">
      ${DIAGNOSES.map((each) => html`<button key=${each} type="button" class="key known-key" aria-pressed=${String(isKnown(each))} onClick=${() => turn(each)}>${each}</button>`)}
    </div>
    ${diagnoses.map(
      (known, index) => html`<${Choice}
        key=${known.diagnosis}
        legend=${`${known.diagnosis}, of`}
        name=${`diagnosis-${index}`}
        options=${EYE_OPTIONS}
        value=${known.eye ?? null}
        onChange=${(/** @type {string | null} */ eye) => onChange(diagnoses.with(index, { ...known, eye }))}
      />`,
    )}
  </div>`;
}
