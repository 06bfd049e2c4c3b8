// A booking as it is being written: one slip with its reason, places, time and note, and a line a component.
// Text stays text until it is booked, so that nothing typed is lost; ids are made once, so that a slip
// that is sent twice is booked once.
import type { z } from 'zod';
import { type Answer, answer, type Refusal, refuse } from '../../../core/answer.ts';
import type { newMovement } from '../../../core/procedures/yard-move.ts';
import type { Condition, Reason } from './yard-words.ts';

export type NewMovement = z.input<typeof newMovement>;
export type BookedReason = Exclude<Reason, 'reversal'>;

export interface DraftLine {
  readonly id: string;
  readonly component: string;
  readonly quantity: string;
  readonly condition: Condition;
  readonly conditionAfter: Condition;
  /** Where a line has its own: whose pieces, and where they lie with us. Empty: as the slip says. */
  readonly owner: string;
  readonly place: string;
}

export interface BookingDraft {
  readonly reason: BookedReason;
  readonly owner: string;
  readonly from: string;
  readonly to: string;
  readonly at: string;
  readonly noteNumber: string;
  readonly remark: string;
  readonly basis: 'counted' | 'estimated' | 'taken-from-list';
  readonly lines: readonly DraftLine[];
}

/** Where a refusal belongs: a field of the slip, or of one of its lines. */
export interface DraftError {
  readonly line: number | null;
  readonly field: string;
  readonly message: string;
  readonly hint?: string;
}

export function emptyLine(id: string, like?: DraftLine): DraftLine {
  return {
    id,
    component: '',
    quantity: '',
    condition: like?.condition ?? 'ready',
    conditionAfter: like?.conditionAfter ?? 'ready',
    owner: '',
    place: '',
  };
}

export function lineIsEmpty(line: DraftLine): boolean {
  return line.component.trim() === '' && line.quantity.trim() === '';
}

/** A whole number of pieces over zero; thousands are not parted, as 1,000 can be read in two ways. */
export function readQuantity(text: string): Answer<number> {
  const words = text.trim();
  if (words === '') return refuse('quantity-missing', 'How many is missing.');
  if (!/^\d{1,9}$/u.test(words) || Number(words) < 1)
    return refuse('quantity-unreadable', `"${words}" is not a whole number of pieces over zero.`, {
      hint: 'Maybe write it like 24, without commas.',
    });
  return answer(Number(words));
}

/**
 * The movements of the slip, or everything in it that cannot be read. Empty lines are left out.
 * @param at the time of the slip as an instant, read before
 */
export function movementsOf(
  draft: BookingDraft,
  at: Answer<string>,
  knownComponents: ReadonlySet<string>,
): { readonly movements: NewMovement[]; readonly errors: DraftError[] } {
  const errors: DraftError[] = [];
  for (const [field, words] of [
    ['owner', 'Whose pieces they are'],
    ['from', 'Where they come from'],
    ['to', 'Where they go'],
  ] as const)
    if (draft[field] === '' && !isOnEveryLine(draft, field))
      errors.push({ line: null, field, message: `${words} is missing.` });
  if (!at.ok) errors.push(fieldError(null, 'at', at.error));
  const movements = draft.lines.flatMap((line, index): NewMovement[] => {
    if (lineIsEmpty(line)) return [];
    const component = line.component.trim();
    if (component === '')
      errors.push({ line: index, field: 'component', message: 'The component is missing.' });
    else if (!knownComponents.has(component))
      errors.push({ line: index, field: 'component', message: `There is no component ${component}.` });
    const quantity = readQuantity(line.quantity);
    if (!quantity.ok) errors.push(fieldError(index, 'quantity', quantity.error));
    if (!quantity.ok || !at.ok) return [];
    return [movementOf(draft, line, component, quantity.value, at.value)];
  });
  if (draft.lines.every(lineIsEmpty))
    errors.push({ line: 0, field: 'component', message: 'A slip needs at least one line.' });
  return { movements, errors };
}

/** At which end of a movement the pieces are with us, for this reason. */
export function ourEnd(reason: BookedReason): 'from' | 'to' {
  return ['delivery', 'hire-on', 'found', 'opening'].includes(reason) ? 'to' : 'from';
}

function isOnEveryLine(draft: BookingDraft, field: 'owner' | 'from' | 'to'): boolean {
  const filled = draft.lines.filter((line) => !lineIsEmpty(line));
  if (filled.length === 0) return false;
  if (field === 'owner') return filled.every((line) => line.owner !== '');
  return field === ourEnd(draft.reason) && filled.every((line) => line.place !== '');
}

function movementOf(
  draft: BookingDraft,
  line: DraftLine,
  component: string,
  quantity: number,
  at: string,
): NewMovement {
  const [noteNumber, remark] = [draft.noteNumber.trim(), draft.remark.trim()];
  return {
    id: line.id,
    component,
    quantity,
    owner: line.owner === '' ? draft.owner : line.owner,
    from: draft.from,
    to: draft.to,
    ...(line.place === '' ? {} : { [ourEnd(draft.reason)]: line.place }),
    condition: line.condition,
    conditionAfter: line.conditionAfter,
    reason: draft.reason,
    at,
    ...(noteNumber === '' ? {} : { noteNumber }),
    ...(remark === '' ? {} : { remark }),
    ...(draft.reason === 'opening' ? { basis: draft.basis, basisDate: at.slice(0, 10) } : {}),
  };
}

function fieldError(line: number | null, field: string, refusal: Refusal): DraftError {
  const { message, hint } = refusal;
  return hint === undefined ? { line, field, message } : { line, field, message, hint };
}

const slipFields: ReadonlySet<string> = new Set([
  'owner',
  'from',
  'to',
  'at',
  'noteNumber',
  'remark',
  'reason',
]);

/**
 * Puts a refusal of the core at its field. Empty lines were not sent, so its line numbers are those of the
 * filled lines. Undefined where it names no field of a slip.
 */
export function errorOfRefusal(
  refusal: {
    readonly message: string;
    readonly hint?: string | undefined;
    readonly field?: string | undefined;
  },
  lines: readonly DraftLine[],
): DraftError | undefined {
  const found = /movements(?:\[(\d+)\]|\.(\d+))\.(\w+)/u.exec(refusal.field ?? '');
  const field = found?.[3] ?? refusal.field;
  if (field === undefined) return undefined;
  const words =
    refusal.hint === undefined
      ? { message: refusal.message }
      : { message: refusal.message, hint: refusal.hint };
  if (slipFields.has(field)) return { line: null, field, ...words };
  const filled = lines.flatMap((line, index) => (lineIsEmpty(line) ? [] : [index]));
  const line = filled[Number(found?.[1] ?? found?.[2] ?? 0)];
  return line === undefined ? undefined : { line, field, ...words };
}
