/** Torsion of each eye in primary position, and of both together in down-gaze. */
import { html } from '../../../vendor/preact.js';
import { EYES, EYE_WORDS } from '../../../words/anatomy.js';
import { Figures } from './figures.js';
import { RANGES } from './ranges.js';

const TOLD = [
  ...EYES.map((eye) => ({ field: `excyclotorsion_${eye}_deg`, label: `${EYE_WORDS[eye]}, primary position`, range: RANGES.torsion })),
  { field: 'excyclotorsion_down_deg', label: 'Both eyes together, down-gaze', range: RANGES.torsion },
];

/** @param {{draft: import('../examination.js').Draft, onNote: (fields: any) => void}} props */
export const Torsion = ({ draft, onNote }) => html`<${Figures} draft=${draft} figures=${TOLD} onNote=${onNote} />`;
