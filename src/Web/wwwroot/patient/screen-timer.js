// @ts-check
// One exercise under way: get ready, out, hold, back, rest, next set. Time comes from the clock, never from counting.

/** @typedef {import('./app.js').App} App */
/** @typedef {import('./app.js').Screen} Screen */
/** @typedef {import('./session.js').Session} Session */
/** @typedef {import('./timer.js').Segment} Segment */
/** @typedef {NonNullable<ReturnType<typeof locate>>} Place */

import { button, h, heading, svg } from './dom.js';
import { placeAt } from './motion.js';
import { sideLine, stillWanted } from './parts.js';
import { makePicture } from './picture.js';
import { at, hurt, nextRepetition, repetitionDone, setDone } from './session.js';
import { signal } from './signals.js';
import {
  buildPlan, cuesBetween, elapsedAt, endOfSet, endedBetween, jumpTo, locate, mostRepetitions, pause, planLength, resume,
  secondsShown, startOfReady, stoppedClock,
} from './timer.js';

/** From this many seconds on, a hold counts its own seconds in the middle of the ring. */
const LONG_HOLD = 8;
const MOST_ARCS = 24;

/** @param {App} app @param {Session} session @returns {Screen} */
export function timerScreen(app, session) {
  const { words } = app;
  const item = app.program.items[session.index];
  const { dose } = item;
  const plan = buildPlan(dose, nextRepetition(session));
  const picture = makePicture(item.picture, words.pictureBroken);
  const still = stillWanted();
  const face = makeFace(app, session.index);
  let clock = resume(stoppedClock(), performance.now());
  let seen = -1;
  let request = 0;

  const running = () => clock.startedAt !== null;
  /** @param {(session: Session) => Session} change */
  const record = (change) => app.record(change(/** @type {Session} */ (app.session)));

  const step = () => {
    const elapsed = elapsedAt(clock, performance.now());
    const cues = cuesBetween(plan, seen, elapsed);
    if (cues.length > 0) signal(cues[cues.length - 1], app.settings);
    for (const segment of endedBetween(plan, seen, elapsed)) settle(segment);
    seen = elapsed;
    const place = locate(plan, elapsed);
    if (place === null) {
      app.update(at(/** @type {Session} */ (app.session), 'report'));
      return;
    }
    paint(place);
    request = requestAnimationFrame(step);
  };

  /** @param {Segment} segment one that has just ended */
  const settle = (segment) => {
    if (segment.endsRepetition) record(repetitionDone);
    if (segment.endsSet) endSet(segment.set);
  };

  /** @param {number} set */
  const endSet = (set) => {
    record(setDone);
    app.say(set < dose.sets ? words.sayRest(set, dose.sets, dose.restSeconds) : words.sayLastSet);
  };

  /** @param {Place} place */
  const paint = (place) => {
    picture.show(placeAt(place.segment.phase, place.progress, still));
    face.paint(place);
    const { phase, repetition } = place.segment;
    const moving = phase !== 'rest' && phase !== 'ready';
    skipRest.hidden = phase !== 'rest';
    enough.hidden = !(moving && repetition > dose.repetitions);
    stopHere.hidden = running() || phase === 'rest' || !enough.hidden;
  };

  /** @param {number} elapsed */
  const jump = (elapsed) => {
    clock = jumpTo(clock, performance.now(), elapsed);
    seen = elapsed;
    const place = locate(plan, elapsed);
    signal(place === null ? 'end' : place.segment.phase, app.settings);
    if (!running()) toggle();
  };

  /** Where the plan stands now; the plan's last moment counts as its last segment. */
  const here = () => /** @type {Place} */ (locate(plan, Math.min(elapsedAt(clock, performance.now()), planLength(plan) - 1)));

  /** @param {string} [why] */
  const hold = (why = words.paused) => {
    if (!running()) return;
    clock = pause(clock, performance.now());
    cancelAnimationFrame(request);
    face.pause(why);
    pauseButton.textContent = words.resume;
    paint(here());
  };
  const toggle = () => {
    if (running()) return hold();
    clock = resume(clock, performance.now());
    face.pause('');
    pauseButton.textContent = words.pause;
    request = requestAnimationFrame(step);
  };

  const pauseButton = button('plain', words.pause, toggle);
  const skipRest = button('primary', words.skipRest, () => jump(startOfReady(plan, here().index)));
  const enough = button('primary', words.setEnough, () => {
    const { index, segment } = here();
    endSet(segment.set);
    jump(endOfSet(plan, index));
  });
  const stopHere = button('plain', words.stopHere, () => app.update(at(/** @type {Session} */ (app.session), 'report')));
  const hurts = button('danger', words.itHurts, () => app.update(hurt(/** @type {Session} */ (app.session))));
  [skipRest, enough, stopHere].forEach((extra) => (extra.hidden = true));
  request = requestAnimationFrame(step);

  return {
    content: [
      h('div.run', {}, h('div.run-picture', {}, heading(item.title), sideLine(app, item), picture.element), face.element),
      h('div.actions.run-actions', {}, h('div.extra', {}, skipRest, enough, stopHere), pauseButton, hurts),
    ],
    dispose: () => cancelAnimationFrame(request),
    hold: () => hold(),
    visibility: (visible) => {
      const place = here();
      if (!visible && place.segment.phase !== 'rest') hold(words.pausedDark);
      // A rest may run out unseen, but the set waits until the person is back.
      if (visible && running() && elapsedAt(clock, performance.now()) > startOfReady(plan, locate(plan, seen)?.index ?? 0)) {
        jump(startOfReady(plan, locate(plan, seen)?.index ?? 0));
      }
    },
  };
}

