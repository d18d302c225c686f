import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Run } from '../../src/Web/wwwroot/patient/run.js';
import { buildPlan } from '../../src/Web/wwwroot/patient/timer.js';

// Two sets of two repetitions: ready 3 s, 2 x (1 + 1 + 1) s, rest 10 s (7 + 3 ready), 6 s.
const dose = (change = {}) => ({
  sets: 2, repetitions: 2, repetitionsTo: null, outSeconds: 1, holdSeconds: 1, backSeconds: 1, restSeconds: 10,
  weightKg: null, text: '', ...change,
});
const start = (change) => new Run(buildPlan(dose(change)), 1000);
const counted = (ended) => ended.filter((segment) => segment.endsRepetition).length;

test('each repetition is told once, however seldom the run is asked', () => {
  const often = start();
  let sum = 0;
  for (let now = 1000; now <= 26016; now += 16) sum += counted(often.advance(now).ended);
  assert.equal(sum, 4);
  const seldom = start();
  assert.equal(counted(seldom.advance(26000).ended), 4);
  assert.equal(counted(seldom.advance(27000).ended), 0);
});

test('the run ends after its last second and not before', () => {
  const run = start();
  assert.notEqual(run.advance(1000 + 24999).place, null);
  const end = run.advance(1000 + 25000);
  assert.equal(end.place, null);
  assert.equal(end.cue, 'end');
});

test('only the newest cue is given after a stutter', () => {
  const run = start();
  assert.equal(run.advance(1000).cue, 'ready');
  assert.equal(run.advance(1500).cue, null);
  assert.equal(run.advance(1000 + 4100).cue, 'hold');
});

test('a skipped rest adds no repetition and gets the person ready', () => {
  const run = start();
  run.advance(1000 + 9500);
  assert.equal(run.skipRest(1000 + 9500), 'ready');
  const { ended, place } = run.advance(1000 + 9501);
  assert.deepEqual(ended, []);
  assert.deepEqual([place.segment.phase, place.segment.set], ['ready', 2]);
});

test('a set ended early does not count the repetition under way', () => {
  const run = start({ repetitionsTo: 4 });
  assert.equal(counted(run.advance(1000 + 3000 + 6500).ended), 2);
  assert.equal(run.endSet(1000 + 9500), 'rest');
  assert.equal(counted(run.advance(1000 + 9600).ended), 0);
});

test('the last set ended early ends the run', () => {
  const run = start({ sets: 1, repetitionsTo: 4 });
  run.advance(10500);
  assert.equal(run.endSet(10500), 'end');
  assert.equal(run.advance(10501).place, null);
});

test('a pause stops the run for as long as it lasts', () => {
  const run = start();
  run.advance(5000);
  run.pause(5000);
  assert.ok(!run.running);
  assert.equal(counted(run.advance(500000).ended), 0);
  run.resume(500000);
  assert.equal(run.here(500000).segment.phase, 'hold');
});

test('a rest that ran out unseen waits at getting ready', () => {
  const run = start();
  run.advance(1000 + 9100);
  assert.equal(run.comeBack(1000 + 400000), 'ready');
  const { place, ended } = run.advance(1000 + 400000);
  assert.deepEqual([place.segment.phase, place.left], ['ready', 3000]);
  assert.deepEqual(ended, []);
});

test('coming back within the rest changes nothing', () => {
  const run = start();
  run.advance(1000 + 9100);
  assert.equal(run.comeBack(1000 + 12000), null);
  assert.equal(run.here(1000 + 12000).segment.phase, 'rest');
});
