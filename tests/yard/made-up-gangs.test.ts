// Which turns of a plan begin with a gang that the yard has built already.
import { describe, expect, test } from 'vitest';
import type { Gang, GangState, GangStep } from '../../core/yard/gang.ts';
import { type MadeUpGang, madeUpGangs, turnsMadeUp } from '../../core/yard/made-up-gangs.ts';

const day = (date: number): string => `2026-03-${String(date).padStart(2, '0')}T07:00:00-05:00`;

type Step = readonly [state: GangState, turn?: string, more?: Partial<GangStep>];

function stepsOf(gang: string, steps: readonly Step[]): GangStep[] {
  return steps.map(([state, turn, more], index) => ({
    gang,
    number: index + 1,
    state,
    design: 'GA',
    designState: 2,
    place: 'ENN',
    laying: 'laid-down',
    job: 'TB26',
    turn: state === 'standing' ? (turn ?? null) : null,
    nextTurn: state === 'standing' ? null : (turn ?? null),
    at: day(index + 1),
    who: 'tester',
    remark: null,
    ...more,
  }));
}

function found(...steps: Step[]): readonly (readonly [turn: string | null, hasStood: boolean])[] {
  const all = stepsOf('GA-1', steps);
  const gang: Gang = { code: 'GA-1', last: all.at(-1)! };
  return madeUpGangs(
    [gang],
    'TB26',
    () => all,
    (design) => (design === 'GA' ? 2 : 1),
  ).map(({ turn, hasStood }) => [turn, hasStood]);
}

describe('a gang that was built', () => {
  test('is for the turn it was built for, also after it was moved, or for whichever comes first', () => {
    expect(found(['assembled', 'P01/A1'])).toEqual([['P01/A1', false]]);
    expect(found(['assembled', 'P01/A1'], ['standing-by', 'P02/A1'])).toEqual([['P02/A1', false]]);
    expect(found(['assembled'])).toEqual([[null, false]]);
  });

  test('is not counted to an older state of its design, or for another job', () => {
    expect(found(['assembled', 'P01/A1', { designState: 1 }])).toEqual([]);
    expect(found(['assembled', 'P01/A1', { job: 'OTHER' }])).toEqual([]);
  });

  test('began with the turn at which it stood first, whatever it does afterwards', () => {
    const first: Step[] = [
      ['assembled', 'P01/A1'],
      ['standing', 'P01/A1'],
    ];
    expect(found(...first)).toEqual([['P01/A1', true]]);
    expect(found(...first, ['stripped', 'P03/A1'], ['standing-by', 'P03/A1'])).toEqual([['P01/A1', true]]);
    expect(found(...first, ['stripped'], ['standing', 'P03/A1'])).toEqual([['P01/A1', true]]);
    expect(found(...first, ['stripped'], ['broken-down'])).toEqual([['P01/A1', true]]);
  });

  test('and built anew under the same tag begins again', () => {
    const life: Step[] = [['assembled'], ['standing', 'P01/A1'], ['stripped'], ['broken-down']];
    expect(found(...life, ['assembled', 'P09/B1'])).toEqual([
      ['P01/A1', true],
      ['P09/B1', false],
    ]);
  });
});

const gangFor = (turn: string | null, more: Partial<MadeUpGang> = {}): MadeUpGang => ({
  gang: 'GA-1',
  design: 'GA',
  turn,
  hasStood: false,
  since: day(2),
  ...more,
});

describe('the turns that begin made up', () => {
  const turns = ['P01/A1', 'P02/A1', 'P03/A1', 'P04/B1'].map((id, index) => ({
    id,
    design: id === 'P04/B1' ? 'GB' : 'GA',
    from: Date.parse(day(2 * index + 1)),
  }));
  test('are those that gangs were built for, then the first of the design from the day a gang is there', () => {
    expect([...turnsMadeUp([gangFor('P03/A1')], turns)]).toEqual(['P03/A1']);
    expect([...turnsMadeUp([gangFor(null)], turns)]).toEqual(['P02/A1']);
    expect([...turnsMadeUp([gangFor(null), gangFor('P02/A1')], turns)]).toEqual(['P02/A1', 'P03/A1']);
  });

  test('are no more than there are gangs, and none where a gang has stood at a turn that is gone', () => {
    expect(turnsMadeUp([gangFor(null), gangFor(null), gangFor(null)], turns).size).toBe(2);
    expect(turnsMadeUp([gangFor('P77/A1', { hasStood: true })], turns).size).toBe(0);
    expect([...turnsMadeUp([gangFor('P77/A1')], turns)]).toEqual(['P02/A1']);
    expect([...turnsMadeUp([gangFor('P04/B1')], turns)]).toEqual(['P02/A1']);
  });
});
