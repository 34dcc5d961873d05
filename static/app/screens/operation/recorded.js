/** What was done, as it stands in the record: the note on the screen, its pages, and what can still follow. */
import { AdjustWindow } from '../../parts/adjust-window/adjust-window.js';
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { Frame } from '../../parts/frame/frame.js';
import { PagePdf } from '../../parts/page-pdf/page-pdf.js';
import { TheatreWayNav } from '../../parts/theatre-way/theatre-way.js';
import { noteQuestion } from '../../planning/operations.js';
import { useAnswer } from '../../planning/use-answer.js';
import { useRights } from '../../planning/use-rights.js';
import { html, useState } from '../../vendor/preact.js';
import { useTheatreLight } from '../card/theatre-light.js';
import { Conflict } from '../patient/conflict.js';
import { NoteFace } from './note-face.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/**
 * @param {object} props
 * @param {LedgerRecord} props.patient
 * @param {import('../../planning/kept-cards.js').Pieces} props.pieces
 * @param {import('../../planning/operations.js').Operated[]} props.operated the newest last
 * @param {boolean} props.hasDraft something was written on this device and not saved before this record arrived
 * @param {(() => void) | null} props.onCorrect
 */
export function Recorded({ patient, pieces, operated, hasDraft, onCorrect }) {
  const { operation, adjustments, open } = /** @type {import('../../planning/operations.js').Operated} */ (operated.at(-1));
  const question = noteQuestion(patient, pieces, operated);
  const { answer: note, faults } = useAnswer('operation_note', question);
  const [isDark, turnLight] = useTheatreLight();
  const [isPdfOpen, setPdfOpen] = useState(false);
  const rights = useRights();
  const home = `/patients/${patient.patient}`;
  return html`<${Frame}
    title="Operation note"
    patient=${patient.body}
    back=${home}
    layout="wide"
    also=${{ label: isDark ? 'Light' : 'Dark', act: turnLight }}
    next=${{ label: 'PDF and print', act: () => setPdfOpen(true) }}
  >
    <div class="theatre operation-note stack">
      <${TheatreWayNav} pieces=${pieces} here="operation" />
      ${operated.length > 1 &&
      html`<${Conflict} kind="operation" versions=${operated.map((each) => each.operation)} />`}
      ${adjustments.length > 1 && html`<${Conflict} kind="adjustment" versions=${adjustments} />`}
      ${open &&
      html`<${AdjustWindow} window=${open}>
        ${rights.write('adjustment') && html`<a class="button" href=${`#${home}/adjust/${operation.id}`}>Record the adjustment</a>`}
      <//>`}
      ${note ? html`<${NoteFace} note=${note} />` : html`<${EngineWait} faults=${faults} />`}
      ${onCorrect && html`<div class="buttons"><button type="button" class="button" onClick=${onCorrect}>${hasDraft ? 'Continue what is not saved here' : 'Correct this record'}</button></div>`}
    </div>
    ${isPdfOpen && html`<${PagePdf} ask="operation_note_pdf" payload=${question} title="Operation note as PDF" name=${`operation-note-${pieces.signature.body.check_word.replace(' ', '-')}`} onClose=${() => setPdfOpen(false)} />`}
  <//>`;
}
