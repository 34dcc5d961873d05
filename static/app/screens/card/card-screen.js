/** The card on the screen: dark unless light is chosen, what makes it void above everything, and its PDF. */
import { useObservable } from '../../observable.js';
import { Carried } from '../../parts/carried/carried.js';
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { Frame } from '../../parts/frame/frame.js';
import { TheatreWayNav } from '../../parts/theatre-way/theatre-way.js';
import { isVoid, standingOf } from '../../planning/standing.js';
import { records } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { CardFace } from './card-face.js';
import { CardPdf } from './card-pdf.js';
import { CardState } from './card-state.js';
import { useTheatreLight } from './theatre-light.js';
import { useCard } from './use-card.js';
import { Void } from './void.js';

/** @param {{patient: import('../../store/envelope.js').LedgerRecord, pieces: import('../../planning/kept-cards.js').Pieces}} props */
export function CardScreen({ patient, pieces }) {
  const { card, state, faults } = useCard(pieces);
  const [isDark, turnLight] = useTheatreLight();
  const [isPdfOpen, setPdfOpen] = useState(false);
  const isOver = isVoid(standingOf(useObservable(records), pieces.plan, pieces.signature));
  const hindrance = isOver ? 'A void card is not printed.' : card ? undefined : 'No card to print yet.';
  return html`<${Frame}
    title=${card ? `Card: ${card.eyes_words}` : 'Card'}
    patient=${patient.body}
    back=${`/patients/${patient.patient}`}
    layout="wide"
    corner=${card && html`<p class="card-corner"><span class="soft">Check word</span> <strong>${card.check_word}</strong></p>`}
    also=${{ label: isDark ? 'Light' : 'Dark', act: turnLight }}
    next=${{ label: 'PDF and print', act: () => setPdfOpen(true), blocked: hindrance }}
  >
    <div class="theatre stack">
      <${Void} pieces=${pieces} />
      <${TheatreWayNav} pieces=${pieces} here="card" />
      <${Carried} records=${[patient, pieces.plan, pieces.signature]} />
      <${CardState} state=${state} faults=${faults} />
      ${card ? html`<${CardFace} card=${card} />` : state !== 'refused' && html`<${EngineWait} faults=${faults} />`}
    </div>
    ${isPdfOpen && !hindrance && html`<${CardPdf} pieces=${pieces} checkWord=${card.check_word} onClose=${() => setPdfOpen(false)} />`}
  <//>`;
}
