// Where two gangs stand side by side their edges meet. The joints there and their locks belong to neither gang
// but to the pour, once. Seen from the back of the gangs, from left to right.
import { type RuleTables, ruleSource } from '../catalogue/rules.ts';
import { locksOfJoint } from './bands.ts';
import { type Finding, shown, type Taken } from './findings.ts';
import { type MadeUp, madeUp } from './made-up.ts';
import { commonStretch } from './placed.ts';
import type { DrawnPiece, LockedJoint, TakeOff } from './take-off.ts';

/** What the joints need of a gang; both stand on one foot. */
export type MeetingGang = Pick<TakeOff, 'panels' | 'fillers' | 'origin' | 'widthNm' | 'heightNm'>;

export interface Meeting {
  /** Their places are from the left gang's lower left corner. */
  readonly joints: readonly LockedJoint[];
  readonly taken: readonly Taken[];
  /** Wider than any lock spans. */
  readonly closure: MadeUp | null;
  readonly findings: readonly Finding[];
}

/** A panel at the gang's edge, or one behind a filler that ends there; heights from the gang's foot. */
interface Face {
  readonly fromNm: number;
  readonly toNm: number;
  /** Of the filler. */
  readonly depthNm: number;
}

/**
 * `gapNm`, zero or more, is from one gang to the other; with the fillers at their edges it is what a lock must span.
 * Nothing across: the locks of a panel joint. Up to the greatest width of a filler: the adjustable locks of that
 * joint. Wider: a made-up closure over the lower gang's height, and a stop that names it.
 */
export function meetingJoints(
  left: MeetingGang,
  right: MeetingGang,
  gapNm: number,
  rules: RuleTables,
): Meeting {
  const { locks, fillerLocks } = rules;
  const maximumNm = fillerLocks?.maximumWidthNm ?? 0;
  const fillerBands = fillerLocks?.bands ?? locks?.bands;
  const minimumStretchNm = locks?.minimumStretchNm ?? 0;
  const source = (place: string): string => ruleSource(rules, place);
  const joints: LockedJoint[] = [];
  const taken: Taken[] = [];
  const findings: Finding[] = [];
  let widestNm = gapNm > maximumNm ? gapNm : 0;
  const others = facesOf(right, 'left');
  for (const one of facesOf(left, 'right')) {
    for (const other of others) {
      const stretch = commonStretch(one.fromNm, one.toNm, other.fromNm, other.toNm);
      if (stretch === undefined) continue;
      const acrossNm = one.depthNm + gapNm + other.depthNm;
      if (acrossNm > maximumNm) {
        widestNm = Math.max(widestNm, acrossNm);
        continue;
      }
      const [yNm, endNm] = stretch;
      const kind = acrossNm === 0 ? ('vertical' as const) : ('filler' as const);
      const joint = { kind, xNm: left.widthNm - one.depthNm, yNm, lengthNm: endNm - yNm };
      const table = kind === 'vertical' ? locks : fillerLocks;
      const bands = kind === 'vertical' ? locks?.bands : fillerBands;
      if (table === undefined || bands === undefined) {
        joints.push({ ...joint, locks: 0 });
        continue;
      }
      const rule = kind === 'vertical' ? ('locks' as const) : ('fillerLocks' as const);
      const found = locksOfJoint(joint, { rule, bands, minimumStretchNm }, source);
      joints.push({ ...joint, locks: found.count });
      findings.push(...found.findings);
      const where = { xNm: joint.xNm, yNm };
      taken.push({ component: table.component, rule, count: found.count, where });
    }
  }
  if (widestNm === 0) return { joints, taken, closure: null, findings };
  const heightNm = Math.min(left.heightNm, right.heightNm);
  const closure = madeUp(widestNm, heightNm, rules.closures);
  findings.push({
    rule: 'closure',
    severity: 'stop',
    message: `Between the gangs are ${shown(widestNm)}, and a lock spans ${shown(maximumNm)} at most: a made-up closure of ${shown(widestNm)} by ${shown(heightNm)}.`,
    where: { xNm: left.widthNm, yNm: 0 },
    source: source('fillerLocks.maximumWidth'),
  });
  return { joints, taken, closure, findings };
}

function facesOf({ panels, fillers, origin, widthNm }: MeetingGang, side: 'left' | 'right'): readonly Face[] {
  const edgeNm = side === 'left' ? origin.xNm : origin.xNm + widthNm;
  const outer = ({ xNm, widthNm: width }: DrawnPiece): number => (side === 'left' ? xNm : xNm + width);
  const inner = ({ xNm, widthNm: width }: DrawnPiece): number => (side === 'left' ? xNm + width : xNm);
  const face = (fromNm: number, toNm: number, depthNm: number): Face => ({
    fromNm: fromNm - origin.yNm,
    toNm: toNm - origin.yNm,
    depthNm,
  });
  const atEdge = panels
    .filter((panel) => outer(panel) === edgeNm)
    .map(({ yNm, heightNm }) => face(yNm, yNm + heightNm, 0));
  const behind = fillers
    .filter((filler) => outer(filler) === edgeNm)
    .flatMap((filler) =>
      panels
        .filter((panel) => outer(panel) === inner(filler))
        .flatMap((panel) => {
          const stretch = commonStretch(
            filler.yNm,
            filler.yNm + filler.heightNm,
            panel.yNm,
            panel.yNm + panel.heightNm,
          );
          return stretch === undefined ? [] : [face(...stretch, filler.widthNm)];
        }),
    );
  return [...atEdge, ...behind];
}
