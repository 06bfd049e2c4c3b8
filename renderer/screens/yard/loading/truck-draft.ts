// A truck as texts that are typed, and back. A bare number has the unit of whoever types it: feet or metres, pounds or
// kilograms.
import type { z } from 'zod';
import { type Answer } from '../../../../core/answer.ts';
import type { truckList } from '../../../../core/procedures/truck-list.ts';
import { formatLength, type UnitSystem } from '../../../../core/units/length.ts';
import { formatWeight } from '../../../../core/units/weight.ts';
import { readRadius, readWeight } from '../../designs/pick/typed-amounts.ts';

export type Truck = z.output<typeof truckList.output>['trucks'][number];

export interface TruckTexts {
  readonly code: string;
  readonly name: string;
  readonly payload: string;
  readonly deckLength: string;
  readonly deckWidth: string;
  readonly stackHeight: string;
}

export const emptyTruck: TruckTexts = {
  code: '',
  name: '',
  payload: '',
  deckLength: '',
  deckWidth: '',
  stackHeight: '',
};

export function truckTexts(truck: Truck, system: UnitSystem): TruckTexts {
  return {
    code: truck.code,
    name: truck.name,
    payload: formatWeight(truck.payloadGrams, system),
    deckLength: formatLength(truck.deckLengthNm, system),
    deckWidth: formatLength(truck.deckWidthNm, system),
    stackHeight: formatLength(truck.stackHeightNm, system),
  };
}

export interface TruckRead {
  readonly truck: Truck | null;
  readonly wrong: Readonly<Record<string, { readonly message: string; readonly hint?: string | undefined }>>;
}

export function readTruck(texts: TruckTexts, system: UnitSystem): TruckRead {
  const wrong: Record<string, { message: string; hint?: string | undefined }> = {};
  const code = texts.code.trim();
  const name = texts.name.trim();
  if (code === '') wrong['code'] = { message: 'The code is missing.', hint: 'Maybe its plate number.' };
  if (name === '') wrong['name'] = { message: 'The name is missing.' };
  const read = (field: keyof TruckTexts, by: (text: string) => Answer<number>): number => {
    const text = texts[field].trim();
    if (text === '') {
      wrong[field] = {
        message: 'This is missing.',
        hint: 'It stands in the truck’s papers, or is measured.',
      };
      return 0;
    }
    const amount = by(text);
    if (amount.ok) return amount.value;
    wrong[field] = { message: amount.error.message, hint: amount.error.hint };
    return 0;
  };
  const length = (text: string): Answer<number> => readRadius(text, system);
  const truck: Truck = {
    code,
    name,
    payloadGrams: read('payload', (text) => readWeight(text, system, 1)),
    deckLengthNm: read('deckLength', length),
    deckWidthNm: read('deckWidth', length),
    stackHeightNm: read('stackHeight', length),
  };
  return { truck: Object.keys(wrong).length === 0 ? truck : null, wrong };
}
