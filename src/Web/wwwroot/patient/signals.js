// @ts-check
// Beeps, buzzing and keeping the screen on. Each may be missing on a phone; then nothing happens and nothing breaks.

/** @typedef {import('./timer.js').Phase} Phase */

/** Pitch in hertz, length in seconds. @type {Record<Phase | 'end', [number, number]>} */
const TONES = { ready: [440, 0.08], out: [660, 0.14], hold: [550, 0.1], back: [440, 0.14], rest: [330, 0.35], end: [880, 0.45] };

/** @type {Partial<Record<Phase | 'end', number | number[]>>} */
const BUZZES = { out: 60, back: 30, rest: [120, 80, 120], end: [200, 100, 200] };

/** @type {AudioContext | null} */
let audio = null;

/** Must be called from a tap: browsers keep sound shut until then. */
export function unlockSound() {
  try {
    audio ??= new AudioContext();
    void audio.resume();
  } catch {
    audio = null;
  }
}

/**
 * @param {Phase | 'end'} cue
 * @param {{ beeps: boolean, buzz: boolean }} settings
 */
export function signal(cue, settings) {
  if (settings.beeps && audio !== null) beep(audio, ...TONES[cue]);
  const buzz = BUZZES[cue];
  if (settings.buzz && buzz !== undefined && canBuzz()) navigator.vibrate(buzz);
}

export function canBuzz() {
  return typeof navigator.vibrate === 'function';
}

/** @param {AudioContext} context @param {number} pitch @param {number} length */
function beep(context, pitch, length) {
  const tone = context.createOscillator();
  const volume = context.createGain();
  const now = context.currentTime;
  tone.frequency.value = pitch;
  volume.gain.setValueAtTime(0.0001, now);
  volume.gain.exponentialRampToValueAtTime(0.35, now + 0.015);
  volume.gain.exponentialRampToValueAtTime(0.0001, now + length);
  tone.connect(volume).connect(context.destination);
  tone.start(now);
  tone.stop(now + length + 0.05);
}

let wanted = false;
/** @type {WakeLockSentinel | null} */
let lock = null;

/** Keeps the screen on while `on`; asked for again each time the page comes back into sight. @param {boolean} on */
export function keepAwake(on) {
  if (on === wanted) return;
  wanted = on;
  if (on) {
    document.addEventListener('visibilitychange', ask);
    void ask();
  } else {
    document.removeEventListener('visibilitychange', ask);
    void lock?.release().catch(() => undefined);
    lock = null;
  }
}

async function ask() {
  if (!wanted || document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
  try {
    const held = await navigator.wakeLock.request('screen');
    if (wanted) lock = held;
    else await held.release();
  } catch {
    // Refused (low battery, no permission): the screen may go dark, and the timer then waits for the person.
  }
}
