import { existsSync, mkdirSync, readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { refuse } from '../../core/answer.ts';
import type { HostState } from '../../core/host/book-session.ts';
import { openBookFile } from '../../core/host/open-book-file.ts';
import { aHost, at } from './a-host.ts';

const add = (code: string, more = {}) => ({ commandId: `command-${code}`, code, kind: 'yard', ...more });

describe('calls', () => {
  test('a name that no procedure has is refused as unknown-procedure, names of objects included', async () => {
    const { host } = aHost();
    for (const name of ['nothing.here', 'constructor', '__proto__', 'toString', 'host.nothing'])
      expect(await host.call(name, {})).toMatchObject({ ok: false, error: { code: 'unknown-procedure' } });
    await host.close();
  });

  test('without a book a query is refused as no-book', async () => {
    const { host } = aHost();
    expect(await host.call('test.places', {})).toMatchObject({ ok: false, error: { code: 'no-book' } });
    await host.close();
  });

  test('a wrong field is refused with its place, what was read and what was wanted', async () => {
    const { host } = aHost();
    expect(await host.call('test.add', add('A', { kind: 'shed' }))).toEqual({
      ok: false,
      error: { code: 'bad-input', message: 'kind: read "shed", wanted "yard" or "site".', field: 'kind' },
    });
    await host.close();
  });

  test('a bug is logged with its stack and answered as bug, and the host goes on', async () => {
    const { host, logged } = aHost();
    await host.call('host.create', { file: 'one' });
    expect(await host.call('test.bug', {})).toMatchObject({
      ok: false,
      error: { code: 'bug', message: expect.stringContaining('nothing is not a number') },
    });
    expect(logged.join('\n')).toMatch(/test\.bug failed: TypeError[^]*a-host\.ts/u);
    expect(await host.call('test.places', {})).toMatchObject({ ok: true });
    await host.close();
  });

  test('where output is checked, an answer out of its shape is a bug; where not, it passes', async () => {
    const checking = aHost();
    expect(await checking.host.call('test.shape', {})).toMatchObject({ ok: false, error: { code: 'bug' } });
    const trusting = aHost({ checkOutput: false });
    expect(await trusting.host.call('test.shape', {})).toEqual({ ok: true, value: { count: 1.5 } });
  });

  test('a command knows the time and the person from the door', async () => {
    const { host } = aHost();
    await host.call('host.create', { file: 'one' });
    expect(await host.call('test.add', add('NORTH'))).toMatchObject({
      ok: true,
      value: { code: 'NORTH', who: 'tester', at },
    });
    await host.close();
  });

  test('a command sent twice is done once and says so the second time', async () => {
    const { host } = aHost();
    await host.call('host.create', { file: 'one' });
    await host.call('test.add', add('NORTH'));
    expect(await host.call('test.add', { ...add('SOUTH'), commandId: 'command-NORTH' })).toMatchObject({
      ok: true,
      value: { code: 'NORTH' },
      repeated: true,
    });
    expect(await codes(host)).toContain('NORTH');
    expect(await codes(host)).not.toContain('SOUTH');
    await host.close();
  });

  test('a refused command leaves the book as it was, and no window is told', async () => {
    const { host } = aHost();
    await host.call('host.create', { file: 'one' });
    const before = await codes(host);
    const told: number[] = [];
    host.onChanged((number) => void told.push(number));
    expect(await host.call('test.add', add('NORTH', { refusing: true }))).toMatchObject({ ok: false });
    expect(await codes(host)).toEqual(before);
    expect(told).toEqual([]);
    await host.close();
  });

  test('after each command every listener is told the new change number, until it stops listening', async () => {
    const { host } = aHost();
    await host.call('host.create', { file: 'one' });
    const told: number[] = [];
    const stop = host.onChanged((number) => void told.push(number));
    await host.call('test.add', add('NORTH'));
    await host.call('test.add', add('SOUTH'));
    stop();
    await host.call('test.add', add('WEST'));
    expect(told).toHaveLength(2);
    expect(told[1]).toBe((told[0] ?? 0) + 1);
    await host.close();
  });
});

describe('the file of the book', () => {
  test('a bare name makes a book in the folder of the host, and it is open', async () => {
    const { host, folder } = aHost();
    const state = await stateAfter(host, 'host.create', { file: 'north yard' });
    const file = path.join(folder, 'north yard.regang');
    expect(state.book).toEqual({ file, name: 'north yard', readOnly: false });
    expect(existsSync(file)).toBe(true);
    await host.close();
  });

  test('a name that is taken is refused, and the open book stays open', async () => {
    const { host } = aHost();
    await host.call('host.create', { file: 'one' });
    expect(await host.call('host.create', { file: 'one' })).toMatchObject({
      ok: false,
      error: { code: 'book-exists' },
    });
    expect((await stateAfter(host, 'host.state', {})).book?.name).toBe('one');
    await host.close();
  });

  test('a file that is not there is refused, and the open book stays open and usable', async () => {
    const { host, folder } = aHost();
    await host.call('host.create', { file: 'one' });
    const missing = path.join(folder, 'nowhere.regang');
    expect(await host.call('host.open', { file: missing })).toMatchObject({
      ok: false,
      error: { code: 'no-such-book' },
    });
    expect(await host.call('test.places', {})).toMatchObject({ ok: true });
    await host.close();
  });

  test('the open book opened again stays open for writing', async () => {
    const { host, folder } = aHost();
    await host.call('host.create', { file: 'one' });
    const state = await stateAfter(host, 'host.open', { file: path.join(folder, 'one.regang') });
    expect(state.book?.readOnly).toBe(false);
    await host.close();
  });

  test('a book that another host writes to opens for reading, and for writing once that one is closed', async () => {
    const first = aHost();
    await first.host.call('host.create', { file: 'one' });
    const second = aHost();
    const file = path.join(first.folder, 'one.regang');
    expect((await stateAfter(second.host, 'host.open', { file })).book?.readOnly).toBe(true);
    expect(await second.host.call('test.add', add('NORTH'))).toMatchObject({ ok: false });
    await first.host.close();
    expect((await stateAfter(second.host, 'host.open', { file })).book?.readOnly).toBe(false);
    expect(await second.host.call('test.add', add('NORTH'))).toMatchObject({ ok: true });
    await second.host.close();
  });

  test('files opened lately are listed newest first, each once, and only while they exist', async () => {
    const { host, folder } = aHost();
    await host.call('host.create', { file: 'one' });
    await host.call('host.create', { file: 'two' });
    const again = await stateAfter(host, 'host.open', { file: path.join(folder, 'one.regang') });
    expect(again.recent.map((each) => each.name)).toEqual(['one', 'two']);
    await host.close();
    const kept = JSON.parse(readFileSync(path.join(folder, 'recent.json'), 'utf8')) as { recent: string[] };
    expect(kept.recent).toHaveLength(2);
  });

  test('a copy is a whole book of its own and the open one stays open', async () => {
    const { host, folder } = aHost();
    await host.call('host.create', { file: 'one' });
    await host.call('test.add', add('NORTH'));
    const copy = path.join(folder, 'copy.regang');
    expect(await host.call('host.copy', { file: copy })).toEqual({ ok: true, value: { file: copy } });
    expect(await host.call('host.copy', { file: copy })).toMatchObject({
      ok: false,
      error: { code: 'file-exists' },
    });
    expect((await stateAfter(host, 'host.state', {})).book?.name).toBe('one');
    await host.call('host.open', { file: copy });
    expect(await codes(host)).toContain('NORTH');
    await host.close();
  });

  test('closing a changed book leaves a copy of it in backups, and one that cannot be made is only said', async () => {
    const { host, folder } = aHost();
    await host.call('host.create', { file: 'one' });
    await host.call('test.add', add('NORTH'));
    await host.close();
    expect(readdirSync(path.join(folder, 'backups'))).toEqual([expect.stringMatching(/^one-2026-03-02/u)]);
    const failing = aHost({ backUp: () => Promise.resolve(refuse('no-backup', 'The disk is full.')) });
    await failing.host.call('host.create', { file: 'one' });
    await failing.host.close();
    expect(failing.logged).toEqual(['The disk is full.']);
  });

  test('an existing demo is opened as it was left and not made again', async () => {
    let made = 0;
    const makeDemo = async (file: string) => {
      made += 1;
      const opened = await openBookFile(file, 'create', at);
      if (opened.ok) await opened.value.close();
      return opened;
    };
    const { host, folder } = aHost({ makeDemo });
    expect((await stateAfter(host, 'host.demo', {})).book?.file).toBe(path.join(folder, 'demo.regang'));
    await host.call('test.add', add('NORTH'));
    await host.call('host.create', { file: 'one' });
    await host.call('host.demo', {});
    expect(made).toBe(1);
    expect(await codes(host)).toContain('NORTH');
    await host.close();
  });

  test('a call made while another book is being opened is answered from that one', async () => {
    const { host } = aHost();
    await host.call('host.create', { file: 'one' });
    await host.call('test.add', add('NORTH'));
    const opening = host.call('host.create', { file: 'two' });
    const [listed] = await Promise.all([codes(host), opening]);
    expect(listed).not.toContain('NORTH');
    await host.close();
  });

  test('a folder where a book should be is refused with words, not thrown', async () => {
    const { host, folder } = aHost();
    mkdirSync(path.join(folder, 'x.regang'));
    const answered = await host.call('host.open', { file: path.join(folder, 'x.regang') });
    expect(answered).toMatchObject({ ok: false, error: { message: expect.stringContaining('x.regang') } });
    await host.close();
  });
});

async function codes(host: {
  call: (name: string, input: unknown) => Promise<unknown>;
}): Promise<readonly string[]> {
  const answered = (await host.call('test.places', {})) as {
    readonly value: { readonly codes: readonly string[] };
  };
  return answered.value.codes;
}

async function stateAfter(
  host: { call: (name: string, input: unknown) => Promise<unknown> },
  name: string,
  input: unknown,
): Promise<HostState> {
  const answered = await host.call(name, input);
  expect(answered).toMatchObject({ ok: true });
  return (answered as { readonly value: HostState }).value;
}
