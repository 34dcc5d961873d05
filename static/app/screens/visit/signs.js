/** Signs of infection: nobody looked, there were none, or which of them were seen on which side. */
import { Choice } from '../../parts/choice/choice.js';
import { html } from '../../vendor/preact.js';
import { EYES, EYE_WORDS } from '../../words/anatomy.js';
import { SIGNS, WITHOUT_SIDE, isSeen, turned } from './visiting.js';

const ANSWERS = [
  { value: false, words: 'not looked for' },
  { value: true, words: 'looked for' },
];

/** @param {{looked: boolean, signs: import('./visiting.js').SignSeen[], onTell: (fields: Partial<import('./visiting.js').Visiting>) => void}} props */
export function Signs({ looked, signs, onTell }) {
  return html`<section class="stack tight" aria-label="Signs of infection">
    <${Choice} legend="Signs of infection" name="looked" options=${ANSWERS} value=${looked} onChange=${(/** @type {boolean} */ next) => onTell({ looked: next, signs: [] })} />
    ${looked &&
    html`<p><strong>${signs.length > 0 ? 'Seen:' : 'None seen.'}</strong> ${signs.length > 0 ? signs.map(({ sign, eye }) => (eye ? `${sign}, ${EYE_WORDS[eye]}` : sign)).join('; ') : 'Touch what there is.'}</p>
    <ul class="visit-signs">
      ${SIGNS.map((sign) => {
        const sides = WITHOUT_SIDE.includes(sign) ? [null] : EYES;
        return html`<li class="visit-sign" key=${sign}>
          <span class="visit-sign-words">${sign}</span>
          <span class="visit-sign-sides">
            ${sides.map(
              (eye) => html`<button type="button" class="button" key=${String(eye)} aria-label=${`${sign}, ${eye ? EYE_WORDS[eye] : 'yes'}`} aria-pressed=${String(isSeen(signs, sign, eye))} onClick=${() => onTell({ looked: true, signs: turned(signs, sign, eye) })}>
                ${eye ? EYE_WORDS[eye] : 'yes'}
              </button>`,
            )}
          </span>
        </li>`;
      })}
    </ul>`}
  </section>`;
}
