// What is told, what is fixed and a plan to begin from, each by a case small enough to work out by hand; and random plans of
// 30 turns that begin from another.
import { describe, expect, test } from 'vitest';
import type { FixedChoice, Instruction } from '../../core/plan/choices.ts';
import { planInput, type PlanAnswer, type PlanInput } from '../../core/plan/contract.ts';
import { edgesOf } from '../../core/plan/edges.ts';
import { planReuse, readModel } from '../../core/plan/plan-reuse.ts';
import { startOf } from '../../core/plan/start-plan.ts';
import { bettered } from './bettered.ts';
import { randomInput } from './random-input.ts';
import { refCost, refRound } from './reference.ts';
import { refObeys, withChoices } from './told-and-fixed.ts';

function at(day: number, time: string): string {
  return `2026-03-${String(day).padStart(2, '0')}T${time}:00-05:00`;
}

function turnOf(id: string, design: string, from: number, to: number): PlanInput['turns'][number] {
  return { id, design, from: at(from, '07:00'), to: at(to, '15:00') };
}

/** Two gangs of one design, then two pours a day later; labour 100 an hour. Flying on costs 150, a new gang 1,200. */
function base(change: Partial<PlanInput> = {}): PlanInput {
  return {
    components: [
      { code: 'P', stock: 100, hirePerDay: 7 },
      { code: 'Q', stock: 100, hirePerDay: 7 },
    ],
    designs: [
      { code: 'A', pieces: { P: 10 }, assembleH: 8, breakDownH: 4 },
      { code: 'B', pieces: { P: 8, Q: 1 }, assembleH: 8, breakDownH: 4 },
      { code: 'C', pieces: { Q: 3 }, assembleH: 1, breakDownH: 1 },
    ],
    turns: [
      turnOf('T1', 'A', 2, 3),
      turnOf('T2', 'A', 2, 3),
      turnOf('T3', 'A', 5, 6),
      turnOf('T4', 'A', 5, 6),
      turnOf('T5', 'B', 9, 10),
      turnOf('T6', 'C', 5, 6),
    ],
    turnaround: { flyOnH: 1.5, regangBaseH: 2, regangPerPieceH: 0.5 },
    labourPerH: 100,
    ...change,
  };
}

function asked(input: PlanInput): ReturnType<typeof planReuse> {
  return planReuse(planInput.parse(input), () => 0);
}

function plan(input: PlanInput): PlanAnswer {
  const made = asked(input);
  if (!made.ok) throw new Error(`${made.error.code}: ${made.error.message}`);
  return made.value;
}

function runs(input: PlanInput): string {
  return plan(input)
    .runs.map(({ turns }) => turns.join('>'))
    .join(' ');
}

function follow(from: string, to: string): Extract<Instruction, { kind: 'follow' }> {
  return { kind: 'follow', from, to };
}

