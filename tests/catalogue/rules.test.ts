// Rule tables are checked when they are saved: one mistake a row, its code and its place. Each code at least once.
import { describe, expect, test } from 'vitest';
import { checkRules, rulesProblems } from '../../core/catalogue/check-rules.ts';
import { type Component, componentKinds, readComponentKind } from '../../core/catalogue/component.ts';
import { readRuleTables, type RuleTables, ruleSource } from '../../core/catalogue/rules.ts';
import { catalogueProblems, panelSystem } from '../../core/catalogue/system.ts';

const mm = 1_000_000;
function item(code: string, kind: Component['kind'], more: Partial<Component> = {}): Component {
  return { code, name: code, kind, weightGrams: 1000, ...more };
}
const catalogue = [
  item('P', 'panel', { widthNm: 900 * mm, heightNm: 2700 * mm }),
  item('LK', 'lock'),
  item('AL', 'adjustable-lock'),
  item('R', 'stiffening-rail', { lengthNm: 1000 * mm }),
  item('RB', 'rail-bolt'),
  item('HK', 'hook'),
  item('WB', 'bracket'),
  item('BR', 'brace'),
  item('BS', 'brace-shoe'),
  item('OWN', 'other'),
];
const good = {
  locks: {
    component: 'LK',
    bands: [
      { upToNm: 450 * mm, count: 1 },
      { upToNm: 1200 * mm, count: 2 },
    ],
  },
  fillerLocks: { component: 'AL', maximumWidthNm: 150 * mm },
  rails: {
    across: 'horizontal-joints',
    cover: 'each-joint',
    maximumAverageSpacingNm: 1800 * mm,
    lengths: [
      { gangUpToNm: 4000 * mm, minimumNm: 900 * mm },
      { gangUpToNm: 9000 * mm, minimumNm: 1800 * mm },
    ],
    bolt: 'RB',
  },
  hooks: {
    component: 'HK',
    capacityGrams: 500_000,
    ratedFor: 'sling-tension',
    minimum: 2,
    minimumAngleDeg: 60,
  },
  onSide: { narrowerThanNm: 900 * mm, onlyAt: ['top', 'bottom'] },
  brackets: { component: 'WB', maximumSpacingNm: 2400 * mm },
  braces: { component: 'BR', maximumSpacingNm: 2400 * mm, shoe: 'BS' },
  ties: { holes: true },
  sources: { 'hooks.capacityKg': 'an invented sheet' },
} satisfies RuleTables;

function read(value: unknown): unknown {
  const tables = readRuleTables(value);
  return tables.ok ? 'taken' : [tables.error.code, tables.error.field];
}

function counting(count: number): unknown {
  return { locks: { component: 'LK', bands: [{ upToNm: 1, count }] } };
}

