/**
 * This phone could not store something: said on every screen until a save succeeds, for nothing else matters before it. That the
 * room runs out is said before it has.
 */
import { useObservable } from '../../observable.js';
import { isNearlyFull, storageState } from '../../store/protection.js';
import { html } from '../../vendor/preact.js';
import { say } from '../../words/say.js';
import { Notice } from '../notice/notice.js';

export function StorageProblem() {
  const state = useObservable(storageState);
  const { problem } = state;
  if (!problem && isNearlyFull(state)) {
    return html`<div class="storage-problem">
      <${Notice} level="caution">
        <p>${say('This phone’s storage is nearly full. Send what waits, then free space: remove pictures, films or apps that you do not need.')}</p>
      <//>
    </div>`;
  }
  if (!problem) return null;
  return html`<div class="storage-problem"><${Notice} level="stop"><p>${problem.text}</p><//></div>`;
}