describe('what is told', () => {
  test('nothing told: the answer says nothing of changes', () => {
    const { cost, ...rest } = plan(base());
    expect(Object.keys(cost)).toEqual(['labour', 'hire', 'total', 'unmet']);
    expect(rest).not.toHaveProperty('changed');
    expect(plan(base({ told: [], changePerInstruction: 5 }))).toMatchObject({
      cost: { changes: 0 },
      changed: [],
    });
  });

  test('of plans that cost the same, the one that was told', () => {
    expect(runs(base())).toContain('T1>T3');
    const told = [follow('T1', 'T4'), follow('T2', 'T3')];
    const made = plan(base({ told, changePerInstruction: 1 }));
    expect(made.runs.map(({ turns }) => turns.slice(0, 2).join('>'))).toEqual(
      expect.arrayContaining(['T1>T4', 'T2>T3']),
    );
    expect([made.changed, made.cost.changes]).toEqual([[], 0]);
  });

  // T3 assembled although T1's gang could fly on: 12 h more (assembled and broken down) less 1.5 h of flying on.
  test('told to assemble: done where the change costs more than the 1,050 that it saves, else changed and paid', () => {
    const told: Instruction[] = [{ kind: 'assemble', turn: 'T3' }];
    const free = plan(base()).cost.total;
    const obeyed = plan(base({ told, changePerInstruction: 1051 }));
    expect([obeyed.changed, obeyed.cost.total]).toEqual([[], free + 1050]);
    const changed = plan(base({ told, changePerInstruction: 1049 }));
    expect([changed.changed, changed.cost.changes, changed.cost.total]).toEqual([told, 1049, free + 1049]);
    expect(changed.proven).toBe(true);
  });

  test('told twice costs once; told what cannot be costs in every plan', () => {
    const free = plan(base()).cost.total;
    const told = [follow('T3', 'T1'), follow('T3', 'T1')];
    const made = plan(base({ told, changePerInstruction: 300 }));
    expect([made.changed, made.cost.total]).toEqual([[follow('T3', 'T1')], free + 300]);
  });

  test('a gang that is made up and told to come begins its run', () => {
    const [first, ...others] = base().turns;
    const turns = [first!, ...others.map((each) => (each.id === 'T3' ? { ...each, built: true } : each))];
    const told: Instruction[] = [{ kind: 'assemble', turn: 'T3' }];
    const made = plan(base({ turns, told, changePerInstruction: 500 }));
    expect(made.changed).toEqual([]);
    expect(made.runs.map(({ turns: ids }) => ids[0])).toContain('T3');
  });

  test('of half a minor unit: labour, changes and hire add up to the total', () => {
    const told: Instruction[] = [{ kind: 'break-down', turn: 'T1' }];
    const { cost } = plan(base({ told, changePerInstruction: 0.5, labourPerH: 100.1 }));
    expect(cost.labour + (cost.changes ?? 0) + cost.hire).toBe(cost.total);
    expect(cost.changes).toBe(1);
  });

  test('of a turn that is not there: refused at its place', () => {
    const made = asked(base({ told: [follow('T1', 'T3'), follow('T1', 'T9')] }));
    expect(made).toMatchObject({ ok: false, error: { code: 'unknown-turn', field: 'told[1]' } });
  });
});

describe('what is fixed', () => {
  test('a follow, an assembly, a break-down and no re-gang are obeyed at whatever cost', () => {
    const kept = (choice: FixedChoice): string => runs(base({ fixed: [choice] }));
    expect(kept(follow('T1', 'T4'))).toContain('T1>T4');
    expect(kept({ kind: 'assemble', turn: 'T4' })).not.toContain('>T4');
    expect(kept({ kind: 'break-down', turn: 'T1' })).not.toContain('T1>');
    expect(runs(base())).toContain('>T5');
    const none: FixedChoice[] = ['T1', 'T2', 'T3', 'T4', 'T6'].map((id) => ({ kind: 'no-regang', turn: id }));
    expect(runs(base({ fixed: none }))).not.toContain('>T5');
  });

  test('a follow that saves nothing at all is kept, and its plan is still proven the best of those that keep it', () => {
    const made = plan(
      base({ fixed: [follow('T6', 'T5')], turnaround: { ...base().turnaround, regangBaseH: 40 } }),
    );
    expect(made.runs.map(({ turns }) => turns.join('>'))).toContain('T6>T5');
    expect(made.proven).toBe(true);
  });

  test.each<[string, FixedChoice[], string]>([
    ['a turn that is not there', [{ kind: 'no-regang', turn: 'T9' }], 'there is no turn T9'],
    [
      'a follow backwards',
      [follow('T3', 'T1')],
      'T3 is stripped at 2026-03-06T15:00:00-05:00 and T1 set from',
    ],
    ['a follow of itself', [follow('T1', 'T1')], 'a gang cannot follow itself'],
    ['designs without a common piece', [follow('T1', 'T6')], 'A into C: the two designs share no piece'],
    ['two ways on', [follow('T1', 'T3'), follow('T1', 'T4')], 'the gang of T1 goes on to T3: both cannot be'],
    [
      'two ways here',
      [follow('T1', 'T3'), follow('T2', 'T3')],
      'the gang of T1 goes on to T3: both cannot be',
    ],
    [
      'assembled and flown on',
      [{ kind: 'assemble', turn: 'T3' }, follow('T1', 'T3')],
      'the gang of T3 is assembled for it: both cannot be',
    ],
    [
      'broken down and flown on',
      [follow('T1', 'T3'), { kind: 'break-down', turn: 'T1' }],
      'the gang of T1 goes on to T3: both cannot be',
    ],
    [
      're-ganged and not re-ganged',
      [{ kind: 'no-regang', turn: 'T3' }, follow('T3', 'T5')],
      'the gang of T3 is not re-ganged: both cannot be',
    ],
  ])('%s: refused, with what stands against it', (_, fixed, message) => {
    const made = asked(base({ fixed }));
    if (made.ok) throw new Error('It was planned.');
    expect([made.error.code, made.error.field]).toEqual(['fixed-impossible', `fixed[${fixed.length - 1}]`]);
    expect(made.error.message).toContain(message);
  });

  test('too few hours to re-gang: refused with the hours it takes', () => {
    const made = asked(
      base({ fixed: [follow('T3', 'T5')], turnaround: { ...base().turnaround, regangBaseH: 90 } }),
    );
    if (made.ok) throw new Error('It was planned.');
    expect(made.error.message).toContain('fewer than the 91.5 hours of work that re-ganging A into B takes');
  });

  test('the same choice twice is one', () => {
    expect(runs(base({ fixed: [follow('T1', 'T4'), follow('T1', 'T4')] }))).toContain('T1>T4');
  });
});

