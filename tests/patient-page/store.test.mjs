import assert from 'node:assert/strict';
import { webcrypto } from 'node:crypto';
import { test } from 'node:test';
import { fingerprint, keysFor, layeredStorage, readJson, uuid, writeJson } from '../../src/Web/wwwroot/patient/store.js';

test('the fingerprint is FNV-1a', () => {
  // Published 64-bit FNV-1a test values (draft-eastlake-fnv, appendix with test vectors): "", "a", "foobar".
  assert.equal(fingerprint(''), 'cbf29ce484222325');
  assert.equal(fingerprint('a'), 'af63dc4c8601ec8c');
  assert.equal(fingerprint('foobar'), '85944171f73967e8');
});

test('no key holds the token, and other links have other keys', () => {
  const token = 'Zk3vQ8mW1pXr5tYu7aBcDe';
  const mine = Object.values(keysFor(token));
  assert.ok(mine.every((key) => !key.includes(token)));
  const shared = Object.values(keysFor(`${token}x`)).filter((key) => mine.includes(key));
  assert.deepEqual(shared, ['ma.settings']);
});

test('ids are version 4 UUIDs and differ', () => {
  const make = () => uuid((bytes) => webcrypto.getRandomValues(bytes));
  const ids = Array.from({ length: 200 }, make);
  for (const id of ids) assert.match(id, /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  assert.equal(new Set(ids).size, 200);
});

test('values come back as written, damaged ones as the fallback', () => {
  const { storage } = layeredStorage(() => { throw new Error('none'); });
  writeJson(storage, 'k', { a: [1, null] });
  assert.deepEqual(readJson(storage, 'k', null), { a: [1, null] });
  storage.setItem('k', '{');
  assert.equal(readJson(storage, 'k', 'fallback'), 'fallback');
});
