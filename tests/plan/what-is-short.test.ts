import { describe, expect, test } from 'vitest';
import type { PlanInput } from '../../core/plan/contract.ts';
import { planReuse } from '../../core/plan/plan-reuse.ts';
import { shortfallFacts } from '../../core/plan/shortfall-facts.ts';
import { tightest } from '../../core/plan/tightest.ts';

/** Loose pieces of components with little stock: who stands from when to when is all that matters here. */
function inputOf(stock: Record<string, number>, loose: NonNullable<PlanInput['loose']>): PlanInput {
  return {
    components: Object.entries(stock).map(([code, quantity]) => ({
      code,
      stock: quantity,
      hirePerDay: code === 'IC' ? null : 25,
    })),
    designs: [],
    turns: [],
    loose,
    turnaround: { flyOnH: 0, regangBaseH: 0, regangPerPieceH: 0 },
    labourPerH: 100,
  };
}

const from = (day: number, hour = 7): string =>
  `2026-03-0${day}T${String(hour).padStart(2, '0')}:00:00-05:00`;

function facts(input: PlanInput) {
  const plan = planReuse(input, () => 0);
  if (!plan.ok) throw new Error(plan.error.message);
  const found = shortfallFacts(input, plan.value, 'America/New_York');
  if (!found.ok) throw new Error(found.error.message);
  return found.value;
}

describe('what stands behind a shortfall', () => {
  const stretch = { pieces: { LK: 8 }, from: from(2), to: from(4, 12) };

  test('held 8 of 5 there, by whom, and 3 pieces for the 3 calendar days it touches at 25 are 225', () => {
    const [short] = facts(inputOf({ LK: 5 }, [{ id: 'W1/locks', ...stretch }]));
    expect(short).toMatchObject({
      held: 8,
      stock: 5,
      turns: [],
      loose: [{ id: 'W1/locks', pieces: 8 }],
      hireCents: 225,
    });
  });

  test('one that ends at midnight does not touch the day after: 2 days are 150', () => {
    const [short] = facts(inputOf({ LK: 5 }, [{ id: 'W1/locks', ...stretch, to: from(4, 0) }]));
    expect(short?.hireCents).toBe(150);
  });

  test('what cannot be hired has no price, not a price of nothing', () => {
    const [short] = facts(inputOf({ IC: 0 }, [{ id: 'K1/corners', ...stretch, pieces: { IC: 1 } }]));
    expect(short?.hireCents).toBeNull();
  });

  test('holders are those of its first moment', () => {
    const later = { id: 'W2/locks', pieces: { LK: 2 }, from: from(3), to: from(3, 9) };
    const [first, second] = facts(inputOf({ LK: 5 }, [{ id: 'W1/locks', ...stretch }, later]));
    expect(first?.loose.map(({ id }) => id)).toEqual(['W1/locks']);
    expect(second?.loose).toEqual([
      { id: 'W1/locks', pieces: 8 },
      { id: 'W2/locks', pieces: 2 },
    ]);
  });
});

describe('what is next to be short', () => {
  const stock = { LK: 10, BR: 4, R8: 6, IC: 1, WB: 9 };
  const loose = [
    { id: 'a', pieces: { LK: 9, BR: 4, R8: 1, IC: 2 }, from: from(2), to: from(3) },
    { id: 'b', pieces: { R8: 3 }, from: from(4), to: from(5) },
  ];
  const input = inputOf(stock, loose);
  const plan = planReuse(input, () => 0);
  if (!plan.ok) throw new Error(plan.error.message);

  test('fewest to spare first, with the moment: none of 4 BR, 1 of 10 LK, 3 of 6 R8; short and idle ones are left out', () => {
    expect(tightest(input, plan.value, 8)).toEqual({
      ok: true,
      value: [
        { component: 'BR', at: from(2), held: 4, stock: 4 },
        { component: 'LK', at: from(2), held: 9, stock: 10 },
        { component: 'R8', at: from(4), held: 3, stock: 6 },
      ],
    });
  });

  test('no more than asked for', () => {
    expect(tightest(input, plan.value, 1)).toMatchObject({ value: [{ component: 'BR' }] });
  });
});
