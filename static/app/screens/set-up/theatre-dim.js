/** Theatre reads in the dark unless light was chosen on a card. */
import { useTheatreLight } from '../card/theatre-light.js';

export function TheatreDim() {
  useTheatreLight();
  return null;
}