describe('checking rule tables', () => {
  test('tables that make sense are answered as they are', () => {
    expect(checkRules(good, catalogue)).toEqual({ ok: true, value: good });
    expect(checkRules({}, [])).toEqual({ ok: true, value: {} });
  });

  const [first, second] = good.locks.bands;
  const [low, high] = good.rails.lengths;
  const broken: readonly (readonly [string, RuleTables, string, string])[] = [
    ['bands that go down', { locks: { component: 'LK', bands: [second, first].flatMap((band) => band ?? []) } }, 'rule-bands-not-rising', 'locks.bands[1].upTo'],
    ['bands that repeat', { locks: { component: 'LK', bands: [first, first].flatMap((band) => band ?? []) } }, 'rule-bands-not-rising', 'locks.bands[1].upTo'],
    ['a table without rows', { locks: { component: 'LK', bands: [] } }, 'rule-table-empty', 'locks.bands'],
    ['a band up to zero', { locks: { component: 'LK', bands: [{ upToNm: 0, count: 1 }] } }, 'rule-number-not-positive', 'locks.bands[0].upTo'],
    ['a negative minimum stretch', { locks: { ...good.locks, minimumStretchNm: -1 } }, 'rule-number-negative', 'locks.minimumStretch'],
    ['fillers without any bands', { fillerLocks: good.fillerLocks }, 'rule-bands-missing', 'fillerLocks.bands'],
    ['a filler width of zero', { ...good, fillerLocks: { component: 'AL', maximumWidthNm: 0 } }, 'rule-number-not-positive', 'fillerLocks.maximumWidth'],
    ['rails zero apart', { rails: { ...good.rails, maximumAverageSpacingNm: 0 } }, 'rule-number-not-positive', 'rails.maximumAverageSpacing'],
    ['heights that go down', { rails: { ...good.rails, lengths: [high, low].flatMap((row) => row ?? []) } }, 'rule-bands-not-rising', 'rails.lengths[1].gangUpTo'],
    ['a negative rail', { rails: { ...good.rails, lengths: [{ gangUpToNm: 1, minimumNm: -1 }] } }, 'rule-number-negative', 'rails.lengths[0].minimum'],
    ['a negative clearance', { rails: { ...good.rails, boltClearanceNm: -1 } }, 'rule-number-negative', 'rails.boltClearance'],
    ['a hook that carries nothing', { hooks: { ...good.hooks, capacityGrams: 0 } }, 'rule-number-not-positive', 'hooks.capacityKg'],
    ['a sling without its angle', { hooks: { component: 'HK', capacityGrams: 1, ratedFor: 'sling-tension', minimum: 2 } }, 'rule-angle-missing', 'hooks.minimumAngleDeg'],
    ['a sling at 0 degrees', { hooks: { ...good.hooks, minimumAngleDeg: 0 } }, 'rule-angle-out-of-range', 'hooks.minimumAngleDeg'],
    ['a sling at 91 degrees', { hooks: { ...good.hooks, minimumAngleDeg: 91 } }, 'rule-angle-out-of-range', 'hooks.minimumAngleDeg'],
    ['a sling so flat that a hook carries nothing', { hooks: { ...good.hooks, ratedFor: 'sling-tension', minimumAngleDeg: 1e-9 } }, 'rule-angle-out-of-range', 'hooks.minimumAngleDeg'],
    ['a pick of no height', { hooks: { ...good.hooks, maximumHeightNm: 0 } }, 'rule-number-not-positive', 'hooks.maximumHeight'],
    ['on its side nowhere', { onSide: { narrowerThanNm: 1, onlyAt: [] } }, 'rule-table-empty', 'onSide.onlyAt'],
    ['a negative width on its side', { onSide: { narrowerThanNm: -1, onlyAt: ['top'] } }, 'rule-number-negative', 'onSide.narrowerThan'],
    ['brackets zero apart', { brackets: { component: 'WB', maximumSpacingNm: 0 } }, 'rule-number-not-positive', 'brackets.maximumSpacing'],
    ['braces a negative distance apart', { braces: { component: 'BR', maximumSpacingNm: -5 } }, 'rule-number-not-positive', 'braces.maximumSpacing'],
    ['a lock that is not in the catalogue', { locks: { ...good.locks, component: 'LOK' } }, 'rule-component-unknown', 'locks.component'],
    ['a lock that is a hook', { locks: { ...good.locks, component: 'HK' } }, 'rule-component-kind', 'locks.component'],
    ['a hook that is a panel', { hooks: { ...good.hooks, component: 'P' } }, 'rule-component-kind', 'hooks.component'],
    ['a bolt that is a rail', { rails: { ...good.rails, bolt: 'R' } }, 'rule-component-kind', 'rails.bolt'],
    ['a shoe that is a brace', { braces: { ...good.braces, shoe: 'BR' } }, 'rule-component-kind', 'braces.shoe'],
    ['placing rails zero apart', { placingRails: { ...good.rails, maximumAverageSpacingNm: 0 } }, 'rule-number-not-positive', 'placingRails.maximumAverageSpacing'],
    ['a bolt of placing rails that is unknown', { placingRails: { ...good.rails, bolt: 'RX' } }, 'rule-component-unknown', 'placingRails.bolt'],
    ['two tables of rails for placing', { rails: { ...good.rails, neededFor: 'placing' }, placingRails: good.rails }, 'rule-rails-twice', 'rails.neededFor'],
    ['a post that is a hook', { brackets: { ...good.brackets, platform: { planksWide: 0, post: 'HK' } } }, 'rule-component-kind', 'brackets.platform.post'],
    ['backing of closures zero apart', { closures: { hoursPerM2: 1, backing: 'OWN', backingSpacingNm: 0 } }, 'rule-number-not-positive', 'closures.backingSpacing'],
    ['backing of stop-ends with no spacing', { stopEnds: { hoursPerM2: 1, backing: 'OWN' } }, 'rule-spacing-missing', 'stopEnds.backingSpacing'],
    ['backing that is a hook', { stopEnds: { hoursPerM2: 1, backing: 'HK', backingSpacingNm: 1 } }, 'rule-component-kind', 'stopEnds.backing'],
    ['a source of nothing', { sources: { 'hoks.capacityKg': 'sheet 3' } }, 'rule-source-stray', 'sources.hoks.capacityKg'],
  ]; // prettier-ignore
  test.each(broken)('%s: refused', (_, rules, code, field) => {
    const checked = checkRules(rules, catalogue);
    expect(checked.ok ? 'taken' : [checked.error.code, checked.error.field]).toEqual([code, field]);
  });

  test('a rail without a length is refused where rails are chosen, a component of no known kind is taken', () => {
    const bare = [...catalogue, item('R9', 'stiffening-rail')];
    const checked = checkRules(good, bare);
    expect(checked.ok ? '' : checked.error.code).toBe('rail-without-length');
    expect(checkRules({ locks: { ...good.locks, component: 'OWN' } }, catalogue).ok).toBe(true);
  });

  test('stored tables are read back; a count of one and a half, a negative one and an unknown key are refused', () => {
    expect(readRuleTables(structuredClone(good))).toEqual({ ok: true, value: good });
    expect(read(counting(1.5))).toEqual(['rules-unreadable', 'locks.bands.0.count']);
    expect(read(counting(-1))).toEqual(['rules-unreadable', 'locks.bands.0.count']);
    expect(read({ lockz: {} })).toEqual(['rules-unreadable', '']);
  });

  test('the source of a number is its own, else its table’s, else default', () => {
    const rules = { ...good, sources: { hooks: 'sheet 1', 'hooks.minimum': 'sheet 2' } };
    expect(
      ['hooks.minimum', 'hooks.capacityKg', 'locks.bands'].map((place) => ruleSource(rules, place)),
    ).toEqual(['sheet 2', 'sheet 1', 'default']);
  });
});

