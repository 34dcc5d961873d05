/** Stands where an answer of the engine will stand: what the engine is doing, what it refused, or why it cannot calculate. */
import { engineState, startEngine } from '../../engine/engine.js';
import { useObservable } from '../../observable.js';
import { html } from '../../vendor/preact.js';
import { FaultList } from '../fault-list/fault-list.js';
import { Notice } from '../notice/notice.js';

/** @param {{faults?: import('../../planning/use-answer.js').FaultFacts[], title?: string}} props `title` heads a refusal */
export function EngineWait({ faults = [], title = 'The engine cannot plan from this.' }) {
  const { phase, text } = useObservable(engineState);
  if (phase === 'failed') {
    return html`<div class="stack">
      <${Notice} level="stop">
        <p>Nothing can be calculated on this device now. ${text}</p>
        <p>What you entered is safe. Signed cards can still be opened.</p>
      <//>
      <div class="buttons"><button type="button" class="button" onClick=${startEngine}>Try again</button></div>
    </div>`;
  }
  if (faults.length > 0) return html`<${FaultList} faults=${faults} title=${title} />`;
  return html`<div class="engine-wait" role="status">
    <p><strong>${phase === 'ready' ? 'Calculating' : text}</strong></p>
  </div>`;
}
