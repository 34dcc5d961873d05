/** The present moment, looked at again while something on the screen depends on it. */
import { useEffect, useState } from '../../vendor/preact.js';

const EVERY_MS = 15_000;

/** @returns {number} milliseconds since the epoch */
export function useNow() {
  const [now_ms, setNow] = useState(Date.now());
  useEffect(() => {
    const look = () => setNow(Date.now());
    const timer = setInterval(look, EVERY_MS);
    // A tablet that slept looks at once when it wakes.
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, []);
  return now_ms;
}
