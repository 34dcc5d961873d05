/** One screen for a visit: measured first, with the screens of every measurement; the rest is touched or left. */
import { shortDateWords, today } from '../../parts/calendar/date.js';
import { Choice } from '../../parts/choice/choice.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Field } from '../../parts/field/field.js';
import { FigureField } from '../../parts/figure-field/figure-field.js';
import { Fold } from '../../parts/fold/fold.js';
import { Frame } from '../../parts/frame/frame.js';
import { Notice, Notices } from '../../parts/notice/notice.js';
import { LIMITS } from '../../parts/number-pad/limits.js';
import { useObservable } from '../../observable.js';
import { faultsIn } from '../../planning/use-answer.js';
import { go } from '../../shell/router.js';
import { records, saveRecord } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { Ahead } from './ahead.js';
import { Measured } from './measured.js';
import { Signs } from './signs.js';
import { useVisit } from './use-visit.js';
import { REOPERATIONS } from './visiting.js';
import { WhichVisit } from './which-visit.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

const OCTAVES = { ...LIMITS.stereo_octaves_lost, decimals: 1, unit: 'octaves' };
const REOPERATION_CHOICES = [...REOPERATIONS.map((value) => ({ value, words: value })), { value: null, words: 'not said' }];

/** @param {import('./visiting.js').Visiting} visiting */
const stereoWords = ({ stereo_octaves_lost: octaves, stereo_lost_to_nil: nil }) => (nil ? 'lost to nil' : octaves === null ? 'not said' : `${octaves} octaves lost`);

/** @param {{patient: LedgerRecord, followed: import('../../planning/following.js').Followed, corrected?: LedgerRecord}} props */
export function VisitScreen({ patient, followed, corrected }) {
  const all = useObservable(records);
  const { visiting, draftName, draft, examination, body, lack, review, faults, isReviewed, hasPlan, tell, discard } = useVisit(all, followed, corrected);
  const [unsaved, setUnsaved] = useState(/** @type {import('../../planning/use-answer.js').FaultFacts[]} */ ([]));
  const { operation } = followed;
  const home = `/patients/${patient.patient}`;
  const here = `${home}/visit/${operation.id}/${corrected?.id ?? 'new'}`;

  const save = async () => {
    try {
      await saveRecord('follow_up', { patient: operation.patient, supersedes: corrected ? [corrected.id] : [], body, draft: draftName });
      go(`${home}/course/${operation.id}`, { replace: true });
    } catch (error) {
      setUnsaved(faultsIn(error));
    }
  };

  const hindrances = isReviewed && review ? review.hindrances : [];
  const blocked = lack ?? (faults.length > 0 ? faults[0].text : isReviewed || !hasPlan ? hindrances[0]?.text : 'The engine has not looked at it yet.');
  const measure = `${here}/measure`;
  const saving = { label: corrected ? 'Save the correction' : 'Save the visit', act: save, blocked };
  const next = examination || visiting.unmeasured ? saving : { label: 'Measure', to: measure };

  return html`<${Frame} title=${corrected ? 'Correct the visit' : 'Visit'} patient=${patient.body} back=${home} next=${next}>
    <div class="visit stack">
      <${FaultList} faults=${[...unsaved, ...faults, ...hindrances]} title="Not saved. What you wrote is kept on this device." />
      <${Notices} notices=${isReviewed && review ? review.warnings : []} />
      ${!hasPlan && html`<${Notice} level="caution"><p>The signed plan of this operation is not on this device: nothing can be compared, and nothing is warned of here.</p><//>`}
      <${WhichVisit} visiting=${visiting} draft=${draft} onTell=${tell} />
      <${Measured} examination=${examination} measure=${measure} unmeasured=${visiting.unmeasured} onUnmeasured=${() => tell({ unmeasured: true })} />
      ${isReviewed && review && review.statements.map((each) => html`<p class="small" key=${each.code}>${each.text}</p>`)}
      <${Signs} looked=${visiting.looked} signs=${visiting.signs} onTell=${tell} />
      <${Fold} title="Near stereoacuity" holds=${stereoWords(visiting)}>
        <p class="small soft">Lost since before surgery. One octave is a doubling of the seconds of arc: from 60 to 120 is 1, from 60 to 240 is 2; 0 is none.</p>
        <${FigureField} label="Octaves lost" value=${visiting.stereo_octaves_lost} range=${OCTAVES} onChange=${(/** @type {number | null} */ stereo_octaves_lost) => tell({ stereo_octaves_lost })} />
        <label class="visit-tick"><input type="checkbox" checked=${visiting.stereo_lost_to_nil} onChange=${() => tell({ stereo_lost_to_nil: !visiting.stereo_lost_to_nil })} /> <span>Lost to nil: none is left</span></label>
      <//>
      <${Fold} title="Another operation" holds=${visiting.reoperation ?? 'not said'}>
        <${Choice} legend="Another operation is" name="reoperation" options=${REOPERATION_CHOICES} value=${visiting.reoperation} onChange=${(/** @type {string | null} */ reoperation) => tell({ reoperation })} />
      <//>
      <${Ahead} visiting=${visiting} draft=${draft} hindrances=${hindrances} onTell=${tell} />
      <${Field} label="Complaints and plan" name="note" optional=${true} rows=${3} value=${visiting.note} input=${{ maxlength: 2000 }} onInput=${(/** @type {string} */ note) => tell({ note })} />
      <${Fold} title="Date of the visit" holds=${visiting.seen_on === today() ? `today, ${shortDateWords(visiting.seen_on)}` : shortDateWords(visiting.seen_on)} open=${visiting.seen_on !== today()}>
        <${Field}
          label="Seen on"
          name="seen_on"
          value=${visiting.seen_on}
          input=${{ type: 'date', min: operation.body.operated_on, max: today(), required: true }}
          fault=${hindrances.find(({ field }) => field === 'seen_on')}
          onInput=${(/** @type {string} */ seen_on) => seen_on && tell({ seen_on })}
        />
      <//>
      ${discard && html`<button type="button" class="button bare" onClick=${discard}>Take back everything that is not saved</button>`}
    </div>
  <//>`;
}
