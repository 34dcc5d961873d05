/** Own results in a line, beside the dose of an option among others. */
import { html } from '../../vendor/preact.js';
import { placeWords } from '../../words/anatomy.js';
import { mmWords, prismWords } from '../../words/figures.js';

/** @param {{own: import('../../planning/use-own-column.js').OwnOfOption}} props */
export function OwnLine({ own: { calibration, suggestion } }) {
  return html`<div class="own-line small">
    <p><strong>Own results</strong>, ${calibration.cases} case${calibration.cases === 1 ? '' : 's'}${suggestion.does_pd ? `: these doses would correct ${prismWords(suggestion.does_pd.middle)} of ${prismWords(suggestion.promised_pd)}` : ''}</p>
    ${suggestion.doses.map((dose) => html`<p key=${`${dose.eye} ${dose.muscle}`}>${placeWords(dose)}: table ${mmWords(dose.proposed_mm)}, own <strong>${mmWords(dose.own_mm)}</strong></p>`)}
    ${suggestion.doses.length === 0 && html`<p>${silence(calibration, suggestion)}</p>`}
  </div>`;
}

/** Why nothing is suggested. @param {any} calibration @param {import('../../planning/use-own-column.js').Suggestion} suggestion */
export function silence(calibration, suggestion) {
  const said = [...suggestion.statements, ...calibration.statements.filter((/** @type {any} */ { code }) => code === 'calibration_too_few')];
  return said.at(-1)?.text ?? 'Nothing is suggested.';
}
