// Random systems and designs from a seed: mixed rows with fillers and spaces, and pieces scattered at each other's
// corners, so that joints are ragged. Nothing overlaps. Small whole millimetres keep coincidences frequent; odd
// nanometres are mixed in so that almost-touching edges happen too.
import type { Component, Panel } from '../../core/catalogue/component.ts';
import { edgeKinds } from '../../core/catalogue/edges.ts';
import type { RuleTables } from '../../core/catalogue/rules.ts';
import { type PanelSystem, panelSystem } from '../../core/catalogue/system.ts';
import type { DesignGeometry } from '../../core/gang/design.ts';

/** A small generator of numbers (mulberry32), so that a seed always makes the same designs. */
export class Dice {
  #state: number;
  constructor(seed: number) {
    this.#state = seed >>> 0;
  }
  /** From 0 to below `sides`. */
  roll(sides: number): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let mixed = this.#state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296) * sides);
  }
  of<T>(items: readonly T[]): T {
    const item = items[this.roll(items.length)];
    if (item === undefined) throw new Error('nothing to choose from');
    return item;
  }
  chance(percent: number): boolean {
    return this.roll(100) < percent;
  }
}

const mm = 1_000_000;
const sizes = [100, 150, 200, 250, 300, 400, 500, 600, 750, 900, 1200, 1500, 2400].map((size) => size * mm);

export function randomSystem(dice: Dice): PanelSystem {
  const panels = Array.from({ length: 3 + dice.roll(5) }, (_, index): Panel => {
    const [widthNm, heightNm] = [dice.of(sizes) + (dice.chance(5) ? 1 : 0), dice.of(sizes)];
    return {
      code: `P${index}`,
      name: `P${index}`,
      kind: 'panel',
      weightGrams: 1 + dice.roll(200_000),
      widthNm,
      heightNm,
      crossMembersNm: dice.chance(50) ? [0, Math.floor(heightNm / 3), heightNm - 10 * mm] : [],
      tieHolesNm: dice.chance(50) ? [[50 * mm, 50 * mm]] : [],
    };
  });
  const rails = Array.from({ length: 1 + dice.roll(5) }, (_, index): Component => {
    const lengthNm = dice.of([300, 600, 900, 1000, 1500, 1800, 2400]) * mm;
    return { code: `R${index}`, name: `R${index}`, kind: 'stiffening-rail', weightGrams: 9000, lengthNm };
  });
  const others = (
    ['lock', 'adjustable-lock', 'rail-bolt', 'hook', 'bracket', 'brace', 'brace-shoe'] as const
  ).map((kind): Component => ({ code: kind, name: kind, kind, weightGrams: 1 + dice.roll(5000) }));
  const system = panelSystem([...panels, ...rails, ...others], randomRules(dice));
  if (!system.ok) throw new Error(system.error.message);
  return system.value;
}

function randomBands(dice: Dice): { upToNm: number; count: number }[] {
  let upToNm = 0;
  return Array.from({ length: 1 + dice.roll(4) }, () => {
    upToNm += dice.of([150, 300, 450, 600, 1200]) * mm;
    return { upToNm, count: dice.roll(5) };
  });
}

function randomRules(dice: Dice): RuleTables {
  return {
    locks: {
      component: 'lock',
      bands: randomBands(dice),
      ...(dice.chance(50) && { minimumStretchNm: dice.of([0, 100, 150, 151]) * mm }),
      extra: Object.fromEntries(edgeKinds.filter(() => dice.chance(50)).map((kind) => [kind, dice.roll(3)])),
    },
    fillerLocks: {
      component: 'adjustable-lock',
      maximumWidthNm: dice.of([50, 100, 150]) * mm,
      ...(dice.chance(50) && { bands: randomBands(dice) }),
    },
    rails: {
      across: dice.of(['horizontal-joints', 'vertical-joints']),
      cover: dice.of(['each-joint', 'full-length']),
      maximumAverageSpacingNm: dice.of([300, 700, 900, 1200, 1800]) * mm,
      lengths: [
        { gangUpToNm: 1500 * mm, minimumNm: 0 },
        { gangUpToNm: 60_000 * mm, minimumNm: dice.of([0, 600, 900]) * mm },
      ],
      bolt: 'rail-bolt',
      boltsPerPanelCrossed: dice.roll(3),
      boltClearanceNm: 200 * mm,
    },
    hooks: {
      component: 'hook',
      capacityGrams: 100_000 + dice.roll(900_000),
      ratedFor: 'gang-weight',
      minimum: dice.roll(4),
    },
    onSide: { narrowerThanNm: 900 * mm, onlyAt: ['top', 'bottom'] },
    brackets: { component: 'bracket', maximumSpacingNm: 1200 * mm, atEachEnd: dice.chance(50) },
    braces: { component: 'brace', maximumSpacingNm: 1800 * mm, shoe: 'brace-shoe' },
    ties: { holes: true },
  };
}

