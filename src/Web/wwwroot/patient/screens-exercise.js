// @ts-check
// One exercise at rest: how it goes, how it was, what to do when it hurts, why it is skipped.

/** @typedef {import('./app.js').App} App */
/** @typedef {import('./app.js').Screen} Screen */
/** @typedef {import('./session.js').Session} Session */
/** @typedef {import('./types.js').Item} Item */

import { button, h, heading, list } from './dom.js';
import { loopPlace } from './motion.js';
import { callLink, sideLine, stillWanted, therapistNote } from './parts.js';
import { makePicture } from './picture.js';
import { at, current, hurt, isFinished, next, nextRepetition, reportAs, skip, stopForToday, tryEasier } from './session.js';
import { unlockSound } from './signals.js';

/** @param {App} app @param {Session} session @returns {Screen} */
export function exerciseScreen(app, session) {
  const { words } = app;
  const item = app.program.items[session.index];
  const result = current(session);
  const finished = isFinished(session);
  const begun = result.repetitionsDone > 0;
  const { set } = nextRepetition(session);
  const picture = loopingPicture(app, item);
  const startText = finished ? words.next : result.repetitionsInSet > 0 ? words.goOnSet(set) : words.startSet(set, result.sets);
  const start = () => {
    if (app.settings.beeps) unlockSound();
    app.update(at(session, finished ? 'report' : 'timer'));
  };
  const skipText = begun ? words.enoughOfThis : words.skipThis;
  return {
    content: [
      heading(item.title),
      sideLine(app, item),
      ...picture.content,
      h('p.dose.dose-main', {}, finished ? words.allSets : item.dose.text),
      result.easier ? h('div.notice', {}, h('b', {}, words.easierNow), h('p', {}, item.easier)) : null,
      item.note ? therapistNote(app, item.note) : null,
      instructions(app, item),
      h(
        'div.actions',
        {},
        finished ? null : button('plain', skipText, () => app.update(at(session, begun ? 'report' : 'skip'))),
        button('primary', startText, start),
      ),
    ],
    dispose: picture.dispose,
    hold: picture.hold,
  };
}

/** @param {App} app @param {Item} item */
function instructions(app, item) {
  const { words } = app;
  /** @param {string} title @param {HTMLElement | string | null} body */
  const part = (title, body) => (body ? [h('h2', {}, title), typeof body === 'string' ? h('p', {}, body) : body] : []);
  return h(
    'details.more',
    { open: app.firstTime(item.exerciseId) },
    h('summary', {}, words.how),
    ...part(words.needs, (item.needs ?? []).length > 0 ? list(item.needs) : null),
    ...part(words.setUp, item.setUp.length > 0 ? list(item.setUp) : null),
    ...part(words.steps, item.steps.length > 0 ? list(item.steps, 'ol') : null),
    ...part(words.feel, item.feel),
    ...part(words.watch, item.watch.length > 0 ? list(item.watch) : null),
    ...part(words.easier, item.easier),
    ...part(words.harder, item.harder),
    ...part(words.littleRoom, item.shortSpace ?? null),
    ...part(words.stopIf, (item.stop ?? []).length > 0 ? list(item.stop) : null),
  );
}

/** The picture at the dose's tempo, with a button to still it; two still pictures where no motion is wanted. @param {App} app @param {Item} item */
function loopingPicture(app, item) {
  const { words } = app;
  const picture = makePicture(item.picture, words.pictureBroken);
  if (!picture.moves) return { content: [picture.element], dispose: () => undefined, hold: () => undefined };
  const still = stillWanted();
  let moving = false;
  let elapsed = 0;
  let since = 0;
  let request = 0;
  let atEnd = false;
  const control = button('small', still ? words.pictureEnd : words.picturePause, () => {
    if (still) {
      atEnd = !atEnd;
      picture.show(atEnd ? 1 : 0);
      control.textContent = atEnd ? words.pictureStart : words.pictureEnd;
    } else if (moving) hold();
    else play();
  });
  /** @param {number} now */
  const step = (now) => {
    picture.show(loopPlace(item.dose, elapsed + (now - since)));
    request = requestAnimationFrame(step);
  };
  const play = () => {
    moving = true;
    since = performance.now();
    request = requestAnimationFrame(step);
    control.textContent = words.picturePause;
  };
  const hold = () => {
    if (!moving) return;
    moving = false;
    elapsed += performance.now() - since;
    cancelAnimationFrame(request);
    control.textContent = words.picturePlay;
  };
  if (!still) play();
  picture.element.append(control);
  return { content: [picture.element], dispose: () => cancelAnimationFrame(request), hold };
}

/** @param {App} app @param {Session} session @returns {Screen} */
export function reportScreen(app, session) {
  const { words } = app;
  const item = app.program.items[session.index];
  const result = current(session);
  const say = (/** @type {import('./types.js').Report} */ report) => () => app.update(reportAs(session, report));
  return {
    content: [
      h('p.over', {}, item.title),
      heading(words.reportTitle),
      h('p.lead', {}, words.setsDone(result.setsDone, result.sets)),
      h(
        'div.choices',
        {},
        button('choice', words.reportDone, say('done')),
        button('choice', words.tooEasy, say('tooEasy')),
        button('choice', words.tooHard, say('tooHard')),
        button('choice danger', words.hurtMe, say('hurt')),
      ),
    ],
  };
}

/** @param {App} app @param {Session} session @returns {Screen} */
export function hurtScreen(app, session) {
  const { words } = app;
  const item = app.program.items[session.index];
  const last = session.index === session.results.length - 1;
  return {
    content: [
      h('p.over', {}, item.title),
      heading(words.hurtTitle),
      h('p', {}, words.hurtNoted),
      h('div.notice', {}, h('b', {}, words.hurtEasierTitle), h('p', {}, item.easier)),
      h('div.warn', {}, h('h2', {}, words.hurtCallTitle), list([...words.hurtCall, ...app.program.stopSigns]), callLink(app)),
      h(
        'div.actions.stacked',
        {},
        button('primary', last ? words.hurtLast : words.hurtNext, () => app.update(next(session))),
        isFinished(session) ? null : button('plain', words.hurtEasier, () => app.update(tryEasier(session))),
        last ? null : button('plain danger', words.stopToday, () => app.update(stopForToday(session))),
      ),
    ],
  };
}

/** @param {App} app @param {Session} session @returns {Screen} */
export function skipScreen(app, session) {
  const { words } = app;
  const item = app.program.items[session.index];
  return {
    content: [
      h('p.over', {}, item.title),
      heading(words.skipTitle),
      h(
        'div.choices',
        {},
        ...words.skipReasons.map((reason) => button('choice', reason, () => app.update(skip(session, reason)))),
        button('choice danger', words.skipHurts, () => app.update(hurt(session))),
      ),
    ],
  };
}
