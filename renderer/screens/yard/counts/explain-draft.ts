// How the differences of a count are explained so far, line by line, until they are booked.
import { never } from '../../../../core/answer.ts';
import { stillToExplain } from '../../../../core/yard/count-explained.ts';
import type { Input } from './asked.ts';
import type { Cause, DifferenceLine, How } from './count-words.ts';

export interface DraftExplanation {
  readonly id: string;
  readonly how: How;
  readonly quantity: string;
  readonly place: string;
  readonly owner: string;
  readonly remark: string;
}

export interface DraftLine {
  readonly explained: readonly DraftExplanation[];
  /** What is left is left open by name. */
  readonly open: boolean;
}

export type ExplainDraft = Readonly<Record<string, DraftLine>>;

export function lineKeyOf(line: Pick<DifferenceLine, 'location' | 'component' | 'owner'>): string {
  return JSON.stringify([line.location, line.component, line.owner]);
}

/** To begin with, pieces found in another condition are said to be in it: the counter saw them. */
export function beginLine(line: DifferenceLine): DraftLine {
  const { inOtherCondition } = stillToExplain(line, [], 0);
  return {
    open: false,
    explained: inOtherCondition === 0 ? [] : [explanation('condition-changed', inOtherCondition)],
  };
}

export function explanation(how: How, quantity: number, place = '', owner = ''): DraftExplanation {
  return { id: crypto.randomUUID(), how, quantity: String(quantity), place, owner, remark: '' };
}

function quantityOf({ quantity }: DraftExplanation): number {
  return /^\s*\d+\s*$/u.test(quantity) ? Number(quantity) : 0;
}

/** What of a line is still to be explained, by the core's own count. */
export function restOf(line: DifferenceLine, draft: DraftLine) {
  const explained = draft.explained.map((each) => ({ how: each.how, quantity: quantityOf(each) }));
  const rest = stillToExplain(line, explained, 0);
  const leftOpen = draft.open ? Math.max(0, rest.pieces) : 0;
  return { ...stillToExplain(line, explained, leftOpen), leftOpen };
}

export function isExplained(line: DifferenceLine, draft: DraftLine): boolean {
  const rest = restOf(line, draft);
  return rest.pieces === 0 && rest.inOtherCondition === 0;
}

export function toExplained(
  line: DifferenceLine,
  draft: DraftLine,
): Input<'count.book'>['explained'][number] {
  const { location, component, owner } = line;
  return {
    location,
    component,
    owner,
    leftOpen: restOf(line, draft).leftOpen,
    explained: draft.explained
      .filter((each) => quantityOf(each) > 0)
      .map((each) => ({
        how: each.how,
        quantity: quantityOf(each),
        remark: each.remark.trim() === '' ? null : each.remark.trim(),
        ...(each.place !== '' && { place: each.place }),
        ...(each.owner !== '' && { owner: each.owner }),
      })),
  };
}

/** The explanation that a cause suggests, for as many as it can account for; null where it suggests none. */
export function suggested(cause: Cause, line: DifferenceLine, left: number): DraftExplanation | null {
  const pieces = Math.min(left, cause.quantity === 0 ? left : cause.quantity);
  const offers = (how: How): boolean => line.offered.some((each) => each.how === how);
  const to = (how: How, place = '', owner = ''): DraftExplanation | null =>
    offers(how) && pieces > 0 ? explanation(how, pieces, place, owner) : null;
  switch (cause.rule) {
    case 'look-alike':
      return to('stacked-with-look-alike');
    case 'open-ticket':
      return to('left-at-pour');
    case 'other-owner':
      return to('owner-mixed', '', cause.owner);
    case 'other-place':
      return to('moved-without-note', cause.place);
    case 'other-job':
      return to('at-other-job', cause.place);
    case 'losses':
      return to('lost');
    case 'last-move':
      return cause.kind === 'pour' || cause.kind === 'gang' ? to('left-at-pour', cause.place) : null;
    case 'draft-note':
    case 'returned-as-other':
      return null;
    default:
      return never(cause);
  }
}
