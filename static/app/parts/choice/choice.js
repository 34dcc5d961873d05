/**
 * One of a few words, all of them visible. Radio buttons in a fieldset, so keys and screen readers work as everywhere.
 */
import { html } from '../../vendor/preact.js';

/**
 * @template T
 * @param {object} props
 * @param {string} props.legend what is asked
 * @param {boolean} [props.quiet] the question is already visible elsewhere: only read out
 * @param {string} props.name unique on the screen
 * @param {{value: T, words: string, hint?: string}[]} props.options
 * @param {T | null | undefined} props.value
 * @param {(value: T) => void} props.onChange
 */
export function Choice({ legend, quiet, name, options, value, onChange }) {
  return html`<fieldset class="choice">
    <legend class=${quiet ? 'unseen' : 'choice-legend'}>${legend}</legend>
    <div class="choice-row">
      ${options.map(
        (option) => html`<label class="choice-option" key=${String(option.value)}>
          <input
            class="choice-input"
            type="radio"
            name=${name}
            value=${String(option.value)}
            checked=${option.value === value}
            onChange=${() => onChange(option.value)}
          />
          <span class="choice-face">
            <span class="choice-words">${option.words}</span>
            ${option.hint && html`<span class="choice-hint">${option.hint}</span>`}
          </span>
        </label>`,
      )}
    </div>
  </fieldset>`;
}
