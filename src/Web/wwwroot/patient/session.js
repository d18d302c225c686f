// @ts-check
// One session as a value: which step the person is at and what was done. Every function answers a new value. Pure.

/** @typedef {import('./types.js').Program} Program */
/** @typedef {import('./types.js').Report} Report */
/** @typedef {import('./types.js').Side} Side */
/** @typedef {import('./types.js').SessionLog} SessionLog */
/** @typedef {'exercise' | 'timer' | 'report' | 'hurt' | 'skip' | 'effort' | 'painDuring' | 'painAfter' | 'note'} Step */

/**
 * @typedef {object} Result what was done of one item
 * @property {string} exerciseId
 * @property {Side | null} side
 * @property {number} sets asked for
 * @property {number} setsDone
 * @property {number} repetitionsDone all repetitions, those of an unfinished set included
 * @property {number} repetitionsInSet repetitions of the unfinished set
 * @property {Report | null} report
 * @property {string | null} reason why it was skipped, in the page's words
 * @property {boolean} easier the easier way was chosen
 */

/**
 * @typedef {object} Session
 * @property {string} id
 * @property {string} day
 * @property {number} programVersion
 * @property {Step} step
 * @property {number} index
 * @property {Result[]} results
 * @property {boolean} stoppedForToday
 * @property {number | null} effort
 * @property {number | null} painDuring
 * @property {number | null} painAfter
 * @property {string} words the person's own words
 */

/** Longest text sent along with a session. */
export const NOTE_LIMIT = 1000;

/**
 * @param {Program} program
 * @param {string} id
 * @returns {Session}
 */
export function startSession(program, id) {
  return {
    id,
    day: program.today,
    programVersion: program.programVersion,
    step: 'exercise',
    index: 0,
    results: program.items.map((item) => ({
      exerciseId: item.exerciseId,
      side: item.side,
      sets: item.dose.sets,
      setsDone: 0,
      repetitionsDone: 0,
      repetitionsInSet: 0,
      report: null,
      reason: null,
      easier: false,
    })),
    stoppedForToday: false,
    effort: null,
    painDuring: null,
    painAfter: null,
    words: '',
  };
}

/**
 * True when a stored session belongs to today's program and can go on.
 * @param {Session} session
 * @param {Program} program
 */
export function fits(session, program) {
  return (
    session.day === program.today &&
    session.programVersion === program.programVersion &&
    session.results.length === program.items.length &&
    session.results.every((r, i) => r.exerciseId === program.items[i].exerciseId && r.side === program.items[i].side)
  );
}

/** A running timer does not survive a reload: the exercise is shown, ready to go on. @param {Session} session */
export function afterReload(session) {
  return session.step === 'timer' ? at(session, 'exercise') : session;
}

/** @param {Session} session @param {Step} step @returns {Session} */
export function at(session, step) {
  return { ...session, step };
}

/** @param {Session} session @returns {Result} */
export function current(session) {
  return session.results[session.index];
}

/** @param {Session} session @param {Partial<Result>} change @returns {Session} */
function changeCurrent(session, change) {
  const results = session.results.map((result, i) => (i === session.index ? { ...result, ...change } : result));
  return { ...session, results };
}

/** @param {Session} session */
export function repetitionDone(session) {
  const { repetitionsDone, repetitionsInSet } = current(session);
  return changeCurrent(session, { repetitionsDone: repetitionsDone + 1, repetitionsInSet: repetitionsInSet + 1 });
}

/** @param {Session} session */
export function setDone(session) {
  const { setsDone, sets } = current(session);
  return changeCurrent(session, { setsDone: Math.min(sets, setsDone + 1), repetitionsInSet: 0 });
}

/** The set and repetition to go on with. @param {Session} session */
export function nextRepetition(session) {
  const result = current(session);
  return { set: Math.min(result.sets, result.setsDone + 1), repetition: result.repetitionsInSet + 1 };
}

/** @param {Session} session */
export function isFinished(session) {
  return current(session).setsDone >= current(session).sets;
}

