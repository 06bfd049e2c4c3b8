// Days of the demo job are ended: what did not happen moves to the next shift, a finish written down shifts the strip,
// a second end corrects the first, and all of it is taken back until another day is ended.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoHost, job, type DemoHost } from './demo-host.ts';

let host: DemoHost;
let commands = 0;
beforeAll(async () => {
  host = await demoHost();
});
afterAll(() => host.close());

const commandId = (): string => `day-end-test-${(commands += 1)}`;
type Said = Parameters<typeof endOf>[2];

/** Every step of the day is done but for those named `KIND POUR`; of some more is said. */
async function endOf(
  date: string,
  missed: Readonly<Record<string, 'weather' | 'crane' | 'concrete' | 'people' | 'pieces'>>,
  more: Readonly<Record<string, { from?: string; to?: string; people?: number }>> = {},
) {
  const { lines } = await host.ask('dayend.read', { job, date });
  const named = lines.map((line) => `${line.kind} ${line.pour}`);
  for (const name of [...Object.keys(missed), ...Object.keys(more)]) expect(named).toContain(name);
  return {
    job,
    date,
    steps: lines.map(({ id, kind, pour }) => {
      const name = `${kind} ${pour}`;
      const reason = missed[name];
      return reason === undefined ? { id, done: true, ...more[name] } : { id, done: false, reason };
    }),
  };
}

async function end(date: string, missed: Parameters<typeof endOf>[1], more: Said = {}) {
  const day = await endOf(date, missed, more);
  return host.ask('dayend.save', { commandId: commandId(), ...day, remark: null });
}

const timesOf = async (pour: string) => {
  const { pours } = await host.ask('board.read', { job });
  const found = pours.find((each) => each.pour.code === pour);
  if (found === undefined) throw new Error(`No pour ${pour}.`);
  return found;
};

const allPours = async (): Promise<unknown> => (await host.ask('pour.list', { job })).pours;

