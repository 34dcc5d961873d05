/** A figure of common practice, as it stands here: the usual one and its limits stay in sight. */
import { html } from '../../vendor/preact.js';

/** @param {{figure: any, own?: number, set: ((name: string, value: number | null) => void) | false}} props a `FormFigure` of the engine */
export function FigureRow({ figure, own, set }) {
  const { name, words, usual, low, high, unit } = figure;
  const hint = `Commonly ${usual} ${unit}; ${low} to ${high} can be set.`;
  if (!set) return html`<p>${words}: <strong>${own ?? usual} ${unit}</strong>${own !== undefined && own !== usual && html` <span class="soft">(commonly ${usual})</span>`}</p>`;
  const type = (/** @type {string} */ typed) => set(name, typed === '' ? null : Math.trunc(Number(typed)) || 0);
  return html`<div class="figure-row">
    <label class="figure-words" for=${`figure-${name}`}>${words}</label>
    <input class="input figure-entry" id=${`figure-${name}`} type="number" inputmode="numeric" min=${low} max=${high} placeholder=${String(usual)} value=${own ?? ''} aria-describedby=${`figure-${name}-hint`} onInput=${(/** @type {any} */ event) => type(event.currentTarget.value)} />
    <span>${unit}</span>
    <p class="field-hint figure-hint" id=${`figure-${name}-hint`}>${hint}</p>
  </div>`;
}
