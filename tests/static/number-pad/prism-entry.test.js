import assert from 'node:assert/strict';
import { test } from 'node:test';
import { entryFrom, figures, touched, unfinished } from '../../../static/app/parts/number-pad/prism-entry.js';

const eso = { type: 'direction', axis: 'horizontal', sign: 'plus' };
const exo = { type: 'direction', axis: 'horizontal', sign: 'minus' };
const rightHyper = { type: 'direction', axis: 'vertical', sign: 'plus' };
const leftHyper = { type: 'direction', axis: 'vertical', sign: 'minus' };
const step = (pd) => ({ type: 'step', pd });
const keys = (text) => [...text].map((key) => ({ type: 'key', key }));

const after = (touches, from = entryFrom()) => touches.reduce(touched, from);
const horizontal = (...touches) => figures(after(touches)).horizontal_pd;
const vertical = (...touches) => figures(after(touches)).vertical_pd;

test('a direction and a step are a reading: eso and right hyper positive, exo and left hyper negative', () => {
  assert.equal(horizontal(eso, step(40)), 40);
  assert.equal(horizontal(exo, step(25)), -25);
  assert.equal(vertical(rightHyper, step(6)), 6);
  assert.equal(vertical(leftHyper, step(6)), -6);
});

test('digits make an exact figure, and a tenth is as fine as it gets', () => {
  assert.equal(horizontal(eso, ...keys('52')), 52);
  assert.equal(horizontal(exo, ...keys('7.5')), -7.5);
  const entry = after([eso, ...keys('7.55')]);
  assert.equal(figures(entry).horizontal_pd, 7.5);
  assert.equal(entry.refusal.code, 'too_fine');
});

test('a figure without a direction is refused and changes nothing', () => {
  for (const touch of [step(40), { type: 'key', key: '4' }, { type: 'erase' }]) {
    const entry = after([touch]);
    assert.equal(entry.refusal.code, 'needs_direction');
    assert.deepEqual(figures(entry), { horizontal_pd: null, vertical_pd: null });
  }
});

test('a figure beyond the limit is refused with the allowed range, and what stood stays', () => {
  const entry = after([eso, ...keys('151')]);
  assert.equal(figures(entry).horizontal_pd, 15);
  assert.deepEqual([entry.refusal.code, entry.refusal.allowed], ['too_large', '0 to 150 Δ.']);
  assert.equal(vertical(rightHyper, ...keys('81')), 8);
  assert.equal(vertical(rightHyper, ...keys('80')), 80);
});

test('the other direction turns the figure round without losing it', () => {
  assert.equal(horizontal(eso, step(30), exo), -30);
});

test('a step or a digit after a step begins a new figure', () => {
  assert.equal(horizontal(eso, step(30), step(35)), 35);
  assert.equal(horizontal(eso, step(30), ...keys('4')), 4);
});

test('none is zero, never minus zero, and a direction after it asks for a figure again', () => {
  assert.ok(Object.is(horizontal({ type: 'none', axis: 'horizontal' }), 0));
  assert.ok(Object.is(horizontal(exo, ...keys('0')), 0));
  assert.equal(horizontal({ type: 'none', axis: 'horizontal' }, eso), null);
});

test('horizontal and vertical keep their own figures', () => {
  const entry = after([eso, step(40), rightHyper, step(4)]);
  assert.deepEqual(figures(entry), { horizontal_pd: 40, vertical_pd: 4 });
  assert.deepEqual(figures(after([{ type: 'clear', axis: 'horizontal' }], entry)), { horizontal_pd: null, vertical_pd: 4 });
});

test('a direction without its figure is unfinished, and a second touch takes it back', () => {
  const entry = after([eso]);
  assert.equal(unfinished(entry).code, 'needs_figure');
  assert.equal(unfinished(after([eso], entry)), null);
  assert.equal(unfinished(after([step(40)], entry)), null);
});

test('erasing goes digit by digit, and to nothing', () => {
  assert.equal(horizontal(eso, ...keys('52'), { type: 'erase' }), 5);
  assert.equal(horizontal(eso, ...keys('52'), { type: 'erase' }, { type: 'erase' }), null);
});

test('an entry made from a reading gives the same reading back', () => {
  for (const reading of [{ horizontal_pd: -7.5, vertical_pd: null }, { horizontal_pd: 0, vertical_pd: -3 }, { horizontal_pd: 40, vertical_pd: 4 }]) {
    assert.deepEqual(figures(entryFrom(reading)), reading);
  }
});
