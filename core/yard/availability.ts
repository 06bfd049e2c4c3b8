// What a plan may count on of each component, from each moment on: ready pieces in hand, ours and suppliers', built
// into gangs and standing at pours as well; what is being cleaned and repaired from the day it is due back; what is
// promised from its day. Less what is due out, lifting gear out of date, and spares that are kept back.
import { type CleaningPace, cleaningQueue } from './cleaning-queue.ts';
import type { Change, DirtyLot } from './dirty-lots.ts';
import { type GearChanges, gearChanges } from './gear-changes.ts';
import type { LiftingGear } from './lifting-gear.ts';
import { momentMs } from './moment.ts';
import type { Movement } from './movement.ts';
import type { YardNote } from './note.ts';
import { draftsOf } from './promised.ts';
import type { RepairJob } from './repair-job.ts';
import { placeKey, type Trace, type TraceInput, traceYard } from './trace.ts';

export interface ReadyLevel {
  /** Epoch milliseconds; null: from the start of the plan. */
  readonly fromMs: number | null;
  readonly quantity: number;
}

export interface YardFacts extends Omit<TraceInput, 'at'> {
  readonly nowMs: number;
  readonly pace: CleaningPace;
  /** Drafts; others count for nothing here. */
  readonly notes: readonly YardNote[];
  readonly repairs: readonly RepairJob[];
  readonly gear: readonly LiftingGear[];
  /** Pieces kept back, by component. */
  readonly spares: ReadonlyMap<string, number>;
  /** Epoch milliseconds at which a date YYYY-MM-DD begins. */
  readonly startOfDate: (date: string) => number;
}

export function readyLevels(facts: YardFacts): ReadonlyMap<string, readonly ReadyLevel[]> {
  const { movements } = draftsOf(facts.notes, facts.locations, facts.nowMs);
  const trace = traceOf(facts, movements);
  const gear = gearChanges(facts.gear, facts.locations, facts.owners, facts.startOfDate);
  const changes = Map.groupBy(
    [
      ...trace.changes,
      ...dirtyChanges(trace.dirty, facts),
      ...repairChanges(facts.repairs, trace, facts),
      ...gear.changes,
    ],
    ({ component }) => component,
  );
  const components = new Set([...trace.base.keys(), ...changes.keys(), ...gear.always.keys()]);
  return new Map(
    [...components].map((component) => [
      component,
      levelsOf(firstLevel(component, trace, gear, facts), changes.get(component) ?? []),
    ]),
  );
}

/** @param more movements that are not booked yet, to be followed as if they were */
export function traceOf(facts: Omit<TraceInput, 'at'>, more: readonly Movement[] = []): Trace {
  // Read once each: thousands are put in order by them.
  const times = new Map([...facts.movements, ...more].map((each) => [each, momentMs(each.at) ?? 0]));
  const at = (movement: Movement): number => times.get(movement) ?? 0;
  const movements = [...times.keys()].sort((one, other) => at(one) - at(other));
  return traceYard({ ...facts, movements, at });
}

function firstLevel(component: string, trace: Trace, gear: GearChanges, { spares }: YardFacts): number {
  const off = (gear.always.get(component) ?? 0) + (spares.get(component) ?? 0);
  return (trace.base.get(component) ?? 0) - off;
}

/** Pieces that the plan holds until they are clean leave its count only where that takes longer. */
function dirtyChanges(dirty: readonly DirtyLot[], { pace, nowMs }: YardFacts): readonly Change[] {
  return cleaningQueue(dirty, pace, nowMs).flatMap(({ lot, quantity, dueMs }) => {
    const { component, heldUntilMs } = lot;
    if (heldUntilMs === Infinity || (heldUntilMs !== null && dueMs !== null && dueMs <= heldUntilMs))
      return [];
    const back = dueMs === null ? [] : [{ component, atMs: dueMs, by: quantity }];
    return heldUntilMs === null ? back : [{ component, atMs: heldUntilMs, by: -quantity }, ...back];
  });
}

/** Never more than the ledger has to repair at the place. */
function repairChanges(
  repairs: readonly RepairJob[],
  { toRepair }: Trace,
  { nowMs, owners }: YardFacts,
): readonly Change[] {
  const left = new Map(toRepair);
  const notOurs = new Set(owners.filter(({ kind }) => kind === 'others').map(({ code }) => code));
  return repairs.flatMap(({ state, component, owner, place, quantity, dueAt }) => {
    const dueMs = dueAt === null ? null : momentMs(dueAt);
    if (state !== 'open' || dueMs === null || dueMs <= nowMs || notOurs.has(owner)) return [];
    const key = placeKey(component, owner, place);
    const by = Math.min(quantity, left.get(key) ?? 0);
    left.set(key, (left.get(key) ?? 0) - by);
    return by > 0 ? [{ component, atMs: dueMs, by }] : [];
  });
}

/** A level a moment at which it becomes another; never below nothing. */
function levelsOf(first: number, changes: readonly Change[]): readonly ReadyLevel[] {
  const levels: ReadyLevel[] = [{ fromMs: null, quantity: Math.max(0, first) }];
  let sum = first;
  const byMoment = Map.groupBy(changes, ({ atMs }) => atMs);
  for (const [fromMs, there] of [...byMoment].sort(([one], [other]) => one - other)) {
    sum += there.reduce((by, change) => by + change.by, 0);
    const quantity = Math.max(0, sum);
    if (levels.at(-1)?.quantity !== quantity) levels.push({ fromMs, quantity });
  }
  return levels;
}
