/** The lenses worn in readings with correction, the distance of the pupils and the length of each eye. */
import { html } from '../../../vendor/preact.js';
import { EYES, EYE_WORDS } from '../../../words/anatomy.js';
import { Figures } from './figures.js';
import { RANGES } from './ranges.js';

const TOLD = [
  ...EYES.map((eye) => ({ field: `spectacles_${eye}_d`, label: `${EYE_WORDS[eye]}, lens (mean power)`, range: RANGES.lens })),
  { field: 'pupil_distance_mm', label: 'Pupil distance', range: RANGES.pupils },
  ...EYES.map((eye) => ({ field: `axial_length_${eye}_mm`, label: `${EYE_WORDS[eye]}, axial length`, range: RANGES.axial })),
];

/** @param {{draft: import('../examination.js').Draft, onNote: (fields: any) => void}} props */
export const Lenses = ({ draft, onNote }) => html`<${Figures} draft=${draft} figures=${TOLD} onNote=${onNote} />`;
