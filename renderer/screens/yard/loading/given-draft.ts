// What was given by a pick list as it is typed, and what the core is told: as listed, or in place of what was listed.
import type { z } from 'zod';
import type { picklistGiven } from '../../../../core/procedures/picklist-given.ts';
import type { picklistRead } from '../../../../core/procedures/picklist-read.ts';

type PickList = z.output<typeof picklistRead.output>;

export interface GivenRow {
  readonly key: string;
  readonly component: string;
  readonly name: string;
  readonly owner: string;
  readonly condition: PickList['places'][number]['lines'][number]['condition'];
  /** As listed at this place; 0 for what is short. */
  readonly listed: number;
  readonly missing: number;
}

export interface GivenDraft {
  readonly number: string;
  readonly from: string;
  readonly to: string;
  /** By row; an absent text is as listed. */
  readonly given: Readonly<Record<string, string>>;
  readonly insteadOf: Readonly<Record<string, { readonly component: string; readonly quantity: string }>>;
}

export const emptyGiven: GivenDraft = { number: '', from: '', to: '', given: {}, insteadOf: {} };

/** Lines of the list at a place, then what of it is short, to be given in another component. */
export function givenRows(list: PickList, from: string, ours: string): readonly GivenRow[] {
  const place = list.places.find(({ location }) => location === from);
  const lines = (place?.lines ?? []).map(({ component, name, owner, condition, quantity }): GivenRow => ({
    key: JSON.stringify([component, owner, condition]),
    component,
    name,
    owner,
    condition,
    listed: quantity,
    missing: 0,
  }));
  const listed = new Set(lines.map(({ component }) => component));
  const short = list.short
    .filter(({ component }) => !listed.has(component))
    .map(({ component, name, owner, missing }): GivenRow => ({
      key: JSON.stringify([component, 'short']),
      component,
      name,
      owner: owner ?? ours,
      condition: 'ready',
      listed: 0,
      missing,
    }));
  return [...lines, ...short];
}

export interface GivenError {
  readonly field: string;
  readonly message: string;
}

type GivenLines = z.input<typeof picklistGiven.input>['lines'];

export function readGiven(
  rows: readonly GivenRow[],
  draft: GivenDraft,
  ours: string,
): { readonly lines: GivenLines; readonly errors: readonly GivenError[] } {
  const lines: GivenLines = [];
  const errors: GivenError[] = [];
  for (const row of rows) {
    const given = readCount(draft.given[row.key] ?? String(row.listed));
    if (given === undefined)
      errors.push({ field: `given ${row.key}`, message: `How many ${row.component} is no whole number.` });
    else if (given > 0) {
      const { component, owner, condition } = row;
      lines.push({ component, owner, condition, quantity: given, insteadOf: null });
    }
    const instead = draft.insteadOf[row.key];
    if (instead === undefined || (instead.component === '' && instead.quantity.trim() === '')) continue;
    const quantity = readCount(instead.quantity);
    if (instead.component === '' || quantity === undefined || quantity === 0)
      errors.push({
        field: `instead ${row.key}`,
        message: `In place of ${row.component}: how many, and of what?`,
      });
    else
      lines.push({
        component: instead.component,
        owner: ours,
        condition: 'ready',
        quantity,
        insteadOf: row.component,
      });
  }
  return { lines, errors };
}

function readCount(text: string): number | undefined {
  const plain = text.trim();
  if (plain === '') return 0;
  return /^\d{1,9}$/u.test(plain) ? Number(plain) : undefined;
}
