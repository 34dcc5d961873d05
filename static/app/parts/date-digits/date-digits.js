/**
 * A date entered as day, month and year in digits: three short entries that move on by themselves, read back in words with the
 * month spelt, so that a swapped day and month is seen at once.
 */
import { html, useRef, useState } from '../../vendor/preact.js';
import { ageWords } from '../calendar/age.js';
import { dateWords, today } from '../calendar/date.js';
import { describedBy, FieldFault } from '../field/field.js';
import { digitsOf, isoOf } from './digits.js';

const ENTRIES = [
  { part: 'day', label: 'Day', length: 2 },
  { part: 'month', label: 'Month', length: 2 },
  { part: 'year', label: 'Year', length: 4 },
];

/**
 * @param {object} props
 * @param {string} props.legend
 * @param {string} props.name
 * @param {string} props.value `YYYY-MM-DD`, or what has been typed of it so far
 * @param {(value: string) => void} props.onInput
 * @param {{text: string, allowed?: string}} [props.fault]
 */
export function DateDigits({ legend, name, value, onInput, fault }) {
  const [typed, setTyped] = useState(digitsOf(value));
  const entries = useRef({});

  const typeIn = ({ part, length }, index, raw) => {
    const text = raw.replace(/\D/g, '').slice(0, length);
    const now = { ...typed, [part]: text };
    setTyped(now);
    onInput(isoOf(now));
    const full = text.length === length || (length === 2 && Number(text) > (part === 'day' ? 3 : 1));
    if (full && text.length > typed[part].length) entries.current[ENTRIES[index + 1]?.part]?.focus();
  };

  const eraseBack = (event, index) => {
    if (event.key === 'Backspace' && event.currentTarget.value === '') entries.current[ENTRIES[index - 1]?.part]?.focus();
  };

  const age = ageWords(value, today());
  return html`<div class="field date-digits" role="group" aria-labelledby=${`${name}-legend`} aria-describedby=${`${name}-words`}>
    <p class="date-digits-head">
      <span class="field-label" id=${`${name}-legend`}>${legend}</span>
      <span class="date-digits-words" id=${`${name}-words`} aria-live="polite">${age && `${dateWords(value)}, ${age} old`}</span>
    </p>
    <div class="date-digits-row">
      ${ENTRIES.map(
        (entry, index) => html`<label class=${`date-digits-entry date-digits-${entry.part}`} key=${entry.part}>
          <span class="field-hint">${entry.label}</span>
          <input
            class="input"
            id=${index === 0 ? name : `${name}-${entry.part}`}
            inputmode="numeric"
            autocomplete="off"
            value=${typed[entry.part]}
            ref=${(element) => (entries.current[entry.part] = element)}
            onInput=${(event) => typeIn(entry, index, event.currentTarget.value)}
            onKeyDown=${(event) => eraseBack(event, index)}
            ...${describedBy(name, { fault })}
          />
        </label>`,
      )}
    </div>
    <${FieldFault} name=${name} fault=${fault} />
  </div>`;
}
