// `calc level` against exhaustive search on tiny projects, its refusals, and the same seed twice.
import { describe, expect, test } from 'vitest';
import { levelInput, type LevelInput } from '../../../core/plan/level/contract.ts';
import { levelProject } from '../../../core/plan/level/level-project.ts';
import { calcLevel } from '../../../core/procedures/calc-level.ts';
import { randomFrom } from '../../../core/plan/random.ts';
import { problemsOf } from './check-schedule.ts';
import { copied, questionOf, readSet } from './open-sets.ts';

const firstSeed = Number(process.env['REGANG_TEST_SEED'] ?? 1);

test('300 tiny random projects: the makespan is the least there is, and the bound is not above it', () => {
  let proved = 0;
  for (let seed = firstSeed; seed < firstSeed + 300; seed += 1) {
    const input = tinyProject(seed);
    const { answer } = levelled(input);
    expect(problemsOf(input, answer), `seed ${seed}`).toEqual([]);
    const least = leastByTrying(input);
    expect(answer.makespan, `seed ${seed}`).toBe(least);
    expect(answer.lowerBound, `seed ${seed}`).toBeLessThanOrEqual(least);
    if (answer.lowerBound === least) proved += 1;
  }
  expect(proved).toBeGreaterThan(250);
});

test('the same seed gives the same schedule, whatever was asked between', () => {
  const [first, second] = readSet(copied, 'j30').slice(12, 14);
  if (first === undefined || second === undefined) throw new Error('no instances');
  const once = levelled(questionOf(first, 700, 9)).answer;
  levelled(questionOf(second, 300, 4));
  expect(levelled(questionOf(first, 700, 9)).answer).toEqual(once);
});

test('so many schedules and no more: one alone is valid, and more are never worse', () => {
  const instance = readSet(copied, 'j120')[0];
  if (instance === undefined) throw new Error('no instance');
  let before = Infinity;
  for (const schedules of [1, 2, 25, 400]) {
    const input = questionOf(instance, schedules);
    const { answer, schedules: generated } = levelled(input);
    expect(generated).toBe(schedules);
    expect(problemsOf(input, answer)).toEqual([]);
    expect(answer.makespan).toBeLessThanOrEqual(before);
    before = answer.makespan;
  }
});

test('it stops at the first schedule that is as short as the bound', () => {
  const alone = levelInput.parse({
    activities: [
      { id: 'a', duration: 3, demand: { R: 1 }, successors: ['b'] },
      { id: 'b', duration: 4, demand: { R: 1 }, successors: [] },
    ],
    capacity: { R: 1 },
    schedules: 1000,
    seed: 1,
  });
  expect(levelled(alone)).toMatchObject({
    answer: { makespan: 7, starts: { a: 0, b: 3 }, lowerBound: 7 },
    schedules: 1,
  });
});

test('durations of a million units are as quick as those of one', () => {
  const input = tinyProject(5);
  const long = {
    ...input,
    activities: input.activities.map((each) => ({ ...each, duration: each.duration * 100_000 })),
  };
  expect(levelled(long).answer.makespan).toBe(levelled(input).answer.makespan * 100_000);
});

test('the bound by work: of activities of three units in pairs, four last six, five at least eight and really nine', () => {
  expect(levelled(pairsOfWork(4)).answer).toMatchObject({ makespan: 6, lowerBound: 6 });
  expect(levelled(pairsOfWork(5)).answer).toMatchObject({ makespan: 9, lowerBound: 8 });
});

