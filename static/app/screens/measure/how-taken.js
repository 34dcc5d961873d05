/** How readings are taken: one line that shows what differs from the usual, and at a touch everything that can be said. */
import { Sheet } from '../../parts/sheet/sheet.js';
import { html, useState } from '../../vendor/preact.js';
import { cellWords } from '../../words/reading.js';
import { METHOD_WORDS, unusualWords } from '../../words/taking.js';
import { TakingChoices } from './taking-choices.js';
import { techniqueInView } from './sitting.js';

/** @typedef {import('./sitting.js').Sitting} Sitting */

/**
 * @param {object} props
 * @param {Sitting} props.sitting
 * @param {(conditions: import('./sitting.js').Conditions) => void} props.onTurn
 * @param {(technique: import('../../words/taking.js').Technique | null) => void} props.onHeld
 */
export function HowTaken({ sitting, onTurn, onHeld }) {
  const [isOpen, setOpen] = useState(false);
  const { taking, open } = sitting;
  const method = open?.cell.method ?? taking.method;
  const unusual = unusualWords({ ...taking, method, technique: techniqueInView(sitting) });
  return html`<div class="how-taken">
    <button type="button" class=${unusual.length ? 'how-button unusual' : 'how-button'} aria-haspopup="dialog" aria-label=${`How it is measured: ${unusual.join(', ') || METHOD_WORDS[method]}`} onClick=${() => setOpen(true)}>
      ${unusual.join(' · ') || METHOD_WORDS[method]}
    </button>
    ${isOpen &&
    html`<${Sheet} open=${true} title="How it is measured" onClose=${() => setOpen(false)}>
      <div class="stack">
        <p class="small soft">${open ? `This reading (${cellWords(open.cell)}) and those after it.` : 'The readings that come next.'} What was read before stays as it was taken.</p>
        <${TakingChoices} sitting=${sitting} onTurn=${onTurn} onHeld=${onHeld} />
        <button type="button" class="button main" onClick=${() => setOpen(false)}>Go on measuring</button>
      </div>
    <//>`}
  </div>`;
}
