// What a pick list is for, as one text in an address: design:GA, pour:TB26:P01, pour:TB26:P01:A, note:ID; with the one
// place that it takes from behind an @, as design:GA@YARD.
import { answer, type Answer, refuse } from '../answer.ts';

export type PickFor =
  | { readonly of: 'design'; readonly design: string }
  | { readonly of: 'pour'; readonly job: string; readonly pour: string; readonly side: 'A' | 'B' | null }
  | { readonly of: 'note'; readonly note: string };

export interface PickAsked {
  readonly picked: PickFor;
  /** Null: from everywhere that pieces lie loose. */
  readonly from: string | null;
}

export function pickId(picked: PickFor, from: string | null): string {
  const of = partsOf(picked).map(encodeURIComponent).join(':');
  return from === null ? of : `${of}@${encodeURIComponent(from)}`;
}

function partsOf(picked: PickFor): readonly string[] {
  if (picked.of === 'design') return ['design', picked.design];
  if (picked.of === 'note') return ['note', picked.note];
  return ['pour', picked.job, picked.pour, ...(picked.side === null ? [] : [picked.side])];
}

export function readPickId(text: string): Answer<PickAsked> {
  const [of = '', at, ...ends] = text.split('@');
  const from = at === undefined ? null : readPart(at);
  const picked = readFor(of);
  if (picked === undefined || from === undefined || from === '' || ends.length > 0) return notAPickList(text);
  return answer({ picked, from });
}

function readFor(text: string): PickFor | undefined {
  const parts = text.split(':').map(readPart);
  const [of, first, second, side, ...more] = parts;
  if (first === undefined || parts.includes('') || parts.includes(undefined) || more.length > 0)
    return undefined;
  if (of === 'design') return second === undefined ? { of, design: first } : undefined;
  if (of === 'note') return second === undefined ? { of, note: first } : undefined;
  if (of !== 'pour' || second === undefined) return undefined;
  if (side !== undefined && side !== 'A' && side !== 'B') return undefined;
  return { of, job: first, pour: second, side: side ?? null };
}

function readPart(part: string): string | undefined {
  try {
    return decodeURIComponent(part);
  } catch {
    return undefined;
  }
}

function notAPickList(text: string) {
  return refuse('not-a-pick-list', `“${text}” does not say what the pick list is for.`, {
    field: 'id',
    hint: 'Maybe design:GA, pour:JOB:POUR, pour:JOB:POUR:A or note:ID was meant.',
  });
}
