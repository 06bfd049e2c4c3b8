// Reads changes of the plan as people type them, several parted by commas:
//   14 +1d, W5 -2d      a pour later or earlier by working days ("w": weeks)
//   14 drop             a pour does not come
//   LK +40, R8 -3       pieces more or fewer, also with "from 9 Mar to 20 Mar"
//   D-101 +2d           a delivery slips; "D-101 drop": it does not come
//   set GA x2 + GB      the pieces of these gangs more
// Two that fit are asked about, never chosen between; what cannot be read is said with an example.
import type { Input } from '../../client/shapes.ts';
import { matching, type PourName } from './pour-names.ts';
import { readWhen } from '../when-text.ts';

export type PlanChange = Input<'plan.apply'>['changes'][number];

/** What there is to speak of. */
export interface Known {
  readonly pours: readonly PourName[];
  readonly components: readonly { readonly code: string }[];
  readonly designs: readonly { readonly code: string }[];
  /** Drafts of deliveries and the like. */
  readonly notes: readonly {
    readonly id: string;
    readonly number: string;
    readonly expectedAt: string | null;
  }[];
  /** From when pieces are there where no day is typed. */
  readonly from: string;
  readonly timeZone: string;
  /** The same time of day so many working days later, or (below zero) earlier. */
  readonly later: (instant: string, workingDays: number) => string;
}

export type ChangeText =
  | { readonly kind: 'changes'; readonly changes: readonly PlanChange[] }
  | { readonly kind: 'empty' }
  | { readonly kind: 'unclear'; readonly message: string; readonly choices: readonly string[] };

type Unclear = Extract<ChangeText, { kind: 'unclear' }>;
type ReadOne = { readonly kind: 'change'; readonly change: PlanChange } | Unclear;

/** Five working days a week: "+1w" is "+5d". */
const daysPerWeek = 5;
const mostDays = 60;
const amountForm = /^(.+?)\s*(?<=\s|\w)([+\-−–])\s*(\d{1,6})\s*(d|days?|w|weeks?)?$/iu;
const dropForm = /^(?:drop\s+(.+)|(.+?)\s+drop)$/iu;
const setForm = /^set\s+(.+)$/iu;
const spanForm = /^(.+?)\s+from\s+(.+?)(?:\s+to\s+(.+))?$/iu;
const gangForm = /^(\S+?)(?:\s*[x×*]\s*(\d{1,3})|\s+(\d{1,3}))?$/iu;

export function readChanges(text: string, known: Known): ChangeText {
  const parts = text
    .split(/[,;]/u)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length === 0) return { kind: 'empty' };
  const changes: PlanChange[] = [];
  for (const part of parts) {
    const read = readOne(part, known);
    if (read.kind === 'unclear') return read;
    const { change } = read;
    if (change.kind === 'move' && changes.some((each) => each.kind === 'move' && each.pour === change.pour))
      return unclear(`${change.pour} is moved twice. Write it once, like ${change.pour} +1d.`);
    changes.push(change);
  }
  return { kind: 'changes', changes };
}

function readOne(part: string, known: Known): ReadOne {
  const set = setForm.exec(part)?.[1];
  if (set !== undefined) return readSet(set, known);
  const drop = dropForm.exec(part);
  if (drop !== null) return readDrop((drop[1] ?? drop[2] ?? '').trim(), known);
  const amount = amountForm.exec(part);
  if (amount !== null) return readAmount(part, amount, undefined, known);
  const span = spanForm.exec(part);
  const spanned = span === null ? null : amountForm.exec(span[1] ?? '');
  if (span !== null && spanned !== null) {
    const read = readSpan(span[2] ?? '', span[3], known);
    return read.kind === 'unclear' ? read : readAmount(span[1] ?? part, spanned, read, known);
  }
  const [only, another] = matching(part, known.pours);
  if (only !== undefined && another === undefined)
    return unclear(`By how many working days? Maybe ${only.code} +1d.`, [`${only.code} +1d`]);
  return unclear(`"${part}" cannot be read. Write it like 14 +1d, 14 drop, LK +40, D-101 +2d or set GA x2.`);
}

interface Span {
  readonly kind: 'span';
  readonly from: string;
  readonly to: string | null;
}

function readSpan(from: string, to: string | undefined, known: Known): Span | Unclear {
  const begin = readWhen(from, known.from, known.timeZone);
  if (!begin.ok) return unclear(`${begin.error.message} Write it like LK +40 from 9 Mar to 20 Mar.`);
  if (to === undefined) return { kind: 'span', from: begin.value, to: null };
  const end = readWhen(to, begin.value, known.timeZone);
  if (!end.ok) return unclear(`${end.error.message} Write it like LK +40 from 9 Mar to 20 Mar.`);
  return Date.parse(end.value) > Date.parse(begin.value)
    ? { kind: 'span', from: begin.value, to: end.value }
    : unclear(`${to} is not after ${from}. Write it like LK +40 from 9 Mar to 20 Mar.`);
}

