/** Where the checks of a card stand, and the one that comes next. */
import { Frame } from '../../parts/frame/frame.js';
import { Notice } from '../../parts/notice/notice.js';
import { TheatreWayNav } from '../../parts/theatre-way/theatre-way.js';
import { nextPhase } from '../../planning/theatre-checks.js';
import { useRights } from '../../planning/use-rights.js';
import { html } from '../../vendor/preact.js';
import { Void } from '../card/void.js';
import { Phases } from './phases.js';

/**
 * @param {object} props
 * @param {import('../../store/envelope.js').LedgerRecord} props.patient
 * @param {import('../../planning/kept-cards.js').Pieces} props.pieces
 * @param {string} props.card whether the card still stands
 * @param {import('../../planning/theatre-checks.js').PhaseState[]} props.phases
 * @param {import('./round.js').Under | null} props.under
 * @param {[boolean, () => void]} props.light whether the page is dark, and how to turn it
 * @param {() => void} props.onBegin
 */
export function Overview({ patient, pieces, card, phases, under, light, onBegin }) {
  const rights = useRights();
  const next = nextPhase(phases);
  const isVoid = card !== 'current';
  const isKept = isVoid && phases.some(({ stops }) => stops.some(({ body }) => body.card !== 'current'));
  const toCard = { label: 'To the card', to: `/patients/${patient.patient}/card/${pieces.signature.id}` };
  const mayCheck = rights.write('theatre_check');
  const label = isVoid ? 'Keep this stop' : `${under && under.phase === next?.phase ? 'Go on with' : 'Begin'} the ${next?.phase}`;
  const step = !next || isKept || !mayCheck ? toCard : { label, act: onBegin };
  return html`<${Frame} title="Checks in theatre" patient=${patient.body} back=${toCard.to} next=${step} also=${{ label: light[0] ? 'Light' : 'Dark', act: light[1] }}>
    <div class="theatre check stack">
      <${Void} pieces=${pieces} />
      <${TheatreWayNav} pieces=${pieces} here="checks" />
      ${!mayCheck && html`<${Notice} level="note"><p>Your role in this clinic, ${rights.role ?? 'not known'}, looks at the checks and does not make them.</p><//>`}
      <${Phases} phases=${phases} />
      <p class="small soft">After the Surgical Safety Checklist of the World Health Organization, 2009, in our own words. The clinic’s own rules come first.</p>
    </div>
  <//>`;
}
