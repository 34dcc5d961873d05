/** What the engine offers for a case: each option by what sets it apart; stopped ones folded below. */
import { reachedBy } from '../../parts/expectation/chances.js';
import { Fold } from '../../parts/fold/fold.js';
import { Notices } from '../../parts/notice/notice.js';
import { reachOf } from '../../parts/residual-strip/scale.js';
import { allOptions, turned } from '../../planning/combining.js';
import { isGrave, stopsOf } from '../../planning/levels.js';
import { html, useState } from '../../vendor/preact.js';
import { Additions } from './additions.js';
import { OptionCard } from './option-card.js';
import { Principles } from './principles.js';
import { SameForAll } from './same-for-all.js';
import { NOTHING_SHARED, shared } from './shared.js';
import { Stopped } from './stopped.js';
import { Together } from './together.js';

/** @typedef {import('../../planning/use-planning.js').Planning} Planning */

/** Two full rows of a tablet; the engine puts the better ones first. */
const IN_SIGHT = 6;

/** @param {{proposal: any, planning: Planning, onSet: (fields: Partial<Planning>) => void, pathOf: (id: string) => string, ownOf: (id: string) => import('../../planning/use-own-column.js').OwnOfOption | null}} props */
export function Offered({ proposal, planning, onSet, pathOf, ownOf }) {
  const [compared, setCompared] = useState(/** @type {string[]} */ ([]));
  const [isAlone, setAlone] = useState(false);
  const { options, additions = [], combined = null, principles = [] } = proposal;
  const open = options.filter((/** @type {any} */ option) => stopsOf(option).length === 0);
  const stopped = options.filter((/** @type {any} */ option) => stopsOf(option).length > 0);
  const chosen = open.filter((/** @type {any} */ { id }) => compared.includes(id));
  const shown = isAlone && chosen.length > 1 ? chosen : open;
  const common = shared(shown);
  const reach_pd = reachOf([...shown, ...(combined ? [combined] : [])].flatMap(reachedBy));
  const offered = [...options, ...additions];

  /** @param {any} option */
  const shareOf = (option) => ({
    option,
    table: proposal.table,
    reach_pd,
    aim: planning.aim,
    path: pathOf(option.id),
    own: ownOf(option.id),
    isTogether: planning.combine.includes(option.id),
    onTogether: additions.length > 0 && offered.length > 1 ? () => onSet({ combine: turned(planning.combine, option, offered) }) : null,
  });

  /** @param {any} option */
  const horizontalCard = (option) => html`<${OptionCard}
    key=${option.id}
    ...${shareOf(option)}
    common=${common}
    isCompared=${compared.includes(option.id)}
    onCompare=${open.length > 1 ? () => setCompared(compared.includes(option.id) ? compared.filter((id) => id !== option.id) : [...compared, option.id]) : null}
  />`;
  const beyond = shown.slice(IN_SIGHT);

  return html`
    <${Notices} notices=${proposal.notices.filter(isGrave)} />
    <${Principles} principles=${principles} />
    <${Together}
      combine=${planning.combine}
      offered=${allOptions({ options, additions })}
      combined=${combined}
      card=${combined && html`<div class="options"><${OptionCard} ...${shareOf(combined)} common=${NOTHING_SHARED} isTogether=${false} onTogether=${null} /></div>`}
      onApart=${() => onSet({ combine: [] })}
    />
    ${options.length > 0 && additions.length > 0 && html`<h2 class="options-heading">For the horizontal deviation</h2>`}
    ${options.length === 0 && html`<p>No horizontal operation is offered for this case.</p>`}
    ${options.length > 0 && open.length === 0 && html`<p><strong>No option can be offered for this case.</strong> Each one is stopped, for the reason beside it.</p>`}
    ${chosen.length > 1 &&
    html`<div class="compare-bar">
      <p>${isAlone ? `${chosen.length} of ${open.length} options side by side` : `${chosen.length} marked to compare`}</p>
      <button type="button" class="button" onClick=${() => setAlone(!isAlone)}>${isAlone ? 'Show all again' : 'Show only these'}</button>
    </div>`}
    <${SameForAll} common=${common} count=${shown.length} />
    <div class=${`options options-${Math.min(shown.length, 3)}`}>${shown.slice(0, IN_SIGHT).map(horizontalCard)}</div>
    ${beyond.length > 0 &&
    html`<${Fold} title=${`${beyond.length} more`} holds=${beyond.map((/** @type {any} */ { title }) => title).join(' \u00b7 ')}>
      <div class=${`options options-${Math.min(beyond.length, 3)}`}>${beyond.map(horizontalCard)}</div>
    <//>`}
    <${Stopped} options=${stopped} pathOf=${pathOf} />
    <${Additions} additions=${additions} pathOf=${pathOf} cardOf=${(/** @type {any} */ option) => html`<${OptionCard} key=${option.id} ...${shareOf(option)} common=${NOTHING_SHARED} />`} />
    <${Notices} notices=${proposal.notices.filter((/** @type {any} */ notice) => !isGrave(notice))} />
    <p class="small soft">${proposal.disclaimer} Engine ${proposal.engine_version}.</p>
  `;
}