function readAmount(part: string, found: RegExpExecArray, span: Span | undefined, known: Known): ReadOne {
  const [, said = '', sign = '+', digits = '0', unit] = found;
  const who = said.trim();
  const count = sign === '+' ? Number(digits) : -Number(digits);
  const pours = matching(who, known.pours);
  const isPour = pours.some(({ code }) => code.toLowerCase() === who.toLowerCase());
  const component = named(who, known.components, ({ code }) => code);
  const note = named(who, known.notes, ({ number }) => number);
  if (!isPour && component !== undefined) return readStock(component.code, count, unit, span, known);
  if (span !== undefined)
    return unclear(
      `Only pieces are planned from a day on: no component is called "${who}". Write LK +40 from 9 Mar.`,
    );
  const days = count * (unit?.toLowerCase().startsWith('w') === true ? daysPerWeek : 1);
  if (days === 0) return unclear(`${part} moves nothing. Write it like ${who} +1d.`);
  if (Math.abs(days) > mostDays)
    return unclear(
      `${Math.abs(days)} working days are more than the ${mostDays} a move may have, as in ${who} +5d.`,
    );
  if (!isPour && note !== undefined) return readSlip(note, days, known);
  const [only, another] = pours;
  if (only === undefined)
    return unclear(`No pour, component or draft note is called "${who}". Write it like 14 +1d or LK +40.`);
  if (another !== undefined) return whichPour(who, pours, ` ${days < 0 ? '-' : '+'}${Math.abs(days)}d`);
  return changed({ kind: 'move', pour: only.code, workingDays: days });
}

function readStock(
  component: string,
  quantity: number,
  unit: string | undefined,
  span: Span | undefined,
  known: Known,
): ReadOne {
  if (unit !== undefined)
    return unclear(`${component} is a component: it takes pieces, not days. Write it like ${component} +40.`);
  if (quantity === 0) return unclear(`${component} +0 changes nothing. Write it like ${component} +40.`);
  const [from, to] = [span?.from ?? known.from, span?.to ?? null];
  const open = { costCents: 0, source: null, remark: null };
  return changed({ kind: 'stock', entry: { kind: 'other', component, quantity, from, to, ...open } });
}

function readSlip(note: Known['notes'][number], days: number, known: Known): ReadOne {
  if (note.expectedAt === null)
    return unclear(
      `Nobody said when ${note.number} comes, so it cannot slip. Enter its day in Papers, then write ${note.number} +2d.`,
    );
  return changed({ kind: 'delivery', note: note.id, expectedAt: known.later(note.expectedAt, days) });
}

function readDrop(who: string, known: Known): ReadOne {
  const pours = matching(who, known.pours);
  const note = named(who, known.notes, ({ number }) => number);
  const isPour = pours.some(({ code }) => code.toLowerCase() === who.toLowerCase());
  if (!isPour && note !== undefined) return changed({ kind: 'delivery', note: note.id, expectedAt: null });
  const [only, another] = pours;
  if (only === undefined)
    return unclear(`No pour or draft note is called "${who}". Write it like 14 drop or D-101 drop.`);
  return another === undefined ? changed({ kind: 'drop', pour: only.code }) : whichPour(who, pours, ' drop');
}

function readSet(text: string, known: Known): ReadOne {
  const span = spanForm.exec(text);
  const read = span === null ? undefined : readSpan(span[2] ?? '', undefined, known);
  if (read?.kind === 'unclear') return read;
  const gangs: { design: string; quantity: number }[] = [];
  for (const each of (span?.[1] ?? text).split(/\s*\+\s*|\s+and\s+/iu)) {
    const found = gangForm.exec(each.trim());
    const design = named(found?.[1] ?? '', known.designs, ({ code }) => code);
    if (found === null || design === undefined)
      return unclear(`No design is called "${(found?.[1] ?? each).trim()}". Write it like set GA x2.`);
    const quantity = Number(found[2] ?? found[3] ?? '1');
    if (quantity < 1 || quantity > 100)
      return unclear(`A set has 1 to 100 gangs of a design, not ${quantity}. Write it like set GA x2.`);
    gangs.push({ design: design.code, quantity });
  }
  return changed({ kind: 'set-of-forms', gangs, from: read?.from ?? known.from });
}

function named<T>(who: string, list: readonly T[], nameOf: (each: T) => string): T | undefined {
  return list.find((each) => nameOf(each).toLowerCase() === who.toLowerCase());
}

function whichPour(who: string, pours: readonly PourName[], rest: string): Unclear {
  const choices = pours.slice(0, 6).map(({ code }) => `${code}${rest}`);
  return unclear(`"${who}" fits ${pours.length} pours: which one?`, choices);
}

function changed(change: PlanChange): ReadOne {
  return { kind: 'change', change };
}

function unclear(message: string, choices: readonly string[] = []): Unclear {
  return { kind: 'unclear', message, choices };
}
