// What the book has to be told so that a job follows from a changed source: the pours, entries and notes in which the two
// differ, each as it was and as it is to be. Because both come from the sources, a change once carried out gives just
// the plan that was shown before.
import { z } from 'zod';
import type { KeptEntry } from '../plan/job-entries.ts';
import type { Pour } from '../plan/pours.ts';
import { asData } from './as-data.ts';
import type { JobSource } from './job-source.ts';
import { code, instant, pour } from './shapes.ts';

const entryKinds = [
  'calendar-exception',
  'crane-booking',
  'pour-facts',
  'planned-stock',
  'fixed-choice',
] as const;

/** `was` and `is` are null where there is none. */
export const planEdit = z.discriminatedUnion('what', [
  z.strictObject({
    what: z.literal('pour'),
    code,
    /** Its place in the order of the job. */
    position: z.int(),
    was: pour.nullable(),
    is: pour.nullable(),
  }),
  z.strictObject({
    what: z.literal('entry'),
    kind: z.enum(entryKinds),
    id: z.string(),
    was: z.json(),
    is: z.json(),
  }),
  z.strictObject({
    what: z.literal('note'),
    id: z.string(),
    was: instant.nullable(),
    is: instant.nullable(),
  }),
]);
export type PlanEdit = z.output<typeof planEdit>;

/** What the source does not hold: ids and places. */
export interface KeptPlaces {
  readonly fixed: readonly KeptEntry<'fixed-choice'>[];
  readonly positions: ReadonlyMap<string, number>;
  /** Makes the id of an entry that is new. */
  readonly newId: () => string;
}

export function planEdits(
  source: JobSource,
  changed: JobSource,
  { fixed, positions, newId }: KeptPlaces,
): readonly PlanEdit[] {
  return [
    ...pourEdits(source.pours, changed.pours, positions),
    ...factsEdits(source, changed),
    ...added(source.planning.exceptions, changed.planning.exceptions, 'calendar-exception', newId),
    ...added(source.planning.craneBookings, changed.planning.craneBookings, 'crane-booking', newId),
    ...added(source.planning.plannedStock, changed.planning.plannedStock, 'planned-stock', newId),
    ...addedChoices(changed, fixed, newId),
    ...droppedChoices(changed, fixed),
    ...noteEdits(source, changed),
  ];
}

function pourEdits(
  before: readonly Pour[],
  after: readonly Pour[],
  positions: ReadonlyMap<string, number>,
): readonly PlanEdit[] {
  const now = new Map(after.map((each) => [each.code, each]));
  return before.flatMap((was) => {
    const is = now.get(was.code) ?? null;
    return same(was, is)
      ? []
      : [
          {
            what: 'pour' as const,
            code: was.code,
            position: positions.get(was.code) ?? 0,
            was: asData(was),
            is: asData(is),
          },
        ];
  });
}

/** Facts of a pour that goes go with it. */
function factsEdits(source: JobSource, changed: JobSource): readonly PlanEdit[] {
  const before = source.planning.pourFacts;
  const there = new Set(changed.pours.map((each) => each.code));
  const codes = new Set([...before.keys(), ...changed.planning.pourFacts.keys()]);
  return [...codes].flatMap((id) => {
    const was = before.get(id) ?? null;
    const is = there.has(id) ? (changed.planning.pourFacts.get(id) ?? null) : null;
    return same(was, is) ? [] : [{ what: 'entry' as const, kind: 'pour-facts' as const, id, was, is }];
  });
}

/** A changed source only ever has more entries at the end. */
function added<Entry extends z.core.util.JSONType>(
  before: readonly Entry[],
  after: readonly Entry[],
  kind: (typeof entryKinds)[number],
  newId: () => string,
): readonly PlanEdit[] {
  const known = new Set(before);
  return after
    .filter((entry) => !known.has(entry))
    .map((is) => ({ what: 'entry' as const, kind, id: newId(), was: null, is }));
}

/** A choice is the same by what it says, whoever fixed it. */
function addedChoices(
  changed: JobSource,
  fixed: readonly KeptEntry<'fixed-choice'>[],
  newId: () => string,
): readonly PlanEdit[] {
  const there = new Set(fixed.map(({ entry }) => JSON.stringify(entry)));
  return changed.planning.fixed
    .filter((choice) => !there.has(JSON.stringify(choice)))
    .map((is) => ({ what: 'entry' as const, kind: 'fixed-choice' as const, id: newId(), was: null, is }));
}

function droppedChoices(
  changed: JobSource,
  fixed: readonly KeptEntry<'fixed-choice'>[],
): readonly PlanEdit[] {
  const left = new Set(changed.planning.fixed.map((choice) => JSON.stringify(choice)));
  return fixed
    .filter(({ entry }) => !left.has(JSON.stringify(entry)))
    .map(({ id, entry }) => ({
      what: 'entry' as const,
      kind: 'fixed-choice' as const,
      id,
      was: entry,
      is: null,
    }));
}

function noteEdits(source: JobSource, changed: JobSource): readonly PlanEdit[] {
  const before = new Map(source.yard.notes.map((note) => [note.id, note.expectedAt]));
  return changed.yard.notes.flatMap(({ id, expectedAt }) => {
    const was = before.get(id) ?? null;
    return was === expectedAt ? [] : [{ what: 'note' as const, id, was, is: expectedAt }];
  });
}

/** Both are plain data read and written by one shape, so that equal things are written alike. */
export function same(one: unknown, other: unknown): boolean {
  return JSON.stringify(sorted(one)) === JSON.stringify(sorted(other));
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, each]) => [key, sorted(each)]));
}
