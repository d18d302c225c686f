import assert from 'node:assert/strict';
import { test } from 'node:test';
import { canGlide, ease, framesAround, glide, loopPlace, placeAt, splitNumbers } from '../../src/Web/wwwroot/patient/motion.js';

test('easing starts and ends still and passes the middle at half time', () => {
  assert.equal(ease(0), 0);
  assert.equal(ease(1), 1);
  assert.equal(ease(0.5), 0.5);
  assert.ok(ease(0.05) < 0.05 && ease(0.95) > 0.95);
  assert.equal(ease(7), 1);
});

test('the limb goes out, stays at the end while holding, and comes back', () => {
  assert.equal(placeAt('ready', 0.9), 0);
  assert.equal(placeAt('out', 1), 1);
  assert.equal(placeAt('hold', 0.3), 1);
  assert.equal(placeAt('back', 0), 1);
  assert.equal(placeAt('back', 1), 0);
  assert.equal(placeAt('rest', 0.5), 0);
});

test('without motion only the two ends are ever shown', () => {
  for (const phase of ['ready', 'out', 'hold', 'back', 'rest']) {
    for (const progress of [0, 0.3, 0.7]) assert.ok([0, 1].includes(placeAt(phase, progress, true)));
  }
});

test('the loop keeps the tempo of the dose and joins without a jump', () => {
  const dose = { outSeconds: 2, holdSeconds: 30, backSeconds: 3 };
  assert.equal(loopPlace(dose, 1000), 0.5);
  assert.equal(loopPlace(dose, 4900), 1);
  assert.equal(loopPlace(dose, 5000 + 1500), 0.5);
  assert.equal(loopPlace(dose, 8999), 0);
  assert.equal(loopPlace(dose, 9000), 0);
});

test('frames around a place', () => {
  assert.deepEqual(framesAround(0, 9), { low: 0, high: 1, mix: 0 });
  assert.deepEqual(framesAround(0.5, 9), { low: 4, high: 5, mix: 0 });
  assert.deepEqual(framesAround(1, 9), { low: 8, high: 8, mix: 0 });
  assert.deepEqual(framesAround(0.7, 1), { low: 0, high: 0, mix: 0 });
});

test('numbers glide and the form stays', () => {
  const a = splitNumbers('M0 10L-4.5 1e1Z');
  const b = splitNumbers('M10 20L-5.5 20Z');
  assert.ok(canGlide(a, b));
  assert.equal(glide(a, b, 0), 'M0 10L-4.5 10Z');
  assert.equal(glide(a, b, 0.5), 'M5 15L-5 15Z');
  assert.equal(glide(a, b, 1), 'M10 20L-5.5 20Z');
});

test('flags of arcs written without gaps stay flags, and numbers never grow into each other', () => {
  const from = splitNumbers('M1 2a5.2 5.2 0 01.5-3l-2 4z');
  const to = splitNumbers('M1 2a6 6 0 01-1.5 3l2-4z');
  assert.deepEqual(from.numbers, [1, 2, 5.2, 5.2, 0, 0, 1, 0.5, -3, -2, 4]);
  assert.ok(canGlide(from, to));
  assert.equal(glide(from, to, 0), 'M1 2a5.2 5.2 0 0 1 0.5 -3l-2 4z');
  assert.equal(glide(from, to, 0.5), 'M1 2a5.6 5.6 0 0 1 -0.5 0l0 0z');
  assert.ok(!canGlide(from, splitNumbers('M1 2a6 6 0 00-1.5 3l2-4z')));
  assert.ok(!canGlide(from, splitNumbers('M1 2a6 6 0 11-1.5 3l2-4z')));
});

test('differently drawn paths and changed arc flags do not glide', () => {
  assert.ok(!canGlide(splitNumbers('M0 0L1 1'), splitNumbers('M0 0C1 1 2 2 3 3')));
  assert.ok(!canGlide(splitNumbers('M0 0A5 5 0 0 1 9 9'), splitNumbers('M0 0A5 5 0 1 1 9 9')));
  assert.ok(canGlide(splitNumbers('M0 0A5 5 0 0 1 9 9'), splitNumbers('M3 0A5 6 0 0 1 8 9')));
  assert.ok(canGlide(splitNumbers('translate(0 1)'), splitNumbers('translate(1 0)')));
});
