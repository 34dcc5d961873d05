/** A labelled figure that opens its pad at a touch; nothing is an answer too. */
import { html, useState } from '../../vendor/preact.js';
import { FigurePad } from '../number-pad/number-pad.js';
import { figureWords } from './figure-words.js';

/**
 * @param {object} props
 * @param {string} props.label what the figure is, with its side in words
 * @param {number | null | undefined} props.value
 * @param {import('../number-pad/figure-entry.js').Range} props.range
 * @param {string} [props.none] what no figure means
 * @param {(value: number | null) => void} props.onChange
 */
export function FigureField({ label, value, range, none = 'not measured', onChange }) {
  const [isOpen, setOpen] = useState(false);
  return html`<div class="figure-field">
    <button type="button" class="figure-field-button" aria-haspopup="dialog" onClick=${() => setOpen(true)}>
      <span class="figure-field-label">${label}</span>${' '}
      <strong class=${value == null ? 'figure-field-value soft' : 'figure-field-value'}>${value == null ? none : figureWords(value, range)}</strong>
    </button>
    ${isOpen &&
    html`<${FigurePad}
      title=${label}
      value=${value}
      range=${range}
      optional=${true}
      onTake=${(/** @type {number | null} */ figure) => {
        onChange(figure);
        setOpen(false);
      }}
      onClose=${() => setOpen(false)}
    />`}
  </div>`;
}
