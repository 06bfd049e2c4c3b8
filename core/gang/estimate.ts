// The quick estimate: locks from panel sizes and counts alone, before anybody has drawn a gang, by the same
// tables. Each panel brings the locks of its height, and each panel lower than the highest present also those of
// its width. Nothing else is taken off.
import { type Answer, answer, refuse } from '../answer.ts';
import type { Panel } from '../catalogue/component.ts';
import { ruleSource } from '../catalogue/rules.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { rectangleNm2 } from '../units/area.ts';
import { weightless } from './absent-tables.ts';
import { locksOfJoint } from './bands.ts';
import { type Finding, shown, type Taken } from './findings.ts';
import { unknownPanel } from './placed.ts';
import { takeOffLines, type TakeOffLine, totalGrams } from './weights.ts';

export interface Estimate {
  readonly lines: readonly TakeOffLine[];
  readonly findings: readonly Finding[];
  readonly areaNm2: bigint;
  readonly weightGrams: number;
}

/** Refuses an unknown panel and a quantity that is no whole number of zero or more. */
export function estimate(
  system: PanelSystem,
  quantities: Readonly<Record<string, number>>,
): Answer<Estimate> {
  const present: (readonly [Panel, number])[] = [];
  for (const [code, quantity] of Object.entries(quantities)) {
    const field = `panels.${code}`;
    const panel = system.panels.find((item) => item.code === code);
    if (panel === undefined) return unknownPanel(system, code, field);
    if (!Number.isSafeInteger(quantity) || quantity < 0) {
      return refuse(
        'quantity-not-whole',
        `The quantity of ${code} is ${quantity}; it must be a whole number of zero or more.`,
        { field },
      );
    }
    if (quantity > 0) present.push([panel, quantity]);
  }
  const highestNm = Math.max(0, ...present.map(([panel]) => panel.heightNm));
  const taken: Taken[] = [];
  const findings: Finding[] = [];
  for (const [panel, quantity] of present) {
    taken.push({ component: panel.code, rule: 'panel', count: quantity, where: 'as counted' });
    for (const [side, lengthNm] of [
      ['height', panel.heightNm],
      ['width', panel.widthNm],
    ] as const) {
      if (side === 'width' && panel.heightNm >= highestNm) continue;
      const found = locksOfSide(system, panel.code, side, lengthNm);
      findings.push(...found.findings);
      const where = `${panel.code}: ${found.count} for its ${side} of ${shown(lengthNm)}, ${quantity} times`;
      if (system.rules.locks === undefined) continue;
      taken.push({
        component: system.rules.locks.component,
        rule: 'locks',
        count: found.count * quantity,
        where,
      });
    }
  }
  const lines = takeOffLines(system, taken);
  const areaNm2 = present.reduce(
    (sum, [panel, quantity]) => sum + rectangleNm2(panel.widthNm, panel.heightNm) * BigInt(quantity),
    0n,
  );
  return answer({
    lines,
    findings: [...findings, ...weightless({ panels: [] }, lines), ...notTakenOff(system)],
    areaNm2,
    weightGrams: totalGrams(lines),
  });
}

function locksOfSide(
  { rules }: PanelSystem,
  code: string,
  side: string,
  lengthNm: number,
): { readonly count: number; readonly findings: readonly Finding[] } {
  const table = rules.locks;
  if (table === undefined) return { count: 0, findings: [] };
  const { bands, minimumStretchNm = 0 } = table;
  const kind = side === 'height' ? 'vertical' : 'horizontal';
  const joint = { kind, lengthNm, xNm: 0, yNm: 0 } as const;
  const found = locksOfJoint(joint, { rule: 'locks', bands, minimumStretchNm }, (place) =>
    ruleSource(rules, place),
  );
  return {
    count: found.count,
    findings: found.findings.map((finding) => ({ ...finding, where: `${side} of ${code}` })),
  };
}

function notTakenOff({ rules }: PanelSystem): readonly Finding[] {
  const what = rules.locks === undefined ? 'Nothing but panels' : 'Nothing but panels and their locks';
  const message = `${what} is taken off: this is an estimate from panel sizes alone, without a design.`;
  return [{ rule: 'estimate', severity: 'note', message }];
}
