// Rails that cannot stay on between the pick and the pour: what is moved when, to be ticked.
import type { RailMove, RailStand } from '../gang/rail-clash.ts';
import type { SheetUnits } from './drawn-gang.ts';
import { of, type SheetElement } from './node.ts';
import { tick } from './pieces-part.ts';

const when = {
  'before-the-pick': 'Move rails before the pick',
  'before-the-pour': 'Move rails before the pour',
} as const;

/** Nothing where no rail is moved. */
export function railMovesPart(moves: readonly RailMove[], units: SheetUnits): readonly SheetElement[] {
  return (['before-the-pick', 'before-the-pour'] as const).flatMap((step) => {
    const ofStep = moves.filter((move) => move.step === step);
    if (ofStep.length === 0) return [];
    const lines = ofStep.map((move) => of('li', 'tick-line', tick(), moveWords(move, units)));
    return [of('section', 'part rail-moves', of('h2', 'part-name', when[step]), of('ul', 'ticks', ...lines))];
  });
}

function moveWords({ component, from, to }: RailMove, units: SheetUnits): string {
  if (from === null) return to === null ? component : `${component}: put on ${standWords(to, units)}.`;
  if (to === null) return `${component}: take off, ${standWords(from, units)}.`;
  return `${component}: from ${standWords(from, units)} to ${standWords(to, units)}.`;
}

function standWords({ direction, xNm, yNm }: RailStand, units: SheetUnits): string {
  return `${direction}, ${units.length(xNm)} along, ${units.length(yNm)} up`;
}
