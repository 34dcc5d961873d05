/** How far each eye drifts up under cover. */
import { html } from '../../../vendor/preact.js';
import { EYES, EYE_WORDS } from '../../../words/anatomy.js';
import { Figures } from './figures.js';
import { RANGES } from './ranges.js';

const TOLD = EYES.map((eye) => ({ field: `dvd_${eye}_pd`, label: `${EYE_WORDS[eye]}, drift up under cover`, range: RANGES.dissociated }));

/** @param {{draft: import('../examination.js').Draft, onNote: (fields: any) => void}} props */
export const Dissociated = ({ draft, onNote }) => html`<${Figures} draft=${draft} figures=${TOLD} onNote=${onNote} />`;
