// The words of gangs, lifting gear and containers on their screen.
import type { z } from 'zod';
import type { containerList } from '../../../../core/procedures/container-list.ts';
import type { gangList } from '../../../../core/procedures/gang-list.ts';
import type { gearList } from '../../../../core/procedures/gear-list.ts';
import { shortDate } from '../../../parts/time-words.ts';

export type GangRow = z.output<typeof gangList.output>['gangs'][number];
export type GangState = GangRow['state'];
export type Laying = GangRow['laying'];
export type GearRow = z.output<typeof gearList.output>['gear'][number];
export type ContainerRow = z.output<typeof containerList.output>['containers'][number];
export type Filling = ContainerRow['filling'];

export const stateWords: Readonly<Record<GangState, string>> = {
  assembled: 'assembled',
  standing: 'standing',
  stripped: 'stripped',
  'standing-by': 'standing by',
  'broken-down': 'broken down',
};

export const layingWords: Readonly<Record<Laying, string>> = { 'laid-down': 'laid down', upright: 'upright' };

export const fillingWords: Readonly<Record<Filling, string>> = {
  empty: 'empty',
  part: 'part full',
  full: 'full',
  unknown: 'not known',
};

/** What can be done with a gang: by what may follow, and by what it is already. */
export const gangActs = ['stand', 'strip', 'stand-by', 'move', 'regang', 'break', 'build'] as const;
export type GangAct = (typeof gangActs)[number];

export const actWords: Readonly<Record<GangAct, string>> = {
  stand: 'Stand at a turn',
  strip: 'Strip',
  'stand-by': 'Stand by',
  move: 'Move or turn over',
  regang: 'Re-gang',
  break: 'Break down',
  build: 'Build again',
};

/** The buttons of a gang, by the states that the core says may follow. */
export function actsOf(row: Pick<GangRow, 'state' | 'mayFollow'>): readonly GangAct[] {
  const may = new Set(row.mayFollow);
  const acts: GangAct[] = [];
  if (row.state === 'broken-down') return may.has('assembled') ? ['build'] : [];
  if (may.has('standing')) acts.push('stand');
  if (may.has('stripped') && row.state !== 'stripped') acts.push('strip');
  if (may.has('standing-by') && row.state !== 'standing-by') acts.push('stand-by');
  if (may.has(row.state)) acts.push('move');
  if (may.has('assembled')) acts.push('regang');
  if (may.has('broken-down')) acts.push('break');
  return acts;
}

export function turnWords(row: Pick<GangRow, 'turn' | 'nextTurn'>): string {
  if (row.turn !== null) return row.nextTurn === null ? row.turn : `${row.turn}, then ${row.nextTurn}`;
  return row.nextTurn === null ? '' : `next ${row.nextTurn}`;
}

/** "ready until 30 Jun", "out of date since 3 Mar". */
export function standingWords({ standing }: Pick<GearRow, 'standing'>): string {
  switch (standing.is) {
    case 'ready':
      return `ready until ${shortDate(standing.until)}`;
    case 'failed':
      return `failed on ${shortDate(standing.on)}`;
    case 'out-of-date':
      return `out of date since ${shortDate(standing.since)}`;
    case 'never-inspected':
      return 'never inspected';
    default:
      throw new Error(`No words for ${JSON.stringify(standing satisfies never)}.`);
  }
}

export function piecesText(
  content: readonly { readonly component: string; readonly quantity: number }[],
): string {
  const sums = new Map<string, number>();
  for (const { component, quantity } of content) sums.set(component, (sums.get(component) ?? 0) + quantity);
  return [...sums].map(([component, quantity]) => `${quantity} ${component}`).join(', ');
}
