import assert from 'node:assert/strict';
import { test } from 'node:test';
import { dropRefused, flush, judge, put, read, refusedEntries, waiting } from '../../src/Web/wwwroot/patient/outbox.js';
import { layeredStorage } from '../../src/Web/wwwroot/patient/store.js';

const storageOf = () => {
  const map = new Map();
  return {
    getItem: (key) => map.get(key) ?? null,
    setItem: (key, value) => void map.set(key, value),
    removeItem: (key) => void map.delete(key),
    map,
  };
};
const entry = (id) => ({ kind: 'session', body: { id, day: '2026-11-25' } });

test('an entry stays until the server has it and then leaves nothing behind', async () => {
  const storage = storageOf();
  put(storage, 'k', entry('a'));
  assert.deepEqual(await flush(storage, 'k', async () => judge(0)), { saved: [], refused: [], left: 1 });
  assert.deepEqual(read(storage, 'k'), [entry('a')]);
  assert.deepEqual(await flush(storage, 'k', async () => judge(200)), { saved: ['a'], refused: [], left: 0 });
  assert.equal(storage.map.size, 0);
});

test('the same body is sent each time, so a lost answer can be asked for again', async () => {
  const storage = storageOf();
  const sent = [];
  put(storage, 'k', entry('a'));
  put(storage, 'k', { ...entry('a'), body: { id: 'a', day: 'other' } });
  const send = (status) => async (e) => (sent.push(JSON.stringify(e.body)), judge(status));
  await flush(storage, 'k', send(500));
  await flush(storage, 'k', send(200));
  assert.equal(sent.length, 2);
  assert.equal(sent[0], sent[1]);
});

test('oldest first, and no further once the network is gone', async () => {
  const storage = storageOf();
  for (const id of ['a', 'b', 'c']) put(storage, 'k', entry(id));
  const asked = [];
  const result = await flush(storage, 'k', async (e) => (asked.push(e.body.id), judge(e.body.id === 'b' ? 0 : 200)));
  assert.deepEqual(asked, ['a', 'b']);
  assert.deepEqual(result, { saved: ['a'], refused: [], left: 2 });
});

test('a refused entry is kept, told, and not sent again', async () => {
  const storage = storageOf();
  put(storage, 'k', entry('a'));
  put(storage, 'k', entry('b'));
  const result = await flush(storage, 'k', async (e) => judge(e.body.id === 'a' ? 409 : 200));
  assert.deepEqual(result, { saved: ['b'], refused: ['a'], left: 0 });
  assert.equal(read(storage, 'k')[0].refused, 409);
  assert.deepEqual(waiting(storage, 'k'), []);
});

test('refused entries are forgotten only when asked, and waiting ones stay', async () => {
  const storage = storageOf();
  put(storage, 'k', entry('a'));
  await flush(storage, 'k', async () => judge(400));
  put(storage, 'k', entry('b'));
  assert.deepEqual(refusedEntries(storage, 'k').map((e) => e.body.id), ['a']);
  dropRefused(storage, 'k');
  assert.deepEqual(read(storage, 'k'), [entry('b')]);
});

test('an entry added while another is on its way is not lost', async () => {
  const storage = storageOf();
  put(storage, 'k', entry('a'));
  await flush(storage, 'k', async () => (put(storage, 'k', entry('b')), judge(200)));
  assert.deepEqual(waiting(storage, 'k'), [entry('b')]);
});

test('what an answer means', () => {
  for (const status of [0, 302, 408, 429, 500, 503]) assert.equal(judge(status).outcome, 'unreachable', String(status));
  for (const status of [400, 404, 409, 413]) assert.equal(judge(status).outcome, 'refused', String(status));
  for (const status of [200, 201]) assert.equal(judge(status).outcome, 'saved', String(status));
});

test('damaged storage reads as empty', () => {
  const storage = storageOf();
  for (const text of ['{', '7', '[{"kind":"other"}]', 'null']) {
    storage.setItem('k', text);
    assert.deepEqual(read(storage, 'k'), []);
  }
});

test('a full or forbidden storage falls back to memory and says so', async () => {
  const full = { ...storageOf(), setItem: (key) => { if (key !== 'ma.probe') throw new Error('full'); } };
  const first = layeredStorage(() => full);
  assert.ok(first.lasting());
  put(first.storage, 'k', entry('a'));
  assert.ok(!first.lasting());
  assert.deepEqual(waiting(first.storage, 'k'), [entry('a')]);
  const second = layeredStorage(() => { throw new Error('forbidden'); });
  assert.ok(!second.lasting());
  put(second.storage, 'k', entry('b'));
  await flush(second.storage, 'k', async () => judge(200));
  assert.deepEqual(read(second.storage, 'k'), []);
});