interface Piece {
  readonly xNm: number;
  readonly yNm: number;
  readonly widthNm: number;
  readonly heightNm: number;
  readonly panel?: string;
  readonly onSide?: boolean;
}

export function randomDesign(dice: Dice, system: PanelSystem): DesignGeometry {
  const start = { xNm: dice.of([0, 0, -700, 1300]) * mm, yNm: dice.of([0, 0, 450]) * mm };
  const pieces = dice.chance(50) ? rows(dice, system, start) : scattered(dice, system, start);
  return {
    panels: pieces.flatMap(({ panel, onSide = false, xNm, yNm }) =>
      panel === undefined ? [] : [{ panel, xNm, yNm, onSide }],
    ),
    fillers: pieces.flatMap(({ panel, xNm, yNm, widthNm, heightNm }) =>
      panel === undefined ? [{ xNm, yNm, widthNm, heightNm }] : [],
    ),
    edges: { left: dice.of(edgeKinds), right: dice.of(edgeKinds) },
    equalised: dice.chance(50),
  };
}

function aPanel(dice: Dice, system: PanelSystem, xNm: number, yNm: number): Piece {
  const { code, widthNm, heightNm } = dice.of(system.panels);
  return dice.chance(30)
    ? { panel: code, onSide: true, xNm, yNm, widthNm: heightNm, heightNm: widthNm }
    : { panel: code, onSide: false, xNm, yNm, widthNm, heightNm };
}

function rows(dice: Dice, system: PanelSystem, start: { xNm: number; yNm: number }): readonly Piece[] {
  const pieces: Piece[] = [];
  let { yNm } = start;
  for (let row = 1 + dice.roll(4); row > 0; row--) {
    let xNm = start.xNm + dice.of([0, 0, 0, 100, 900]) * mm;
    let topNm = yNm;
    for (let count = 1 + dice.roll(6); count > 0; count--) {
      const piece = aPanel(dice, system, xNm, yNm);
      pieces.push(piece);
      topNm = Math.max(topNm, yNm + piece.heightNm);
      xNm += piece.widthNm;
      if (count === 1 || !dice.chance(30)) continue;
      const widthNm = dice.of([20, 50, 100, 150, 200]) * mm;
      if (dice.chance(80)) pieces.push({ xNm, yNm, widthNm, heightNm: dice.of([piece.heightNm, 600 * mm]) });
      topNm = Math.max(topNm, yNm + (pieces.at(-1)?.heightNm ?? 0));
      xNm += widthNm;
    }
    yNm = topNm;
    if (!dice.chance(15)) continue;
    const heightNm = dice.of([50, 100]) * mm;
    pieces.push({ xNm: start.xNm, yNm, widthNm: dice.of([1200, 2400, 600]) * mm, heightNm });
    yNm += heightNm;
  }
  return pieces;
}

function scattered(dice: Dice, system: PanelSystem, start: { xNm: number; yNm: number }): readonly Piece[] {
  const pieces: Piece[] = [aPanel(dice, system, start.xNm, start.yNm)];
  for (let tries = 5 + dice.roll(40); tries > 0; tries--) {
    const at = dice.of(pieces);
    const [right, top] = [at.xNm + at.widthNm, at.yNm + at.heightNm];
    const [xNm, yNm] = dice.chance(50) ? [right, at.yNm] : [at.xNm, top];
    const [thin, long] = [dice.of([50, 100, 150]) * mm, dice.of([at.widthNm, at.heightNm, 600 * mm])];
    const filler = dice.chance(50)
      ? { xNm, yNm, widthNm: thin, heightNm: long }
      : { xNm, yNm, widthNm: long, heightNm: thin };
    const piece = dice.chance(25) ? filler : aPanel(dice, system, xNm, yNm);
    if (pieces.every((other) => !overlap(piece, other))) pieces.push(piece);
  }
  return pieces;
}

function overlap(one: Piece, other: Piece): boolean {
  return (
    one.xNm < other.xNm + other.widthNm &&
    other.xNm < one.xNm + one.widthNm &&
    one.yNm < other.yNm + other.heightNm &&
    other.yNm < one.yNm + one.heightNm
  );
}
