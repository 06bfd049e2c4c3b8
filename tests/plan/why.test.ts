// What another way costs, against every plan of small inputs by a second reading of the definition: the best of those
// that go that way, less the best of all.
import { describe, expect, test } from 'vitest';
import { never } from '../../core/answer.ts';
import type { FixedChoice } from '../../core/plan/choices.ts';
import type { PlanAnswer, PlanInput, Shortfall } from '../../core/plan/contract.ts';
import { planReuse } from '../../core/plan/plan-reuse.ts';
import { shortChanges } from '../../core/plan/why/short-change.ts';
import { chosenAt, decisionAt, type Decision } from '../../core/plan/why/why.ts';
import { whyShort } from '../../core/plan/why/why-short.ts';
import { randomInput } from './random-input.ts';
import { everyPlan, refCost, type RefCost, refMayFollow, refRound } from './reference.ts';

const clock = (): number => 0;
const all = { planned: 99, withApart: true, barred: 99 };

function planned(input: PlanInput): PlanAnswer {
  const made = planReuse(input, clock);
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

function decided(input: PlanInput, turn: string, side: 'arrival' | 'departure', most = all): Decision {
  const question = {
    input,
    plan: planned(input),
    planWith: (changed: PlanInput) => planReuse(changed, clock),
    // Every turn by itself, so that no way is left out.
    placeOf: (id: string) => id,
  };
  const made = decisionAt(question, turn, side, most);
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

function obeys(runs: readonly (readonly string[])[], choice: FixedChoice, input: PlanInput): boolean {
  const run =
    runs.find((turns) => turns.includes(choice.kind === 'follow' ? choice.from : choice.turn)) ?? [];
  switch (choice.kind) {
    case 'follow':
      return run[run.indexOf(choice.from) + 1] === choice.to;
    case 'assemble':
      return run[0] === choice.turn;
    case 'break-down':
      return run.at(-1) === choice.turn;
    case 'no-regang': {
      const designOf = (id: string | undefined): string | undefined =>
        input.turns.find((turn) => turn.id === id)?.design;
      const next = run[run.indexOf(choice.turn) + 1];
      return next === undefined || designOf(next) === designOf(choice.turn);
    }
    default:
      return never(choice);
  }
}

function isLess(left: RefCost, right: RefCost): boolean {
  return left.unmet === right.unmet
    ? left.labour + left.hire < right.labour + right.hire
    : left.unmet < right.unmet;
}

describe('on 80 random inputs of 5 turns', () => {
  const made = Array.from({ length: 80 }, (_, index) => ({
    seed: 7000 + index,
    input: randomInput(7000 + index, 5),
  }));

  test('every other way there is is weighed, and costs what the best plan that goes that way costs more', () => {
    let weighed = 0;
    for (const { seed, input } of made) {
      const plan = planned(input);
      const plans: { readonly runs: string[][]; readonly cost: RefCost }[] = [];
      everyPlan(input, (runs) => plans.push({ runs, cost: refCost(input, runs) }));
      for (const { id } of input.turns) {
        for (const side of ['arrival', 'departure'] as const) {
          const decision = decided(input, id, side);
          const place = `seed ${seed}, ${side} of ${id}`;
          expect(
            obeys(
              plan.runs.map(({ turns }) => turns),
              decision.chosen.choice,
              input,
            ),
            place,
          ).toBe(true);
          for (const { choice, costMore, unmetMore } of decision.alternatives) {
            const ways = plans.filter(({ runs }) => obeys(runs, choice, input));
            const best = ways.reduce((one, other) => (isLess(other.cost, one.cost) ? other : one));
            expect(unmetMore, place).toBe(best.cost.unmet - plan.cost.unmet);
            expect(costMore, `${place}: ${JSON.stringify(choice)}`).toBe(
              refRound(best.cost.labour + best.cost.hire) - plan.cost.total,
            );
            weighed += 1;
          }
          const others = new Set(
            plans.map(({ runs }) =>
              JSON.stringify(chosenAt({ runs: runs.map((turns) => ({ turns })) }, id, side)),
            ),
          );
          others.delete(JSON.stringify(decision.chosen.choice));
          const simple = decision.alternatives.filter(({ choice }) => choice.kind !== 'no-regang');
          expect(new Set(simple.map(({ choice }) => JSON.stringify(choice))), place).toEqual(others);
        }
      }
    }
    expect(weighed).toBeGreaterThan(100);
  }, 60_000);

  test('every follow is either open or barred with a reason that the second reading bears out', () => {
    let barred = 0;
    for (const { seed, input } of made) {
      for (const { id } of input.turns) {
        const decision = decided(input, id, 'arrival');
        for (const each of decision.barred) {
          const [from, to] = [each.from, each.to].map((name) => input.turns.find((turn) => turn.id === name));
          if (from === undefined || to === undefined) throw new Error('no such turn');
          expect(refMayFollow(input, from, to), `seed ${seed}: ${each.from} then ${each.to}`).toBe(false);
          barred += 1;
          if (each.barrier.kind === 'still-standing')
            expect(each.barrier.hours).toBeCloseTo(
              (Date.parse(from.to) - Date.parse(to.from)) / 3_600_000,
              6,
            );
          if (each.barrier.kind === 'too-little-time')
            expect(each.barrier.neededH).toBeGreaterThan(each.barrier.thereH);
        }
      }
    }
    expect(barred).toBeGreaterThan(50);
  });
});

// Three like walls: by hand. A gang of A takes 4 h to assemble and 2 h to break down at 100 an hour; flying on takes 1 h.
const walls: PlanInput = {
  components: [{ code: 'P', stock: 100, hirePerDay: 10 }],
  designs: [
    { code: 'A', pieces: { P: 10 }, assembleH: 4, breakDownH: 2 },
    { code: 'B', pieces: { Q: 1 }, assembleH: 4, breakDownH: 2 },
  ],
  turns: [
    { id: 'one', design: 'A', from: '2026-03-02T12:00:00Z', to: '2026-03-03T12:00:00Z' },
    { id: 'two', design: 'A', from: '2026-03-04T12:00:00Z', to: '2026-03-05T12:00:00Z' },
    { id: 'too-soon', design: 'A', from: '2026-03-03T12:30:00Z', to: '2026-03-04T11:30:00Z' },
    { id: 'other', design: 'B', from: '2026-03-03T18:00:00Z', to: '2026-03-04T18:00:00Z' },
  ],
  turnaround: { flyOnH: 1, regangBaseH: 1, regangPerPieceH: 0 },
  labourPerH: 100,
};
const input: PlanInput = {
  ...walls,
  components: [...walls.components, { code: 'Q', stock: 1, hirePerDay: 10 }],
};

describe('by hand', () => {
  test('assembling anew in place of flying on costs 4 h and 2 h more, less the 1 h of flying on', () => {
    // What flies on to `two` may come from `one` or, half an hour before, not from `too-soon`: 11:30 to 12:00.
    const decision = decided(input, 'two', 'arrival');
    expect(decision.chosen.choice).toEqual({ kind: 'follow', from: 'one', to: 'two' });
    expect(decision.alternatives.map(({ choice, costMore }) => [choice.kind, costMore])).toEqual([
      ['assemble', 500],
    ]);
    expect(decision.barred.map(({ from, barrier }) => [from, barrier])).toEqual([
      ['too-soon', { kind: 'too-little-time', neededH: 1, thereH: 0.5 }],
      ['other', { kind: 'still-standing', hours: 6 }],
    ]);
  });

  test('a turn that comes half an hour after the strip cannot be reached in the hour that flying on takes', () => {
    const { barred } = decided(input, 'too-soon', 'arrival');
    expect(barred[0]).toEqual({
      from: 'one',
      to: 'too-soon',
      barrier: { kind: 'too-little-time', neededH: 1, thereH: 0.5 },
    });
    const { barred: ofOther } = decided(input, 'other', 'arrival');
    expect(ofOther.find(({ from }) => from === 'one')?.barrier).toEqual({ kind: 'no-common-piece' });
  });

  test('what is fixed at the place is released to weigh it, and named; what is fixed elsewhere is obeyed', () => {
    const fixed: FixedChoice[] = [{ kind: 'assemble', turn: 'two' }];
    const decision = decided({ ...input, fixed }, 'two', 'arrival');
    expect(decision.fixed).toEqual(fixed);
    expect(decision.alternatives.map(({ choice, costMore }) => [choice.kind, costMore])).toEqual([
      ['follow', -500],
    ]);
    const elsewhere = decided({ ...input, fixed: [{ kind: 'break-down', turn: 'one' }] }, 'two', 'arrival');
    expect(elsewhere.fixed).toEqual([]);
    expect(elsewhere.barred).toContainEqual({ from: 'one', to: 'two', barrier: { kind: 'fixed-otherwise' } });
  });

  test('a turn that is not there is refused', () => {
    const question = {
      input,
      plan: planned(input),
      planWith: (changed: PlanInput) => planReuse(changed, clock),
    };
    const refused = decisionAt({ ...question, placeOf: (id) => id }, 'none', 'arrival', all);
    expect(refused.ok ? '' : refused.error.code).toBe('unknown-turn');
  });

  test('of what is short: one gang stands, one waits; breaking that down clears it', () => {
    // Ten pieces for two gangs of ten: while `other` stands, `one` waits for `two` with its ten.
    const short: PlanInput = {
      ...walls,
      components: [{ code: 'P', stock: 10, hirePerDay: 1 }],
      designs: [
        { code: 'A', pieces: { P: 10 }, assembleH: 4, breakDownH: 2 },
        { code: 'C', pieces: { P: 10 }, assembleH: 4, breakDownH: 2 },
      ],
      turns: [
        { id: 'one', design: 'A', from: '2026-03-02T12:00:00Z', to: '2026-03-03T12:00:00Z' },
        { id: 'two', design: 'A', from: '2026-03-06T12:00:00Z', to: '2026-03-07T12:00:00Z' },
        { id: 'mid', design: 'C', from: '2026-03-04T12:00:00Z', to: '2026-03-05T12:00:00Z' },
      ],
      turnaround: {
        ...walls.turnaround,
        regangBaseH: 1,
        regangH: [
          { from: 'A', to: 'C', hours: 60 },
          { from: 'C', to: 'A', hours: 60 },
        ],
      },
    };
    const plan = planned(short);
    expect(plan.shortfalls.map(({ quantity, from }) => [quantity, from])).toEqual([
      [10, '2026-03-04T08:00:00Z'],
    ]);
    const why = whyShort({
      input: short,
      plan,
      planWith: (changed) => planReuse(changed, clock),
      placeOf: (id) => id,
      component: 'P',
      from: '2026-03-04T08:00:00Z',
    });
    if (!why.ok) throw new Error(why.error.message);
    expect(
      why.value.map(({ turns, pieces, doing, until, next }) => [turns, pieces, doing, until, next]),
    ).toEqual([
      [['mid'], 10, 'assembled', '2026-03-04T12:00:00Z', null],
      [['one'], 10, 'waits', '2026-03-06T12:00:00Z', 'two'],
    ]);
    const waits = why.value.find(({ doing }) => doing === 'waits')?.otherwise;
    expect(waits?.alternative.choice).toEqual({ kind: 'break-down', turn: 'one' });
    // 600 for breaking down and assembling less 100 for flying on; hire of ten on two days, 20, is saved.
    expect([waits?.alternative.costMore, waits?.shortThen]).toEqual([480, 0]);
  });
});

test('shortfalls of two plans differ by the greatest rise and the greatest fall at any moment', () => {
  const before = [shortOf('P', 1, 3, 5), shortOf('Q', 1, 2, 4), shortOf('R', 1, 2, 1)];
  const after = [shortOf('P', 2, 3, 7), shortOf('P', 4, 5, 1), shortOf('R', 1, 2, 1)];
  expect(shortChanges(before, after)).toEqual([
    { component: 'P', more: 2, from: '2026-03-02T00:00:00Z' },
    { component: 'P', more: -5, from: '2026-03-01T00:00:00Z' },
    { component: 'Q', more: -4, from: '2026-03-01T00:00:00Z' },
  ]);
});

function shortOf(component: string, from: number, to: number, quantity: number): Shortfall {
  return {
    component,
    from: `2026-03-0${from}T00:00:00Z`,
    to: `2026-03-0${to}T00:00:00Z`,
    quantity,
    turns: [],
    loose: [],
  };
}
