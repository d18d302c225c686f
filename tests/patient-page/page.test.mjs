import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { test } from 'node:test';
import { gzipSync } from 'node:zlib';

const folder = new URL('../../src/Web/wwwroot/patient/', import.meta.url);
const files = readdirSync(folder).map((name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') }));
const modules = files.filter((file) => file.name.endsWith('.js'));
const page = files.find((file) => file.name === 'index.html').text;
const style = files.find((file) => file.name === 'style.css').text;

test('nothing is inline, so a strict content policy holds', () => {
  assert.doesNotMatch(page, /<style|\sstyle=|\son\w+=|javascript:/i);
  for (const [, attributes, body] of page.matchAll(/<script([^>]*)>([^<]*)/g)) {
    assert.match(attributes, /src="\/patient\//);
    assert.equal(body, '');
  }
});

test('nothing is asked from another house', () => {
  for (const { name, text } of files) {
    const outside = (text.match(/(?:https?:)?\/\/[a-z0-9.-]+\.[a-z]{2,}[^\s'"`)]*/gi) ?? []).filter((u) => !u.includes('www.w3.org/'));
    assert.deepEqual(outside, [], name);
  }
});

test('words never go in as markup', () => {
  for (const { name, text } of modules) {
    assert.doesNotMatch(text, /innerHTML|outerHTML|insertAdjacentHTML|document\.write|\beval\(|new Function/, name);
  }
});

test('every module is typed, short, and preloaded with the page', () => {
  for (const { name, text } of modules) {
    assert.ok(text.startsWith('// @ts-check\n'), name);
    assert.ok(text.split('\n').length <= 300, name);
    if (name !== 'types.js') assert.ok(page.includes(`/patient/${name}"`), `${name} is not preloaded`);
  }
  for (const [, name] of page.matchAll(/\/patient\/([\w-]+\.js)"/g)) assert.ok(modules.some((m) => m.name === name), name);
});

test('the token travels in bodies only', () => {
  for (const { name, text } of modules) {
    assert.doesNotMatch(text, /searchParams|\?token|\/\$\{token/, name);
  }
});

test('the page stays small enough for a slow phone line', () => {
  const bytes = files.filter((file) => file.name !== 'types.js').reduce((sum, file) => sum + gzipSync(file.text).length, 0);
  assert.ok(bytes < 40_000, `${bytes} bytes gzipped`);
});

for (const [scheme, colors] of [['light', palette(style.split('@media')[0])], ['dark', palette(style.split('@media')[1])]]) {
  test(`text and controls can be told from their ground (${scheme})`, () => {
    // WCAG 2.2: 1.4.3 asks 4.5:1 for text, 1.4.11 asks 3:1 for controls.
    const text = [
      ['ink', 'paper'], ['ink', 'card'], ['ink', 'caution-soft'], ['ink', 'accent-soft'], ['ink', 'stop-soft'], ['quiet', 'paper'],
      ['accent', 'paper'], ['on-accent', 'accent'], ['stop', 'paper'], ['stop', 'stop-soft'], ['caution', 'paper'],
      ['caution', 'caution-soft'],
    ];
    for (const [a, b] of text) assert.ok(contrast(colors[a], colors[b]) >= 4.5, `${a} on ${b}: ${contrast(colors[a], colors[b])}`);
    for (const a of ['line', 'accent', 'stop']) assert.ok(contrast(colors[a], colors.paper) >= 3, a);
  });
}

function palette(css) {
  return Object.fromEntries([...css.matchAll(/--([\w-]+): (#[0-9a-f]{6})/g)].map(([, name, value]) => [name, value]));
}

function contrast(a, b) {
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

/** Relative luminance as WCAG 2.2 defines it. */
function luminance(hex) {
  const [r, g, b] = [1, 3, 5].map((i) => {
    const c = parseInt(hex.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
