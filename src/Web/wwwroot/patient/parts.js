// @ts-check
// Pieces that several screens share.

/** @typedef {import('./app.js').App} App */
/** @typedef {import('./types.js').Item} Item */

import { button, h, list, svg } from './dom.js';
import { minutesLeft } from './timer.js';

/** The bar above every screen, and the screen. @param {App} app @param {import('./dom.js').Child[]} content @returns {Node[]} */
export function frameScreen(app, content) {
  const inside = app.view === 'session';
  const bar = h(
    'header.bar',
    {},
    inside && backButton(app),
    h('p.place', {}, ...(inside ? placeText(app) : [app.program?.clinic.name ?? ''])),
    app.program !== null && stopButton(app),
  );
  return [bar, h('main', {}, ...content)];
}

/** @param {App} app */
function backButton(app) {
  const icon = svg('svg', { viewBox: '0 0 24 24', 'aria-hidden': 'true', class: 'icon' }, svg('path', { d: 'M15 5l-7 7 7 7' }));
  return h('button.round', { type: 'button', 'aria-label': app.words.back, onclick: () => app.back() }, icon);
}

/** @param {App} app @returns {Node[]} */
function placeText(app) {
  const { words, program, session } = app;
  if (session === null || !['exercise', 'timer', 'report', 'hurt', 'skip'].includes(session.step)) return [];
  const left = minutesLeft(program.minutes, program.items, session.index, session.results[session.index].setsDone);
  return [
    h('b', {}, words.place(session.index + 1, program.items.length)),
    h('span', {}, words.minutesLeft(left)),
  ];
}

/** @param {App} app */
function stopButton(app) {
  const icon = svg(
    'svg',
    { viewBox: '0 0 24 24', 'aria-hidden': 'true', class: 'icon' },
    svg('path', { d: 'M8.5 3.5h7l5 5v7l-5 5h-7l-5-5v-7z' }),
    svg('path', { d: 'M12 8v5M12 16v.2' }),
  );
  return h('button.stop-signs', { type: 'button', onclick: () => openStopSigns(app) }, icon, app.words.stopButton);
}

/** @param {App} app */
function openStopSigns(app) {
  const { words, program } = app;
  app.hold();
  const dialog = h(
    'dialog.sheet',
    { 'aria-labelledby': 'stop-title', onclose: () => dialog.remove() },
    h('h2', { id: 'stop-title' }, words.stopTitle),
    list(program.stopSigns),
    h('p', {}, words.stopPain(program.painCeiling)),
    h('p', {}, words.stopEmergency),
    callLink(app),
    button('plain', words.close, () => dialog.close()),
  );
  document.body.append(dialog);
  dialog.showModal();
}

/** @param {App} app */
export function callLink(app) {
  const { phone, name } = app.program.clinic;
  if (!phone) return null;
  return h('a.button.call', { href: `tel:${phone.replace(/[^\d+*#]/g, '')}`, title: name }, app.words.call(phone));
}

/** Side in words, with its letter in its own shape: a square for left, a circle for right. @param {App} app @param {Item} item */
export function sideLine(app, item) {
  const { words } = app;
  if (item.side === null) return null;
  const left = item.side === 'left';
  return h(
    'p.side',
    {},
    h(left ? 'span.badge.badge-left' : 'span.badge.badge-right', { 'aria-hidden': 'true' }, left ? words.leftLetter : words.rightLetter),
    h('b', {}, item.sideLine ?? (left ? words.left : words.right)),
  );
}

/** @param {App} app @param {string} text */
export function therapistNote(app, text) {
  return h('blockquote.note', {}, h('b', {}, app.words.fromTherapist), h('p', {}, text));
}

/** What to do when pain is above what the clinic allows. @param {App} app */
export function painAdvice(app) {
  return h('div.warn', {}, h('h2', {}, app.words.adviceTitle), list(app.words.advice), callLink(app));
}

/**
 * A rating from 0 to 10 as radio buttons, with words at both ends.
 * @param {{ title: string, hint?: string, low: string, high: string, chosen: number | null, onchoose: (value: number) => void }} question
 */
export function numberQuestion({ title, hint, low, high, chosen, onchoose }) {
  const numbers = Array.from({ length: 11 }, (_, n) =>
    h(
      'label.number',
      {},
      h('input', { type: 'radio', name: 'number', value: n, checked: n === chosen, onchange: () => onchoose(n) }),
      h('span', {}, String(n)),
    ),
  );
  return h(
    'fieldset.numbers',
    {},
    h('legend', {}, h('h1', { tabindex: -1 }, title)),
    hint ? h('p.hint', {}, hint) : null,
    h('div.ends', { 'aria-hidden': 'true' }, h('span', {}, low), h('span', {}, high)),
    h('div.grid', {}, ...numbers),
    h('p.unseen', {}, `${low}. ${high}.`),
  );
}

/** A line that appears when Next is pressed too early. */
export function missingLine() {
  return h('p.missing', { role: 'alert' });
}

export function stillWanted() {
  return window.matchMedia('(prefers-reduced-motion: reduce)').matches;
}
