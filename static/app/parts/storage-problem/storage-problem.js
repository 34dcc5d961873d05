/** This phone could not store something: said on every screen until a save succeeds, for nothing else matters before it. */
import { useObservable } from '../../observable.js';
import { storageState } from '../../store/protection.js';
import { html } from '../../vendor/preact.js';
import { Notice } from '../notice/notice.js';

export function StorageProblem() {
  const { problem } = useObservable(storageState);
  if (!problem) return null;
  return html`<div class="storage-problem"><${Notice} level="stop"><p>${problem.text}</p><//></div>`;
}
