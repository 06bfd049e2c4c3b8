// A job whose entries clash is planned all the same, and the board says what clashes.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoHost, job, type DemoHost } from './demo-host.ts';

let host: DemoHost;

beforeAll(async () => {
  host = await demoHost();
});

afterAll(() => host.close());

describe('Bad entries', () => {
  test('the demo has none that clash as a whole', async () => {
    expect((await host.ask('board.read', { job })).planFindings).toEqual([]);
  });

  test('a gate that leaves too little time and a component that nobody has are named, and every pour still has its plan', async () => {
    const { pours } = await host.ask('pour.list', { job });
    const [first] = pours;
    if (first === undefined) throw new Error('The demo has no pour.');
    const { pour } = first;
    const promised = pour.finishAt.slice(0, 10);
    await host.ask('pour.save', {
      commandId: 'plan-findings-1',
      job,
      pour: {
        ...pour,
        gates: [{ name: 'steel', who: 'bar crew', before: 'set', promised, done: false }],
        sides: [
          { ...pour.sides[0], setH: 40 },
          { ...pour.sides[1], setH: 40 },
        ],
      },
    });
    const board = await host.ask('board.read', { job });
    expect(board.planFindings.map(({ rule, where }) => [rule, where])).toEqual([
      ['window-too-short', pour.code],
    ]);
    expect(board.pours).toHaveLength(27);
    expect(new Set(board.turns.map((turn) => turn.pour))).toContain(pour.code);
  });

  test('a circle is refused with its shortest way round', async () => {
    const { pours } = await host.ask('pour.list', { job });
    const later = pours.find(({ pour }) => pour.after.length > 0);
    const earlier = pours.find(({ pour }) => pour.code === later?.pour.after[0]);
    if (later === undefined || earlier === undefined)
      throw new Error('No pour of the demo comes after another.');
    const code = await host.refused('pour.save', {
      commandId: 'plan-findings-2',
      job,
      pour: { ...earlier.pour, after: [...earlier.pour.after, later.pour.code] },
    });
    expect(code).toBe('cyclic-sequence');
  });
});
