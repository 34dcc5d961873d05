/**
 * UUIDv7 (RFC 9562): 48 bits of milliseconds, then a 12-bit counter that keeps ids of one millisecond in order
 * (section 6.2, method 1), then 62 random bits.
 */
import { hex } from './hex.js';

let last_ms = 0;
let counter = 0;

/**
 * @param {number} [now_ms]
 * @returns {string}  lower case; each is greater than the one before on this page, even when the clock steps back
 */
export function uuid7(now_ms = Date.now()) {
  const random = crypto.getRandomValues(new Uint8Array(10));
  if (now_ms > last_ms) {
    last_ms = now_ms;
    // The counter starts in its lower half, so that there is room for 2,048 more.
    counter = ((random[8] << 8) | random[9]) & 0x7ff;
  } else {
    counter += 1;
    if (counter > 0xfff) {
      counter = 0;
      last_ms += 1;
    }
  }
  const time = last_ms.toString(16).padStart(12, '0');
  random[0] = (random[0] & 0x3f) | 0x80;
  const tail = hex(random.subarray(0, 8));
  return [
    time.slice(0, 8),
    time.slice(8),
    `7${counter.toString(16).padStart(3, '0')}`,
    tail.slice(0, 4),
    tail.slice(4),
  ].join('-');
}
