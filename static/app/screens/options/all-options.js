/** All options: the table first, then what is the same for all, then each by what sets it apart; stopped ones folded below. */
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { Fold } from '../../parts/fold/fold.js';
import { Frame } from '../../parts/frame/frame.js';
import { Notices } from '../../parts/notice/notice.js';
import { reachOf } from '../../parts/residual-strip/scale.js';
import { html, useState } from '../../vendor/preact.js';
import { isGrave, stopsOf } from '../../planning/levels.js';
import { Newer } from '../findings/newer.js';
import { shared } from './shared.js';
import { OptionCard } from './option-card.js';
import { Stopped } from './stopped.js';
import { TableChoice } from './table-choice.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/** @param {{patient: LedgerRecord, examination: LedgerRecord, weighed: ReturnType<typeof import('../../planning/use-planning.js').usePlanning>}} props */
export function AllOptions({ patient, examination, weighed }) {
  const { proposal, tables, table, faults, set } = weighed;
  const home = `/patients/${patient.patient}`;
  return html`<${Frame} title="Options" patient=${patient.body} back=${`${home}/findings/${examination.id}`} layout="wide">
    <div class="stack">
      <${Newer} examination=${examination} screen="options" />
      <${TableChoice} tables=${tables} chosen=${table} onChoose=${(/** @type {string} */ id) => set({ table: id })} />
      ${proposal && faults.length === 0
        ? html`<${Offered} proposal=${proposal} pathOf=${(/** @type {string} */ id) => `${home}/options/${examination.id}/${id}`} />`
        : html`<${EngineWait} faults=${faults} />`}
    </div>
  <//>`;
}

/** @param {{proposal: any, pathOf: (id: string) => string}} props */
function Offered({ proposal, pathOf }) {
  const [compared, setCompared] = useState(/** @type {string[]} */ ([]));
  const [isAlone, setAlone] = useState(false);
  const open = proposal.options.filter((/** @type {any} */ option) => stopsOf(option).length === 0);
  const stopped = proposal.options.filter((/** @type {any} */ option) => stopsOf(option).length > 0);
  const chosen = open.filter((/** @type {any} */ { id }) => compared.includes(id));
  const shown = isAlone && chosen.length > 1 ? chosen : open;
  const common = shared(shown);
  const reach_pd = reachOf(shown.map((/** @type {any} */ { expected_residual_pd }) => expected_residual_pd));

  return html`
    <${Notices} notices=${proposal.notices.filter(isGrave)} />
    ${open.length === 0 && html`<p><strong>No option can be offered for this case.</strong> Each one is stopped, for the reason beside it.</p>`}
    ${chosen.length > 1 &&
    html`<div class="compare-bar">
      <p>${isAlone ? `${chosen.length} of ${open.length} options side by side` : `${chosen.length} marked to compare`}</p>
      <button type="button" class="button" onClick=${() => setAlone(!isAlone)}>${isAlone ? 'Show all again' : 'Show only these'}</button>
    </div>`}
    <${SameForAll} common=${common} count=${shown.length} />
    <div class=${`options options-${Math.min(shown.length, 3)}`}>
      ${shown.map(
        (/** @type {any} */ option) => html`<${OptionCard}
          key=${option.id}
          option=${option}
          table=${proposal.table}
          common=${common}
          reach_pd=${reach_pd}
          path=${pathOf(option.id)}
          isCompared=${compared.includes(option.id)}
          onCompare=${open.length > 1 ? () => setCompared(compared.includes(option.id) ? compared.filter((id) => id !== option.id) : [...compared, option.id]) : null}
        />`,
      )}
    </div>
    <${Stopped} options=${stopped} pathOf=${pathOf} />
    <${Notices} notices=${proposal.notices.filter((/** @type {any} */ notice) => !isGrave(notice))} />
    <p class="small soft">${proposal.disclaimer} Engine ${proposal.engine_version}.</p>
  `;
}

/**
 * "2 cautions", or nothing.
 * @param {{level: string}[]} notices
 * @param {string} level
 */
function countOf(notices, level) {
  const count = notices.filter((notice) => notice.level === level).length;
  return count && `${count} ${level}${count === 1 ? '' : 's'}`;
}

/** @param {{common: import('./shared.js').Shared, count: number}} props */
function SameForAll({ common, count }) {
  const { reasons, notices } = common;
  if (reasons.length + notices.length === 0) return null;
  const holds = [countOf(notices, 'caution'), countOf(notices, 'note'), reasons.length && `${reasons.length} ${reasons.length === 1 ? 'reason' : 'reasons'}`];
  return html`<${Fold} title=${`The same for all ${count}`} holds=${holds.filter(Boolean).join(', ')}>
    <div class="stack tight">
      <${Notices} notices=${notices} />
      ${reasons.map((reason) => html`<p class="small" key=${reason.code}>${reason.text}</p>`)}
    </div>
  <//>`;
}