describe('a day of the demo', () => {
  test('W1 is poured a day later and its strip with it, W2 where it was; taken back all is as before', async () => {
    const [before, other, pours] = [await timesOf('P01'), await timesOf('P02'), await allPours()];
    expect(before.times.finishAt).toBe('2026-03-03T13:00:00-05:00');
    // 24 h after 13:00 on Tuesday is 13:00 on Wednesday, in the shift.
    expect(before.times.stripFrom).toBe('2026-03-04T13:00:00-05:00');
    const saved = await end('2026-03-03', { 'pour P01': 'concrete' });
    expect(saved).toMatchObject({ report: '2026-03-03 1', moved: 1 });
    const after = await timesOf('P01');
    expect(after.times.finishAt).toBe('2026-03-04T13:00:00-05:00');
    expect(after.times.stripFrom).toBe('2026-03-05T13:00:00-05:00');
    expect(after.pour.sides).toEqual(before.pour.sides);
    expect((await timesOf('P02')).times).toEqual(other.times);
    const next = await host.ask('dayend.read', { job, date: '2026-03-04' });
    expect(next.lines.find(({ kind, pour }) => kind === 'pour' && pour === 'P01')).toMatchObject({
      leftFrom: '2026-03-03',
      from: '2026-03-04T13:00:00-05:00',
      reported: null,
    });
    await host.ask('dayend.takeback', { commandId: commandId(), job, report: saved.report });
    expect(await allPours()).toEqual(pours);
    expect((await host.ask('dayend.read', { job, date: '2026-03-03' })).report).toBeNull();
  });

  test('a finish written down at 14:20 moves the strip forecast by the same 80 minutes', async () => {
    const saved = await end('2026-03-03', {}, { 'pour P01': { to: '2026-03-03T14:20:00-05:00' } });
    const { times } = await timesOf('P01');
    expect(times.finishAt).toBe('2026-03-03T14:20:00-05:00');
    expect(times.readyAt).toBe('2026-03-04T14:20:00-05:00');
    expect(times.stripFrom).toBe('2026-03-04T14:20:00-05:00');
    await host.ask('dayend.takeback', { commandId: commandId(), job, report: saved.report });
  });

  test('a strip that did not happen waits for the next shift', async () => {
    const saved = await end('2026-03-04', { 'strip P01': 'crane' });
    expect((await timesOf('P01')).times.stripFrom).toBe('2026-03-05T07:00:00-05:00');
    await host.ask('dayend.takeback', { commandId: commandId(), job, report: saved.report });
    expect((await timesOf('P01')).times.stripFrom).toBe('2026-03-04T13:00:00-05:00');
  });

  test('gangs that were not assembled move no pour; where their set is due it is said', async () => {
    const { steps } = await host.ask('board.read', { job });
    const last = steps.filter(({ kind, pour }) => kind === 'assemble' && pour === 'P01').at(-1);
    const pours = await allPours();
    const saved = await end(last?.date ?? '', { 'assemble P01': 'people' });
    expect(saved.applied).toBeNull();
    expect(saved.findings).toMatchObject([{ rule: 'set-is-due', where: 'P01', severity: 'caution' }]);
    expect(await allPours()).toEqual(pours);
    const { after } = await host.ask('dayend.read', { job, date: last?.date ?? '' });
    const next = await host.ask('dayend.read', { job, date: after ?? '' });
    expect(next.lines[0]).toMatchObject({ kind: 'assemble', pour: 'P01', leftFrom: last?.date });
    await host.ask('dayend.takeback', { commandId: commandId(), job, report: saved.report });
  });

  test('ended once more: what was moved first is put back, and the second end moves its own', async () => {
    const pours = await allPours();
    await end('2026-03-03', { 'pour P01': 'concrete' });
    const second = await end('2026-03-03', { 'set P02': 'crane' });
    expect(second.report).toMatch(/^2026-03-03 \d+$/u);
    expect((await timesOf('P01')).times.finishAt).toBe('2026-03-03T13:00:00-05:00');
    const moved = await timesOf('P02');
    expect(moved.pour.sides.map(({ setAt }) => setAt)).toEqual([
      '2026-03-04T07:00:00-05:00',
      '2026-03-04T10:30:00-05:00',
    ]);
    expect(moved.times.finishAt).toBe('2026-03-05T13:00:00-05:00');
    // Taken back, the first end counts again and moves what it moved.
    await host.ask('dayend.takeback', { commandId: commandId(), job, report: second.report });
    expect((await timesOf('P01')).times.finishAt).toBe('2026-03-04T13:00:00-05:00');
    expect((await timesOf('P02')).times.finishAt).toBe('2026-03-04T13:00:00-05:00');
    const { report } = await host.ask('dayend.read', { job, date: '2026-03-03' });
    await end('2026-03-03', {});
    expect(report?.corrections).toBeGreaterThan(0);
    expect(await allPours()).toEqual(pours);
  });

  test('a pour that somebody changed after the first end stays where it is, and this is said', async () => {
    await end('2026-03-05', { 'pour P03': 'weather' });
    expect((await timesOf('P03')).times.finishAt).toBe('2026-03-06T14:00:00-05:00');
    await host.ask('pour.move', { commandId: commandId(), job, moves: [{ pour: 'P03', workingDays: 1 }] });
    const again = await end('2026-03-05', {});
    expect(again.findings).toMatchObject([{ rule: 'changed-since', where: 'P03' }]);
    expect((await timesOf('P03')).times.finishAt).toBe('2026-03-09T14:00:00-04:00');
    await host.ask('pour.move', { commandId: commandId(), job, moves: [{ pour: 'P03', workingDays: -2 }] });
  });
});

type Steps = Awaited<ReturnType<typeof endOf>>['steps'];

async function refused(change: (steps: Steps) => object[]): Promise<string> {
  const day = await endOf('2026-03-03', {});
  return host.refused('dayend.preview', { ...day, steps: change(day.steps) as Steps });
}

