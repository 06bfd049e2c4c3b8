// Random rule tables with everything that a yard may do without: rails that reach cross members, rails merged where
// they meet, rails for placing, platforms, places of hooks, permitted pressures.
import type { Component } from '../../core/catalogue/component.ts';
import type { RailTable, RuleTables } from '../../core/catalogue/rules.ts';
import { type PanelSystem, panelSystem } from '../../core/catalogue/system.ts';
import type { DesignGeometry } from '../../core/gang/design.ts';
import { type Dice, randomDesign, randomSystem } from './random-designs.ts';

const mm = 1_000_000;

/** A random system with another table of rails put in, of the kinds that the contract's tables have not. */
export function furtherSystem(dice: Dice): PanelSystem {
  const plain = randomSystem(dice);
  const pieces = (kind: 'plank' | 'guardrail'): readonly Component[] =>
    Array.from({ length: 1 + dice.roll(3) }, (_, index) => ({
      code: `${kind}${index}`,
      name: kind,
      kind,
      weightGrams: 20_000,
      lengthNm: dice.of([900, 1500, 2000, 3000]) * mm,
    }));
  const memberNm = dice.of([50, 100, 200, 300, 400]) * mm;
  const panels = plain.panels.map((panel) => ({
    ...panel,
    crossMembersNm: [memberNm, panel.heightNm - memberNm].filter(
      (at) => at >= 0 && at <= panel.heightNm && dice.chance(90),
    ),
    ...(dice.chance(90) && { pressurePa: 30_000 + dice.roll(60_000) }),
    ...(dice.chance(90) && { pressureOnSidePa: 20_000 + dice.roll(60_000) }),
  }));
  const post: Component = { code: 'post', name: 'post', kind: 'post', weightGrams: 6000 };
  const more = dice.chance(70) ? [...pieces('plank'), ...pieces('guardrail'), post] : [post];
  const rules: RuleTables = {
    ...plain.rules,
    rails: railTable(dice),
    ...(dice.chance(60) && { placingRails: railTable(dice) }),
    hooks: {
      component: 'hook',
      capacityGrams: 400_000,
      ratedFor: 'gang-weight',
      minimum: 2,
      places: placesOf(dice),
    },
    brackets: {
      component: 'bracket',
      maximumSpacingNm: 1200 * mm,
      atEachEnd: dice.chance(50),
      platform: {
        planksWide: dice.roll(4),
        post: 'post',
        postsPerBracket: dice.roll(3),
        guardrailRows: dice.roll(3),
      },
    },
  };
  const system = panelSystem([...panels, ...plain.components, ...more], rules);
  if (!system.ok) throw new Error(system.error.message);
  return system.value;
}

function railTable(dice: Dice): RailTable {
  return {
    across: dice.of(['horizontal-joints', 'vertical-joints']),
    cover: dice.of(['each-joint', 'each-joint', 'full-length']),
    maximumAverageSpacingNm: dice.of([300, 600, 900]) * mm,
    lengths: [{ gangUpToNm: 60_000 * mm, minimumNm: dice.of([0, 0, 600]) * mm }],
    bolt: 'rail-bolt',
    boltsPerPanelCrossed: 1 + dice.roll(2),
    boltClearanceNm: dice.of([0, 50, 100]) * mm,
    ...(dice.chance(50) && { reachCrossMember: true }),
    ...(dice.chance(50) && { mergeMeeting: true }),
  };
}

function placesOf(dice: Dice): ('panel-joint' | 'cross-member' | 'top-member')[] {
  const all = ['panel-joint', 'cross-member', 'top-member'] as const;
  const some = all.filter(() => dice.chance(70));
  return some.length === 0 ? ['top-member'] : some;
}

export function furtherDesign(dice: Dice, system: PanelSystem): DesignGeometry {
  return { ...randomDesign(dice, system), ...(dice.chance(30) && { braced: dice.chance(50) }) };
}

/** The system with one table of rails and nothing else said of rails. */
export function withRails(system: PanelSystem, rails: RailTable, more: Partial<RailTable> = {}): PanelSystem {
  const { placingRails: _, ...rules } = system.rules;
  return { ...system, rules: { ...rules, rails: { ...rails, ...more } } };
}
