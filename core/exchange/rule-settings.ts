// The settings of the rule tables as rows of rules.csv: the words for each, how its value is read, and
// where it goes. One list, so that the file, its documentation and the tables cannot drift apart.
import { edgeKinds } from '../catalogue/edges.ts';
import {
  type Read,
  readCode,
  readDecimal,
  readLength,
  readList,
  readWeight,
  readWhole,
  readWord,
  readYesNo,
} from './cells.ts';

/** What the column `condition` of a setting holds: nothing, a length up to which the row holds, an edge. */
type ConditionKind = 'none' | 'up-to' | 'edge';

export interface RuleSetting {
  readonly table: string;
  readonly setting: string;
  readonly condition: ConditionKind;
  readonly read: Read<unknown>;
  /** The key of the table in the book's rules, and of the setting in it; of a table within it, with a dot. */
  readonly tableKey: string;
  readonly key: string;
  /** The place by which its source is kept, as rule tables write it; null where the value is no number. */
  readonly place: string | null;
}

const length = readLength('zero');
const spacing = readLength('positive');
const number = readWhole(0, 1_000_000);

/** Angles and the like. */
const decimal = readDecimal('zero', 1_000_000);

type Entry = readonly [
  setting: string,
  key: string,
  read: Read<unknown>,
  place?: string,
  condition?: ConditionKind,
];

function table(name: string, tableKey: string, entries: readonly Entry[]): RuleSetting[] {
  return entries.map(([setting, key, read, place, condition = 'none']) => ({
    table: name,
    setting,
    condition,
    read,
    tableKey,
    key,
    place: place === undefined ? null : `${tableKey}.${place}`,
  }));
}

const railEntries: readonly Entry[] = [
  ['across', 'across', readWord(['horizontal-joints', 'vertical-joints'])],
  ['cover', 'cover', readWord(['each-joint', 'full-length'])],
  ['maximum average spacing', 'maximumAverageSpacingNm', spacing, 'maximumAverageSpacing'],
  ['minimum length', 'lengths', length, 'lengths', 'up-to'],
  ['bolt', 'bolt', readCode],
  ['bolts a panel crossed', 'boltsPerPanelCrossed', number, 'boltsPerPanelCrossed'],
  ['bolt clearance', 'boltClearanceNm', length, 'boltClearance'],
  ['reach cross member', 'reachCrossMember', readYesNo],
  ['merge meeting', 'mergeMeeting', readYesNo],
];

const madeUpEntries: readonly Entry[] = [
  ['backing', 'backing', readCode],
  ['backing spacing', 'backingSpacingNm', spacing, 'backingSpacing'],
  ['hours a m2', 'hoursPerM2', decimal, 'hoursPerM2'],
];

export const ruleSettings: readonly RuleSetting[] = [
  ...table('locks', 'locks', [
    ['component', 'component', readCode],
    ['count', 'bands', number, 'bands', 'up-to'],
    ['minimum stretch', 'minimumStretchNm', length, 'minimumStretch'],
    ['extra', 'extra', number, 'extra', 'edge'],
  ]),
  ...table('filler locks', 'fillerLocks', [
    ['component', 'component', readCode],
    ['maximum width', 'maximumWidthNm', spacing, 'maximumWidth'],
    ['count', 'bands', number, 'bands', 'up-to'],
  ]),
  ...table('rails', 'rails', [...railEntries, ['needed for', 'neededFor', readWord(['picking', 'placing'])]]),
  ...table('placing rails', 'placingRails', railEntries),
  ...table('hooks', 'hooks', [
    ['component', 'component', readCode],
    ['capacity', 'capacityGrams', readWeight, 'capacityKg'],
    ['rated for', 'ratedFor', readWord(['sling-tension', 'gang-weight'])],
    ['minimum', 'minimum', number, 'minimum'],
    ['minimum angle', 'minimumAngleDeg', decimal, 'minimumAngleDeg'],
    ['maximum height', 'maximumHeightNm', spacing, 'maximumHeight'],
    ['places', 'places', readList(readWord(['panel-joint', 'cross-member', 'top-member']), 3)],
  ]),
  ...table('on side', 'onSide', [
    ['narrower than', 'narrowerThanNm', length, 'narrowerThan'],
    ['only at', 'onlyAt', readList(readWord(['top', 'bottom']), 2)],
  ]),
  ...table('brackets', 'brackets', [
    ['component', 'component', readCode],
    ['maximum spacing', 'maximumSpacingNm', spacing, 'maximumSpacing'],
    ['at each end', 'atEachEnd', readYesNo],
    ['planks wide', 'platform.planksWide', number, 'platform.planksWide'],
    ['post', 'platform.post', readCode],
    ['posts a bracket', 'platform.postsPerBracket', number, 'platform.postsPerBracket'],
    ['guardrail rows', 'platform.guardrailRows', number, 'platform.guardrailRows'],
  ]),
  ...table('braces', 'braces', [
    ['component', 'component', readCode],
    ['maximum spacing', 'maximumSpacingNm', spacing, 'maximumSpacing'],
    ['at each end', 'atEachEnd', readYesNo],
    ['shoe', 'shoe', readCode],
    ['sides', 'sides', readWord(['one', 'both'])],
  ]),
  ...table('ties', 'ties', [['holes', 'holes', readYesNo]]),
  ...table('stop-ends', 'stopEnds', madeUpEntries),
  ...table('closures', 'closures', madeUpEntries),
];

export const readEdge = readWord(edgeKinds);
export const readUpTo: Read<number> = (text, unit) => spacing(text.replace(/^up\s+to\s+/iu, ''), unit);