/** The ring with its number and the words below. @param {App} app @param {number} index of the item */
function makeFace(app, index) {
  const { words } = app;
  const { dose, repetitionWord } = app.program.items[index];
  const repetitions = mostRepetitions(dose);
  const arcs = repetitions <= MOST_ARCS ? repetitions : 1;
  const ring = makeRing(arcs);
  const number = h('p.number-big', {});
  const small = h('p.number-small', {});
  const word = h('p.phase', {});
  const setText = h('p.set', {});
  const pausedText = h('p.paused', { role: 'status' });
  const longHold = dose.holdSeconds >= LONG_HOLD;
  /** Writes only what changed. @param {HTMLElement} element @param {string} text */
  const put = (element, text) => {
    if (element.textContent !== text) element.textContent = text;
  };

  /** @param {Place} place */
  const paint = (place) => {
    const { phase, set, repetition, start, end } = place.segment;
    const seconds = secondsShown(place);
    const working = phase !== 'ready' && phase !== 'rest';
    const counting = !working || (longHold && phase === 'hold');
    const name = words.phase(phase, repetitionWord);
    element.dataset.phase = phase;
    put(number, String(counting ? seconds : repetition));
    put(small, counting ? words.seconds : words.ofRepetitions(dose, repetitionWord));
    put(word, working && !counting && end - start > 1000 ? `${name} … ${seconds}` : name);
    put(setText, phase === 'rest' ? `${words.upNext}: ${words.setOf(set, dose.sets)}` : words.setOf(set, dose.sets));
    if (phase === 'rest') ring.fill(arcs * (1 - place.progress));
    else ring.fill((repetition - 1 + (working ? repetitionShare(dose, phase, place.progress) : 0)) * (arcs / repetitions));
  };
  const element = h(
    'div.face',
    {},
    h('div.ring', {}, ring.element, h('div.inside', {}, number, small)),
    h('div.below', {}, word, setText, pausedText),
  );
  return { element, paint, pause: (/** @type {string} */ text) => put(pausedText, text) };
}

/**
 * How much of one repetition is done.
 * @param {import('./types.js').Dose} dose
 * @param {import('./timer.js').Phase} phase
 * @param {number} progress
 */
function repetitionShare(dose, phase, progress) {
  const { outSeconds: out, holdSeconds: hold, backSeconds: back } = dose;
  const total = out + hold + back;
  if (total <= 0) return progress;
  const before = { out: 0, hold: out, back: out + hold, ready: 0, rest: 0 }[phase];
  const length = { out, hold, back, ready: 0, rest: 0 }[phase];
  return (before + length * progress) / total;
}

/** A ring of equal arcs, one for each repetition. @param {number} count */
function makeRing(count) {
  const gap = count > 1 ? Math.min(1.6, 20 / count) : 0;
  const length = 100 / count - gap;
  /** @param {number} i @param {string} kind */
  const arc = (i, kind) =>
    svg('circle', {
      class: kind, cx: 60, cy: 60, r: 52, pathLength: 100,
      'stroke-dasharray': `${length} 200`,
      'stroke-dashoffset': -(i * (100 / count) + gap / 2),
    });
  const tracks = Array.from({ length: count }, (_, i) => arc(i, 'track'));
  const fills = Array.from({ length: count }, (_, i) => arc(i, 'fill'));
  const element = svg('svg', { viewBox: '0 0 120 120', 'aria-hidden': 'true' }, ...tracks, ...fills);
  /** @param {number} amount 0 to count */
  const fill = (amount) =>
    fills.forEach((circle, i) => {
      const share = Math.min(1, Math.max(0, amount - i));
      circle.setAttribute('stroke-dasharray', `${(length * share).toFixed(2)} 200`);
      circle.toggleAttribute('hidden', share === 0);
    });
  return { element, fill };
}
