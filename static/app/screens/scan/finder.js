/** Finds a code: by the camera, or in a picture that is chosen. */
import { Notice } from '../../parts/notice/notice.js';
import { html, useState } from '../../vendor/preact.js';
import { useCamera } from './camera.js';
import { decodeFile } from './decode.js';

const WORDS = {
  starting: 'Starting the camera.',
  looking: 'Hold the square code at the foot of the paper card in front of the camera.',
  refused: 'The camera may not be used here. Allow it in the browser, or choose a picture of the code.',
  missing: 'There is no camera on this device. Choose a picture of the code.',
};

/** @param {{onRead: (text: string) => void}} props */
export function Finder({ onRead }) {
  const { video, state } = useCamera(true, onRead);
  const [problem, setProblem] = useState('');
  /** @param {Event} event */
  const choose = async (event) => {
    const [file] = /** @type {HTMLInputElement} */ (event.target).files ?? [];
    if (!file) return;
    setProblem('');
    const text = await decodeFile(file).catch(() => null);
    if (text) onRead(text);
    else setProblem('There is no code to be read in that picture. Take it from nearer, straight and sharp.');
  };
  return html`<div class="scan-finder stack">
    <p role="status">${WORDS[state]}</p>
    <video class=${state === 'looking' ? 'scan-video' : 'scan-video scan-video-off'} ref=${video} muted playsinline aria-label="What the camera sees"></video>
    ${problem && html`<${Notice} level="caution"><p role="alert">${problem}</p><//>`}
    <label class="button scan-choose">Choose a picture of the code<input class="unseen" type="file" accept="image/*" onChange=${choose} /></label>
  </div>`;
}
