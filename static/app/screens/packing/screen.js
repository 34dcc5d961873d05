/** What several lists need together, for a week away: which lists, then everything to pack. */
import { ask } from '../../engine/engine.js';
import { useObservable } from '../../observable.js';
import { dateWords, today } from '../../parts/calendar/date.js';
import { Empty } from '../../parts/empty/empty.js';
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { Frame } from '../../parts/frame/frame.js';
import { Kit } from '../../parts/kit/kit.js';
import { Notices } from '../../parts/notice/notice.js';
import { PagePdf } from '../../parts/page-pdf/page-pdf.js';
import { faultsIn } from '../../planning/use-answer.js';
import { useRights } from '../../planning/use-rights.js';
import { listQuestion, listsOf, stateOf } from '../../preparing/lists.js';
import { practiceOf } from '../../preparing/practice.js';
import { kept, records } from '../../store/store.js';
import { html, useEffect, useMemo, useState } from '../../vendor/preact.js';
import { TheatreDim } from '../set-up/theatre-dim.js';

/** The lists that this device does not pack for. */
const LEFT_OUT = 'packing/left out';

export default function Packing() {
  const all = useObservable(records);
  const rights = useRights();
  const { current: practice } = practiceOf(all);
  const coming = listsOf(all).filter(({ current }) => current.body.on >= today());
  const [left, setLeft] = useState(/** @type {() => string[]} */ (() => kept.get(LEFT_OUT) ?? []));
  const chosen = coming.filter(({ id }) => !left.includes(id));
  const { packed, payload, faults } = usePacking(all, chosen.map(({ current }) => current), practice);
  const [isPdfOpen, setPdfOpen] = useState(false);
  const blocked = chosen.length === 0 ? 'Choose a list first.' : packed ? undefined : 'Not counted yet.';
  const turn = (/** @type {string} */ id) => {
    const next = left.includes(id) ? left.filter((each) => each !== id) : [...left, id];
    kept.keep(LEFT_OUT, next);
    setLeft(next);
  };

  return html`<${Frame} title="What to pack" back="/lists" next=${{ label: 'PDF and print', act: () => setPdfOpen(true), blocked }}>
    ${rights.role === 'theatre' && html`<${TheatreDim} />`}
    <div class="packing theatre stack wide">
      ${coming.length === 0 && html`<${Empty} title="No list for today or later" step=${{ label: 'To the lists', to: '/lists' }} />`}
      ${coming.length > 0 &&
      html`<fieldset class="packing-lists">
        <legend>For these lists</legend>
        ${coming.map(
          ({ id, current }) => html`<label class="packing-list" key=${id}>
            <input type="checkbox" checked=${!left.includes(id)} onChange=${() => turn(id)} />
            <span><strong>${dateWords(current.body.on)}</strong>, ${[current.body.team, current.body.place].filter(Boolean).join(', ')}: ${current.body.entries?.length ?? 0}</span>
          </label>`,
        )}
      </fieldset>`}
      ${chosen.length > 0 &&
      (packed
        ? html`<section class="stack" aria-labelledby="packing-kit">
            <h2 id="packing-kit">Kit for ${packed.not_counted.length > 0 && `${packed.operations - packed.not_counted.length} of `}${packed.operations} operation${packed.operations === 1 ? '' : 's'}</h2>
            <${Notices} notices=${packed.notices} />
            <${Kit} lines=${packed.kit} spareWords=${packed.spare_words} />
            <p class="small">${packed.practice_words && `This clinic's practice: ${packed.practice_words}. `}Engine ${packed.engine_version}. ${packed.disclaimer}</p>
          </section>`
        : html`<${EngineWait} faults=${faults} title="This cannot be counted." />`)}
    </div>
    ${isPdfOpen && !blocked && html`<${PagePdf} ask="packing_pdf" payload=${payload} title="Packing list as PDF" name="packing-list" onClose=${() => setPdfOpen(false)} />`}
  <//>`;
}

/**
 * Every list is worked out by itself first; what is packed follows from the needs of their operations.
 *
 * @param {readonly import('../../store/envelope.js').LedgerRecord[]} all
 * @param {import('../../store/envelope.js').LedgerRecord[]} lists
 * @param {import('../../store/envelope.js').LedgerRecord | null} practice
 */
function usePacking(all, lists, practice) {
  const [state, setState] = useState(/** @type {{packed: any, payload: any, faults: any[]}} */ ({ packed: null, payload: null, faults: [] }));
  const asked = useMemo(() => [...lists.map((list) => stateOf(all, list)), practice?.id ?? ''].join('; '), [all, lists.map(({ id }) => id).join(' ')]);
  useEffect(() => {
    let isWanted = true;
    setState({ packed: null, payload: null, faults: [] });
    pack(all, lists, practice).then(
      ({ packed, payload }) => isWanted && setState({ packed, payload, faults: [] }),
      (error) => isWanted && setState({ packed: null, payload: null, faults: faultsIn(error) }),
    );
    return () => {
      isWanted = false;
    };
  }, [asked]);
  return state;
}

/**
 * @param {readonly import('../../store/envelope.js').LedgerRecord[]} all
 * @param {import('../../store/envelope.js').LedgerRecord[]} lists
 * @param {import('../../store/envelope.js').LedgerRecord | null} practice
 */
async function pack(all, lists, practice) {
  const days = [];
  for (const { body } of lists) {
    const day = await ask('day_list', listQuestion(all, { ...body, entries: body.entries ?? [] }, practice));
    days.push({ on: body.on, team: body.team, place: body.place ?? '', cases: day.needs });
  }
  const payload = { days, practice: practice?.body ?? null };
  return { packed: await ask('packing', payload), payload };
}
