// Words of pick lists and loads, and what the core is asked for them.
import type { PickAsked } from '../../../../core/yard/pick-id.ts';
import type { Input, Output } from '../../../client/core.tsx';
import { conditionWords } from '../yard-words.ts';

type PickList = Output<'picklist.read'>;

export function pickInput({ picked, from }: PickAsked): Input<'picklist.read'> {
  const place = from === null ? {} : { from };
  if (picked.of === 'design') return { design: picked.design, ...place };
  if (picked.of === 'note') return { note: picked.note, ...place };
  const { job, pour, side } = picked;
  return { job, pour, ...(side === null ? {} : { side }), ...place };
}

export function conditionAt(held: PickList['short'][number]['elsewhere'][number]): string {
  return `${held.quantity} ${conditionWords[held.condition]} at ${held.location} (${held.owner})`;
}

export function comingWords({ turn, design, how, from }: PickList['coming'][number]): string {
  const gang = `${turn}, ${design}`;
  if (how === 'new') return `${gang}: built new, all its pieces are in the list.`;
  if (how === 'regang') return `${gang}: re-ganged from ${from ?? ''}, only what is put in is in the list.`;
  if (how === 'fly-on') return `${gang}: flies on from ${from ?? ''}, nothing to pick.`;
  return `${gang}: built already as ${from ?? ''}, nothing to pick.`;
}

export type LoadFigures = Output<'load.read'>['figures'];
export type Layer = LoadFigures['stacks'][number]['layers'][number];

export function codeOf({ what }: Pick<Layer, 'what'>): string {
  if ('component' in what) return what.component;
  return 'container' in what ? what.container : what.gang;
}

const limitNames: Readonly<Record<string, string>> = {
  weight: 'too heavy for the payload',
  length: 'longer than the deck',
  width: 'wider than the deck',
  height: 'higher than the deck may be stacked',
};

export function passesWords(passes: readonly string[]): string {
  return passes.map((each) => limitNames[each] ?? each).join(', ');
}

/** "at least 2 trucks by weight, 1 by deck" */
export function leastWords({ byWeight, byDeck }: Output<'load.propose'>['atLeast']): string {
  return `At least ${byWeight} ${byWeight === 1 ? 'truck' : 'trucks'} by weight and ${byDeck} by the room over the deck`;
}

/** Of the payload, rounded down: a load over it never reads as 100 %. */
export function shareWords(weightGrams: number, payloadGrams: number): string {
  return payloadGrams === 0 ? '' : `${Math.floor((1000 * weightGrams) / payloadGrams) / 10} %`;
}
