// A note as it is being written. Text stays text until it is saved, so that nothing typed is lost; what cannot be
// read is told at its field.
import { type Answer, answer, type Refusal, refuse } from '../../../../core/answer.ts';
import { readCounted } from '../../../../core/yard/counted-text.ts';
import type { z } from 'zod';
import type { noteSave } from '../../../../core/procedures/note-save.ts';
import type { JobClock } from '../../../parts/job-clock.ts';
import { timeWords } from '../../../parts/time-words.ts';
import { readWhen } from '../../../parts/when-text.ts';
import type { DraftError } from '../booking-draft.ts';
import type { Condition } from '../yard-words.ts';
import type { Note, NoteKind } from './note-words.ts';

export interface NoteDraftLine {
  readonly key: string;
  readonly component: string;
  readonly owner: string;
  readonly condition: Condition;
  readonly sent: string;
  readonly counted: string;
  readonly container: string;
  readonly remark: string;
}

export interface NoteDraft {
  readonly id: string;
  /** Of the note in the book that was edited; 0 for a new one. */
  readonly version: number;
  readonly kind: NoteKind;
  readonly number: string;
  readonly from: string;
  readonly to: string;
  readonly job: string | null;
  readonly expectedAt: string;
  readonly arrivedAt: string;
  readonly leftAt: string;
  readonly vehicle: string;
  readonly signedHere: string;
  readonly signedThere: string;
  readonly protest: string;
  readonly remark: string;
  readonly lines: readonly NoteDraftLine[];
}

export type WrittenNote = z.input<typeof noteSave.input>['note'];
type WrittenLine = WrittenNote['lines'][number];
export type MomentField = 'expectedAt' | 'arrivedAt' | 'leftAt';

export function emptyNoteLine(key: string, owner: string): NoteDraftLine {
  return {
    key,
    component: '',
    owner,
    condition: 'ready',
    sent: '',
    counted: '',
    container: '',
    remark: '',
  };
}

export function isEmptyLine(line: NoteDraftLine): boolean {
  return [line.component, line.sent, line.counted, line.remark].every((text) => text.trim() === '');
}

/** The note of the book as text to edit. */
export function draftOf(note: Note, clock: JobClock): NoteDraft {
  const { full } = timeWords(clock.timeZone);
  const moment = (at: string | null): string => (at === null ? '' : full(at));
  return {
    id: note.id,
    version: note.version,
    kind: note.kind,
    number: note.number,
    from: note.from,
    to: note.to,
    job: note.job,
    expectedAt: moment(note.expectedAt),
    arrivedAt: moment(note.arrivedAt),
    leftAt: moment(note.leftAt),
    vehicle: note.vehicle ?? '',
    signedHere: note.signedHere ?? '',
    signedThere: note.signedThere ?? '',
    protest: note.protest ?? '',
    remark: note.remark ?? '',
    lines: note.lines.map((line, index) => ({
      key: `${note.id}/${note.version}/${index}`,
      component: line.component,
      owner: line.owner,
      condition: line.condition,
      sent: String(line.sent),
      counted: line.counted === null ? '' : String(line.counted),
      container: line.container ?? '',
      remark: line.remark ?? '',
    })),
  };
}

export interface ReadNote {
  readonly note: WrittenNote;
  readonly errors: readonly DraftError[];
  /** The index in the draft of each written line: empty lines are left out. */
  readonly lineOf: readonly number[];
}

/** Everything in it that can be read, and what cannot. @param before the note of the book that was edited */
export function readNote(
  draft: NoteDraft,
  before: Note | null,
  clock: JobClock,
  known: ReadonlySet<string>,
): ReadNote {
  const errors: DraftError[] = [];
  const at = (field: MomentField): string | null => {
    const read = readMoment(draft[field], before?.[field] ?? null, clock);
    if (!read.ok) errors.push(errorOf(null, field, read.error));
    return read.ok ? read.value : (before?.[field] ?? null);
  };
  for (const [field, words] of headWords)
    if (draft[field].trim() === '') errors.push({ line: null, field, message: `${words} is missing.` });
  const lineOf: number[] = [];
  const lines = draft.lines.flatMap((line, index): WrittenLine[] => {
    if (isEmptyLine(line)) return [];
    const read = readLine(line, known);
    errors.push(...read.errors.map(([field, refusal]) => errorOf(index, field, refusal)));
    lineOf.push(index);
    return [read.line];
  });
  const note = {
    id: draft.id,
    version: draft.version,
    kind: draft.kind,
    number: draft.number.trim(),
    from: draft.from,
    to: draft.to,
    job: draft.job,
    expectedAt: at('expectedAt'),
    arrivedAt: at('arrivedAt'),
    leftAt: at('leftAt'),
    vehicle: orNull(draft.vehicle),
    signedHere: orNull(draft.signedHere),
    signedThere: orNull(draft.signedThere),
    protest: orNull(draft.protest),
    remark: orNull(draft.remark),
    lines,
  };
  return { note, errors, lineOf };
}

