// The plan of `calc plan` as one plain mixed-integer model, written apart from the planner out of the second reading alone:
// begun from a plan in which every turn is a run of its own, a follow of one turn by another changes what is held and what
// the work costs, by as much as the two together differ from the two alone. Every instant at which pieces begin to be held has
// its row. HiGHS (MIT) solves it; what it answers is costed by the second reading.
import loader, { type Highs } from 'highs';
import { never } from '../../core/answer.ts';
import type { PlanInput } from '../../core/plan/contract.ts';
import {
  dayAt,
  instantsOf,
  refCost,
  refHolds,
  refMayFollow,
  refRound,
  refStock,
  type RefCost,
  type RefHold,
} from './reference.ts';
import { refChanged, refObeys } from './told-and-fixed.ts';

/** The package's types are those of CommonJS, where the default export is a member; as a module it is the function. */
const load = loader as unknown as typeof loader.default;

export interface PlainPlan {
  readonly runs: string[][];
  readonly cost: RefCost & { readonly changes: number };
  readonly total: number;
  /** Whether HiGHS ended with the best. */
  readonly isBest: boolean;
  readonly rows: number;
  readonly columns: number;
}

interface Row {
  readonly least: number;
  readonly most: number;
  readonly entries: Map<number, number>;
}

interface Follow {
  readonly from: string;
  readonly to: string;
  /** What it adds to the work and the told instructions that are changed, in minor units. */
  readonly cost: number;
  readonly holds: readonly RefHold[];
}

export function loadPlain(): Promise<Highs> {
  return load();
}

/** @param seconds where the clock may end the search */
export function plainPlan(highs: Highs, input: PlanInput, seconds?: number): PlainPlan {
  const follows = followsOf(input);
  const { rows, excess } = rowsOf(input, follows);
  const unmetColumns = [...excess].filter(([, { cost }]) => cost === null).map(([column]) => column);
  const cost = [
    ...follows.map((follow) => follow.cost),
    ...[...excess.values()].map((each) => each.cost ?? 0),
  ];
  const solve = (objective: readonly number[], more: readonly Row[]) =>
    solved(highs, follows.length, objective, [...rows, ...more], seconds);
  let limit: Row[] = [];
  let isBest = true;
  if (unmetColumns.length > 0) {
    const isUnmet = new Set(unmetColumns);
    const wanting = solve(
      cost.map((_, column) => (isUnmet.has(column) ? 1 : 0)),
      [],
    );
    const fewest = Math.round(unmetColumns.reduce((sum, column) => sum + (wanting.values[column] ?? 0), 0));
    limit = [{ least: -Infinity, most: fewest, entries: new Map(unmetColumns.map((column) => [column, 1])) }];
    isBest = wanting.isBest;
  }
  const last = solve(cost, limit);
  const runs = runsOf(
    input,
    follows.filter((_, column) => (last.values[column] ?? 0) > 0.5),
  );
  const found = refCost(input, runs);
  const changes = refChanged(runs, input.told ?? []).length;
  const perChange = input.changePerInstruction ?? 0;
  return {
    runs,
    cost: { ...found, changes },
    total: refRound(found.labour + found.hire + BigInt(Math.round(changes * perChange * 1e6)) * 10n ** 12n),
    isBest: isBest && last.isBest && refObeys(input, runs),
    rows: rows.length,
    columns: cost.length,
  };
}

function followsOf(input: PlanInput): Follow[] {
  const alone = (id: string) => work(input, [[id]]);
  const singles = input.turns.map(({ id }) => [id]);
  const changedAlone = refChanged(singles, input.told ?? []).length;
  return input.turns.flatMap((earlier) =>
    input.turns
      .filter((later) => earlier !== later && refMayFollow(input, earlier, later))
      .filter((later) => isOpen(input, earlier, later))
      .map((later): Follow => {
        const [one, other] = [alone(earlier.id), alone(later.id)];
        const both = work(input, [[earlier.id, later.id]]);
        const rest = singles.filter(([id]) => id !== earlier.id && id !== later.id);
        const changed = refChanged([...rest, [earlier.id, later.id]], input.told ?? []).length;
        const back = [...one.holds, ...other.holds].map((hold) => ({ ...hold, n: -hold.n }));
        return {
          from: earlier.id,
          to: later.id,
          cost:
            both.cost - one.cost - other.cost + (changed - changedAlone) * (input.changePerInstruction ?? 0),
          holds: [...both.holds, ...back],
        };
      }),
  );
}

/** Whether what is fixed leaves the follow possible. */
function isOpen(
  { fixed = [] }: PlanInput,
  earlier: PlanInput['turns'][number],
  later: PlanInput['turns'][number],
): boolean {
  return fixed.every((choice) => {
    switch (choice.kind) {
      case 'follow':
        return (choice.from === earlier.id) === (choice.to === later.id);
      case 'assemble':
        return choice.turn !== later.id;
      case 'break-down':
        return choice.turn !== earlier.id;
      case 'no-regang':
        return choice.turn !== earlier.id || earlier.design === later.design;
      default:
        return never(choice);
    }
  });
}

