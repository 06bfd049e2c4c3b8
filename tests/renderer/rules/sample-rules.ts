// Rule tables with every key that there is, and a small catalogue. Figures are invented.
import type { RuleTables } from '../../../core/catalogue/rules.ts';
import { footNm, inchNm } from '../../../core/units/length.ts';
import { catalogueRow } from '../../../renderer/screens/rules/catalogue-draft.ts';
import { draftOfRules, type RulesDraft } from '../../../renderer/screens/rules/rules-draft.ts';
import type { BookComponent } from '../../../renderer/screens/rules/rules-shapes.ts';

const rails = {
  across: 'vertical-joints',
  cover: 'full-length',
  maximumAverageSpacingNm: 66 * inchNm,
  lengths: [
    { gangUpToNm: 10 * footNm, minimumNm: 6 * footNm },
    { gangUpToNm: 14 * footNm, minimumNm: 8 * footNm },
  ],
  bolt: 'RB',
  boltsPerPanelCrossed: 1,
  boltClearanceNm: 6 * inchNm,
  reachCrossMember: true,
  mergeMeeting: false,
} as const;

export const fullRules: RuleTables = {
  locks: {
    component: 'LK',
    bands: [
      { upToNm: 20 * inchNm, count: 1 },
      { upToNm: 50 * inchNm, count: 2 },
      { upToNm: 78 * inchNm, count: 3 },
    ],
    minimumStretchNm: 3 * inchNm,
    extra: { 'inside-corner': 1, 'stop-end': 2 },
  },
  fillerLocks: {
    component: 'LKA',
    maximumWidthNm: 7.5 * inchNm,
    bands: [{ upToNm: 40 * inchNm, count: 2 }],
  },
  rails: { ...rails, lengths: [...rails.lengths], neededFor: 'picking' },
  placingRails: { ...rails, lengths: [...rails.lengths], across: 'horizontal-joints', cover: 'each-joint' },
  hooks: {
    component: 'LH',
    capacityGrams: 566_990,
    ratedFor: 'sling-tension',
    minimum: 2,
    minimumAngleDeg: 52.5,
    maximumHeightNm: 16 * footNm,
    places: ['panel-joint', 'top-member'],
  },
  onSide: { narrowerThanNm: 30 * inchNm, onlyAt: ['top', 'bottom'] },
  brackets: {
    component: 'WB',
    maximumSpacingNm: 7 * footNm,
    atEachEnd: true,
    platform: { planksWide: 2, post: 'GP', postsPerBracket: 1, guardrailRows: 2 },
  },
  braces: { component: 'BR', maximumSpacingNm: 8 * footNm, atEachEnd: false, shoe: 'SH', sides: 'both' },
  ties: { holes: true },
  stopEnds: { backing: 'PK', backingSpacingNm: 2 * footNm, hoursPerM2: 1.25 },
  closures: { backing: 'PK', backingSpacingNm: 2 * footNm, hoursPerM2: 2 },
  sources: {
    'hooks.capacityKg': 'sheet 6 (invented)',
    'locks.extra.stop-end': 'sheet 2 (invented)',
    'locks.bands[0]': 'sheet 2 (invented)',
    'locks.bands[2]': 'sheet 3 (invented)',
    'rails.lengths[0]': 'sheet 4 (invented)',
    'rails.lengths[1]': 'sheet 4 (invented)',
    'rails.lengths': 'sheet 4 (invented)',
    brackets: 'sheet 8 (invented)',
  },
};

function component(
  code: string,
  kind: BookComponent['kind'],
  more: Partial<BookComponent> = {},
): BookComponent {
  return {
    code,
    name: `${kind} ${code}`,
    kind,
    weightGrams: 5000,
    system: null,
    hirePerDayCents: 4,
    regangPerPieceH: 0.01,
    remark: null,
    ...more,
  };
}

const panel = { system: 'OMB', weightGrams: 90_718, heightNm: 8 * footNm } as const;

export const components: readonly BookComponent[] = [
  component('BR', 'brace'),
  component('GP', 'post'),
  component('GR', 'guardrail', { lengthNm: 10 * footNm }),
  component('LH', 'hook'),
  component('LK', 'lock'),
  component('LKA', 'adjustable-lock'),
  component('P24', 'panel', { ...panel, widthNm: 2 * footNm }),
  component('P36', 'panel', {
    ...panel,
    widthNm: 3 * footNm,
    crossMembersNm: [6 * inchNm, 4 * footNm],
    tieHolesNm: [[18 * inchNm, 2 * footNm]],
    pressurePa: 60_000,
    pressureOnSidePa: 40_000,
  }),
  component('PK', 'plank', { lengthNm: 10 * footNm }),
  component('R10', 'stiffening-rail', { lengthNm: 10 * footNm }),
  component('RB', 'rail-bolt'),
  component('SH', 'brace-shoe'),
  component('WB', 'bracket'),
];

export function draftOf(rules: RuleTables): RulesDraft {
  return {
    system: 'OMB',
    systemName: 'Sample walls',
    ...draftOfRules(rules, components.length),
    catalogue: components.map((each, index) => catalogueRow(each, index)),
  };
}
