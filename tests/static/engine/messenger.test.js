import assert from 'node:assert/strict';
import { test } from 'node:test';
import { createMessenger, TEXT } from '../../../static/app/engine/messenger.js';

/** A worker that a test plays: it keeps what it was asked, and says what the test makes it say. */
class PlayedWorker {
  asked = [];
  ended = false;
  postMessage(message) {
    this.asked.push(message);
  }
  terminate() {
    this.ended = true;
  }
  say(data) {
    this.onmessage({ data });
  }
}

function scene(t, { startLimit_ms = 60_000, callLimit_ms = 60_000 } = {}) {
  const workers = [];
  const messenger = createMessenger({
    spawn: () => workers[workers.push(new PlayedWorker()) - 1],
    startLimit_ms,
    callLimit_ms: () => callLimit_ms,
  });
  t.after(() => workers.at(-1)?.say({ state: 'failed', why: 'self_test', text: 'the test is over' }));
  return { ...messenger, workers };
}

const soon = () => new Promise((resolve) => setTimeout(resolve, 30));

test('a question asked before the engine is ready waits for it', async (t) => {
  const { ask, state, workers } = scene(t);
  const answer = ask('propose', { case: 1 });
  assert.equal(state.get().phase, 'starting');
  assert.deepEqual(workers[0].asked, []);

  workers[0].say({ state: 'ready', cases: 3 });
  assert.deepEqual(workers[0].asked, [{ id: 1, request: { ask: 'propose', case: 1 } }]);
  workers[0].say({ id: 1, answer: { answer: 'options' } });

  assert.equal(await answer, 'options');
  assert.equal(state.get().phase, 'ready');
});

test('answers find their questions whatever their order', async (t) => {
  const { ask, workers } = scene(t);
  const [first, second] = [ask('about'), ask('check')];
  workers[0].say({ state: 'ready' });
  workers[0].say({ id: 2, answer: { answer: 'second' } });
  workers[0].say({ id: 1, answer: { answer: 'first' } });

  assert.deepEqual(await Promise.all([first, second]), ['first', 'second']);
});

test('a payload cannot change what is asked', (t) => {
  const { ask, workers } = scene(t);
  ask('check', { ask: 'sign' }).catch(() => {});
  workers[0].say({ state: 'ready' });

  assert.equal(workers[0].asked[0].request.ask, 'check');
});

test('faults of the engine are a refusal with these faults', async (t) => {
  const { ask, workers } = scene(t);
  const answer = ask('propose');
  workers[0].say({ state: 'ready' });
  workers[0].say({ id: 1, answer: { faults: [{ code: 'missing', text: 'No reading.', field: 'case', value: '', allowed: '' }] } });

  await assert.rejects(answer, (refused) => refused.name === 'Refused' && refused.faults[0].code === 'missing');
});

test('an engine that fails its self-test is never asked and never started again', async (t) => {
  const { ask, start, state, workers } = scene(t);
  const waiting = ask('propose');
  workers[0].say({ state: 'checking' });
  workers[0].say({ state: 'failed', why: 'self_test', text: 'case 7 gave 5.5 and should give 5.0' });

  await assert.rejects(waiting, (refused) => refused.faults[0].code === 'engine_failed');
  await assert.rejects(ask('propose'), (refused) => refused.faults[0].text === TEXT.self_test);
  start();
  assert.equal(workers.length, 1);
  assert.ok(workers[0].ended);
  assert.deepEqual(state.get(), { phase: 'failed', text: TEXT.self_test, detail: 'case 7 gave 5.5 and should give 5.0' });
});

test('a start that hangs becomes a failure, and may be tried again', async (t) => {
  const { ask, start, state, workers } = scene(t, { startLimit_ms: 10 });
  const waiting = ask('about');
  await assert.rejects(waiting, (refused) => refused.faults[0].code === 'engine_failed');
  assert.deepEqual([state.get().phase, state.get().text], ['failed', TEXT.slowStart]);
  assert.ok(workers[0].ended);

  start();
  workers[1].say({ state: 'ready' });
  assert.equal(state.get().phase, 'ready');
});

test('a question after a failed start starts the engine again', async (t) => {
  const { ask, start, workers } = scene(t);
  start();
  workers[0].say({ state: 'failed', why: 'start', text: 'no network' });
  const answer = ask('about');
  workers[1].say({ state: 'ready' });
  workers[1].say({ id: 1, answer: { answer: 'here' } });

  assert.equal(await answer, 'here');
});

test('a crash is told to who asked, and the next question goes to a new worker', async (t) => {
  const { ask, state, workers } = scene(t);
  const lost = ask('propose');
  workers[0].say({ state: 'ready' });
  workers[0].say({ id: 1, crash: 'RuntimeError: memory access out of bounds' });

  await assert.rejects(lost, (refused) => refused.faults[0].code === 'engine_stopped');
  assert.equal(state.get().phase, 'starting');
  const answer = ask('propose');
  workers[1].say({ state: 'ready' });
  workers[1].say({ id: 2, answer: { answer: 'options' } });
  assert.equal(await answer, 'options');
});

test('what a replaced worker still says is not heard', (t) => {
  const { ask, state, workers } = scene(t);
  ask('propose').catch(() => {});
  workers[0].say({ state: 'ready' });
  workers[0].onerror();
  workers[0].say({ state: 'ready' });

  assert.equal(state.get().phase, 'starting');
});

test('a silent engine is stopped, and who asked is told that it was slow', async (t) => {
  const { ask, workers } = scene(t, { callLimit_ms: 10 });
  const lost = ask('propose');
  workers[0].say({ state: 'ready' });

  await assert.rejects(lost, (refused) => refused.faults[0].code === 'engine_slow');
  assert.ok(workers[0].ended);
});

test('an answered question is not slow afterwards', async (t) => {
  const { ask, state, workers } = scene(t, { callLimit_ms: 10 });
  const answer = ask('about');
  workers[0].say({ state: 'ready' });
  workers[0].say({ id: 1, answer: { answer: 'here' } });
  await answer;
  await soon();

  assert.equal(state.get().phase, 'ready');
  assert.equal(workers.length, 1);
});

test('an engine that breaks three times in a row is given up', async (t) => {
  const { start, state, workers } = scene(t);
  start();
  for (let time = 0; time < 3; time += 1) workers[time].onerror();

  assert.equal(state.get().phase, 'failed');
  assert.equal(workers.length, 3);
});

test('an answer in between starts the count anew', async (t) => {
  const { ask, state, workers } = scene(t);
  for (let time = 0; time < 5; time += 1) {
    const answer = ask('about');
    workers[time].say({ state: 'ready' });
    workers[time].say({ id: time + 1, answer: { answer: time } });
    assert.equal(await answer, time);
    workers[time].onerror();
  }

  assert.equal(state.get().phase, 'starting');
});
