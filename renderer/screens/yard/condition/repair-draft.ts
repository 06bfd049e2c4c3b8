// A repair while it is written: text stays text until it is kept.
import type { z } from 'zod';
import { type Answer, answer, refuse, type Refusal } from '../../../../core/answer.ts';
import type { repairSave } from '../../../../core/procedures/repair-save.ts';
import { readWhen } from '../../../parts/when-text.ts';
import type { RepairRow, WaitingRow } from './care-words.ts';
import { readHours, readPieces } from './clean-draft.ts';

export interface DonorDraft {
  readonly component: string;
  readonly owner: string;
  readonly quantity: string;
  readonly place: string;
}

export interface RepairDraft {
  readonly component: string;
  readonly owner: string;
  readonly place: string;
  readonly quantity: string;
  readonly was: 'to-repair' | 'ready' | 'ready-hidden' | 'to-clean' | 'quarantine';
  readonly fault: string;
  readonly hours: string;
  readonly due: string;
  readonly sendTo: string;
  /** When they were found or sent; asked for only where they move. */
  readonly at: string;
  readonly donors: readonly DonorDraft[];
  readonly remark: string;
}

export const emptyDonor: DonorDraft = { component: '', owner: '', quantity: '1', place: '' };

/** @param dueWords the day it is due back in words of the job's clock */
export function beginRepair(
  of: RepairRow | WaitingRow | null,
  dueWords: (instant: string) => string,
): RepairDraft {
  const known = of !== null && 'fault' in of ? of : null;
  const place = of === null ? '' : 'place' in of ? of.place : of.location;
  return {
    component: of?.component ?? '',
    owner: of?.owner ?? '',
    place,
    quantity: of === null ? '' : String(of.quantity),
    was: 'to-repair',
    fault: known?.fault ?? '',
    hours: known?.hours === null || known?.hours === undefined ? '' : String(known.hours),
    due: known?.dueAt === null || known?.dueAt === undefined ? '' : dueWords(known.dueAt),
    sendTo: '',
    at: '',
    donors: (known?.partsFrom ?? []).map((donor) => ({ ...donor, quantity: String(donor.quantity) })),
    remark: known?.remark ?? '',
  };
}

export type RepairText = z.input<typeof repairSave.input>['repair'];

/** The refusals name their fields; the first of them is told at each. */
export function readRepair(
  draft: RepairDraft,
  timeZone: string,
  now: string,
): { readonly repair: RepairText | null; readonly wrong: Readonly<Record<string, Refusal>> } {
  const quantity = readPieces(draft.quantity, 'quantity');
  const hours: Answer<number | null> =
    draft.hours.trim() === '' ? answer(null) : readHours(draft.hours, 'hours');
  const due: Answer<string | null> =
    draft.due.trim() === '' ? answer(null) : readWhen(draft.due, now, timeZone);
  const donors = readDonors(draft.donors);
  const wrong: Record<string, Refusal> = {};
  const missing = (field: string, message: string): void => {
    wrong[field] ??= { code: 'missing', message };
  };
  if (draft.component.trim() === '') missing('component', 'The component is missing.');
  if (draft.owner === '') missing('owner', 'Whose pieces they are is missing.');
  if (draft.place === '') missing('place', 'Where they lie is missing.');
  if (draft.fault.trim() === '') missing('fault', 'What is wrong with them is missing.');
  if (!quantity.ok) wrong['quantity'] = quantity.error;
  else if (quantity.value === 0) missing('quantity', 'How many is missing.');
  if (!hours.ok) wrong['hours'] = hours.error;
  if (!due.ok) wrong['dueAt'] = due.error;
  if (!donors.ok) wrong['partsFrom'] = donors.error;
  if (Object.keys(wrong).length > 0 || !quantity.ok || !hours.ok || !due.ok || !donors.ok)
    return { repair: null, wrong };
  const repair: RepairText = {
    component: draft.component.trim(),
    owner: draft.owner,
    place: draft.place,
    quantity: quantity.value,
    fault: draft.fault.trim(),
    hours: hours.value,
    dueAt: due.value,
    partsFrom: donors.value,
    remark: draft.remark.trim() === '' ? null : draft.remark.trim(),
  };
  return { repair, wrong };
}

function readDonors(donors: readonly DonorDraft[]): Answer<RepairText['partsFrom']> {
  const read: RepairText['partsFrom'] = [];
  for (const { component, owner, quantity, place } of donors) {
    if (component.trim() === '') continue;
    const pieces = readPieces(quantity, 'partsFrom');
    if (!pieces.ok) return pieces;
    if (pieces.value === 0 || owner === '' || place === '')
      return refuse('donor-missing', `Of ${component.trim()} how many, whose and where are to be told.`, {
        field: 'partsFrom',
      });
    read.push({ component: component.trim(), owner, quantity: pieces.value, place });
  }
  return answer(read);
}
