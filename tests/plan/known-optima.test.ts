// Reuse plans and assignments against small problems with known optima (data/README.md names each source). What is cast as
// what is said at each.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { planInput, type PlanAnswer, type PlanInput } from '../../core/plan/contract.ts';
import { planReuse } from '../../core/plan/plan-reuse.ts';
import { flowAsAssignment, leastSum } from './flow-as-assignment.ts';

function data<T>(file: string): T[] {
  return JSON.parse(readFileSync(new URL(`data/${file}.json`, import.meta.url), 'utf8')) as T[];
}

function plan(input: PlanInput): PlanAnswer {
  const made = planReuse(planInput.parse(input), () => 0);
  if (!made.ok) throw new Error(JSON.stringify(made.error));
  return made.value;
}

/** A "day" of a problem, long enough that hours that stand for costs always fit between two days. */
const dayH = 100;
/** Hours that fit between no two turns here. */
const never = 100_000;

function at(hours: number): string {
  return new Date(Date.UTC(2026, 0, 1) + hours * 3_600_000).toISOString();
}

/** One piece that every design has, free to hire: nothing counts but labour, an hour of which costs 1. */
function labourOnly(
  designs: readonly { readonly code: string; readonly assembleH: number; readonly breakDownH: number }[],
  turns: PlanInput['turns'],
  turnaround: PlanInput['turnaround'],
): PlanInput {
  return {
    components: [{ code: 'P', stock: 0, hirePerDay: 0 }],
    designs: designs.map((design) => ({ ...design, pieces: { P: 1 } })),
    turns,
    turnaround,
    labourPerH: 1,
  };
}

interface MinMachines {
  readonly name: string;
  readonly turnaround: number;
  readonly minMachines: number;
  readonly intervals: readonly (readonly [number, number])[];
}

describe('all designs alike: as many gangs as the greatest overlap', () => {
  // Flying on takes the days of the turnaround; a gang costs more than any number of flights here.
  test.each(data<MinMachines>('min-machines'))(
    '$name: $minMachines',
    ({ turnaround, minMachines, intervals }) => {
      const flyOnH = turnaround * 24;
      const assembleH = 90_000;
      const turns = intervals.map(([from, to], index) => ({
        id: `T${index}`,
        design: 'D',
        from: at(from * 24),
        to: at(to * 24),
      }));
      const input = labourOnly([{ code: 'D', assembleH, breakDownH: 0 }], turns, {
        flyOnH,
        regangBaseH: 0,
        regangPerPieceH: 0,
      });
      const { runs, cost, proven } = plan(input);
      expect(runs).toHaveLength(minMachines);
      expect(cost.total).toBe(minMachines * assembleH + (intervals.length - minMachines) * flyOnH);
      expect(proven).toBe(true);
      const overlap = intervals.map(
        ([at0]) => intervals.filter(([from, to]) => from <= at0 && at0 < to + turnaround).length,
      );
      expect(Math.max(...overlap)).toBe(minMachines);
    },
  );
});

interface SetupChoices {
  readonly name: string;
  readonly machineCost: number;
  readonly firstSetup: readonly number[] | null;
  readonly setupCost: readonly (readonly number[])[];
  readonly turnaround: readonly (readonly number[])[];
  readonly maxMachines: number | null;
  readonly optimum: number | null;
  readonly jobs: readonly (readonly [number, number, number])[];
}

describe('a machine bought, or one set up anew, is a gang assembled, or one re-ganged', () => {
  const all = data<SetupChoices>('setup-choices');
  // A plan has no limit on its number of gangs, so that the one instance with a limit has no counterpart.
  const castable = all.filter(({ maxMachines }) => maxMachines === null);

  test('all but one of the instances can be said as a plan', () => {
    expect([all.length, castable.length]).toEqual([12, 11]);
  });

  // Each job is a turn of a design of its own, so that what a change costs (its hours) and whether its days suffice are free
  // of each other: where they do not, its hours are too many.
  test.each(castable)(
    '$name: $optimum',
    ({ machineCost, firstSetup, setupCost, turnaround, optimum, jobs }) => {
      const designs = jobs.map(([, , kind], index) => ({
        code: `D${index}`,
        assembleH: machineCost + (firstSetup?.[kind] ?? 0),
        breakDownH: 0,
      }));
      const turns = jobs.map(([from, to], index) => ({
        id: `T${index}`,
        design: `D${index}`,
        from: at(from * dayH),
        to: at(to * dayH),
      }));
      const regangH = jobs.flatMap(([, end, kind], from) =>
        jobs.flatMap(([start, , next], to) => {
          const fits = end + (turnaround[kind]?.[next] ?? 0) <= start;
          return from === to
            ? []
            : [{ from: `D${from}`, to: `D${to}`, hours: fits ? (setupCost[kind]?.[next] ?? 0) : never }];
        }),
      );
      const made = plan(
        labourOnly(designs, turns, { flyOnH: 0, regangBaseH: 0, regangPerPieceH: 0, regangH }),
      );
      expect([made.cost.total, made.bound, made.proven]).toEqual([optimum, optimum, true]);
    },
  );
});

interface Assignment {
  readonly name: string;
  readonly optimum: number | null;
  readonly cost: readonly (readonly (number | null)[])[];
}

describe('rows are gangs that are stripped, columns turns that they may go to', () => {
  // Breaking down a row and assembling for a column cost more than any sum of re-gangs: first as many pairs as can be.
  const apart = 50_000;
  test.each(data<Assignment>('assignment'))('$name: $optimum', ({ cost, optimum }) => {
    const rows = cost.map((_, row) => `R${row}`);
    const columns = (cost[0] ?? []).map((_, column) => `C${column}`);
    const designs = [
      ...rows.map((code) => ({ code, assembleH: 0, breakDownH: apart })),
      ...columns.map((code) => ({ code, assembleH: apart, breakDownH: 0 })),
    ];
    const turns = [
      ...rows.map((code) => ({ id: code, design: code, from: at(0), to: at(1) })),
      ...columns.map((code) => ({ id: code, design: code, from: at(10 * dayH), to: at(10 * dayH + 1) })),
    ];
    const regangH = rows.flatMap((from, row) =>
      columns.map((to, column) => ({ from, to, hours: cost[row]?.[column] ?? never })),
    );
    const made = plan(labourOnly(designs, turns, { flyOnH: 0, regangBaseH: 0, regangPerPieceH: 0, regangH }));
    const pairs = rows.length + columns.length - made.runs.length;
    const most = Math.min(rows.length, columns.length);
    expect(made.proven).toBe(true);
    if (optimum === null) {
      expect(pairs).toBeLessThan(most);
      return;
    }
    expect(pairs).toBe(most);
    expect(made.cost.total - apart * (rows.length + columns.length - 2 * pairs)).toBe(optimum);
  });
});

interface Flow {
  readonly name: string;
  readonly optimum: number | null;
  readonly nodes: number;
  readonly supply: readonly number[];
  readonly arcs: readonly (readonly [number, number, number, number, number])[];
}

describe('flow of least cost as an assignment of units, by the matching of the planner', () => {
  test.each(data<Flow>('min-cost-flow'))('$name: $optimum', (flow) => {
    const units = flowAsAssignment(flow);
    expect(units === null ? null : leastSum(units)).toBe(flow.optimum);
  });
});
