// How a day ended while it is being said: what is ticked, reasons, and times as they were typed. Kept while the window
// is open, a day each.
import type { Output } from '../../client/shapes.ts';
import { readWhen } from '../../parts/when-text.ts';
import { dayStartMs } from '../../parts/zoned.ts';

export type DayRead = Output<'dayend.read'>;
export type Line = DayRead['lines'][number];
export type Reason = DayRead['reasons'][number]['reason'];

export interface StepDraft {
  readonly done: boolean;
  readonly reason: Reason | null;
  /** As typed; empty where nothing was. */
  readonly from: string;
  readonly to: string;
  readonly people: string;
}

export interface DayDraft {
  /** By the id of the step. */
  readonly steps: Readonly<Record<string, StepDraft>>;
  readonly remark: string;
}

export interface DraftFault {
  readonly id: string;
  readonly field: 'done' | 'reason' | 'from' | 'to' | 'people';
  readonly message: string;
}

const unsaid: StepDraft = { done: false, reason: null, from: '', to: '', people: '' };

/** @param time an instant as "07:15" by the job's clock */
export function beginDraft(day: DayRead, time: (instant: string) => string): DayDraft {
  const steps = day.lines.map(({ id, reported }): [string, StepDraft] => {
    if (reported === null) return [id, unsaid];
    const { done, reason, from, to, people } = reported;
    return [
      id,
      {
        done,
        reason,
        from: from === null ? '' : time(from),
        to: to === null ? '' : time(to),
        people: people === null ? '' : String(people),
      },
    ];
  });
  return { steps: Object.fromEntries(steps), remark: day.report?.remark ?? '' };
}

export function stepOf(draft: DayDraft, id: string): StepDraft {
  return draft.steps[id] ?? unsaid;
}

export function withStep(draft: DayDraft, id: string, change: Partial<StepDraft>): DayDraft {
  return { ...draft, steps: { ...draft.steps, [id]: { ...stepOf(draft, id), ...change } } };
}

/** Everything that nobody has given a reason for. */
export function tickAll(draft: DayDraft, lines: readonly Line[]): DayDraft {
  let ticked = draft;
  for (const { id } of lines)
    if (stepOf(draft, id).reason === null) ticked = withStep(ticked, id, { done: true });
  return ticked;
}

/** Ticked, a reason falls away; unticked, it is still to be given. */
export function withDone(draft: DayDraft, id: string, done: boolean): DayDraft {
  return withStep(draft, id, { done, reason: null });
}

export function withReason(draft: DayDraft, id: string, reason: Reason | null): DayDraft {
  return withStep(draft, id, { done: false, reason });
}

export interface SaidDay {
  readonly steps: {
    readonly id: string;
    readonly done: boolean;
    readonly reason: Reason | null;
    readonly from: string | null;
    readonly to: string | null;
    readonly people: number | null;
  }[];
  readonly faults: readonly DraftFault[];
}

export function saidOf(draft: DayDraft, day: DayRead): SaidDay {
  const faults: DraftFault[] = [];
  const noon = new Date(dayStartMs(day.date, day.timeZone) + 12 * 3_600_000).toISOString();
  const when = (id: string, field: 'from' | 'to', text: string): string | null => {
    if (text.trim() === '') return null;
    const read = readWhen(text, noon, day.timeZone);
    if (read.ok) return read.value;
    faults.push({ id, field, message: `${read.error.message} ${read.error.hint ?? ''}`.trim() });
    return null;
  };
  const steps = day.lines.map(({ id }) => {
    const { done, reason, ...texts } = stepOf(draft, id);
    if (!done && reason === null)
      faults.push({ id, field: 'reason', message: 'It is not ticked: give a reason, or tick it.' });
    const times = done
      ? { from: when(id, 'from', texts.from), to: when(id, 'to', texts.to) }
      : { from: null, to: null };
    return { id, done, reason, ...times, people: done ? peopleOf(id, texts.people, faults) : null };
  });
  return { steps, faults };
}

function peopleOf(id: string, text: string, faults: DraftFault[]): number | null {
  if (text.trim() === '') return null;
  const people = Number(text.trim().replace(',', '.'));
  if (Number.isFinite(people) && people >= 0 && people <= 1000) return people;
  faults.push({ id, field: 'people', message: `"${text.trim()}" is no number of people.` });
  return null;
}

/** Where a refusal of the core belongs: steps[3].to is the end of the fourth step. */
export function faultOfField(field: string | undefined, message: string, day: DayRead): DraftFault | null {
  const [, index, name] = /^steps\[(\d+)\]\.(done|reason|from|to)$/u.exec(field ?? '') ?? [];
  const line = day.lines[Number(index)];
  if (line === undefined) return null;
  const known = (['done', 'reason', 'from', 'to'] as const).find((each) => each === name);
  return known === undefined ? null : { id: line.id, field: known, message };
}

const kept = new Map<string, DayDraft>();

export function keptDraft(job: string, date: string): DayDraft | undefined {
  return kept.get(`${job} ${date}`);
}

export function keepDraft(job: string, date: string, draft: DayDraft | null): void {
  if (draft === null) kept.delete(`${job} ${date}`);
  else kept.set(`${job} ${date}`, draft);
}
