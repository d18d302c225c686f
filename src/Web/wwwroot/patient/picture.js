// @ts-check
// The moving picture: frames parsed once, one shown at a time, gliding where two frames are drawn alike.

/** @typedef {import('./types.js').Picture} Picture */
/** @typedef {{ form: string, numbers: number[] }} Parts */
/** @typedef {{ node: SVGElement, parts: Map<string, Parts> }} Frame parts by element number and attribute */

import { h, svg } from './dom.js';
import { canGlide, framesAround, glide, splitNumbers } from './motion.js';

const SVG = 'http://www.w3.org/2000/svg';
const SHAPES = new Set(
  ('g path circle ellipse rect line polyline polygon defs clipPath mask linearGradient radialGradient stop pattern ' +
    'use marker text tspan title desc symbol').split(' '),
);
const GLIDING = new Set('d points transform x y x1 y1 x2 y2 cx cy r rx ry width height'.split(' '));

/** Keeps shapes and their plain attributes; drops whatever could act, load or restyle. @param {Element} element */
function clean(element) {
  for (const child of [...element.children]) {
    if (child.namespaceURI !== SVG || !SHAPES.has(child.localName)) child.remove();
    else clean(child);
  }
  for (const attribute of [...element.attributes]) {
    const name = attribute.name.toLowerCase();
    const link = name === 'href' || name === 'xlink:href';
    const outside = /url\(\s*['"]?(?!#)/i.test(attribute.value) || (link && !attribute.value.startsWith('#'));
    if (name.startsWith('on') || name === 'style' || outside) element.removeAttribute(attribute.name);
  }
}

/** @param {string} markup @returns {Frame | null} */
function parseFrame(markup) {
  const parsed = new DOMParser().parseFromString(`<svg xmlns="${SVG}">${markup}</svg>`, 'image/svg+xml');
  const root = parsed.documentElement;
  if (root.localName !== 'svg' || parsed.querySelector('parsererror') !== null) return null;
  clean(root);
  const node = /** @type {SVGElement} */ (svg('g'));
  node.append(...[...root.children].map((child) => document.importNode(child, true)));
  /** @type {Map<string, Parts>} */
  const parts = new Map();
  elements(node).forEach((element, i) => {
    for (const { name, value } of element.attributes) {
      if (GLIDING.has(name)) parts.set(`${i} ${name}`, splitNumbers(value));
    }
  });
  return { node, parts };
}

/** @param {SVGElement} node */
function elements(node) {
  return [...node.querySelectorAll('*')];
}

/** Everything about a frame that must be equal for gliding. @param {Frame} frame */
function fixedLook(frame) {
  return elements(frame.node)
    .map((e) => e.localName + [...e.attributes].filter((a) => !GLIDING.has(a.name)).map((a) => `${a.name}=${a.value}`).join(';'))
    .join('|');
}

/** @param {Frame} a @param {Frame} b */
function drawnAlike(a, b) {
  if (a.parts.size !== b.parts.size || fixedLook(a) !== fixedLook(b)) return false;
  return [...a.parts].every(([key, parts]) => {
    const other = b.parts.get(key);
    return other !== undefined && canGlide(parts, other);
  });
}

/**
 * @param {Picture} picture
 * @param {string} broken words for a picture that can't be read
 * @returns {{ element: HTMLElement, show: (place: number) => void, moves: boolean }} `show` takes 0 (start) to 1 (end)
 */
export function makePicture(picture, broken) {
  const frames = /** @type {Frame[]} */ (picture.frames.map(parseFrame).filter((frame) => frame !== null));
  if (frames.length === 0) return { element: h('p.picture-broken', {}, broken), show: () => undefined, moves: false };
  const alike = frames.slice(1).map((frame, i) => drawnAlike(frames[i], frame));
  const drawing = svg('svg', { viewBox: picture.viewBox, role: 'img', 'aria-label': picture.alt });
  let shown = -1;
  let lastMix = -1;
  /** @type {Element[]} */
  let live = [];

  /** @param {number} place */
  const show = (place) => {
    const { low, high, mix } = framesAround(place, frames.length);
    const gliding = high !== low && alike[low];
    const index = gliding || mix < 0.5 ? low : high;
    const amount = gliding ? Math.round(mix * 60) / 60 : 0;
    if (index === shown && amount === lastMix) return;
    if (index !== shown) {
      const copy = /** @type {SVGElement} */ (frames[index].node.cloneNode(true));
      drawing.replaceChildren(copy);
      live = elements(copy);
    }
    if (gliding) {
      for (const [key, from] of frames[low].parts) {
        const to = /** @type {Parts} */ (frames[high].parts.get(key));
        const [i, name] = key.split(' ');
        if (from.numbers.some((n, k) => n !== to.numbers[k])) live[Number(i)].setAttribute(name, glide(from, to, amount));
      }
    } else if (lastMix > 0) {
      drawing.replaceChildren(frames[index].node.cloneNode(true));
    }
    shown = index;
    lastMix = amount;
  };
  show(0);
  return { element: h('div.picture', {}, drawing), show, moves: frames.length > 1 };
}
