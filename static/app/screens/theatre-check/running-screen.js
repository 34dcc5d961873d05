/** A check under way: the people, then one step at a time as the engine asks, until it passes or stops. */
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Frame } from '../../parts/frame/frame.js';
import { useAnswer } from '../../planning/use-answer.js';
import { html, useEffect } from '../../vendor/preact.js';
import { GoingOn } from './going-on.js';
import { MemberEntry } from './member.js';
import { missingIn, missingInGoingOn, missingInMember } from './missing.js';
import { askSecondAgain, entered, goneOn, holding, named, roundOf } from './round.js';
import { Step } from './step.js';
import { StopShown } from './stop-shown.js';
import { Told } from './told.js';
import { useClosing } from './use-closing.js';

const WHO = {
  first: { title: 'Who leads through this check?', say: 'You hold the device and read aloud.' },
  second: { title: 'Who is the second person?', say: 'The second person takes the device and types their own name. They enter the operation again from the consent.' },
};

/**
 * @param {object} props
 * @param {import('../../planning/kept-cards.js').Pieces} props.pieces
 * @param {string} props.card whether the card still stands
 * @param {import('../../store/envelope.js').LedgerRecord[]} props.also what else is known of the person
 * @param {import('../../planning/theatre-checks.js').PhaseState} props.state
 * @param {import('./round.js').Under} props.under
 * @param {(under: import('./round.js').Under) => void} props.onChange
 * @param {(check: import('../../store/envelope.js').LedgerRecord) => void} props.onClosed
 * @param {() => void} props.onLeave
 */
export function RunningScreen({ pieces, card, also, state, under, onChange, onClosed, onLeave }) {
  const round = roundOf(under, pieces, card, also);
  const isVoid = card !== 'current';
  const who = isVoid || under.first === null ? 'first' : 'second';
  const isNaming = !isVoid && (under.first === null || under.second === null);
  const { answer: progress, faults, isFresh } = useAnswer('follow_check', isNaming ? null : round);
  const closing = useClosing({ pieces, after: state.after, onClosed });
  const isSame = faults.some(({ code }) => code === 'same_person');
  const stop = isFresh ? progress?.stop : null;

  useEffect(() => {
    if (isSame) onChange(askSecondAgain(under));
  }, [faults]);

  // A stop that nobody may pass over is kept at once, whatever the team does next.
  useEffect(() => {
    if (stop && !stop.surgeon_may) closing.close(round);
  }, [stop]);

  /** @param {Record<string, any>} held */
  const hold = (held) => onChange(holding(under, held));
  const frame = { back: onLeave, layout: 'column' };
  const count = progress && html`<p class="check-count">Item ${progress.number} of ${progress.count}</p>`;

  if (isNaming) {
    const next = { label: 'This is my name', act: () => onChange(named(under, who)), blocked: missingInMember(under.held) };
    return html`<${Frame} key=${who} title=${WHO[who].title} ...${frame} next=${next}>
      <${MemberEntry} say=${WHO[who].say} held=${under.held} faults=${isSame ? faults : []} onHold=${hold} />
    <//>`;
  }
  if (!progress || !isFresh) {
    return html`<${Frame} key="waiting" title=${state.words} ...${frame}>
      <div class="theatre check"><${EngineWait} faults=${isSame ? [] : faults} title="The check cannot go on with this." /></div>
    <//>`;
  }
  if (stop?.surgeon_may) {
    const next = { label: 'The surgeon goes on', act: () => onChange(goneOn(under)), blocked: missingInGoingOn(under.held) };
    return html`<${Frame} key="going on" title="Stop" corner=${count} ...${frame} next=${next} also=${{ label: 'Stop here', act: () => closing.close(round) }}>
      <${FaultList} faults=${closing.faults} />
      <${GoingOn} stop=${stop} held=${under.held} onHold=${hold} />
    <//>`;
  }
  if (stop) {
    return html`<${Frame} key="stop" title="Stop" ...${frame} next=${closing.faults.length > 0 ? { label: 'Keep this stop', act: () => closing.close(round) } : undefined}>
      <${FaultList} faults=${closing.faults} />
      <div class="theatre check"><${StopShown} text=${stop.text} differences=${stop.differences} /></div>
    <//>`;
  }
  if (progress.outcome === 'passed') {
    return html`<${Frame} key="passed" title=${`${state.words}: all is said`} ...${frame} next=${{ label: `Close the ${state.phase}`, act: () => closing.close(round) }}>
      <${FaultList} faults=${closing.faults} />
      <div class="theatre check stack">
        <${Told} told=${progress.told} />
        <p class="check-do">${under.first?.name} and ${under.second?.name} went through every item. Closing keeps the check.</p>
      </div>
    <//>`;
  }
  const { step } = progress;
  return html`<${Frame} key=${step.id} title=${step.title} corner=${count} ...${frame} next=${{ label: step.do ? 'Compare' : 'Confirm', act: () => onChange(entered(under, step)), blocked: missingIn(step, under.held) }}>
    <${Step} progress=${progress} under=${under} patientName=${pieces.patient.body.full_name} onHold=${hold} />
  <//>`;
}
