// @ts-check
// How the picture moves: which frame belongs to which moment, and smooth steps between two frames drawn alike. Pure.

/** @typedef {import('./timer.js').Phase} Phase */
/** @typedef {import('./types.js').Dose} Dose */

/** Stillness between two turns of the looping picture. */
const PAUSE_SECONDS = 1;

/** Slow at both ends, as a limb moves. @param {number} t 0..1 */
export function ease(t) {
  const x = Math.min(1, Math.max(0, t));
  return x * x * (3 - 2 * x);
}

/**
 * Place between start pose (0) and end pose (1).
 * @param {Phase} phase
 * @param {number} progress 0..1 within the phase
 * @param {boolean} still no motion wanted: only the two ends
 */
export function placeAt(phase, progress, still = false) {
  if (phase === 'hold') return 1;
  if (phase === 'out') return still ? 1 : ease(progress);
  if (phase === 'back') return still ? 0 : 1 - ease(progress);
  return 0;
}

/**
 * Place of the looping picture after `milliseconds`, at the dose's own tempo. Long holds are cut to three seconds.
 * @param {Dose} dose
 * @param {number} milliseconds
 */
export function loopPlace(dose, milliseconds) {
  const out = Math.max(0.5, dose.outSeconds);
  const hold = Math.min(3, Math.max(0.3, dose.holdSeconds));
  const back = Math.max(0.5, dose.backSeconds);
  const t = (milliseconds / 1000) % (out + hold + back + PAUSE_SECONDS);
  if (t < out) return placeAt('out', t / out);
  if (t < out + hold) return 1;
  if (t < out + hold + back) return placeAt('back', (t - out - hold) / back);
  return 0;
}

/**
 * The two frames around a place and how far it is between them.
 * @param {number} place 0..1
 * @param {number} count number of frames
 */
export function framesAround(place, count) {
  const last = Math.max(0, count - 1);
  const x = Math.min(1, Math.max(0, place)) * last;
  const low = Math.min(last, Math.floor(x + 1e-9));
  return { low, high: Math.min(last, low + 1), mix: Math.max(0, x - low) };
}

const NUMBER = /-?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/gi;

/** Text made of path letters and numbers only. */
const PATH = /^\s*[Mm\d.+-][MLHVCSQTAZmlhvcsqtaz\d.eE\s,+-]*$/;

/** An arc up to its two flags, which may stand without anything between them and the next number. */
const ARC = /([Aa])\s*(-?(?:\d+\.?\d*|\.\d+))[\s,]*(-?(?:\d+\.?\d*|\.\d+))[\s,]*(-?(?:\d+\.?\d*|\.\d+))[\s,]+([01])[\s,]*([01])/g;

/**
 * Splits an attribute such as `M0 1L2 3` into its form and its numbers. In a path every number stands apart in the form, so that none can
 * grow into its neighbor, and the flags of an arc are numbers of their own.
 * @param {string} text
 * @returns {{ form: string, numbers: number[] }}
 */
export function splitNumbers(text) {
  /** @type {number[]} */
  const numbers = [];
  const path = PATH.test(text);
  const form = (path ? text.replace(ARC, '$1$2 $3 $4 $5 $6 ') : text).replace(NUMBER, (found) => {
    numbers.push(Number(found));
    return path ? ' \u0000' : '\u0000';
  });
  return { form: path ? form.replace(/[\s,]+/g, ' ').replace(/(^|[A-Za-z]) /g, '$1') : form, numbers };
}

/**
 * True when every number of one can glide to the other. Flags of arcs (0 or 1) can't, so a changed flag forbids it.
 * @param {{ form: string, numbers: number[] }} a
 * @param {{ form: string, numbers: number[] }} b
 */
export function canGlide(a, b) {
  if (a.form !== b.form || a.numbers.length !== b.numbers.length) return false;
  if (!/a/i.test(a.form) || /[^\u0000\s,MLHVCSQTAZ-]/i.test(a.form)) return true;
  return a.numbers.every((value, i) => value === b.numbers[i] || !isFlag(value) || !isFlag(b.numbers[i]));
}

/** @param {number} value */
function isFlag(value) {
  return value === 0 || value === 1;
}

/**
 * The attribute between two alike ones.
 * @param {{ form: string, numbers: number[] }} a
 * @param {{ form: string, numbers: number[] }} b
 * @param {number} mix 0..1
 */
export function glide(a, b, mix) {
  let i = 0;
  return a.form.replace(/\u0000/g, () => {
    const value = a.numbers[i] + (b.numbers[i] - a.numbers[i]) * mix;
    i++;
    return String(Math.round(value * 100) / 100);
  });
}
