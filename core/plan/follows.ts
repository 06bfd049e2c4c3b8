// Who may follow whom: the same design once it is flown on, another design that shares a piece once there
// are hours enough to re-gang it. The rule stands in `calc plan` of the contracts.
import type { Model } from './model.ts';

/** Whether two designs have a piece in common. */
function sharePiece(model: Model, left: number, right: number): boolean {
  const count = model.codes.length;
  for (let index = 0; index < count; index += 1) {
    if ((model.pieces[left * count + index] ?? 0) > 0 && (model.pieces[right * count + index] ?? 0) > 0)
      return true;
  }
  return false;
}

/** Whether turn `later` may follow turn `earlier` in a run; turns by their place in the input. */
export function mayFollow(model: Model, earlier: number, later: number): boolean {
  const flownAt = (model.to[earlier] ?? 0) + model.flyOnUnits;
  const from = model.from[later] ?? 0;
  if (earlier === later || flownAt > from) return false;
  const [left, right] = [model.design[earlier] ?? 0, model.design[later] ?? 0];
  if (left === right) return true;
  if (!sharePiece(model, left, right)) return false;
  const work = model.regang.units(left, right);
  // Work never takes less than clock time, which spares the calendar most questions.
  return work <= from - flownAt && model.calendar.workAfter(flownAt, work) <= from;
}

/** Labour of a follow in grains. */
export function followGrains(model: Model, earlier: number, later: number): bigint {
  const digits = model.regang.digits(model.design[earlier] ?? 0, model.design[later] ?? 0);
  return model.flyOnGrains + digits * model.grains.perHourDigit;
}
