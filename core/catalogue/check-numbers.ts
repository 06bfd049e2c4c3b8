// Checks of single numbers of rule tables and of limits that rise from row to row; each answers its problems.
import { refuse, type Refusal } from '../answer.ts';
import { formatLengthMetric } from '../units/length.ts';

/** A table whose limits rise from row to row; rows that go down or repeat would never be reached. */
export function rising(place: string, key: string, limits: readonly number[]): readonly Refusal[] {
  if (limits.length === 0)
    return [refuse('rule-table-empty', `${place} has no rows.`, { field: place }).error];
  return limits.flatMap((limit, row) => {
    const field = `${place}[${row}].${key}`;
    const before = limits[row - 1];
    if (limit <= 0 || before === undefined || limit > before) return notPositive(field, limit);
    const shown = `${formatLengthMetric(limit)} after ${formatLengthMetric(before)}`;
    const message = `${field} must rise from row to row, it is ${shown}.`;
    const hint = 'Maybe two rows were swapped or typed twice.';
    return [refuse('rule-bands-not-rising', message, { field, hint }).error];
  });
}

export function notPositive(field: string, lengthNm: number): readonly Refusal[] {
  if (lengthNm > 0) return [];
  const message = `${field} is ${formatLengthMetric(lengthNm)}, it must be over zero.`;
  return [refuse('rule-number-not-positive', message, { field }).error];
}

export function negative(field: string, lengthNm: number | undefined): readonly Refusal[] {
  if (lengthNm === undefined || lengthNm >= 0) return [];
  const message = `${field} is ${formatLengthMetric(lengthNm)}, it cannot be negative.`;
  return [refuse('rule-number-negative', message, { field }).error];
}
