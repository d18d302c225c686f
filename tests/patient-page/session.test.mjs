import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as s from '../../src/Web/wwwroot/patient/session.js';

const program = (change = {}) => ({
  programVersion: 3,
  today: '2026-11-25',
  items: [
    { exerciseId: 'leg-raise', side: 'left', dose: { sets: 2 } },
    { exerciseId: 'leg-raise', side: 'right', dose: { sets: 2 } },
    { exerciseId: 'bridge', side: null, dose: { sets: 1 } },
  ],
  ...change,
});
const begun = () => s.startSession(program(), 'id-1');
const times = (n, change, session) => Array.from({ length: n }).reduce((value) => change(value), session);

test('a whole session goes exercise by exercise to the questions and becomes one log', () => {
  let session = begun();
  for (const report of ['done', 'tooEasy', 'tooHard']) {
    const sets = s.current(session).sets;
    session = times(sets, (value) => s.setDone(times(10, s.repetitionDone, value)), s.at(session, 'timer'));
    assert.ok(s.isFinished(session));
    session = s.reportAs(session, report);
  }
  assert.equal(session.step, 'effort');
  session = s.answer(session, 'effort', 6);
  session = s.answer(session, 'painDuring', 2);
  session = s.answer(session, 'painAfter', 0);
  assert.equal(session.step, 'note');
  assert.deepEqual(s.toLog({ ...session, words: '  fine ' }), {
    id: 'id-1',
    day: '2026-11-25',
    exercises: [
      { exerciseId: 'leg-raise', side: 'left', setsDone: 2, repetitionsDone: 20, report: 'done' },
      { exerciseId: 'leg-raise', side: 'right', setsDone: 2, repetitionsDone: 20, report: 'tooEasy' },
      { exerciseId: 'bridge', side: null, setsDone: 1, repetitionsDone: 10, report: 'tooHard' },
    ],
    effort: 6,
    painDuring: 2,
    painAfter: 0,
    note: 'fine',
  });
});

test('a pain of zero is sent as zero and an unanswered one as nothing', () => {
  const log = s.toLog(s.answer(s.answer(begun(), 'painDuring', 0), 'painAfter', null));
  assert.equal(log.painDuring, 0);
  assert.equal(log.painAfter, null);
});

test('no change ever alters the session it was made from', () => {
  const session = Object.freeze({ ...begun(), results: Object.freeze(begun().results.map(Object.freeze)) });
  const before = JSON.stringify(session);
  for (const change of [s.repetitionDone, s.setDone, s.hurt, s.tryEasier, s.next, s.stopForToday, s.back]) change(session);
  assert.equal(JSON.stringify(session), before);
});

test('it hurts is noted at once and no later answer takes it back', () => {
  let session = s.hurt(s.repetitionDone(begun()));
  assert.equal(session.step, 'hurt');
  session = s.tryEasier(session);
  assert.equal(session.step, 'exercise');
  assert.equal(s.reportAs(session, 'done').results[0].report, 'hurt');
  assert.equal(s.skip(session, 'tired').results[0].report, 'hurt');
});

test('a skipped exercise says why, after the own words', () => {
  const session = s.skip({ ...begun(), words: 'Busy day' }, 'I have no time');
  const log = s.toLog(session, ['Leg raise (Left leg)']);
  assert.equal(log.exercises[0].report, 'skipped');
  assert.equal(log.note, 'Busy day\nLeg raise (Left leg): I have no time.');
});

test('stopping for today asks about pain, and what was not reached counts as skipped', () => {
  const session = s.stopForToday(s.hurt(s.repetitionDone(begun())));
  assert.equal(session.step, 'painDuring');
  assert.deepEqual(s.toLog(session).exercises.map((e) => e.report), ['hurt', 'skipped', 'skipped']);
  assert.equal(s.back(session).step, 'exercise');
});

test('an interrupted set goes on at its next repetition', () => {
  let session = s.setDone(times(10, s.repetitionDone, s.at(begun(), 'timer')));
  session = times(3, s.repetitionDone, session);
  const again = s.afterReload(JSON.parse(JSON.stringify(session)));
  assert.equal(again.step, 'exercise');
  assert.deepEqual(s.nextRepetition(again), { set: 2, repetition: 4 });
  assert.equal(s.current(again).repetitionsDone, 13);
});

test('a stored session fits only the same day, program and exercises', () => {
  const session = begun();
  assert.ok(s.fits(session, program()));
  assert.ok(!s.fits(session, program({ today: '2026-11-26' })));
  assert.ok(!s.fits(session, program({ programVersion: 4 })));
  assert.ok(!s.fits(session, program({ items: program().items.slice(1) })));
});

test('back leads from every step to the first screen', () => {
  for (const step of ['exercise', 'timer', 'report', 'hurt', 'skip', 'effort', 'painDuring', 'painAfter', 'note']) {
    let session = { ...begun(), step, index: 2 };
    let steps = 0;
    while (session !== null && steps < 20) {
      session = s.back(session);
      steps++;
    }
    assert.equal(session, null, step);
  }
});

test('nothing done is nothing to keep', () => {
  assert.ok(!s.anythingDone(begun()));
  assert.ok(s.anythingDone(s.repetitionDone(begun())));
  assert.ok(s.anythingDone(s.skip(begun(), 'tired')));
});

test('pain is above only beyond the ceiling', () => {
  assert.ok(!s.painAbove({ painDuring: 3, painAfter: null }, 3));
  assert.ok(s.painAbove({ painDuring: null, painAfter: 4 }, 3));
});

test('a note never grows beyond its limit', () => {
  assert.equal(s.toLog({ ...begun(), words: 'a'.repeat(5000) }).note.length, s.NOTE_LIMIT);
});
