// What a pick list is for, as one text in an address: design:GA, pour:TB26:P01, pour:TB26:P01:A, note:ID.
import { answer, type Answer, refuse } from '../answer.ts';

export type PickFor =
  | { readonly of: 'design'; readonly design: string }
  | { readonly of: 'pour'; readonly job: string; readonly pour: string; readonly side: 'A' | 'B' | null }
  | { readonly of: 'note'; readonly note: string };

export function pickId(picked: PickFor): string {
  return partsOf(picked).map(encodeURIComponent).join(':');
}

function partsOf(picked: PickFor): readonly string[] {
  if (picked.of === 'design') return ['design', picked.design];
  if (picked.of === 'note') return ['note', picked.note];
  return ['pour', picked.job, picked.pour, ...(picked.side === null ? [] : [picked.side])];
}

export function readPickId(text: string): Answer<PickFor> {
  const parts = text.split(':').map(readPart);
  const [of, first, second, side, ...more] = parts;
  if (parts.includes('') || parts.includes(undefined) || more.length > 0) return notAPickList(text);
  if (of === 'design' && first !== undefined && second === undefined) return answer({ of, design: first });
  if (of === 'note' && first !== undefined && second === undefined) return answer({ of, note: first });
  const isSide = side === undefined || side === 'A' || side === 'B';
  if (of === 'pour' && first !== undefined && second !== undefined && isSide)
    return answer({ of, job: first, pour: second, side: side ?? null });
  return notAPickList(text);
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