describe('saving rule tables', () => {
  const saved = [...catalogue, item('R18', 'stiffening-rail', { lengthNm: 1800 * mm }), item('GP', 'post')];
  const [first, second] = [
    { upToNm: 450 * mm, count: 1 },
    { upToNm: 1200 * mm, count: 2 },
  ];
  const found = (rules: RuleTables, components = saved): readonly (readonly [string, string | undefined])[] =>
    rulesProblems(rules, components).map(({ code, field }) => [code, field]);
  const locks = (...bands: (typeof first)[]): RuleTables => ({ locks: { component: 'LK', bands } });
  const rails = (more: Partial<typeof good.rails>): RuleTables => ({ rails: { ...good.rails, ...more } });
  const platform = (more: object): RuleTables => ({
    brackets: { ...good.brackets, platform: { planksWide: 0, ...more } },
  });

  test('good tables have no problem', () => {
    expect(found(good)).toEqual([]);
    expect(found({})).toEqual([]);
  });

  test('all problems are answered, each at its place, and checkRules is the first of those no take-off can use', () => {
    const rules: RuleTables = {
      ...locks(second, first),
      hooks: { ...good.hooks, component: 'HX', capacityGrams: 0 },
      brackets: { component: 'WB', maximumSpacingNm: 0 },
      sources: { gizmo: 'sheet 1' },
    };
    expect(found(rules)).toEqual([
      ['rule-bands-not-rising', 'locks.bands[1].upTo'],
      ['rule-number-not-positive', 'hooks.capacityKg'],
      ['rule-number-not-positive', 'brackets.maximumSpacing'],
      ['rule-component-unknown', 'hooks.component'],
      ['rule-source-stray', 'sources.gizmo'],
      ['rule-count-falling', 'locks.bands[1].count'],
    ]);
  });

  const gaps: readonly (readonly [string, RuleTables, string, string])[] = [
    ['a row without locks', locks({ ...first, count: 0 }, second), 'rule-gap', 'locks.bands[0].count'],
    ['counts that go down', locks({ ...first, count: 3 }, second), 'rule-count-falling', 'locks.bands[1].count'],
    ['a row under the least stretch', { locks: { component: 'LK', bands: [first, second], minimumStretchNm: 451 * mm } }, 'rule-row-not-reached', 'locks.bands[0].upTo'],
    ['a row of fillers without locks', { ...good, fillerLocks: { ...good.fillerLocks, bands: [{ ...first, count: 0 }] } }, 'rule-gap', 'fillerLocks.bands[0].count'],
    ['no rail long enough for a height', rails({ lengths: [{ gangUpToNm: 4000 * mm, minimumNm: 1801 * mm }] }), 'rule-gap', 'rails.lengths[0].minimum'],
    ['shorter rails for higher gangs', rails({ lengths: [{ gangUpToNm: 4000 * mm, minimumNm: 1800 * mm }, { gangUpToNm: 9000 * mm, minimumNm: 900 * mm }] }), 'rule-minimum-falling', 'rails.lengths[1].minimum'],
    ['a rail shorter than its bolts ask for', rails({ boltClearanceNm: 501 * mm } as object), 'rule-rail-shorter-than-clearance', 'rails.lengths[0].minimum'],
    ['a placing rail that is not there', { placingRails: { ...good.rails, lengths: [{ gangUpToNm: 4000 * mm, minimumNm: 1801 * mm }] } }, 'rule-gap', 'placingRails.lengths[0].minimum'],
    ['planks that are not there', platform({ planksWide: 2 }), 'rule-gap', 'brackets.platform.planksWide'],
    ['guardrails that are not there', platform({ guardrailRows: 2 }), 'rule-gap', 'brackets.platform.guardrailRows'],
    ['posts of no name', platform({ postsPerBracket: 1 }), 'rule-gap', 'brackets.platform.post'],
    ['a source of a number that is not there', { ...good, sources: { 'locks.minimumStretch': 'sheet 1' } }, 'rule-source-stray', 'sources.locks.minimumStretch'],
    ['a source of a row that is not there', { ...good, sources: { 'locks.bands[2]': 'sheet 1' } }, 'rule-source-stray', 'sources.locks.bands[2]'],
  ]; // prettier-ignore
  test.each(gaps)('%s: told, though a take-off can be made', (_, rules, code, field) => {
    expect(found(rules)).toEqual([[code, field]]);
    expect(checkRules(rules, saved).ok).toBe(true);
  });

  test('sources of every kind of number that is there are taken', () => {
    const sources = Object.fromEntries(
      ['locks', 'locks.bands', 'locks.bands[1]', 'locks.bands[1].upTo', 'hooks.capacityKg', 'rails.lengths[0].minimum', 'rails.maximumAverageSpacing', 'braces.shoe'].map((place) => [place, 'sheet 1']),
    ); // prettier-ignore
    expect(found({ ...good, sources })).toEqual([]);
  });
});

