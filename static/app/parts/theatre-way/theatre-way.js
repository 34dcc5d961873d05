/** The way of a signed plan through theatre, on each of its screens: the card, what goes with it, how far each is, and what is next. */
import { useObservable } from '../../observable.js';
import { theatreWay } from '../../planning/theatre-way.js';
import { useRights } from '../../planning/use-rights.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { shortDateWords } from '../calendar/date.js';

/** @typedef {import('../../planning/theatre-way.js').TheatreWay} TheatreWay */
/** @typedef {'card' | 'set-up' | 'checks' | 'operation'} Here */

/** @type {Record<import('../../planning/theatre-way.js').TheatreStep, string>} */
const TO_DO = { 'set-up': 'prepare it', 'sign in': 'sign in', 'time out': 'time out', operation: 'record it', 'sign out': 'sign out', adjustment: 'adjust the suture' };

/** @param {{pieces: {plan: import('../../store/envelope.js').LedgerRecord, signature: import('../../store/envelope.js').LedgerRecord}, here: Here}} props */
export function TheatreWayNav({ pieces, here }) {
  const { write } = useRights();
  const way = theatreWay(useObservable(records), pieces, write);
  const { plan, signature } = pieces;
  const home = `#/patients/${plan.patient}`;
  const { next, place } = way;
  const stops = [
    { id: 'card', words: 'Card', state: 'what was signed', to: `${home}/card/${signature.id}`, isNext: false },
    { id: 'set-up', words: 'Set-up', state: way.isPrepared ? 'saved' : 'not saved yet', to: `${home}/set-up/${plan.id}`, isNext: next === 'set-up' },
    { id: 'checks', words: 'Checks', state: checkWords(way), to: `${home}/checks/${signature.id}`, isNext: next !== null && next === way.phase?.phase },
    { id: 'operation', words: 'Operation', state: operationWords(way), to: `${home}/operation/${signature.id}`, isNext: next === 'operation' || next === 'adjustment' },
    ...(place ? [{ id: 'list', words: 'List', state: `${shortDateWords(place.on)}, number\u00a0${place.number}`, to: `#/lists/${place.id}`, isNext: false }] : []),
  ];
  return html`<nav class="theatre-way" aria-label="This operation">
    ${stops.map(
      ({ id, words, state, to, isNext }) => html`<a key=${id} class=${`theatre-way-stop${isNext ? ' theatre-way-next' : ''}`} href=${to} aria-current=${id === here ? 'page' : undefined}>
        <strong>${words}</strong> <span class="theatre-way-state">${isNext ? `next: ${TO_DO[/** @type {import('../../planning/theatre-way.js').TheatreStep} */ (next)]}` : state}</span>
      </a>`,
    )}
  </nav>`;
}

/** @param {TheatreWay} way */
const checkWords = ({ phase }) => (phase ? `${phase.phase}${phase.stops.length > 0 ? ' was stopped' : ''}` : 'all passed');

/** @param {TheatreWay} way */
const operationWords = ({ isRecorded, isOpen, isUnsettled }) => (isUnsettled ? 'records differ: settle' : isOpen ? 'suture to adjust' : isRecorded ? 'recorded' : 'not recorded yet');
