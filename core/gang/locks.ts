// Locks of panel joints: each joint by its length, and `extra` for what stands at the gang's edges.
import { type RuleTables, ruleSource } from '../catalogue/rules.ts';
import { locksOfJoint } from './bands.ts';
import type { Finding, RuleResult, Taken } from './findings.ts';
import type { PanelJoint } from './joints.ts';
import type { Gang } from './placed.ts';

export interface LockedJoints extends RuleResult {
  /** Locks on each joint, extras included, in the order of the joints. */
  readonly locks: readonly number[];
}

/**
 * `extra` goes to every level panel joint that ends at that edge of the gang (a joint without locks takes none),
 * and once to the edge itself where no level joint ends.
 */
export function takeLocks(gang: Gang, joints: readonly PanelJoint[], rules: RuleTables): LockedJoints {
  const table = rules.locks;
  if (table === undefined) return { locks: joints.map(() => 0), taken: [], findings: [] };
  const { component, bands, minimumStretchNm = 0 } = table;
  const taken: Taken[] = [];
  const findings: Finding[] = [];
  const locks = joints.map((joint) => {
    const { xNm, yNm } = joint;
    const found = locksOfJoint(joint, { rule: 'locks', bands, minimumStretchNm }, (place) =>
      ruleSource(rules, place),
    );
    findings.push(...found.findings);
    taken.push({ component, rule: 'locks', count: found.count, where: { xNm, yNm } });
    return found.count;
  });
  for (const side of ['left', 'right'] as const) {
    const kind = gang.edges[side];
    const extra = table.extra?.[kind] ?? 0;
    const rule = `locks.extra.${kind}`;
    let ending = false;
    for (const [index, joint] of joints.entries()) {
      if (!endsAt(gang, joint, side)) continue;
      ending = true;
      const count = locks[index] ?? 0;
      if (count === 0 || extra === 0) continue;
      locks[index] = count + extra;
      taken.push({ component, rule, count: extra, where: { xNm: joint.xNm, yNm: joint.yNm } });
    }
    if (!ending) taken.push({ component, rule, count: extra, where: `${side} edge (${kind})` });
  }
  return { locks, taken, findings };
}

function endsAt({ extent }: Gang, joint: PanelJoint, side: 'left' | 'right'): boolean {
  if (joint.kind !== 'horizontal') return false;
  return side === 'left' ? joint.xNm === extent.leftNm : joint.xNm + joint.lengthNm === extent.rightNm;
}