describe('a plan to begin from', () => {
  test('what no longer fits is left out: a turn that is gone, one that stands in two runs, a follow that is not allowed', () => {
    const start = [{ turns: ['T1', 'T9', 'T4', 'T1'] }, { turns: ['T2', 'T4'] }, { turns: ['T6', 'T1'] }];
    const input = base({ fixed: [follow('T3', 'T5')] });
    const model = readModel(input);
    if (!model.ok) throw new Error(model.error.message);
    const begun = startOf(model.value, edgesOf(model.value), start) ?? new Int32Array();
    const then = [...begun].map((later, turn) => `${input.turns[turn]?.id}>${input.turns[later]?.id ?? ''}`);
    // The fixed follow is in it although no run said so.
    expect(then).toEqual(['T1>T4', 'T2>', 'T3>T5', 'T4>', 'T5>', 'T6>']);
    expect(plan(base({ start })).cost).toEqual(plan(base()).cost);
  });

  test('9 random inputs of 30 turns: never dearer than without it, never dearer than what it began from, choices obeyed', () => {
    let better = 0;
    for (let seed = 1020; seed < 1029; seed += 1) {
      const input = seed < 1026 ? randomInput(seed, 30) : withChoices(randomInput(seed, 30), seed);
      const without = plan(input);
      const known = bettered({ ...input, improveSteps: 20_000 });
      const made = plan({ ...input, start: known.runs });
      expect(made.cost.unmet, `seed ${seed}`).toBeLessThanOrEqual(
        Math.min(without.cost.unmet, known.cost.unmet),
      );
      if (made.cost.unmet === without.cost.unmet)
        expect(made.cost.total, `seed ${seed}`).toBeLessThanOrEqual(without.cost.total);
      if (made.cost.unmet === known.cost.unmet)
        expect(made.cost.total, `seed ${seed}`).toBeLessThanOrEqual(known.cost.total);
      if (made.cost.unmet < without.cost.unmet || made.cost.total < without.cost.total) better += 1;
      const ids = made.runs.map(({ turns }) => turns);
      expect(refObeys(input, ids), `seed ${seed}`).toBe(true);
      const { labour, hire } = refCost(input, ids);
      const changes = made.cost.changes ?? 0;
      // The changes may have a half minor unit, rounded with the rest.
      expect(
        Math.abs(made.cost.total - changes - refRound(labour + hire)),
        `seed ${seed}`,
      ).toBeLessThanOrEqual(1);
      expect(plan({ ...input, start: known.runs }), `seed ${seed}`).toEqual(made);
    }
    expect(better).toBeGreaterThan(0);
  });
});
