/** Where the skin is marked. The plan is not shown. */
import { Choice } from '../../../parts/choice/choice.js';
import { html } from '../../../vendor/preact.js';

const MARKED = [
  { value: 'right', words: 'RIGHT eye' },
  { value: 'left', words: 'LEFT eye' },
  { value: 'both', words: 'Both eyes' },
  { value: 'none', words: 'No eye' },
];

/** @param {{held: Record<string, any>, onHold: (held: Record<string, any>) => void}} props */
export function MarkEntry({ held, onHold }) {
  return html`<${Choice} legend="Marked on the skin" quiet name="marked" options=${MARKED} value=${held.marked} onChange=${(/** @type {string} */ marked) => onHold({ marked })} />`;
}
