/** How firmly a finding stands, by word and by the line around it. */
import { html } from '../../vendor/preact.js';

/** @type {Record<string, {words: string, means: string}>} */
const STRENGTHS = {
  clear: { words: 'Clear', means: '' },
  borderline: { words: 'Borderline', means: 'within measurement error of not being so' },
  'cannot tell': { words: 'Cannot tell', means: '' },
};

/** @param {{of: string}} props */
export function Strength({ of }) {
  const strength = STRENGTHS[of];
  if (!strength) return null;
  return html`<span class=${`strength strength-${of.replace(' ', '-')}`}><span class="strength-word">${strength.words}</span>${strength.means && ` ${strength.means}`}</span>`;
}
