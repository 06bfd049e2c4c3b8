// A panel system with the rules of thumb of the trade: common practice, no source. Only for tests; the demo has
// tables of its own.
import { rulesInput } from '../../core/catalogue/rules-input.ts';
import { systemFromInput, systemInput } from '../../core/catalogue/system-input.ts';
import type { PanelSystem } from '../../core/catalogue/system.ts';
import type { Finding } from '../../core/gang/findings.ts';
import { type DesignInput, designFromInput, designInput } from '../../core/gang/design-input.ts';
import { type TakeOff, takeOff } from '../../core/gang/take-off.ts';
import { lengthReader } from '../../core/units/length-reader.ts';
import type { z } from 'zod';

type Loose<Schema extends z.ZodType> = z.input<Schema>;

export const commonPractice: Loose<typeof systemInput> = {
  panels: [
    panel('P3x9', '3 ft', '9 ft', 120),
    panel('P2x9', '2 ft', '9 ft', 85),
    panel('P3x4', '3 ft', '4 ft', 55),
    panel('P3x6', '3 ft', '6 ft', 80),
    panel('P2x6', '2 ft', '6 ft', 57),
    panel('P1x3', '1 ft', '3 ft', 20),
  ],
  components: [
    { code: 'LK', kind: 'lock', weightKg: 2.2 },
    { code: 'AL', kind: 'adjustable-lock', weightKg: 2.6 },
    { code: 'R6', kind: 'stiffening-rail', weightKg: 27, length: '6 ft' },
    { code: 'R3', kind: 'stiffening-rail', weightKg: 14, length: '3 ft' },
    { code: 'R8', kind: 'stiffening-rail', weightKg: 36, length: '8 ft' },
    { code: 'RB', kind: 'rail-bolt', weightKg: 0.8 },
    { code: 'HK', kind: 'hook', weightKg: 10 },
    { code: 'WB', kind: 'bracket', weightKg: 16 },
    { code: 'BR', kind: 'brace', weightKg: 34 },
    { code: 'BS', kind: 'brace-shoe', weightKg: 5 },
  ],
  rules: {
    locks: {
      component: 'LK',
      bands: [
        { upTo: '1.5 ft', count: 1 },
        { upTo: '4 ft', count: 2 },
        { upTo: '6 ft', count: 3 },
        { upTo: '9 ft', count: 4 },
      ],
    },
    fillerLocks: { component: 'AL', maximumWidth: '6.5 in' },
    rails: {
      across: 'horizontal-joints',
      cover: 'each-joint',
      maximumAverageSpacing: '6 ft',
      lengths: [
        { gangUpTo: '13 ft', minimum: '3 ft' },
        { gangUpTo: '40 ft', minimum: '6 ft' },
      ],
      bolt: 'RB',
      boltsPerPanelCrossed: 1,
      boltClearance: '10.5 in',
    },
    // 1300 lb of gang weight is 589.67 kg in whole grams
    hooks: {
      component: 'HK',
      capacityKg: 589.670_08,
      ratedFor: 'gang-weight',
      minimum: 2,
      minimumAngleDeg: 60,
      maximumHeight: '18 ft',
    },
    onSide: { narrowerThan: '3 ft', onlyAt: ['top', 'bottom'] },
    brackets: { component: 'WB', maximumSpacing: '8 ft', atEachEnd: true },
    braces: { component: 'BR', maximumSpacing: '8 ft', shoe: 'BS' },
    ties: { holes: true },
  },
};

export function panel(
  code: string,
  width: string | number,
  height: string | number,
  weightKg: number,
  more: { crossMembers?: (string | number)[]; tieHoles?: [string | number, string | number][] } = {},
): Loose<typeof systemInput>['panels'][number] {
  return { code, width, height, weightKg, ...more };
}

/** The common-practice system with other rule tables put over its own; null takes a table out. */
export function systemWith(
  rules: { [Name in keyof Loose<typeof rulesInput>]?: Loose<typeof rulesInput>[Name] | null } = {},
  panels = commonPractice.panels,
  components = commonPractice.components,
): PanelSystem {
  const merged = Object.entries({ ...commonPractice.rules, ...rules }).filter(([, table]) => table !== null);
  const input = systemInput.parse({ panels, components, rules: Object.fromEntries(merged) });
  const read = systemFromInput(input, lengthReader(), 'system');
  if (!read.ok) throw new Error(`${read.error.code}: ${read.error.message}`);
  return read.value;
}

/** A design from rows such as ['P3x9', '3 ft', 0] or ['P2x6', 0, '9 ft', 'side']. */
export function designOf(
  rows: readonly (readonly [string, string | number, string | number, 'side'?])[],
  more: Omit<Loose<typeof designInput>, 'panels'> = {},
): ReturnType<typeof designFromInput> {
  const panels = rows.map(([code, x, y, side]) => ({ panel: code, x, y, onSide: side === 'side' }));
  const input: DesignInput = designInput.parse({ panels, ...more });
  const reader = lengthReader();
  const design = designFromInput(input, reader, 'design');
  const refusal = reader.refusal();
  if (refusal !== undefined) throw new Error(refusal.error.message);
  return design;
}

export function taken(system: PanelSystem, design: ReturnType<typeof designOf>): TakeOff {
  const found = takeOff(system, design);
  if (!found.ok) throw new Error(`${found.error.code}: ${found.error.message}`);
  return found.value;
}

/** {LK: 4, P3x9: 2} of the lines of a take-off. */
export function quantities(found: Pick<TakeOff, 'lines'>): Record<string, number> {
  return Object.fromEntries(found.lines.map((line) => [line.component, line.quantity]));
}

export function stops(found: Pick<TakeOff, 'findings'>): readonly string[] {
  return found.findings.filter((finding) => finding.severity === 'stop').map((finding) => finding.rule);
}

/** Severity and place of the findings of one rule. */
export function of(
  { findings }: Pick<TakeOff, 'findings'>,
  rule: string,
): readonly Pick<Finding, 'severity' | 'where'>[] {
  return findings
    .filter((finding) => finding.rule === rule)
    .map(({ severity, where }) => ({ severity, ...(where !== undefined && { where }) }));
}
