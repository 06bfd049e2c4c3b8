// Small hardware of a gang as a few paths, one a kind: what an open design draws, where a thousand locks must
// not be a thousand things to keep. The same signs as on the elevation that is only looked at.
import type { JointMark, Mark, RailMark } from './elevation-marks.ts';
import { type Scale, toPx } from './elevation-view.ts';

export interface HardwarePaths {
  readonly joints: string;
  readonly locks: string;
  readonly adjustable: string;
  /** By what they are needed for. */
  readonly rails: Readonly<Record<RailMark['neededFor'], string>>;
  readonly bolts: string;
  readonly holes: string;
}

export const railPx = 7;
const lockPx = 4.5;

/** Half a lock's length: it reaches some 5 in over both panels; never smaller than a mark that can be counted. */
export function lockHalfPx(scale: Scale): number {
  return Math.min(11, Math.max(6, 127_000_000 * scale.pxPerNm));
}

export function hardwarePaths(marks: readonly Mark[], scale: Scale): HardwarePaths {
  const joints = marks.filter((mark) => mark.kind === 'joint');
  const plain = joints.filter((joint) => joint.spanNm === 0);
  const rails = marks.filter((mark) => mark.kind === 'rail');
  const railBars = (neededFor: RailMark['neededFor']): string =>
    rails
      .filter((rail) => rail.neededFor === neededFor)
      .map((rail) => railBar(rail, scale))
      .join('');
  return {
    joints: plain.map((joint) => jointLine(joint, scale)).join(''),
    locks: plain.flatMap((joint) => lockBars(joint, scale)).join(''),
    adjustable: joints
      .filter((joint) => joint.spanNm > 0)
      .flatMap((joint) => lockClaws(joint, scale))
      .join(''),
    rails: { both: railBars('both'), picking: railBars('picking'), placing: railBars('placing') },
    bolts: rails.flatMap((rail) => bolts(rail, scale)).join(''),
    holes: marks
      .filter((mark) => mark.kind === 'hole')
      .map((hole) => {
        const { x, y } = toPx(scale, hole);
        return `M${px(x - 3)} ${px(y)}a3 3 0 1 0 6 0a3 3 0 1 0 -6 0M${px(x - 5)} ${px(y)}h10M${px(x)} ${px(y - 5)}v10`;
      })
      .join(''),
  };
}

function jointLine(joint: JointMark, scale: Scale): string {
  const { x, y } = toPx(scale, joint);
  const length = px(joint.lengthNm * scale.pxPerNm);
  return joint.direction === 'upright' ? `M${px(x)} ${px(y)}v-${length}` : `M${px(x)} ${px(y)}h${length}`;
}

function lockBars(joint: JointMark, scale: Scale): string[] {
  const half = lockHalfPx(scale);
  const [across, along] = joint.direction === 'upright' ? [half, lockPx / 2] : [lockPx / 2, half];
  return joint.locks.map((lock) => {
    const { x, y } = toPx(scale, lock);
    return bar(x - across, y - along, 2 * across, 2 * along);
  });
}

/** A bar over the filler with a claw at either end. */
function lockClaws(joint: JointMark, scale: Scale): string[] {
  const half = lockHalfPx(scale) + (joint.spanNm * scale.pxPerNm) / 2;
  return joint.locks.map((lock) => {
    const { x, y } = toPx(scale, lock);
    return joint.direction === 'upright'
      ? `M${px(x - half)} ${px(y)}h${px(2 * half)}M${px(x - half)} ${px(y - 5)}v10M${px(x + half)} ${px(y - 5)}v10`
      : `M${px(x)} ${px(y - half)}v${px(2 * half)}M${px(x - 5)} ${px(y - half)}h10M${px(x - 5)} ${px(y + half)}h10`;
  });
}

function railBar(rail: RailMark, scale: Scale): string {
  const { x, y } = toPx(scale, rail);
  const length = rail.lengthNm * scale.pxPerNm;
  return rail.direction === 'upright'
    ? bar(x - railPx / 2, y - length, railPx, length)
    : bar(x, y - railPx / 2, length, railPx);
}

function bolts(rail: RailMark, scale: Scale): string[] {
  return rail.boltPlaces.map((place) => {
    const { x, y } = toPx(scale, place);
    return `M${px(x - 2.2)} ${px(y)}a2.2 2.2 0 1 0 4.4 0a2.2 2.2 0 1 0 -4.4 0`;
  });
}

function bar(x: number, y: number, width: number, height: number): string {
  return `M${px(x)} ${px(y)}h${px(width)}v${px(height)}h${px(-width)}Z`;
}

/** A tenth of a pixel is more than a screen shows. */
function px(value: number): string {
  return String(Math.round(value * 10) / 10);
}
