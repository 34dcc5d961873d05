/**
 * Carries questions to the engine's worker and answers back, and keeps the worker alive.
 *
 * Questions asked before the engine is ready wait for it. A worker that breaks or stays silent is replaced, up to
 * ATTEMPTS times in a row without an answer in between; then the engine has failed until `start()` is called again.
 * An engine that gives a wrong answer to its self-test is never asked anything: that verdict stands until the page is left.
 */
import { observable } from '../observable.js';
import { Refused, refusal } from './refused.js';

const ATTEMPTS = 3;

export const TEXT = {
  starting: 'The engine is starting.',
  checking: 'The engine is checking itself.',
  ready: '',
  restarting: 'The engine stopped and is starting again.',
  slowStart: 'The engine did not start in time. Everything else works; try again when the network is back.',
  start: 'The engine could not be started. It must be fetched once with a network; everything else works.',
  self_test: 'The engine gave a wrong answer to one of its test cases, so it will not calculate. Report this before you go on.',
  stopped: 'The engine stopped while it was calculating. Nothing was lost; ask again.',
  slow: 'The engine took too long and was stopped. Nothing was lost; ask again.',
};

/** @typedef {{phase: 'starting' | 'ready' | 'failed', text: string, detail?: string}} EngineState  `detail`: for who repairs it */
/** @typedef {{request: object, resolve: (answer: any) => void, reject: (error: Refused) => void, timer?: ReturnType<typeof setTimeout>}} Question */

/**
 * @param {object} means
 * @param {() => Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>} means.spawn
 * @param {number} means.startLimit_ms  from starting the worker to ready, download included
 * @param {(name: string) => number} means.callLimit_ms  for one answer, by question
 */
export function createMessenger({ spawn, startLimit_ms, callLimit_ms }) {
  /** @type {import('../observable.js').Observable<EngineState>} */
  const state = observable(/** @type {EngineState} */ ({ phase: 'starting', text: TEXT.starting }));
  /** @type {Map<number, Question>} */
  const open = new Map();
  /** @type {ReturnType<typeof spawn> | null} */
  let worker = null;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let startTimer;
  let lastId = 0;
  let broken = 0;
  let distrusted = false;

  /** Starts the engine unless it runs already or gave wrong answers. */
  function start() {
    if (worker || distrusted) return;
    broken = 0;
    launch(TEXT.starting);
  }

  /** @param {string} text */
  function launch(text) {
    state.set({ phase: 'starting', text });
    const mine = (worker = spawn());
    startTimer = setTimeout(() => fail(TEXT.slowStart), startLimit_ms);
    mine.onmessage = ({ data }) => mine === worker && hear(data);
    mine.onerror = () => mine === worker && breakDown(TEXT.stopped, 'engine_stopped');
  }

  /** @param {any} data */
  function hear(data) {
    if (data.state === 'checking') state.set({ phase: 'starting', text: TEXT.checking });
    else if (data.state === 'ready') {
      clearTimeout(startTimer);
      state.set({ phase: 'ready', text: TEXT.ready });
      for (const [id, question] of open) send(id, question);
    } else if (data.state === 'failed') {
      distrusted = data.why === 'self_test';
      fail(distrusted ? TEXT.self_test : TEXT.start, data.text);
    } else if (data.crash) breakDown(TEXT.stopped, 'engine_stopped');
    else settle(data.id, data.answer);
  }

  /**
   * @param {number} id
   * @param {{answer?: any, faults?: import('./refused.js').EngineFault[]}} said
   */
  function settle(id, { answer, faults }) {
    const question = open.get(id);
    if (!question) return;
    open.delete(id);
    clearTimeout(question.timer);
    broken = 0;
    if (faults) question.reject(new Refused(faults));
    else question.resolve(answer);
  }

  /**
   * @param {number} id
   * @param {Question} question
   */
  function send(id, question) {
    const name = /** @type {{ask: string}} */ (question.request).ask;
    question.timer = setTimeout(() => breakDown(TEXT.slow, 'engine_slow'), callLimit_ms(name));
    worker?.postMessage({ id, request: question.request });
  }

  /**
   * @param {string} text
   * @param {string} code
   */
  function breakDown(text, code) {
    const wasReady = state.get().phase === 'ready';
    stop();
    if (wasReady) rejectAll(refusal(code, text));
    broken += 1;
    if (broken < ATTEMPTS) launch(TEXT.restarting);
    else fail(TEXT.start);
  }

  /**
   * @param {string} text
   * @param {string} [detail]
   */
  function fail(text, detail) {
    stop();
    state.set({ phase: 'failed', text, detail });
    rejectAll(refusal('engine_failed', text));
  }

  function stop() {
    clearTimeout(startTimer);
    worker?.terminate();
    worker = null;
  }

  /** @param {Refused} error */
  function rejectAll(error) {
    const questions = [...open.values()];
    open.clear();
    for (const question of questions) {
      clearTimeout(question.timer);
      question.reject(error);
    }
  }

  /**
   * @param {string} name
   * @param {object} [payload]
   * @returns {Promise<any>}  the desk's answer; rejects with Refused
   */
  function ask(name, payload = {}) {
    start();
    if (state.get().phase === 'failed') return Promise.reject(refusal('engine_failed', state.get().text));
    return new Promise((resolve, reject) => {
      lastId += 1;
      /** @type {Question} */
      const question = { request: { ...payload, ask: name }, resolve, reject };
      open.set(lastId, question);
      if (state.get().phase === 'ready') send(lastId, question);
    });
  }

  return { ask, start, state };
}