const headWords = [
  ['number', 'The number on the paper'],
  ['from', 'Where they come from'],
  ['to', 'Where they go'],
] as const;

/** Empty is none; the words of a moment that was not touched are that moment to the second. */
function readMoment(text: string, before: string | null, clock: JobClock): Answer<string | null> {
  const words = text.trim();
  if (words === '') return answer(null);
  if (before !== null && words === timeWords(clock.timeZone).full(before)) return answer(before);
  return readWhen(words, before ?? clock.planFrom, clock.timeZone);
}

function readLine(
  line: NoteDraftLine,
  known: ReadonlySet<string>,
): { readonly line: WrittenLine; readonly errors: readonly (readonly [string, Refusal])[] } {
  const errors: (readonly [string, Refusal])[] = [];
  const component = line.component.trim();
  if (component === '')
    errors.push(['component', { code: 'component-missing', message: 'The component is missing.' }]);
  else if (!known.has(component))
    errors.push(['component', { code: 'unknown-component', message: `There is no component ${component}.` }]);
  if (line.owner === '')
    errors.push(['owner', { code: 'owner-missing', message: 'Whose pieces they are is missing.' }]);
  const counted = line.counted.trim() === '' ? null : readPieces(line.counted, component);
  if (counted !== null && !counted.ok) errors.push(['counted', counted.error]);
  // Where the paper says nothing of its own, what was counted is also what it says.
  const written = line.sent.trim() === '' ? line.counted : line.sent;
  const sent = written.trim() === '' ? howManyMissing : readPieces(written, component);
  if (!sent.ok && written === line.sent) errors.push(['sent', sent.error]);
  return {
    line: {
      component,
      owner: line.owner,
      condition: line.condition,
      sent: sent.ok ? sent.value : 0,
      counted: counted?.ok === true ? counted.value : null,
      container: orNull(line.container),
      remark: orNull(line.remark),
    },
    errors,
  };
}

const howManyMissing = refuse('quantity-missing', 'How many is missing.');

/** As people count: 61, 40 + 6, 12 x 20. A guess is not a count and moves nothing. */
export function readPieces(text: string, component: string): Answer<number> {
  const read = readCounted(text, component, null);
  if (!read.ok && read.error.code === 'count-unreadable')
    return refuse(read.error.code, read.error.message, {
      hint: 'Maybe write it like 61, 40 + 6 or 12 x 20.',
    });
  if (!read.ok) return read;
  if (read.value.uncertainty === 0) return answer(read.value.quantity);
  return refuse('not-counted', `"${text.trim()}" is a guess: a note books what was counted.`, {
    hint: 'Maybe open the bag and count.',
  });
}

function orNull(text: string): string | null {
  const words = text.trim();
  return words === '' ? null : words;
}

function errorOf(line: number | null, field: string, { message, hint }: Refusal): DraftError {
  return hint === undefined ? { line, field, message } : { line, field, message, hint };
}

/** A refusal of the core at its field; undefined where it names none of this form. */
export function refusedField(
  refusal: {
    readonly message: string;
    readonly hint?: string | undefined;
    readonly field?: string | undefined;
  },
  lineOf: readonly number[],
): DraftError | undefined {
  const [, written, inLine] = /^note\.lines[.[](\d+)\]?\.(\w+)/u.exec(refusal.field ?? '') ?? [];
  const words = { message: refusal.message, ...(refusal.hint === undefined ? {} : { hint: refusal.hint }) };
  if (written !== undefined && inLine !== undefined) {
    const line = lineOf[Number(written)];
    return line === undefined ? undefined : { line, field: inLine, ...words };
  }
  const [, field] = /^note\.(\w+)$/u.exec(refusal.field ?? '') ?? [];
  return field === undefined || field === 'version' || field === 'lines'
    ? undefined
    : { line: null, field, ...words };
}
