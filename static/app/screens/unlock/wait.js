/** How long a person has still to wait before the next try. */
import { useEffect, useState } from '../../vendor/preact.js';

/**
 * @param {number} waitUntil milliseconds of the device's clock, 0 when no wait is on
 * @returns {number} whole seconds left, counted down
 */
export function useWait(waitUntil) {
  const [now, setNow] = useState(Date.now());
  const left = Math.max(0, Math.ceil(((waitUntil ?? 0) - now) / 1000));
  useEffect(() => {
    setNow(Date.now());
    if (!waitUntil || waitUntil <= Date.now()) return undefined;
    const timer = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(timer);
  }, [waitUntil, left === 0]);
  return left;
}
