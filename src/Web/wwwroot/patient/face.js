// @ts-check
// The face of the timer: a ring with one arc for each repetition, a big number, and the word for what to do now.

/** @typedef {import('./app.js').App} App */
/** @typedef {import('./run.js').Place} Place */

import { h, svg } from './dom.js';
import { mostRepetitions, secondsShown } from './timer.js';

/** From this many seconds on, a hold counts its own seconds in the middle of the ring. */
const LONG_HOLD = 8;
/** With more repetitions than this the arcs would be too thin; then the ring is whole. */
const MOST_ARCS = 24;

/** The ring with its number and the words below. @param {App} app @param {number} index of the item */
export function makeFace(app, index) {
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
