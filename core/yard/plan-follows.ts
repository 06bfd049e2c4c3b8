// What the yard changes for a plan, one finding a component, cause and paper: what is missing and damaged, dirty beyond
// its time, promised and late, due out, lifting gear out of date, and figures that are weak or old.
import type { AwayLot, AwayState } from './away-lots.ts';
import { type CleaningPace, cleaningQueue } from './cleaning-queue.ts';
import type { ComponentFigure } from './component-figure.ts';
import type { DirtyLot } from './dirty-lots.ts';
import { countedGear, dayAfter } from './gear-changes.ts';
import { gearStanding } from './gear-ready.ts';
import type { LiftingGear } from './lifting-gear.ts';
import { momentMs } from './moment.ts';
import type { Location, Owner } from './movement.ts';
import type { Drafts, NoteShare } from './promised.ts';
import type { RepairJob } from './repair-job.ts';
import type { Trace } from './trace.ts';

export const yardFindingKinds = [
  'lost',
  'late',
  'dirty',
  'to-repair',
  'repair-late',
  'gear',
  'quarantine',
  'scrapped',
  'other-job',
  'due-out',
  'promised',
  'figure',
] as const;
export type YardFindingKind = (typeof yardFindingKinds)[number];

export interface YardFinding {
  readonly kind: YardFindingKind;
  readonly component: string;
  /** Pieces; of a figure none. */
  readonly quantity: number;
  /** From when on the plan has that many fewer (or, promised, more); null: from the beginning, or nobody said. */
  readonly sinceMs: number | null;
  /** Until when, where that is known. */
  readonly untilMs: number | null;
  /** The note, strip ticket, count or repair behind it, and its number where it is written on what it booked. */
  readonly paper: { readonly id: string; readonly number: string | null } | null;
  readonly figure: ComponentFigure | null;
}

export interface FollowFacts {
  readonly nowMs: number;
  readonly pace: CleaningPace;
  readonly trace: Trace;
  readonly drafts: Drafts;
  readonly repairs: readonly RepairJob[];
  readonly gear: readonly LiftingGear[];
  readonly locations: readonly Location[];
  readonly owners: readonly Owner[];
  readonly figures: ReadonlyMap<string, ComponentFigure>;
  /** YYYY-MM-DD */
  readonly today: string;
  readonly startOfDate: (date: string) => number;
}

/** In the order of the kinds, the earliest first. */
export function yardFindings(facts: FollowFacts): readonly YardFinding[] {
  const notOurs = new Set(facts.owners.filter(({ kind }) => kind === 'others').map(({ code }) => code));
  const counts = ({ owner }: { readonly owner: string }): boolean => !notOurs.has(owner);
  const found = [
    ...facts.trace.away.map(ofAway),
    ...dirtyBeyond(facts),
    ...facts.drafts.late.filter(counts).map((share) => ofShare('late', share)),
    ...facts.drafts.goingOut.filter(counts).map((share) => ofShare('due-out', share)),
    ...facts.drafts.promised.filter(counts).map((share) => ofShare('promised', share)),
    ...lateRepairs(facts.repairs.filter(counts), facts.nowMs),
    ...gearFindings(facts),
    ...[...facts.figures].flatMap(([component, figure]) => ofFigure(component, figure)),
  ];
  return inOrder(joined(found));
}

const noPaper = { sinceMs: null, untilMs: null, paper: null, figure: null } as const;

const kindOfAway: Readonly<Record<AwayState, YardFindingKind>> = {
  lost: 'lost',
  'to-repair': 'to-repair',
  quarantine: 'quarantine',
  scrapped: 'scrapped',
  'other-job': 'other-job',
};

function ofAway({ state, component, quantity, sinceMs, paper, noteNumber }: AwayLot): YardFinding {
  const kind = kindOfAway[state];
  return { ...noPaper, kind, component, quantity, sinceMs, paper: paperOf(paper, noteNumber) };
}

/** Only what a plan counted on: what it held itself until it should have been clean. */
function dirtyBeyond({ trace, pace, nowMs }: FollowFacts): readonly YardFinding[] {
  return cleaningQueue<DirtyLot>(trace.dirty, pace, nowMs).flatMap(({ lot, quantity, dueMs }) => {
    const { heldUntilMs, component, paper } = lot;
    if (heldUntilMs === null || heldUntilMs === Infinity || (dueMs !== null && dueMs <= heldUntilMs))
      return [];
    const about = { ...noPaper, kind: 'dirty' as const, component, quantity };
    return [{ ...about, sinceMs: heldUntilMs, untilMs: dueMs, paper: paperOf(paper, null) }];
  });
}

function ofShare(kind: 'late' | 'due-out' | 'promised', share: NoteShare): YardFinding {
  const { component, quantity, note, expectedAt } = share;
  const sinceMs = expectedAt === null ? null : momentMs(expectedAt);
  return { ...noPaper, kind, component, quantity, sinceMs, paper: { id: note.id, number: note.number } };
}

function lateRepairs(repairs: readonly RepairJob[], nowMs: number): readonly YardFinding[] {
  return repairs.flatMap(({ id, state, component, quantity, dueAt }) => {
    const sinceMs = dueAt === null ? null : momentMs(dueAt);
    if (state !== 'open' || sinceMs === null || sinceMs > nowMs) return [];
    return [
      { ...noPaper, kind: 'repair-late' as const, component, quantity, sinceMs, paper: { id, number: null } },
    ];
  });
}

/** Out of date now; what runs out later, from then on. */
function gearFindings({ gear, locations, owners, today, startOfDate }: FollowFacts): readonly YardFinding[] {
  return gear.filter(countedGear(locations, owners)).map((each) => {
    const standing = gearStanding(each, today);
    const lastDay =
      standing.is === 'ready' ? standing.until : standing.is === 'out-of-date' ? standing.since : null;
    const sinceMs = lastDay === null ? null : startOfDate(dayAfter(lastDay));
    return { ...noPaper, kind: 'gear' as const, component: each.component, quantity: 1, sinceMs };
  });
}

function ofFigure(component: string, figure: ComponentFigure): readonly YardFinding[] {
  if (figure.basis === 'counted' && !figure.isOld) return [];
  return [{ ...noPaper, kind: 'figure', component, quantity: 0, figure }];
}

function paperOf(id: string | null, number: string | null): YardFinding['paper'] {
  return id === null ? null : { id, number };
}

/** Quantities of one component, cause, paper and end are one finding, since the first of them. */
function joined(findings: readonly YardFinding[]): readonly YardFinding[] {
  const groups = Map.groupBy(findings, ({ kind, component, paper, untilMs, sinceMs }) =>
    JSON.stringify([kind, component, paper, untilMs, kind === 'gear' ? sinceMs : null]),
  );
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const times = group.flatMap(({ sinceMs }) => (sinceMs === null ? [] : [sinceMs]));
    const sinceMs = times.length === group.length ? Math.min(...times) : null;
    return [{ ...first, sinceMs, quantity: group.reduce((sum, { quantity }) => sum + quantity, 0) }];
  });
}

function inOrder(findings: readonly YardFinding[]): readonly YardFinding[] {
  return [...findings].sort(
    (one, other) =>
      yardFindingKinds.indexOf(one.kind) - yardFindingKinds.indexOf(other.kind) ||
      (one.sinceMs ?? 0) - (other.sinceMs ?? 0) ||
      (one.component < other.component ? -1 : 1),
  );
}
