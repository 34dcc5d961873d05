/** The clinic's lists, day by day: those to come first, those that are over folded beneath. */
import { useObservable } from '../../observable.js';
import { dateWords, today } from '../../parts/calendar/date.js';
import { Empty } from '../../parts/empty/empty.js';
import { Fold } from '../../parts/fold/fold.js';
import { Frame } from '../../parts/frame/frame.js';
import { useRights } from '../../planning/use-rights.js';
import { listsOf } from '../../preparing/lists.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { TheatreDim } from '../set-up/theatre-dim.js';

export default function Lists() {
  const lists = listsOf(useObservable(records));
  const rights = useRights();
  const day = today();
  const coming = lists.filter(({ current }) => current.body.on >= day);
  const over = lists.filter(({ current }) => current.body.on < day).reverse();
  const next = rights.write('operating_list') ? { label: 'New list', to: '/lists/new' } : undefined;
  const also = coming.length > 0 ? { label: 'What to pack', to: '/lists/packing' } : undefined;
  return html`<${Frame} title="Operating lists" back="/patients" next=${next} also=${also}>
    ${rights.role === 'theatre' && html`<${TheatreDim} />`}
    <div class="lists theatre stack wide">
      ${coming.length === 0 && html`<${Empty} title="No list for today or later"><p>${next ? 'Make one from signed plans; it works with or without a network.' : 'A coordinator or a surgeon makes them.'}</p><//>`}
      ${coming.length > 0 && html`<${Days} lists=${coming} day=${day} />`}
      ${over.length > 0 && html`<${Fold} title="Over" holds=${`${over.length} list${over.length === 1 ? '' : 's'}`}><${Days} lists=${over} day=${day} /><//>`}
    </div>
  <//>`;
}

/** @param {{lists: ReturnType<typeof listsOf>, day: string}} props */
function Days({ lists, day }) {
  const days = [...new Set(lists.map(({ current }) => current.body.on))];
  return html`<div class="stack wide">
    ${days.map(
      (on) => html`<section key=${on} class="stack tight" aria-label=${dateWords(on)}>
        <h2>${dateWords(on)}${on === day ? ', today' : ''}</h2>
        ${lists
          .filter(({ current }) => current.body.on === on)
          .map(({ id, current, conflict }) => html`<a class="lists-row card" key=${id} href=${`#/lists/${id}`}>
            <strong class="lists-team">${current.body.team}</strong>
            <span>${[current.body.place, `from ${current.body.starts_at}`].filter(Boolean).join(', ')}</span>
            <span>${current.body.entries?.length ?? 0} operation${current.body.entries?.length === 1 ? '' : 's'}</span>
            ${conflict && html`<strong class="lists-conflict">Two versions</strong>`}
          </a>`)}
      </section>`,
    )}
  </div>`;
}
