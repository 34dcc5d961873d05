/**
 * A labelled text entry with its hint and its fault. The fault is tied to the entry, so that a screen reader says it with it.
 */
import { html } from '../../vendor/preact.js';

/**
 * Ids for the parts of a field, and what the input must carry for them.
 *
 * @param {string} name
 * @param {{hint?: string, fault?: object}} has
 */
export function describedBy(name, { hint, fault }) {
  const ids = [hint && `${name}-hint`, fault && `${name}-fault`].filter(Boolean);
  return { 'aria-invalid': fault ? 'true' : undefined, 'aria-describedby': ids.join(' ') || undefined };
}

/** @param {{name: string, fault?: {text: string, value?: string, allowed?: string}}} props */
export function FieldFault({ name, fault }) {
  if (!fault) return null;
  return html`<p class="field-fault" id=${`${name}-fault`}>
    <strong>${fault.text}</strong>
    ${fault.allowed && html`<span> Allowed: ${fault.allowed}.</span>`}
  </p>`;
}

/**
 * @param {object} props
 * @param {string} props.label
 * @param {string} props.name also the id of the input
 * @param {string} props.value
 * @param {(value: string) => void} props.onInput
 * @param {string} [props.hint]
 * @param {{text: string, value?: string, allowed?: string}} [props.fault]
 * @param {boolean} [props.optional] says so after the label
 * @param {number} [props.rows] more than one line
 * @param {object} [props.input] further attributes of the input: type, autocomplete, inputmode
 */
export function Field({ label, name, value, onInput, hint, fault, optional, rows, input = {} }) {
  const shared = {
    class: 'input',
    id: name,
    name,
    value,
    onInput: (event) => onInput(event.currentTarget.value),
    ...describedBy(name, { hint, fault }),
    ...input,
  };
  return html`<div class="field">
    <label class="field-label" for=${name}>${label}${optional && html` <span class="field-optional">optional</span>`}</label>
    ${hint && html`<p class="field-hint" id=${`${name}-hint`}>${hint}</p>`}
    ${rows ? html`<textarea rows=${rows} ...${shared}></textarea>` : html`<input type="text" autocomplete="off" ...${shared} />`}
    <${FieldFault} name=${name} fault=${fault} />
  </div>`;
}
