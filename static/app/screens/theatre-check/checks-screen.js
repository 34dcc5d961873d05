/** Between the overview of a card's checks, the one under way, and the one just kept. */
import { useObservable } from '../../observable.js';
import { otherEntries, patientNow, standingOf } from '../../planning/standing.js';
import { cardState, nextPhase, phasesOf } from '../../planning/theatre-checks.js';
import { heads } from '../../store/heads.js';
import { drafts, records } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { useTheatreLight } from '../card/theatre-light.js';
import { ClosedScreen } from './closed-screen.js';
import { Overview } from './overview.js';
import { begun } from './round.js';
import { RunningScreen } from './running-screen.js';
import { draftOf } from './use-closing.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/** @param {{patient: LedgerRecord, pieces: import('../../planning/kept-cards.js').Pieces}} props */
export function ChecksScreen({ patient, pieces }) {
  const all = useObservable(records);
  const draft = draftOf(pieces.signature.id);
  const [under, setUnder] = useState(/** @type {import('./round.js').Under | null} */ (drafts.get(draft) ?? null));
  const [isRunning, setRunning] = useState(false);
  const [closed, setClosed] = useState(/** @type {LedgerRecord | null} */ (null));
  const light = useTheatreLight();

  const phases = phasesOf(all, pieces.signature.id);
  const next = nextPhase(phases);
  const card = cardState(standingOf(all, pieces.plan, pieces.signature));
  const now = patientNow(all, pieces);
  const also = [...(now ? [now] : []), ...otherEntries(all, pieces)];

  /** @param {import('./round.js').Under} changed */
  const keep = (changed) => {
    drafts.keep(draft, changed);
    setUnder(changed);
  };
  const begin = () => {
    // A phase that another device passed meanwhile leaves this draft behind.
    if (next && under?.phase !== next.phase) keep(begun(next.phase, heads(all, 'check_item')));
    setRunning(true);
  };

  if (closed) {
    const words = phases.find(({ phase }) => phase === closed.body.phase)?.words ?? '';
    return html`<${ClosedScreen} patient=${patient} check=${closed} words=${words} onLeave=${() => setClosed(null)} />`;
  }
  if (isRunning && under && next && under.phase === next.phase) {
    return html`<${RunningScreen}
      pieces=${pieces}
      card=${card}
      also=${also}
      state=${next}
      under=${under}
      onChange=${keep}
      onLeave=${() => setRunning(false)}
      onClosed=${(/** @type {LedgerRecord} */ check) => {
        setRunning(false);
        setUnder(null);
        setClosed(check);
      }}
    />`;
  }
  return html`<${Overview} patient=${patient} pieces=${pieces} card=${card} phases=${phases} under=${under} light=${light} onBegin=${begin} />`;
}