describe('what is refused, by its place', () => {
  test.each([
    ['a step that the day has not', 'unknown-step', (steps: object[]) => [...steps, { id: 'x', done: true }]],
    ['a step of which nothing is said', 'step-missing', (steps: object[]) => steps.slice(1)],
    ['no reason', 'reason-needed', ([first, ...rest]: object[]) => [{ ...first, done: false }, ...rest]],
    [
      'an end before the beginning',
      'times-order',
      ([first, ...rest]: object[]) => [
        { ...first, from: '2026-03-03T09:00:00-05:00', to: '2026-03-03T08:00:00-05:00' },
        ...rest,
      ],
    ],
    [
      'another week',
      'times-far',
      ([first, ...rest]: object[]) => [{ ...first, to: '2026-04-03T08:00:00-05:00' }, ...rest],
    ],
  ] as const)('%s', async (_, code, change) => {
    expect(await refused(change)).toBe(code);
  });

  test('a pour that was poured but not set', async () => {
    // Set and poured within a day of the board: both on one list.
    const date = '2026-03-02';
    const { lines } = await host.ask('dayend.read', { job, date });
    expect(lines.some(({ kind, pour }) => kind === 'set' && pour === 'P01')).toBe(true);
    await host.ask('plan.apply', {
      commandId: commandId(),
      job,
      about: 'poured the day it is set',
      changes: [{ kind: 'pour-times', pour: 'P01', sides: [], finishAt: '2026-03-02T15:00:00-05:00' }],
    });
    const day = await endOf(date, { 'set P01': 'weather' });
    expect(await host.refused('dayend.preview', day)).toBe('step-out-of-order');
  });
});

describe('what reports add up to', () => {
  test('misses by week against a count by hand, rates against a sum by hand', async () => {
    const other = await demoHost();
    const first = host;
    host = other;
    try {
      const monday = await endOf('2026-03-02', { 'set P01': 'weather' });
      await host.ask('dayend.save', { commandId: commandId(), ...monday, remark: 'rain from ten' });
      // On Tuesday W2 is set by 5 people from 07:00 to 11:00: 20 person hours on its four gangs of 12 by 12 feet.
      const tuesday = await endOf(
        '2026-03-03',
        {},
        { 'set P02': { from: '2026-03-03T07:00:00-05:00', to: '2026-03-03T11:00:00-05:00', people: 5 } },
      );
      await host.ask('dayend.save', { commandId: commandId(), ...tuesday, remark: null });
      const { weeks } = await host.ask('dayend.misses', { job });
      const carried = (await host.ask('dayend.read', { job, date: '2026-03-03' })).lines.filter(
        ({ leftFrom }) => leftFrom !== null,
      );
      expect(carried.map(({ kind, pour }) => `${kind} ${pour}`)).toEqual(['set P01']);
      const planned = monday.steps.length + tuesday.steps.length - 1;
      expect(weeks).toMatchObject([
        {
          week: '2026-03-02',
          daysEnded: 2,
          planned,
          done: planned - 1,
          donePercentOfPlanned: Math.round((1000 * (planned - 1)) / planned) / 10,
          notDone: [{ reason: 'weather', words: 'weather', steps: 1 }],
          leftOver: 1,
          leftOverDone: 1,
        },
      ]);
      const { rates } = await host.ask('dayend.rates', { job });
      expect(rates).toHaveLength(1);
      // 4 gangs of 144 square feet: 20 h on 576 square feet.
      expect(rates[0]).toMatchObject({ step: 'set', records: 1, personHours: 20, gangs: 4 });
      expect(rates[0]?.perFt2).toBeCloseTo(20 / 576, 9);
      expect(rates[0]?.offered).toEqual({
        step: 'set',
        unit: 'h/ft2',
        personHours: 0.0347,
        owner: 'own record of TB26',
        source: '1 step reported with times and people',
      });
    } finally {
      await other.close();
      host = first;
    }
  });
});
