// Everything that hangs on the crane, line by line, and where each figure is from: the catalogue, an entry, or
// an allowance. A line whose figure is missing stays in the list and says so.
import { never } from '../answer.ts';
import { type ComponentKind, componentKinds } from '../catalogue/component.ts';
import type { TakeOff } from '../gang/take-off.ts';
import { type Ratio, roundHalfAway } from '../units/exact.ts';
import type { Crane, PickSetup } from './setup.ts';
import { typedRatio } from './sling.ts';

export type WeightGroup =
  | 'panels'
  | 'hardware'
  | 'platform'
  | 'timber'
  | 'concrete'
  | 'hooks'
  | 'slings'
  | 'gear'
  | 'crane';

export interface WeightLine {
  readonly group: WeightGroup;
  readonly name: string;
  /** The component and its pieces, where the line is one of the take-off. */
  readonly component: string | null;
  readonly quantity: number | null;
  readonly weightGrams: number;
  readonly basis: 'catalogue' | 'entered' | 'allowance' | 'not-entered';
}

export interface PickWeights {
  readonly lines: readonly WeightLine[];
  /** The gang without its hooks, as its rule tables weigh it. */
  readonly gangGrams: number;
  /** What the hooks carry: the gang with the concrete left on it, exactly. */
  readonly onHooks: Ratio;
  /** What the crane carries: that, the hooks, the rigging and what always hangs on the crane. */
  readonly onCrane: Ratio;
}

export function pickWeights(takeOff: TakeOff, setup: PickSetup, crane: Crane | null): PickWeights {
  const pieces = takeOff.lines.map((line): WeightLine => ({
    group: groupOf(componentKinds.find((kind) => kind === line.kind) ?? 'other'),
    name: line.name,
    component: line.component,
    quantity: line.quantity,
    weightGrams: line.weightGrams,
    basis: 'catalogue',
  }));
  const gang = takeOff.weightGrams;
  const hooks = sumOf(pieces.filter((line) => line.group === 'hooks'));
  const share = typedRatio(setup.concreteLeftOn);
  const onHooks = { over: BigInt(gang) * (share.under + share.over), under: share.under };
  const clinging = Number(roundHalfAway(BigInt(gang) * share.over, share.under));
  const gear = setup.equalisingGear;
  const above = setup.slingsGrams + (gear?.weightGrams ?? 0) + (crane?.deductGrams ?? 0);
  const timber = pieces.some((line) => line.group === 'timber');
  const lines = [
    ...groups.flatMap((group) => pieces.filter((line) => line.group === group)),
    ...(takeOff.fillers.length > 0 && !timber ? [entry('timber', 'Fillers', 0)] : []),
    { ...entry('concrete', 'Concrete left on', clinging), basis: 'allowance' as const },
    ...pieces.filter((line) => line.group === 'hooks'),
    entry('slings', 'Slings and shackles', setup.slingsGrams),
    ...(gear === null ? [] : [entry('gear', gear.name, gear.weightGrams)]),
    ...(crane === null || crane.deductGrams === 0
      ? []
      : [entry('crane', `Always on ${crane.name}`, crane.deductGrams)]),
  ];
  const onCrane = { over: onHooks.over + BigInt(hooks + above) * onHooks.under, under: onHooks.under };
  return { lines, gangGrams: gang, onHooks, onCrane };
}

const groups: readonly WeightGroup[] = ['panels', 'hardware', 'platform', 'timber'];

function entry(group: WeightGroup, name: string, weightGrams: number): WeightLine {
  const basis = weightGrams === 0 ? 'not-entered' : 'entered';
  return { group, name, component: null, quantity: null, weightGrams, basis };
}

function sumOf(lines: readonly WeightLine[]): number {
  return lines.reduce((sum, line) => sum + line.weightGrams, 0);
}

function groupOf(kind: ComponentKind): WeightGroup {
  switch (kind) {
    case 'panel':
      return 'panels';
    case 'bracket':
    case 'plank':
    case 'post':
    case 'guardrail':
      return 'platform';
    case 'filler':
    case 'closure':
    case 'stop-end':
      return 'timber';
    case 'hook':
      return 'hooks';
    case 'lock':
    case 'adjustable-lock':
    case 'stiffening-rail':
    case 'rail-bolt':
    case 'brace':
    case 'brace-shoe':
    case 'tie':
    case 'inside-corner':
    case 'outside-corner':
    case 'other':
      return 'hardware';
    default:
      return never(kind);
  }
}
