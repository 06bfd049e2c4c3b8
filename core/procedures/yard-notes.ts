// What the yard changes for a job's plan, in the shapes in which doors show it: every finding with its paper, and the
// shortfalls that it bears on.
import { z } from 'zod';
import { never } from '../answer.ts';
import { instantText, msOf } from '../plan/local-time.ts';
import { traceOf } from '../yard/availability.ts';
import { bases } from '../yard/movement.ts';
import { type YardFinding, yardFindingKinds, yardFindings } from '../yard/plan-follows.ts';
import { draftsOf } from '../yard/promised.ts';
import { countName } from '../yard/stock-count.ts';
import { ticketName } from '../yard/strip-ticket.ts';
import { found } from './by-code.ts';
import type { JobPlan } from './job-plan.ts';
import { code, date, instant } from './shapes.ts';

export const yardNote = z.strictObject({
  kind: z.enum([...yardFindingKinds, 'spares']),
  component: code,
  name: z.string(),
  /** Pieces; 0 of a figure. */
  quantity: z.int(),
  /** From when on it counts; null: from the beginning, or nobody has said when. */
  since: instant.nullable(),
  /** Until when, where that is known. */
  until: instant.nullable(),
  paper: z
    .strictObject({
      kind: z.enum(['ticket', 'count', 'note', 'repair']),
      id: z.string(),
      /** As printed; null where it bears no number. */
      number: z.string().nullable(),
    })
    .nullable(),
  /** Of a figure: how it was got, of which date, and whether it is older than the yard's days. */
  figure: z.strictObject({ basis: z.enum(bases), date: date.nullable(), old: z.boolean() }).nullable(),
  /** Shortfalls of the component while it counts. */
  shortfalls: z.array(z.string()),
});
export type YardNoteShown = z.output<typeof yardNote>;

interface Span {
  readonly id: string;
  readonly component: string;
  readonly from: string;
  readonly to: string;
}

/** Of the components that the job uses. */
export function yardNotesOf(plan: JobPlan, shortfalls: readonly Span[]): readonly YardNoteShown[] {
  const { yard, figures, components, spares, job } = plan.facts;
  const used = new Set(plan.input.components.map((each) => each.code));
  const findings = yardFindings({
    ...yard,
    trace: traceOf(yard),
    drafts: draftsOf(yard.notes, yard.locations, yard.nowMs),
    figures,
  }).filter(({ component }) => used.has(component));
  const text = (ms: number | null): string | null => (ms === null ? null : instantText(ms, job.timeZone));
  const lastMs = Math.max(
    ...plan.turnsOf.turns.map(({ to }) => to),
    ...plan.turnsOf.loose.map(({ to }) => to),
  );
  const shown = findings
    .filter(({ kind, sinceMs }) => kind !== 'gear' || sinceMs === null || sinceMs <= lastMs)
    .map((finding): YardNoteShown => ({
      kind: finding.kind,
      component: finding.component,
      name: found(components, finding.component).name,
      quantity: finding.quantity,
      since: text(finding.sinceMs),
      until: text(finding.untilMs),
      paper: paperOf(finding, plan),
      figure:
        finding.figure === null
          ? null
          : { basis: finding.figure.basis, date: finding.figure.date, old: finding.figure.isOld },
      shortfalls: bearsOn(finding, shortfalls),
    }));
  const kept = yard.settings.keepSpares ? spares.filter(({ spare }) => spare > 0) : [];
  return [
    ...shown,
    ...kept.map(({ component, spare }): YardNoteShown => ({
      kind: 'spares',
      component,
      name: found(components, component).name,
      quantity: spare,
      since: null,
      until: null,
      paper: null,
      figure: null,
      shortfalls: shortfalls.filter((each) => each.component === component).map(({ id }) => id),
    })),
  ];
}

/** What is promised bears on none: it takes nothing away. */
function bearsOn(finding: YardFinding, shortfalls: readonly Span[]): string[] {
  if (finding.kind === 'promised') return [];
  const { sinceMs, untilMs } = finding;
  return shortfalls
    .filter(
      ({ component, from, to }) =>
        component === finding.component &&
        msOf(to) > (sinceMs ?? -Infinity) &&
        msOf(from) < (untilMs ?? Infinity),
    )
    .map(({ id }) => id);
}

function paperOf({ kind, paper }: YardFinding, { facts }: JobPlan): YardNoteShown['paper'] {
  if (paper === null) return null;
  const { id, number } = paper;
  const { tickets, counts, repairs } = facts.yard;
  switch (kind) {
    case 'late':
    case 'due-out':
    case 'promised':
      return { kind: 'note', id, number };
    case 'repair-late':
      return { kind: 'repair', id, number };
    case 'lost':
    case 'to-repair':
    case 'quarantine':
    case 'scrapped':
    case 'other-job':
    case 'dirty': {
      const ticket = tickets.find((each) => each.id === id);
      if (ticket !== undefined) return { kind: 'ticket', id, number: ticketName(ticket) };
      const count = counts.find((each) => each.id === id);
      if (count !== undefined) return { kind: 'count', id, number: countName(count) };
      return { kind: repairs.some((each) => each.id === id) ? 'repair' : 'note', id, number };
    }
    case 'gear':
    case 'figure':
      return null;
    default:
      return never(kind);
  }
}
