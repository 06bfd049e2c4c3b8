// Who must be called about changes of a plan: those who promised work at a pour that is touched or at one that comes after
// it, and those who send pieces that are to come otherwise.
import { localDate, msOf } from '../plan/local-time.ts';
import type { PlanChange } from '../plan/plan-changes.ts';
import type { JobPlan } from './job-plan.ts';
import { isNear } from './near-pours.ts';

export function callsFor(before: JobPlan, touched: ReadonlySet<string>, changes: readonly PlanChange[]) {
  const phones = new Map(
    before.facts.planning.settings.phones.map(({ who, phone }) => [sameName(who), phone]),
  );
  return [...gateCalls(before, touched), ...changes.flatMap((change) => pieceCalls(before, change))].map(
    (call) => ({ ...call, phone: phones.get(sameName(call.who)) ?? null }),
  );
}

function gateCalls({ facts: { pours } }: JobPlan, touched: ReadonlySet<string>) {
  return pours
    .filter((pour) => isNear(pour.code, pour.after, touched))
    .flatMap((pour) =>
      pour.gates
        .filter((gate) => !gate.done)
        .map((gate) => ({ who: gate.who, about: gate.name, pour: pour.code, promised: gate.promised })),
    );
}

interface PieceCall {
  readonly who: string;
  readonly about: string;
  readonly pour: null;
  readonly promised: string | null;
}

function pieceCalls({ facts }: JobPlan, change: PlanChange): readonly PieceCall[] {
  const dateOf = (instant: string): string => localDate(msOf(instant), facts.job.timeZone);
  if (change.kind === 'stock') {
    const { source, quantity, component, from } = change.entry;
    return source === null
      ? []
      : [{ who: source, about: `${quantity} ${component}`, pour: null, promised: dateOf(from) }];
  }
  if (change.kind !== 'delivery') return [];
  const note = facts.source.yard.notes.find(({ id }) => id === change.note);
  if (note === undefined) return [];
  const name = facts.yard.locations.find(({ code }) => code === note.from)?.name ?? note.from;
  const promised = note.expectedAt === null ? null : dateOf(note.expectedAt);
  return [{ who: name, about: `${note.kind} ${note.number}`, pour: null, promised }];
}

function sameName(who: string): string {
  return who.trim().toLowerCase();
}
