/** One screen for the whole adjustment; the engine looks at it before it is saved. */
import { AdjustWindow } from '../../parts/adjust-window/adjust-window.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Field } from '../../parts/field/field.js';
import { Frame } from '../../parts/frame/frame.js';
import { MomentField } from '../../parts/moment-field/moment-field.js';
import { Notices } from '../../parts/notice/notice.js';
import { faultsIn, useAnswer } from '../../planning/use-answer.js';
import { session } from '../../session/session.js';
import { go } from '../../shell/router.js';
import { drafts, saveRecord } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { Alignment } from './alignment.js';
import { MovedSuture } from './moved-suture.js';
import { NOTHING_SAID, NOT_MOVED, adjustableOf, bodyOf, isMoved, keyOf, lacking } from './adjusting.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {import('./adjusting.js').Adjusting} Adjusting */

/** @param {{patient: LedgerRecord, operation: LedgerRecord, replaced: LedgerRecord[]}} props */
export function AdjustmentScreen({ patient, operation, replaced }) {
  const draftName = `adjustment/${operation.id}`;
  const [adjusting, setAdjusting] = useState(/** @type {() => Adjusting} */ (() => drafts.get(draftName) ?? NOTHING_SAID));
  const [unsaved, setUnsaved] = useState(/** @type {import('../../planning/use-answer.js').FaultFacts[]} */ ([]));
  const lack = lacking(adjusting);
  const body = bodyOf(adjusting, operation, session.get().user?.full_name ?? '');
  const { answer, faults, isFresh: isAnswered } = useAnswer('review_adjustment', lack ? null : { operation: operation.body, adjustment: body });
  const review = /** @type {any} */ (answer);
  const isFresh = isAnswered && review !== null;
  const back = `/patients/${patient.patient}/operation/${operation.body.signature_id}`;

  /** @param {Partial<Adjusting>} fields */
  const tell = (fields) => {
    const next = { ...adjusting, ...fields };
    drafts.keep(draftName, next);
    setAdjusting(next);
  };

  const save = async () => {
    try {
      await saveRecord('adjustment', { patient: patient.patient, supersedes: replaced.map(({ id }) => id), body, draft: draftName });
      go(back, { replace: true });
    } catch (error) {
      setUnsaved(faultsIn(error));
    }
  };

  const blocked = lack ?? (isFresh ? review.hindrances[0]?.text : 'The engine has not looked at it yet.');
  return html`<${Frame} title="Adjust the suture" patient=${patient.body} back=${back} next=${{ label: isMoved(adjusting) ? 'Save the adjustment' : 'Save: tied as it was', act: save, blocked }}>
    <div class="adjusting stack">
      <${FaultList} faults=${[...unsaved, ...faults]} title="Not saved. What you wrote is kept on this device." />
      ${operation.body.window && html`<${AdjustWindow} window=${operation.body.window} />`}
      <${Notices} notices=${isFresh ? review.notices : []} />
      <${MomentField} label="Adjusted" name="adjusted_at" value=${adjusting.adjusted_at} onChange=${(/** @type {string | null} */ adjusted_at) => tell({ adjusted_at })} />
      <${Alignment} title="Deviation before" figures=${adjusting.before} onChange=${(/** @type {Adjusting['before']} */ before) => tell({ before })} />
      ${adjustableOf(operation.body).map(
        (muscle) => html`<${MovedSuture}
          key=${keyOf(muscle)}
          muscle=${muscle}
          moved=${adjusting.moved[keyOf(muscle)] ?? NOT_MOVED}
          onChange=${(/** @type {import('./adjusting.js').Moved} */ moved) => tell({ moved: { ...adjusting.moved, [keyOf(muscle)]: moved } })}
        />`,
      )}
      ${isMoved(adjusting) && html`<${Alignment} title="Deviation after" figures=${adjusting.after} onChange=${(/** @type {Adjusting['after']} */ after) => tell({ after })} />`}
      <${Field} label="Note" name="note" rows=${2} value=${adjusting.note} input=${{ maxlength: 2000 }} onInput=${(/** @type {string} */ note) => tell({ note })} />
      ${isFresh &&
      html`<section class="stack tight" aria-label="Where the muscles lie then">
        <h2>Where the muscles lie then</h2>
        ${review.positions.map((/** @type {any} */ each) => html`<p key=${keyOf(each.previous)}>${each.text}</p>`)}
      </section>`}
    </div>
  <//>`;
}
