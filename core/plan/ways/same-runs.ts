// What would be short of one component if other times of pours left every gang on its way: a quick look that tells which
// changes are worth planning anew. Follows that no longer fit in time are cut.
import type { PlanInput } from '../contract.ts';
import { stretchesOf } from '../excess.ts';
import { mayFollow } from '../follows.ts';
import { holdsOf } from '../holding.ts';
import { readModel } from '../plan-reuse.ts';

export interface SameRuns {
  readonly input: PlanInput;
  readonly runs: readonly { readonly turns: readonly string[] }[];
  readonly component: string;
}

export interface OtherTimes {
  readonly turns: ReadonlyMap<string, { readonly from: string; readonly to: string }>;
  readonly loose: ReadonlyMap<string, { readonly from: string; readonly to: string }>;
}

/** The most pieces short between the two moments; null where the entries themselves do not fit. */
export function shortWithSameRuns(
  { input, runs, component }: SameRuns,
  { turns, loose }: OtherTimes,
  span: { readonly from: string; readonly to: string },
): number | null {
  const held = new Map(
    input.designs.flatMap(({ code, pieces }) => (pieces[component] === undefined ? [] : [[code, pieces]])),
  );
  const { told: _told, fixed: _fixed, start: _start, ...rest } = input;
  const { turnaround } = rest;
  const perPiece = turnaround.regangPerPieceH;
  const read = readModel({
    ...rest,
    turnaround: {
      ...turnaround,
      regangPerPieceH: typeof perPiece === 'number' ? perPiece : { [component]: perPiece[component] ?? 0 },
    },
    components: input.components.filter(({ code }) => code === component),
    designs: input.designs
      .filter(({ code }) => held.has(code))
      .map((design) => ({ ...design, pieces: { [component]: design.pieces[component] ?? 0 } })),
    turns: input.turns
      .filter(({ design }) => held.has(design))
      .map((turn) => ({ ...turn, ...turns.get(turn.id) })),
    loose: (input.loose ?? [])
      .filter(({ pieces }) => pieces[component] !== undefined)
      .map((line) => ({
        ...line,
        pieces: { [component]: line.pieces[component] ?? 0 },
        ...loose.get(line.id),
      })),
  });
  if (!read.ok) return null;
  const model = read.value;
  const place = new Map(model.turnIds.map((id, index) => [id, index]));
  const followers = new Int32Array(model.turnIds.length).fill(-1);
  for (const run of runs)
    for (const [index, id] of run.turns.entries()) {
      const [earlier, later] = [place.get(id), place.get(run.turns[index + 1] ?? '')];
      if (earlier !== undefined && later !== undefined && mayFollow(model, earlier, later))
        followers[earlier] = later;
    }
  const from = model.instants.unitsOf(span.from);
  const to = model.instants.unitsOf(span.to);
  return stretchesOf(model, 0, holdsOf(model, followers))
    .filter((each) => each.from < to && each.to > from)
    .reduce((most, { held: many, stock }) => Math.max(most, many - stock), 0);
}
