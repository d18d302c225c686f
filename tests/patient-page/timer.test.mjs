import assert from 'node:assert/strict';
import { test } from 'node:test';
import {
  buildPlan, cuesBetween, elapsedAt, endOfSet, endedBetween, jumpTo, locate, minutesLeft, pause, planLength, resume,
  secondsShown, startOfReady, stoppedClock,
} from '../../src/Web/wwwroot/patient/timer.js';

const dose = (change = {}) => ({
  sets: 3, repetitions: 10, repetitionsTo: null, outSeconds: 2, holdSeconds: 2, backSeconds: 3, restSeconds: 60,
  weightKg: null, text: '', ...change,
});

test('a plan lasts ready, repetitions and rests, added by hand', () => {
  // 3 s ready + 10 x (2 + 2 + 3) s = 73 s; then twice 60 s rest (its last 3 s are ready) + 70 s.
  assert.equal(planLength(buildPlan(dose())), (73 + 2 * (60 + 70)) * 1000);
});

test('segments follow each other without gap or overlap', () => {
  const plan = buildPlan(dose({ repetitionsTo: 12 }));
  plan.reduce((end, segment) => {
    assert.equal(segment.start, end);
    assert.ok(segment.end > segment.start);
    return segment.end;
  }, 0);
});

test('every repetition of every set ends once', () => {
  const plan = buildPlan(dose({ repetitionsTo: 12 }));
  assert.equal(plan.filter((segment) => segment.endsRepetition).length, 36);
  assert.equal(plan.filter((segment) => segment.endsSet).length, 3);
});

test('phases without length are left out, and a dose without tempo still moves on', () => {
  assert.deepEqual(phases(buildPlan(dose({ sets: 1, repetitions: 1, holdSeconds: 0 }))), ['ready', 'out', 'back']);
  assert.deepEqual(
    phases(buildPlan(dose({ sets: 1, repetitions: 1, outSeconds: 0, holdSeconds: 0, backSeconds: 0 }))),
    ['ready', 'out'],
  );
});

test('a plan taken up again starts at the repetition that was next', () => {
  const plan = buildPlan(dose(), { set: 2, repetition: 4 });
  assert.deepEqual([plan[0].phase, plan[0].set, plan[0].repetition], ['ready', 2, 4]);
  assert.equal(plan.filter((segment) => segment.endsRepetition).length, 7 + 10);
});

test('a rest shorter than getting ready is all getting ready', () => {
  assert.ok(!phases(buildPlan(dose({ restSeconds: 2 }))).includes('rest'));
});

test('the place in the plan comes from elapsed time alone', () => {
  const plan = buildPlan(dose());
  assert.equal(locate(plan, 0).segment.phase, 'ready');
  assert.equal(locate(plan, 2999).segment.phase, 'ready');
  assert.equal(locate(plan, 3000).segment.phase, 'out');
  const hold = locate(plan, 3000 + 7000 + 2500);
  assert.deepEqual([hold.segment.phase, hold.segment.repetition, hold.progress], ['hold', 2, 0.25]);
  assert.equal(locate(plan, planLength(plan)), null);
});

test('the shown seconds of a rest count down to the first repetition', () => {
  const plan = buildPlan(dose());
  assert.equal(secondsShown(locate(plan, 73000)), 60);
  assert.equal(secondsShown(locate(plan, 73000 + 56999)), 4);
  assert.equal(secondsShown(locate(plan, 73000 + 57000)), 3);
});

test('a paused clock stands still and goes on from where it stood', () => {
  let clock = resume(stoppedClock(), 1000);
  assert.equal(elapsedAt(clock, 6000), 5000);
  clock = pause(clock, 6000);
  assert.equal(elapsedAt(clock, 900000), 5000);
  clock = resume(clock, 900000);
  assert.equal(elapsedAt(clock, 901500), 6500);
  assert.equal(resume(clock, 950000), clock);
});

test('time that passed unseen is not lost', () => {
  const plan = buildPlan(dose());
  const clock = resume(stoppedClock(), 0);
  assert.equal(locate(plan, elapsedAt(clock, 73000 + 30000)).segment.phase, 'rest');
});

test('skipping the rest lands on getting ready for the next set', () => {
  const plan = buildPlan(dose());
  const clock = resume(stoppedClock(), 0);
  const place = locate(plan, 80000);
  const there = locate(plan, elapsedAt(jumpTo(clock, 80000, startOfReady(plan, place.index)), 80000));
  assert.deepEqual([there.segment.phase, there.segment.set, there.left], ['ready', 2, 3000]);
});

test('ending a set early lands on its rest, or on the end after the last set', () => {
  const plan = buildPlan(dose({ sets: 2 }));
  assert.equal(locate(plan, endOfSet(plan, locate(plan, 20000).index)).segment.phase, 'rest');
  assert.equal(endOfSet(plan, plan.length - 1), planLength(plan));
});

test('each segment ends in exactly one of many small steps', () => {
  const plan = buildPlan(dose());
  let ended = 0;
  for (let t = -1; t < planLength(plan); t += 333) ended += endedBetween(plan, t, t + 333).length;
  assert.equal(ended, plan.length);
});

test('getting ready is cued each second, each phase once, and the end', () => {
  const plan = buildPlan(dose({ sets: 1, repetitions: 1 }));
  assert.deepEqual(cuesBetween(plan, -1, planLength(plan)), ['ready', 'ready', 'ready', 'out', 'hold', 'back', 'end']);
  assert.deepEqual(cuesBetween(plan, 3000, 4999), []);
});

test('minutes left shrink with the sets done and never reach zero', () => {
  const items = [{ dose: dose() }, { dose: dose() }];
  assert.equal(minutesLeft(14, items, 0, 0), 14);
  assert.equal(minutesLeft(14, items, 1, 0), 7);
  assert.equal(minutesLeft(14, items, 0, 3), 7);
  assert.equal(minutesLeft(14, items, 1, 3), 1);
});

function phases(plan) {
  return plan.map((segment) => segment.phase);
}
