/** What stands in brackets after the distance from the limbus: what a caliper spans of it, and where the insertion lies. Pure. */
import { mmWords } from '../../words/figures.js';

/** @param {{caliper_mm?: number | null, insertion_mm?: number | null}} line of the card */
export const besideLimbus = ({ caliper_mm = null, insertion_mm = null }) =>
  [caliper_mm !== null && `straight caliper from the limbus ${mmWords(caliper_mm)}`, insertion_mm !== null && `insertion at ${mmWords(insertion_mm)}`].filter(Boolean).join('; ');
