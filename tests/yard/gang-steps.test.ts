// Which state of a gang follows which, and what a step carries over from the one before.
import { describe, expect, test } from 'vitest';
import { type Gang, type GangState, gangStates, type GangStep } from '../../core/yard/gang.ts';
import { gangContentFindings } from '../../core/yard/gang-findings.ts';
import { mayFollow, nextGangStep } from '../../core/yard/gang-steps.ts';

const gang = (state: GangState, more: Partial<GangStep> = {}): Gang => ({
  code: 'GA-1',
  last: {
    gang: 'GA-1',
    number: 1,
    state,
    design: 'GA',
    designState: 1,
    place: 'ENN',
    laying: 'laid-down',
    job: 'TB26',
    turn: state === 'standing' ? 'P01/A1' : null,
    nextTurn: null,
    at: '2026-03-02T07:00:00-05:00',
    who: 'tester',
    remark: null,
    ...more,
  },
});
const later = '2026-03-03T07:00:00-05:00';

test('only these may follow: 15 pairs of 25', () => {
  const may = gangStates.flatMap((last) =>
    gangStates
      .filter((state) => nextGangStep(gang(last), { state, at: later, place: 'X', turn: 'P02/A1' }).ok)
      .map((state) => `${last} > ${state}`),
  );
  expect(may).toHaveLength(15);
  expect(may).not.toContain('standing > assembled');
  expect(may).not.toContain('assembled > stripped');
  expect(may).not.toContain('broken-down > standing');
  expect(mayFollow(null)).toEqual(['assembled']);
});

describe('a step', () => {
  test('refused: both states named', () => {
    const refused = nextGangStep(gang('standing'), { state: 'broken-down', at: later });
    expect(refused).toMatchObject({
      ok: false,
      error: { code: 'bad-step', message: 'GA-1 is standing; it cannot be broken down next.' },
    });
  });

  test('a moment before the last step is refused, whatever its offset', () => {
    const refused = nextGangStep(gang('assembled'), {
      state: 'standing-by',
      at: '2026-03-02T12:59:59+01:00',
    });
    expect(refused).toMatchObject({ ok: false, error: { code: 'step-too-early' } });
    expect(
      nextGangStep(gang('assembled'), { state: 'standing-by', at: '2026-03-02T13:00:00+01:00' }).ok,
    ).toBe(true);
  });

  test('stood at the turn that was next it is upright and nothing is next; stripped it has no turn', () => {
    const stood = nextGangStep(gang('assembled', { nextTurn: 'P01/A1' }), {
      state: 'standing',
      at: later,
      place: 'TB26/P01',
    });
    expect(stood).toMatchObject({
      ok: true,
      value: { turn: 'P01/A1', nextTurn: null, laying: 'upright', place: 'TB26/P01', design: 'GA' },
    });
    const stripped = nextGangStep(gang('standing'), { state: 'stripped', at: later, nextTurn: 'P02/A1' });
    expect(stripped).toMatchObject({ ok: true, value: { turn: null, nextTurn: 'P02/A1', place: 'ENN' } });
  });

  test('standing without a turn, or nowhere, is refused', () => {
    expect(nextGangStep(gang('assembled'), { state: 'standing', at: later, place: 'X' })).toMatchObject({
      error: { code: 'needs-turn' },
    });
    expect(nextGangStep(gang('assembled'), { state: 'standing', at: later, turn: 'P01/A1' })).toMatchObject({
      error: { code: 'needs-place' },
    });
  });
});

const line = (component: string, quantity: number, condition: 'ready' | 'to-repair' = 'ready') => ({
  component,
  owner: 'OURS',
  location: 'GA-1',
  condition,
  quantity,
  basis: null,
  basisDate: null,
});

describe('content against design', () => {
  test('1 of 4 panels missing, a plank too many, 2 locks to repair, and built to state 1 of 2', () => {
    const found = gangContentFindings(
      gang('assembled').last,
      [line('P8', 3), line('PK', 1), line('LK', 2, 'to-repair')],
      { pieces: { P8: 4, LK: 2 }, inForce: 2 },
    );
    expect(found.map(({ rule, severity }) => `${rule}: ${severity}`)).toEqual([
      'older design: caution',
      'missing pieces: stop',
      'surplus pieces: caution',
      'pieces not ready: stop',
    ]);
    expect(found[0]?.message).toContain('does not fly on until someone says so');
  });

  test('nothing to find where it is what its design is', () => {
    const makeUp = { pieces: { P8: 4 }, inForce: 1 };
    expect(gangContentFindings(gang('standing').last, [line('P8', 4)], makeUp)).toEqual([]);
    expect(gangContentFindings(gang('broken-down').last, [], makeUp)).toEqual([]);
    expect(gangContentFindings(gang('broken-down').last, [line('P8', 1)], makeUp)).toHaveLength(1);
  });
});
