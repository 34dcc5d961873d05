/**
 * The app's own number pads.
 *
 * `PrismPad` takes a prism reading (prism-entry.js decides what a touch does), `FigurePad` a plain figure (figure-entry.js).
 * Both are drawn from the same keys and block what the codec would refuse (limits.js).
 */
export { PrismPad } from './prism-pad.js';
export { FigurePad } from './figure-pad.js';
