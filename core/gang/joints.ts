// Where pieces of a gang meet. A panel joint is the stretch, longer than zero, over which one edge of one
// panel touches an edge of one other panel; a filler joint is the stretch common to a filler and the two
// panels between whose edges it stands exactly. Edges touch only when equal to the nanometre.
import { commonStretch, type Gang, type Rectangle, type StandingPanel } from './placed.ts';

export interface PanelJoint {
  readonly kind: 'vertical' | 'horizontal';
  /** Its left or lower end. */
  readonly xNm: number;
  readonly yNm: number;
  readonly lengthNm: number;
  /** Left or lower panel, right or upper panel. */
  readonly first: StandingPanel;
  readonly second: StandingPanel;
}

export interface FillerJoint {
  readonly kind: 'filler';
  readonly xNm: number;
  readonly yNm: number;
  readonly lengthNm: number;
  /** From panel to panel, over the filler. */
  readonly acrossNm: number;
  readonly filler: Rectangle;
}

/** All panel joints, by the first panel's place in the design; upright joints of a panel before level ones. */
export function panelJoints({ panels }: Gang): readonly PanelJoint[] {
  const byLeft = grouped(panels, (panel) => panel.leftNm);
  const byBottom = grouped(panels, (panel) => panel.bottomNm);
  const joints: PanelJoint[] = [];
  for (const first of panels) {
    for (const second of byLeft.get(first.rightNm) ?? []) {
      const stretch = commonStretch(first.bottomNm, first.topNm, second.bottomNm, second.topNm);
      if (stretch === undefined) continue;
      const [yNm, end] = stretch;
      joints.push({ kind: 'vertical', xNm: first.rightNm, yNm, lengthNm: end - yNm, first, second });
    }
    for (const second of byBottom.get(first.topNm) ?? []) {
      const stretch = commonStretch(first.leftNm, first.rightNm, second.leftNm, second.rightNm);
      if (stretch === undefined) continue;
      const [xNm, end] = stretch;
      joints.push({ kind: 'horizontal', xNm, yNm: first.topNm, lengthNm: end - xNm, first, second });
    }
  }
  return joints;
}

/** All filler joints, by the filler's place in the design. */
export function fillerJoints({ panels, fillers }: Gang): readonly FillerJoint[] {
  const joints: FillerJoint[] = [];
  for (const filler of fillers) {
    for (const left of panels.filter((panel) => panel.rightNm === filler.leftNm)) {
      for (const right of panels.filter((panel) => panel.leftNm === filler.rightNm)) {
        const from = Math.max(left.bottomNm, filler.bottomNm, right.bottomNm);
        const to = Math.min(left.topNm, filler.topNm, right.topNm);
        const acrossNm = filler.rightNm - filler.leftNm;
        if (from >= to) continue;
        joints.push({ kind: 'filler', xNm: filler.leftNm, yNm: from, lengthNm: to - from, acrossNm, filler });
      }
    }
    for (const lower of panels.filter((panel) => panel.topNm === filler.bottomNm)) {
      for (const upper of panels.filter((panel) => panel.bottomNm === filler.topNm)) {
        const from = Math.max(lower.leftNm, filler.leftNm, upper.leftNm);
        const to = Math.min(lower.rightNm, filler.rightNm, upper.rightNm);
        const acrossNm = filler.topNm - filler.bottomNm;
        if (from >= to) continue;
        joints.push({
          kind: 'filler',
          xNm: from,
          yNm: filler.bottomNm,
          lengthNm: to - from,
          acrossNm,
          filler,
        });
      }
    }
  }
  return joints;
}

function grouped(
  panels: readonly StandingPanel[],
  key: (panel: StandingPanel) => number,
): ReadonlyMap<number, readonly StandingPanel[]> {
  const groups = new Map<number, StandingPanel[]>();
  for (const panel of panels) {
    const group = groups.get(key(panel));
    if (group === undefined) groups.set(key(panel), [panel]);
    else group.push(panel);
  }
  return groups;
}
