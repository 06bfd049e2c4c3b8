// The follows into a turn, or out of it, that cannot be, the nearest to being possible first: each with what stands in
// its way, in numbers.
import { mayFollow } from '../follows.ts';
import type { Model } from '../model.ts';
import type { Alike, Place } from './open-ways.ts';

export type Barrier =
  /** The gang is still standing when it would have to be set. */
  | { readonly kind: 'still-standing'; readonly hours: number }
  /** Hours needed against hours there: of the clock where the gang flies on as it stands, else of work. */
  | { readonly kind: 'too-little-time'; readonly neededH: number; readonly thereH: number }
  | { readonly kind: 'no-common-piece' }
  /** Another choice that is fixed leaves no room for it. */
  | { readonly kind: 'fixed-otherwise' };

export interface BarredFollow {
  readonly from: string;
  readonly to: string;
  readonly barrier: Barrier;
}

const nearHours = 24 * 7;

/** @param open keys, by `alike`, of the turns that it can come from, or go to */
export function barredFollows(
  model: Model,
  place: Place,
  { alike, placeOf }: { readonly alike: Alike; readonly placeOf: (turn: string) => string },
  open: ReadonlySet<string>,
  most: number,
): readonly BarredFollow[] {
  const found = new Map<string, BarredFollow & { readonly missingH: number }>();
  const own = placeOf(model.turnIds[place.turn] ?? '');
  for (const [other, id] of model.turnIds.entries()) {
    const key = alike(other);
    if (placeOf(id) === own || open.has(key)) continue;
    const [earlier, later] = place.side === 'arrival' ? [other, place.turn] : [place.turn, other];
    const { barrier, missingH } = barrierOf(model, earlier, later);
    if (missingH > Math.min(nearHours, found.get(key)?.missingH ?? Infinity)) continue;
    found.set(key, {
      from: model.turnIds[earlier] ?? '',
      to: model.turnIds[later] ?? '',
      barrier,
      missingH,
    });
  }
  return [...found.values()]
    .toSorted((one, other) => one.missingH - other.missingH)
    .slice(0, most)
    .map(({ from, to, barrier }) => ({ from, to, barrier }));
}

function barrierOf(
  model: Model,
  earlier: number,
  later: number,
): { readonly barrier: Barrier; readonly missingH: number } {
  const hour = 3_600_000 * model.instants.scale.unitsPerMs;
  const [strip, set] = [model.to[earlier] ?? 0, model.from[later] ?? 0];
  const flownAt = strip + model.flyOnUnits;
  const [left, right] = [model.design[earlier] ?? 0, model.design[later] ?? 0];
  if (mayFollow(model, earlier, later)) return { barrier: { kind: 'fixed-otherwise' }, missingH: 0 };
  if (strip > set) {
    const hours = (strip - set) / hour;
    return { barrier: { kind: 'still-standing', hours }, missingH: hours };
  }
  if (flownAt > set) {
    const [neededH, thereH] = [model.flyOnUnits / hour, (set - strip) / hour];
    return { barrier: { kind: 'too-little-time', neededH, thereH }, missingH: neededH - thereH };
  }
  const work = model.regang.units(left, right);
  if (model.calendar.workAfter(flownAt, work) > set) {
    const [neededH, thereH] = [work / hour, workBetween(model, flownAt, set) / hour];
    return { barrier: { kind: 'too-little-time', neededH, thereH }, missingH: neededH - thereH };
  }
  // Time enough: only that they have nothing in common is left. Nearest are those with the least time between.
  return { barrier: { kind: 'no-common-piece' }, missingH: (set - flownAt) / hour };
}

function workBetween(model: Model, from: number, to: number): number {
  return model.calendar
    .shiftsBetween(from, to)
    .reduce((sum, shift) => sum + Math.max(0, Math.min(shift.to, to) - Math.max(shift.from, from)), 0);
}