/** "It hurts": noted at once, kept even when the person tries the easier way. @param {Session} session */
export function hurt(session) {
  return at(changeCurrent(session, { report: 'hurt', reason: null }), 'hurt');
}

/** @param {Session} session */
export function tryEasier(session) {
  return at(changeCurrent(session, { easier: true }), isFinished(session) ? 'report' : 'exercise');
}

/**
 * @param {Session} session
 * @param {string} reason
 */
export function skip(session, reason) {
  const kept = current(session).report === 'hurt' ? 'hurt' : 'skipped';
  return next(changeCurrent(session, { report: kept, reason }));
}

/**
 * The person's verdict on the exercise. Pain once noted is never talked away by a later answer.
 * @param {Session} session
 * @param {Report} report
 */
export function reportAs(session, report) {
  if (report === 'hurt') return hurt(session);
  return next(changeCurrent(session, { report: current(session).report === 'hurt' ? 'hurt' : report, reason: null }));
}

/** @param {Session} session @returns {Session} */
export function next(session) {
  const last = session.index >= session.results.length - 1;
  return last ? at(session, 'effort') : { ...session, index: session.index + 1, step: 'exercise' };
}

/** @param {Session} session */
export function stopForToday(session) {
  return at({ ...session, stoppedForToday: true }, 'painDuring');
}

/**
 * @param {Session} session
 * @param {'effort' | 'painDuring' | 'painAfter'} question
 * @param {number | null} value
 * @returns {Session}
 */
export function answer(session, question, value) {
  /** @type {Record<typeof question, Step>} */
  const following = { effort: 'painDuring', painDuring: 'painAfter', painAfter: 'note' };
  return { ...session, [question]: value, step: following[question] };
}

/**
 * The step before this one; null means the overview.
 * @param {Session} session
 * @returns {Session | null}
 */
export function back(session) {
  switch (session.step) {
    case 'timer':
    case 'report':
    case 'skip':
    case 'hurt':
      return at(session, 'exercise');
    case 'exercise':
      return session.index === 0 ? null : { ...session, index: session.index - 1 };
    case 'effort':
      return at(session, 'exercise');
    case 'painDuring':
      return session.stoppedForToday ? at({ ...session, stoppedForToday: false }, 'exercise') : at(session, 'effort');
    case 'painAfter':
      return at(session, 'painDuring');
    default:
      return at(session, 'painAfter');
  }
}

/** @param {Result} result */
function touched(result) {
  return result.report !== null || result.repetitionsDone > 0;
}

/** True when there is something worth sending. @param {Session} session */
export function anythingDone(session) {
  return session.results.some(touched);
}

/**
 * What is sent. Exercises never reached count as skipped, so a short session is seen as short.
 * @param {Session} session
 * @param {string[]} [titles] titles of the items, to say which one was skipped and why
 * @returns {SessionLog}
 */
export function toLog(session, titles = []) {
  const reasons = session.results
    .map((result, i) => (result.reason ? `${titles[i] ?? result.exerciseId}: ${result.reason}.` : ''))
    .filter((line) => line !== '');
  const own = session.words.trim();
  const note = [...(own ? [own] : []), ...reasons].join('\n').slice(0, NOTE_LIMIT);
  return {
    id: session.id,
    day: session.day,
    exercises: session.results.map((result) => ({
      exerciseId: result.exerciseId,
      side: result.side,
      setsDone: result.setsDone,
      repetitionsDone: result.repetitionsDone,
      report: result.report ?? (result.repetitionsDone > 0 ? 'done' : 'skipped'),
    })),
    effort: session.effort,
    painDuring: session.painDuring,
    painAfter: session.painAfter,
    note: note === '' ? null : note,
  };
}

/**
 * True when a rating is above what the clinic allows.
 * @param {{ painDuring: number | null, painAfter: number | null }} session
 * @param {number} ceiling
 */
export function painAbove(session, ceiling) {
  return (session.painDuring ?? 0) > ceiling || (session.painAfter ?? 0) > ceiling;
}
