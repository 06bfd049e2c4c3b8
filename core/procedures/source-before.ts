// A job's source as it was before an applied change that moved pours and kept sets standing: nothing is written. What
// somebody has changed since is named instead.
import type { JobSource } from './job-source.ts';
import { type PlanEdit, planEdit, same } from './plan-edits.ts';
import type { PourFacts } from './job-planning.ts';
import { jobEntryShapes } from '../plan/job-entries.ts';

export interface SourceBefore {
  readonly source: JobSource;
  /** The pours it spoke of. */
  readonly pours: readonly string[];
  /** Those that are not as it left them; then the source is as it is now. */
  readonly changedSince: readonly string[];
}

/** @param before what the applied change keeps to be taken back */
export function sourceBefore(source: JobSource, before: unknown): SourceBefore {
  const edits = planEdit.array().parse(before);
  const pours = [...new Set(edits.map(pourOf))];
  const changedSince = [...new Set(edits.flatMap((edit) => (isAsLeft(source, edit) ? [] : [pourOf(edit)])))];
  if (changedSince.length > 0) return { source, pours, changedSince };
  return { source: edits.reduce(without, source), pours, changedSince };
}

function pourOf(edit: PlanEdit): string {
  return edit.what === 'pour' ? edit.code : edit.id;
}

function isAsLeft({ pours, planning }: JobSource, edit: PlanEdit): boolean {
  if (edit.what === 'pour') return same(pours.find(({ code }) => code === edit.code) ?? null, edit.is);
  if (edit.what === 'entry' && edit.kind === 'pour-facts')
    return same(planning.pourFacts.get(edit.id) ?? null, edit.is);
  throw new Error(`The end of a day changed ${edit.what} ${pourOf(edit)}`);
}

function without(source: JobSource, edit: PlanEdit): JobSource {
  if (edit.what === 'pour') {
    const { was, code } = edit;
    if (was === null) return source;
    return { ...source, pours: source.pours.map((each) => (each.code === code ? was : each)) };
  }
  if (edit.what !== 'entry') return source;
  const pourFacts = new Map<string, PourFacts>(source.planning.pourFacts);
  if (edit.was === null) pourFacts.delete(edit.id);
  else pourFacts.set(edit.id, jobEntryShapes['pour-facts'].parse(edit.was));
  return { ...source, planning: { ...source.planning, pourFacts } };
}