describe('a panel system', () => {
  const size = { widthNm: 900 * mm, heightNm: 2700 * mm };
  const broken: readonly (readonly [string, readonly Component[], string])[] = [
    ['a code twice', [item('A', 'lock'), item('A', 'hook')], 'code-repeated'],
    ['a negative weight', [item('A', 'lock', { weightGrams: -1 })], 'weight-negative'],
    ['a panel without a height', [item('A', 'panel', { widthNm: 1 })], 'panel-without-size'],
    ['a panel of negative width', [item('A', 'panel', { ...size, widthNm: -1 })], 'panel-without-size'],
    [
      'a cross member over the top',
      [item('A', 'panel', { ...size, crossMembersNm: [2701 * mm] })],
      'cross-member-outside',
    ],
    [
      'a permitted pressure of zero',
      [item('A', 'panel', { ...size, pressureOnSidePa: 0 })],
      'pressure-not-positive',
    ],
    [
      'a tie hole beside the sheet',
      [item('A', 'panel', { ...size, tieHolesNm: [[901 * mm, 0]] })],
      'tie-hole-outside',
    ],
  ];
  test.each(broken)('%s is refused with its code named', (_, components, code) => {
    const made = panelSystem(components, {});
    expect(made.ok ? 'taken' : made.error.code).toBe(code);
    expect(made.ok ? '' : made.error.message).toContain('A');
  });

  test('everything wrong with a catalogue is told at once', () => {
    const wrong = [
      item('A', 'lock', { weightGrams: -1 }),
      item('B', 'panel', { ...size, pressurePa: -1, crossMembersNm: [-1] }),
      item('A', 'hook'),
    ];
    expect(catalogueProblems(wrong).map(({ code, field }) => [code, field])).toEqual([
      ['weight-negative', 'components.A'],
      ['pressure-not-positive', 'components.B.pressure'],
      ['cross-member-outside', 'components.B.crossMembers'],
      ['code-repeated', 'components.A'],
    ]);
  });

  test('panels and other components are told apart in catalogue order', () => {
    const made = panelSystem(catalogue, good);
    expect(made.ok && made.value.panels.map(({ code }) => code)).toEqual(['P']);
    expect(made.ok && made.value.components.map(({ code }) => code)).toEqual(
      catalogue.slice(1).map(({ code }) => code),
    );
  });
});

describe('words for kinds', () => {
  test('every kind reads itself, rail and bolt and shoe read the longer word, others nothing', () => {
    for (const kind of componentKinds) expect(readComponentKind(kind)).toBe(kind);
    expect(
      ['rail', 'Rail Bolt', 'adjustableLock', ' shoe ', 'guardrail', 'gizmo'].map(readComponentKind),
    ).toEqual(['stiffening-rail', 'rail-bolt', 'adjustable-lock', 'brace-shoe', 'guardrail', undefined]);
  });
});