describe('what cannot be levelled is refused by name', () => {
  const a = { id: 'a', duration: 1, demand: { R: 1 }, successors: ['b'] };
  const b = { id: 'b', duration: 1, demand: {}, successors: [] };
  const refusals: readonly [
    what: string,
    activities: unknown[],
    code: string,
    words: RegExp,
    field: string,
  ][] = [
    ['an id twice', [a, b, b], 'named-twice', /"b".*entry 2 and 3/u, 'activities[2].id'],
    ['an unknown successor', [a], 'unknown-activity', /"a".*"b"/u, 'activities[0].successors[0]'],
    [
      'an unknown resource',
      [{ ...b, demand: { S: 1 } }],
      'unknown-resource',
      /"b" needs "S"/u,
      'activities[0].demand.S',
    ],
    [
      'more than there is',
      [{ ...b, demand: { R: 3 } }],
      'demand-over-capacity',
      /"b" needs 3 of "R".*more than 2/u,
      'activities[0].demand.R',
    ],
    [
      'a circle',
      [a, { ...b, successors: ['c'] }, { id: 'c', duration: 1, demand: {}, successors: ['a'] }],
      'circle',
      /"a" before "b" before "c" before "a"/u,
      'activities',
    ],
    ['one after itself', [{ ...b, successors: ['b'] }], 'circle', /"b" before "b"/u, 'activities'],
  ];
  for (const [what, activities, code, words, field] of refusals)
    test(`${what}: ${code}`, async () => {
      const asked = calcLevel.input.parse({ activities, capacity: { R: 2 }, schedules: 10, seed: 1 });
      const refused = await calcLevel.run(asked);
      expect(refused).toMatchObject({ ok: false, error: { code, field } });
      if (!refused.ok) expect(refused.error.message).toMatch(words);
    });
});

test('nothing to level is done at once', () => {
  expect(levelled(levelInput.parse({ activities: [], capacity: {} })).answer).toEqual({
    makespan: 0,
    starts: {},
    lowerBound: 0,
  });
});

function levelled(input: LevelInput) {
  const made = levelProject(input);
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

function pairsOfWork(count: number): LevelInput {
  return levelInput.parse({
    activities: Array.from({ length: count }, (_, at) => ({
      id: `${at}`,
      duration: 3,
      demand: { crew: 1 },
      successors: [],
    })),
    capacity: { crew: 2 },
  });
}

function tinyProject(seed: number): LevelInput {
  const random = randomFrom(seed);
  const upTo = (most: number): number => Math.floor(random() * (most + 1));
  const count = 3 + upTo(3);
  return levelInput.parse({
    activities: Array.from({ length: count }, (_, at) => ({
      id: `${at}`,
      duration: upTo(3),
      demand: { R: upTo(3), S: random() < 0.5 ? 0 : upTo(2) },
      successors: Array.from({ length: count - at - 1 }, (__, more) => at + 1 + more)
        .filter(() => random() < 0.25)
        .map(String),
    })),
    capacity: { R: 3, S: 2 },
    schedules: 400,
    seed,
  });
}

/** Every start of every activity is tried, unit by unit, for ends that rise until one can be kept. */
function leastByTrying(input: LevelInput): number {
  const { activities, capacity } = input;
  const fitsBy = (end: number): boolean => {
    const starts: number[] = [];
    const used = new Map<string, number>();
    const change = (at: number, start: number, sign: 1 | -1): void => {
      const { duration, demand } = activities[at] ?? { duration: 0, demand: {} };
      for (let unit = start; unit < start + duration; unit += 1)
        for (const [resource, quantity] of Object.entries(demand))
          used.set(`${resource} ${unit}`, (used.get(`${resource} ${unit}`) ?? 0) + sign * quantity);
    };
    const isOver = (): boolean =>
      [...used].some(([key, quantity]) => quantity > (capacity[key.split(' ')[0] ?? ''] ?? 0));
    const next = (at: number): boolean => {
      const activity = activities[at];
      if (activity === undefined) return true;
      // Activities wait only for those before them in the list.
      const from = activities
        .slice(0, at)
        .map(({ duration, successors }, first) =>
          successors.includes(activity.id) ? (starts[first] ?? 0) + duration : 0,
        );
      for (let start = Math.max(0, ...from); start + activity.duration <= end; start += 1) {
        change(at, start, 1);
        starts[at] = start;
        if (!isOver() && next(at + 1)) return true;
        change(at, start, -1);
      }
      return false;
    };
    return next(0);
  };
  let end = 0;
  while (!fitsBy(end)) end += 1;
  return end;
}
