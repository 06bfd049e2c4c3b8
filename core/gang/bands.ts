// How many locks a joint of a length takes by a table of bands, and what is said where the table does not
// reach: the last band again and again, with a caution, or none for a stretch too short to lock.
import type { Band } from '../catalogue/rules.ts';
import { type Finding, type PointNm, shown } from './findings.ts';

/**
 * The count of the first band not smaller than the length. A longer joint takes the last band's count for each
 * whole last band and the band of the remainder, if any. Bands rise (check-rules.ts).
 */
export function countByBands(lengthNm: number, bands: readonly Band[]): { count: number; beyond: boolean } {
  const within = bands.find((band) => lengthNm <= band.upToNm);
  if (within !== undefined) return { count: within.count, beyond: false };
  const last = bands.at(-1);
  if (last === undefined) return { count: 0, beyond: true };
  const restNm = lengthNm % last.upToNm;
  const rest = restNm === 0 ? 0 : (bands.find((band) => restNm <= band.upToNm)?.count ?? 0);
  return { count: Math.floor(lengthNm / last.upToNm) * last.count + rest, beyond: true };
}

export interface JointToLock extends PointNm {
  readonly kind: 'vertical' | 'horizontal' | 'filler';
  readonly lengthNm: number;
}

/** Locks of one joint, with the findings of a joint too short to lock or longer than the table. */
export function locksOfJoint(
  joint: JointToLock,
  table: {
    readonly rule: 'locks' | 'fillerLocks';
    readonly bands: readonly Band[];
    readonly minimumStretchNm: number;
  },
  source: (place: string) => string,
): { readonly count: number; readonly findings: readonly Finding[] } {
  const { kind, lengthNm, xNm, yNm } = joint;
  const where = { xNm, yNm };
  if (lengthNm < table.minimumStretchNm) {
    const message = `This ${kind} joint is ${shown(lengthNm)} long, under the ${shown(table.minimumStretchNm)} that a lock needs: it takes none.`;
    const rule = 'locks.minimumStretch';
    return { count: 0, findings: [{ rule, severity: 'caution', message, where, source: source(rule) }] };
  }
  const { count, beyond } = countByBands(lengthNm, table.bands);
  if (!beyond) return { count, findings: [] };
  const last = table.bands.at(-1)?.upToNm ?? 0;
  const message = `This ${kind} joint is ${shown(lengthNm)} long, beyond the table's last row of ${shown(last)}: it takes ${count} by that row and the rest.`;
  const rule = `${table.rule}.bands`;
  return { count, findings: [{ rule, severity: 'caution', message, where, source: source(rule) }] };
}
