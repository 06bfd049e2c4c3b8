// A gang small enough to check by eye. Lengths are inches here, nanometres outside.
import { inchNm } from '../../../core/units/length.ts';
import type { DesignDetail } from '../../../renderer/screens/designs/design-shapes.ts';

const at = (x: number, y: number) => ({ xNm: x * inchNm, yNm: y * inchNm });
const size = (width: number, height: number) => ({ widthNm: width * inchNm, heightNm: height * inchNm });

/** Two panels 36 in x 108 in, a filler of 6 in, one panel on its side 78 in x 24 in above all three. */
export const sample: DesignDetail = {
  summary: {
    code: 'G1',
    name: 'Sample gang',
    system: 'S',
    revision: '1',
    hand: 'symmetrical',
    ...size(78, 132),
    areaM2: 6.64,
    weightGrams: 500_000,
    pieces: 12,
    stops: 1,
    cautions: 1,
    turns: 0,
  },
  ruleVersion: 1,
  assembleH: 3,
  breakDownH: 2,
  edges: { left: 'open', right: 'next-gang' },
  panels: [
    { panel: 'P9', ...at(0, 0), ...size(36, 108), onSide: false },
    { panel: 'P9', ...at(42, 0), ...size(36, 108), onSide: false },
    { panel: 'P2', ...at(0, 108), ...size(78, 24), onSide: true },
  ],
  fillers: [{ ...at(36, 0), ...size(6, 108) }],
  joints: [
    { kind: 'filler', ...at(36, 0), lengthNm: 108 * inchNm, locks: 4 },
    { kind: 'horizontal', ...at(0, 108), lengthNm: 36 * inchNm, locks: 2 },
    { kind: 'horizontal', ...at(42, 108), lengthNm: 36 * inchNm, locks: 2 },
  ],
  rails: [
    {
      component: 'R6',
      direction: 'upright',
      ...at(0, 72),
      lengthNm: 60 * inchNm,
      bolts: 2,
      boltPlaces: [at(0, 90), at(0, 120)],
      neededFor: 'both',
    },
    {
      component: 'R6',
      direction: 'upright',
      ...at(78, 72),
      lengthNm: 60 * inchNm,
      bolts: 2,
      boltPlaces: [at(78, 90), at(78, 120)],
      neededFor: 'both',
    },
  ],
  hooks: [
    { ...at(20, 132), loadGrams: 260_000 },
    { ...at(60, 132), loadGrams: 240_000 },
  ],
  hookPlaces: [at(20, 132), at(60, 132)],
  railMoves: [],
  brackets: [],
  braces: [],
  permittedPressure: null,
  holes: [at(6, 12), at(30, 12)],
  centreOfGravity: at(39, 60),
  lines: [
    { component: 'P9', name: 'Panel 9', kind: 'panel', quantity: 2, weightGrams: 300_000, because: [] },
    {
      component: 'AL',
      name: 'Adjustable lock',
      kind: 'adjustable-lock',
      quantity: 4,
      weightGrams: 10_000,
      because: [{ rule: 'fillerLocks', count: 4, where: at(36, 0) }],
    },
    {
      component: 'LK',
      name: 'Lock',
      kind: 'lock',
      quantity: 4,
      weightGrams: 10_000,
      because: [
        { rule: 'locks', count: 2, where: at(0, 108) },
        { rule: 'locks', count: 2, where: at(42, 108) },
      ],
    },
    {
      component: 'R6',
      name: 'Rail',
      kind: 'rail',
      quantity: 2,
      weightGrams: 20_000,
      because: [
        { rule: 'rails', count: 1, where: at(0, 72) },
        { rule: 'rails', count: 1, where: at(78, 72) },
      ],
    },
    {
      component: 'RB',
      name: 'Rail bolt',
      kind: 'rail-bolt',
      quantity: 4,
      weightGrams: 4_000,
      because: [
        { rule: 'rails.bolt', count: 2, where: at(0, 72) },
        { rule: 'rails.bolt', count: 2, where: at(78, 72) },
      ],
    },
    {
      component: 'HK',
      name: 'Hook',
      kind: 'hook',
      quantity: 2,
      weightGrams: 20_000,
      because: [{ rule: 'hooks', count: 2, where: 'weight 480 kg' }],
    },
  ],
  findings: [
    { rule: 'hooks', severity: 'note', message: 'a note' },
    { rule: 'gap', severity: 'caution', message: 'a caution', where: at(0, 108) },
    { rule: 'overlap', severity: 'stop', message: 'a stop', where: at(0, 108) },
  ],
  ...size(78, 132),
  areaM2: 6.64,
  weightGrams: 500_000,
  geometry: {
    panels: [
      { panel: 'P9', ...at(0, 0), onSide: false },
      { panel: 'P9', ...at(42, 0), onSide: false },
      { panel: 'P2', ...at(0, 108), onSide: true },
    ],
    fillers: [{ ...at(36, 0), ...size(6, 108) }],
    edges: { left: 'open', right: 'next-gang' },
    equalised: false,
  },
  origin: at(0, 0),
  revisions: 1,
  savedWithRuleVersion: 1,
  rowText: { us: null, metric: null },
  symmetrical: false,
  sameAs: [],
  mirrorFindings: [],
  turns: [],
};
