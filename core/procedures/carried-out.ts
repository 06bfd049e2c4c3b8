// Carries changes of a plan out in the book and takes them back. What was before is kept with them; taking back is
// refused where somebody has changed the same things since.
import { type Answer, answer, never, refuse } from '../answer.ts';
import type { BookWriter } from '../book/book.ts';
import { checkPour } from '../plan/check-pour.ts';
import { jobEntryShapes, type JobEntryKind } from '../plan/job-entries.ts';
import type { PlanChange } from '../plan/plan-changes.ts';
import { changedSince } from './changed-since.ts';
import { changedSource } from './changed-source.ts';
import { type JobSource, readJobSource, workingJob } from './job-source.ts';
import { type PlanEdit, planEdit, planEdits } from './plan-edits.ts';
import type { CommandContext } from './procedure.ts';

export interface CarryOut {
  /** The id of the applied change: that of the command. */
  readonly id: string;
  readonly job: string;
  readonly changes: readonly PlanChange[];
  readonly about: string;
}

/** All of it or nothing; kept as an applied change that can be taken back. */
export async function carryOut(
  book: BookWriter,
  { id, job, changes, about }: CarryOut,
  { at, who }: CommandContext,
): Promise<Answer<{ readonly applied: string }>> {
  const source = await readJobSource(book, job);
  if (!source.ok) return source;
  const changed = changedSource(source.value, changes);
  if (!changed.ok) return changed;
  const wrong = checkPours(source.value, changed.value);
  if (wrong !== null) return wrong;
  let made = 0;
  const edits = planEdits(source.value, changed.value, {
    fixed: await book.jobEntries(job, 'fixed-choice'),
    positions: await book.pourPositions(job),
    newId: () => `${id}/${(made += 1)}`,
  });
  if (edits.length === 0)
    return refuse('changes-nothing', 'The book is like that already: nothing was changed.', {
      field: 'changes',
      hint: 'Maybe it was carried out before.',
    });
  await write(book, job, edits, 'is');
  await book.putJobEntry(
    { job, kind: 'applied-change', id },
    { at, who, about, changes: [...changes], before: [...edits], takenBackAt: null },
  );
  return answer({ applied: id });
}

/** Codes: unknown-change, taken-back-already, changed-since. */
export async function takeBack(
  book: BookWriter,
  job: string,
  applied: string,
  { at }: CommandContext,
): Promise<Answer<null>> {
  const all = await book.jobEntries(job, 'applied-change');
  const kept = all.find(({ id }) => id === applied);
  if (kept === undefined)
    return refuse('unknown-change', `Job ${job} has no change ${applied}.`, { field: 'applied' });
  const { entry } = kept;
  if (entry.takenBackAt !== null)
    return refuse('taken-back-already', `"${entry.about}" was taken back at ${entry.takenBackAt}.`, {
      field: 'applied',
    });
  const edits = planEdit.array().parse(entry.before);
  const later = all.filter((each) => each.number > kept.number && each.entry.takenBackAt === null);
  const changed = await changedSince(book, job, edits, later);
  if (changed.length > 0)
    return refuse(
      'changed-since',
      `"${entry.about}" cannot be taken back: ${changed.join(', ')} changed since.`,
      { field: 'applied', hint: 'Maybe take the later change back first.' },
    );
  await write(book, job, [...edits].reverse(), 'was');
  await book.putJobEntry({ job, kind: 'applied-change', id: applied }, { ...entry, takenBackAt: at });
  return answer(null);
}

function checkPours(source: JobSource, changed: JobSource): Answer<never> | null {
  const before = new Map(source.pours.map((each) => [each.code, each]));
  const job = workingJob(changed.job, changed.planning);
  const known = {
    designs: new Set(changed.designs.keys()),
    components: new Set(changed.components.map(({ code }) => code)),
  };
  for (const pour of changed.pours) {
    if (before.get(pour.code) === pour) continue;
    const wrong = checkPour(job, pour, changed.pours, known);
    if (wrong !== undefined) return { ok: false, error: wrong };
  }
  return null;
}

/** Pours that go are taken out last, when nothing comes after them any more. */
async function write(
  book: BookWriter,
  job: string,
  edits: readonly PlanEdit[],
  side: 'was' | 'is',
): Promise<void> {
  const gone = (edit: PlanEdit): boolean => edit.what === 'pour' && edit[side] === null;
  for (const edit of [...edits.filter((each) => !gone(each)), ...edits.filter(gone)])
    await writeOne(book, job, edit, side);
}

async function writeOne(book: BookWriter, job: string, edit: PlanEdit, side: 'was' | 'is'): Promise<void> {
  switch (edit.what) {
    case 'pour': {
      const pour = edit[side];
      if (pour === null) await book.removePour(job, edit.code);
      else await book.putPour(job, pour, edit.position);
      return;
    }
    case 'entry': {
      const of = { job, kind: edit.kind, id: edit.id };
      const entry = edit[side];
      if (entry === null) await book.removeJobEntry(of);
      else await putEntry(book, of, entry);
      return;
    }
    case 'note': {
      const [note] = await book.notes({ id: edit.id });
      if (note !== undefined)
        await book.putNote({ ...note, expectedAt: edit[side], version: note.version + 1 });
      return;
    }
    default:
      never(edit);
  }
}

async function putEntry(
  book: BookWriter,
  of: { readonly job: string; readonly kind: JobEntryKind; readonly id: string },
  entry: unknown,
): Promise<void> {
  await book.putJobEntry(of, jobEntryShapes[of.kind].parse(entry));
}
