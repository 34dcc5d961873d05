/** What the engine says of itself, once it is ready. */
import { ask, engineState } from '../../engine/engine.js';
import { useObservable } from '../../observable.js';
import { useEffect, useState } from '../../vendor/preact.js';

/** @returns {{engine_version: string, tables: any[]} | null} null while it is starting or when it failed */
export function useAbout() {
  const { phase } = useObservable(engineState);
  const [about, setAbout] = useState(null);
  useEffect(() => {
    let wanted = true;
    if (phase === 'ready') {
      ask('about', {}).then(
        (answer) => wanted && setAbout(answer),
        () => wanted && setAbout(null),
      );
    }
    return () => {
      wanted = false;
    };
  }, [phase]);
  return about;
}