/** What runs hold and their work costs, loose turns left out. */
function work(
  { loose: _loose, ...input }: PlanInput,
  runs: readonly (readonly string[])[],
): { holds: RefHold[]; cost: number } {
  const { holds, hours } = refHolds(input, runs);
  return { holds, cost: (Number(hours) / 1e9) * input.labourPerH * (input.crew ?? 1) };
}

function rowsOf(
  input: PlanInput,
  follows: readonly Follow[],
): { rows: Row[]; excess: Map<number, { cost: number | null }> } {
  const rows: Row[] = [];
  for (const { id } of input.turns) {
    for (const end of ['from', 'to'] as const) {
      const columns = [...follows.keys()].filter((column) => follows[column]?.[end] === id);
      const isFixed = (input.fixed ?? []).some((choice) => choice.kind === 'follow' && choice[end] === id);
      rows.push({
        least: isFixed ? 1 : 0,
        most: 1,
        entries: new Map(columns.map((column) => [column, 1])),
      });
    }
  }
  const excess = new Map<number, { cost: number | null }>();
  const begun = refHolds(
    input,
    input.turns.map(({ id }) => [id]),
  ).holds;
  for (const { code, hirePerDay } of input.components) {
    if (hirePerDay === 0) continue;
    const base = begun.filter((hold) => hold.code === code);
    const changes = follows.map(({ holds }) => holds.filter((hold) => hold.code === code));
    const columnOfDay = new Map<number, number>();
    for (const at of risesOf(input, code, base, changes)) {
      const entries = new Map<number, number>();
      let most = heldAt(base, at);
      const over = refStock(input, code, at) - most;
      for (const [column, own] of changes.entries()) {
        const held = heldAt(own, at);
        if (held !== 0) entries.set(column, held);
        most += Math.max(0, held);
      }
      if (most <= refStock(input, code, at)) continue;
      const day = dayAt(input, at);
      const column = columnOfDay.get(day) ?? follows.length + excess.size;
      columnOfDay.set(day, column);
      excess.set(column, { cost: hirePerDay });
      rows.push({ least: -Infinity, most: over, entries: entries.set(column, -1) });
    }
  }
  return { rows, excess };
}

/** Where held less stock may rise: something begins, a day begins, or the stock changes. */
function risesOf(
  input: PlanInput,
  code: string,
  base: readonly RefHold[],
  changes: readonly (readonly RefHold[])[],
): bigint[] {
  const all = [...base, ...changes.flat()];
  const begins = new Set(all.filter(({ n }) => n > 0).map(({ from }) => from));
  const turns = new Set(all.flatMap(({ from, to }) => [from, to]));
  return instantsOf(input, code, all).filter((at) => begins.has(at) || !turns.has(at));
}

function heldAt(holds: readonly RefHold[], at: bigint): number {
  return holds.reduce((sum, { n, from, to }) => (from <= at && at < to ? sum + n : sum), 0);
}

function solved(
  highs: Highs,
  follows: number,
  cost: readonly number[],
  rows: readonly Row[],
  seconds: number | undefined,
): { values: Float64Array; isBest: boolean } {
  const { variableType, modelStatus } = highs.constants;
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { entries } of rows) {
    for (const [column, times] of entries) {
      indices.push(column);
      values.push(times);
    }
    starts.push(indices.length);
  }
  const limit = (value: number): number => (value === -Infinity ? -highs.infinity : value);
  const [numRows, numCols] = [rows.length, cost.length];
  const model = {
    numRows,
    numCols,
    offset: 0,
    colCost: [...cost],
    colLower: cost.map(() => 0),
    colUpper: cost.map((_, column) => (column < follows ? 1 : highs.infinity)),
    rowLower: rows.map(({ least }) => limit(least)),
    rowUpper: rows.map(({ most }) => most),
    integrality: cost.map((_, column) => (column < follows ? variableType.integer : variableType.continuous)),
    matrix: { format: 'csr' as const, numRows, numCols, starts, indices, values },
  };
  return highs.withModel(model, (made) => {
    made.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0, random_seed: 0 });
    if (seconds !== undefined) made.options.set({ time_limit: seconds });
    made.run();
    const { colValue } = made.getSolution();
    if (colValue.length !== numCols) throw new Error('HiGHS has no solution of the model it was given');
    return {
      values: Float64Array.from(colValue),
      isBest: made.getModelStatus() === modelStatus.optimal,
    };
  });
}

function runsOf(input: PlanInput, follows: readonly Follow[]): string[][] {
  const next = new Map(follows.map(({ from, to }) => [from, to]));
  const later = new Set(next.values());
  return input.turns
    .filter(({ id }) => !later.has(id))
    .map(({ id }) => {
      const run = [id];
      for (let turn = next.get(id); turn !== undefined; turn = next.get(turn)) run.push(turn);
      return run;
    });
}
