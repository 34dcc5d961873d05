/** The camera at the back, and what it reads: looks a few times a second until it has read a code or is told to stop. */
import { useEffect, useRef, useState } from '../../vendor/preact.js';
import { decode } from './decode.js';

const REST_MS = 200;
const WISHES = { video: { facingMode: 'environment', width: { ideal: 1920 }, height: { ideal: 1080 } }, audio: false };

/**
 * @param {boolean} isOn
 * @param {(text: string) => void} onRead
 * @returns {{video: {current: HTMLVideoElement | null}, state: 'starting' | 'looking' | 'refused' | 'missing'}}
 */
export function useCamera(isOn, onRead) {
  const video = useRef(/** @type {HTMLVideoElement | null} */ (null));
  const [state, setState] = useState(/** @type {'starting' | 'looking' | 'refused' | 'missing'} */ ('starting'));

  useEffect(() => {
    if (!isOn) return undefined;
    let isWanted = true;
    /** @type {MediaStream | null} */
    let stream = null;
    const stop = () => stream?.getTracks().forEach((track) => track.stop());

    async function look() {
      const seen = video.current;
      const text = seen && (await decode(seen, { width: seen.videoWidth, height: seen.videoHeight }).catch(() => null));
      if (!isWanted) return;
      if (text) onRead(text);
      else setTimeout(look, REST_MS);
    }

    async function begin() {
      if (!navigator.mediaDevices) return setState('missing');
      try {
        stream = await navigator.mediaDevices.getUserMedia(WISHES);
      } catch (error) {
        if (isWanted) setState(/** @type {Error} */ (error).name === 'NotAllowedError' ? 'refused' : 'missing');
        return undefined;
      }
      if (!isWanted || !video.current) return stop();
      video.current.srcObject = stream;
      await video.current.play().catch(() => {});
      setState('looking');
      return look();
    }

    setState('starting');
    begin();
    return () => {
      isWanted = false;
      stop();
    };
  }, [isOn]);

  return { video, state };
}
