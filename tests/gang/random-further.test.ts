// The further tables on 500 random designs, each held against a second way of counting that shares no code with the
// take-off: lines walked cell by cell, every pair of rails compared, sets of planks tried one after another.
import { describe, expect, test } from 'vitest';
import type { PanelSystem } from '../../core/catalogue/system.ts';
import type { DesignGeometry } from '../../core/gang/design.ts';
import type { PlacedRail } from '../../core/gang/rails-of-table.ts';
import type { TakeOff } from '../../core/gang/take-off.ts';
import { quantities, taken } from './common-practice.ts';
import { boxesOf } from './counted-by-cells.ts';
import { furtherDesign, furtherSystem, withRails } from './further-tables.ts';
import { type Crossing, linesByCells, passings, railsFor, smallestCover } from './rails-by-cells.ts';
import { Dice } from './random-designs.ts';

const designs = 500;
const seed = Number(process.env['REGANG_TEST_SEED'] ?? 20_260_302);

interface Case {
  readonly name: string;
  readonly system: PanelSystem;
  readonly design: DesignGeometry;
}

function* cases(): Generator<Case> {
  for (let number = 0; number < designs; number++) {
    const dice = new Dice(seed + number);
    const system = furtherSystem(dice);
    yield { name: `seed ${seed + number}`, system, design: furtherDesign(dice, system) };
  }
}

type RailTable = NonNullable<PanelSystem['rules']['placingRails']>;

function railsOf({ system }: Case): RailTable {
  if (system.rules.rails === undefined) throw new Error('these tests need a table of rails');
  return system.rules.rails;
}

/** Where a rail begins and ends along itself, and the position of its line. */
function along({ direction, xNm, yNm, lengthNm }: PlacedRail): { from: number; to: number; line: number } {
  const [from, line] = direction === 'level' ? [xNm, yNm] : [yNm, xNm];
  return { from, to: from + lengthNm, line };
}

function lineOf(rails: readonly PlacedRail[], index: number): readonly PlacedRail[] {
  return rails.filter(({ line }) => line === index);
}

/** Cross members of a panel of the design that lie across a rail, by its box and its own turn. */
function membersAcross({ system, design }: Case, at: number, upright: boolean): readonly number[] {
  const placed = design.panels[at];
  const panel = system.panels.find(({ code }) => code === placed?.panel);
  if (placed === undefined || panel === undefined || placed.onSide === upright) return [];
  return (panel.crossMembersNm ?? []).map((member) =>
    placed.onSide ? placed.xNm + panel.heightNm - member : placed.yNm + member,
  );
}

function needOf(one: Case, { first, second, from, to }: Crossing, upright: boolean): readonly number[] {
  const low = Math.max(...membersAcross(one, first, upright).filter((at) => at < from), -Infinity);
  const high = Math.min(...membersAcross(one, second, upright).filter((at) => at > to), Infinity);
  return [low === -Infinity ? from : low, high === Infinity ? to : high];
}

describe(`further tables on ${designs} random designs from seed ${seed}`, () => {
  test('each joint takes the shortest rail that reaches the next cross members, else a stop at its place', () => {
    const seen = { rails: 0, longer: 0, stops: 0 };
    for (const one of cases()) {
      const table = { ...railsOf(one), cover: 'each-joint' as const, reachCrossMember: true };
      const plain = withRails(one.system, table, { mergeMeeting: false });
      const found = taken(plain, one.design);
      const usable = railsFor(one.system, one.design, table).toSorted((a, b) => a.lengthNm - b.lengthNm);
      const upright = table.across === 'horizontal-joints';
      const stops: string[] = [];
      const expected = linesByCells(one.system, one.design, table).flatMap(({ steps, at }) =>
        passings(steps).flatMap((crossing) => {
          const [low = 0, high = 0] = needOf(one, crossing, upright);
          const middle = (crossing.from + crossing.to) / 2;
          const start = (lengthNm: number): number => Math.round(middle - lengthNm / 2);
          const reaching = usable.find(
            ({ lengthNm }) => start(lengthNm) <= low && start(lengthNm) + lengthNm >= high,
          );
          if (usable.length > 0 && reaching === undefined) {
            const line = Math.round(at);
            stops.push(upright ? `${line} ${crossing.from}` : `${crossing.from} ${line}`);
          }
          const rail = reaching ?? usable[0];
          if (rail === undefined) return [];
          if (rail !== usable[0]) seen.longer += 1;
          return [`${rail.code} from ${start(rail.lengthNm)}`];
        }),
      );
      const laid = found.rails.map((rail) => `${rail.component} from ${along(rail).from}`);
      expect(laid.toSorted(), one.name).toEqual(expected.toSorted());
      expect(placesOf(found, 'rails.reachCrossMember', 'stop'), one.name).toEqual(stops.toSorted());
      seen.rails += laid.length;
      seen.stops += stops.length;
    }
    for (const [what, number] of Object.entries(seen)) expect(number, what).toBeGreaterThan(50);
  });

  test('merging leaves every joint crossed, lets no rails overlap, and takes the shortest or the fewest', () => {
    const seen = { single: 0, several: 0, kept: 0, unmerged: 0 };
    for (const one of cases()) {
      const table = { ...railsOf(one), cover: 'each-joint' as const };
      const before = taken(withRails(one.system, table, { mergeMeeting: false }), one.design);
      const after = taken(withRails(one.system, table, { mergeMeeting: true }), one.design);
      const usable = railsFor(one.system, one.design, table).map(({ lengthNm }) => lengthNm);
      const impossible = after.findings.some(({ rule }) => rule === 'rails.mergeMeeting');
      if (impossible) seen.unmerged += 1;
      for (const [index, { steps }] of linesByCells(one.system, one.design, table).entries()) {
        const [old, now] = [lineOf(before.rails, index), lineOf(after.rails, index)].map((rails) =>
          rails.map(along).toSorted((a, b) => a.from - b.from),
        );
        if (old === undefined || now === undefined || old.length === 0) continue;
        for (const { from, to } of passings(steps)) {
          expect(now.some((rail) => rail.from < from && rail.to > to) || old.every((rail) => rail.from >= from || rail.to <= to), one.name).toBe(true); // prettier-ignore
        }
        if (impossible) continue;
        for (const group of groupsOf(now)) {
          const covered = old.filter(({ from, to }) => from < group.to && to > group.from);
          const [from, to] = [
            Math.min(...covered.map((rail) => rail.from)),
            Math.max(...covered.map((rail) => rail.to)),
          ];
          expect(group.from <= from && group.to >= to, one.name).toBe(true);
          const single = usable.filter((length) => length >= to - from);
          if (single.length > 0) {
            expect(group.lengths, one.name).toEqual([Math.min(...single)]);
          } else {
            const set = smallestCover(
              usable.map((lengthNm) => ({ code: '', lengthNm })),
              to - from,
            );
            expect(group.lengths.toSorted((a, b) => b - a), one.name).toEqual(set.map((rail) => rail.lengthNm)); // prettier-ignore
          }
          if (covered.length === 1) seen.kept += 1;
          else if (group.lengths.length === 1) seen.single += 1;
          else seen.several += 1;
        }
      }
    }
    for (const [what, number] of Object.entries(seen)) expect(number, what).toBeGreaterThan(5);
  });

  test('bolts stand on the rail and clear of every joint it crosses, as many as counted or a stop', () => {
    const seen = { bolts: 0, without: 0 };
    for (const one of cases()) {
      const table = railsOf(one);
      const found = taken(withRails(one.system, table), one.design);
      const lines = linesByCells(one.system, one.design, table);
      const clearance = table.boltClearanceNm ?? 0;
      let places = 0;
      for (const rail of found.rails) {
        const { from, to, line } = along(rail);
        const crossed = passings(lines[rail.line]?.steps ?? []).filter(
          (crossing) => from < crossing.to && to > crossing.from,
        );
        for (const bolt of rail.boltPlaces) {
          const [at, across] = rail.direction === 'level' ? [bolt.xNm, bolt.yNm] : [bolt.yNm, bolt.xNm];
          expect(across, one.name).toBe(line);
          expect(from <= at && at <= to, one.name).toBe(true);
          for (const crossing of crossed) {
            const below = crossing.from > from && at > crossing.from - clearance && at < crossing.to;
            const above = crossing.to < to && at < crossing.to + clearance && at > crossing.from;
            expect(below && above, `${one.name}: bolt at ${at}`).toBe(false);
          }
        }
        expect(rail.bolts % (table.boltsPerPanelCrossed ?? 1), one.name).toBe(0);
        places += rail.boltPlaces.length;
      }
      const counted = found.rails.reduce((sum, rail) => sum + rail.bolts, 0);
      const tooShort = found.findings.some(({ rule }) => rule === 'rails.boltClearance');
      const told = found.findings.filter(({ rule }) => rule === 'rails.boltPlaces').length;
      const missing = (counted - places) / (table.boltsPerPanelCrossed ?? 1);
      if (!tooShort) expect(missing, one.name).toBe(told);
      expect(quantities(found)['rail-bolt'] ?? 0, one.name).toBe(counted);
      seen.bolts += places;
      seen.without += told;
    }
    for (const [what, number] of Object.entries(seen)) expect(number, what).toBeGreaterThan(50);
  });

  test('rails for picking and placing count once where they coincide, and the greater number where they clash', () => {
    const seen = { both: 0, crossing: 0, overlapping: 0, free: 0, moves: 0 };
    for (const one of cases()) {
      const { placingRails } = one.system.rules;
      if (placingRails === undefined) continue;
      const found = taken(one.system, one.design);
      const first = taken(withRails(one.system, railsOf(one)), one.design).rails;
      const second = taken(withRails(one.system, placingRails), one.design).rails;
      const both = first.filter((rail) => second.some((other) => same(rail, other)));
      const picking = first.filter((rail) => !both.some((other) => same(rail, other)));
      const placing = second.filter((rail) => !both.some((other) => same(rail, other)));
      const clashing = {
        picking: picking.filter((rail) => placing.some((other) => clash(rail, other))),
        placing: placing.filter((rail) => picking.some((other) => clash(rail, other))),
      };
      const codes = new Set([...first, ...second].map(({ component }) => component));
      for (const code of codes) {
        const free =
          count(picking, code) - count(clashing.picking, code) +
          count(placing, code) - count(clashing.placing, code); // prettier-ignore
        const moved = Math.max(count(clashing.picking, code), count(clashing.placing, code));
        expect(quantities(found)[code] ?? 0, `${one.name} ${code}`).toBe(count(both, code) + free + moved);
        const moves = found.railMoves.filter(({ component }) => component === code);
        expect(moves.length, one.name).toBe(2 * moved);
        seen.free += free;
        seen.moves += moves.length;
      }
      expect(found.findings.filter(({ rule }) => rule === 'rails.clash').length, one.name).toBe(
        clashing.picking.length,
      );
      const by = (sense: string): number => found.rails.filter(({ neededFor }) => neededFor === sense).length;
      expect([by('both'), by('picking'), by('placing')], one.name).toEqual([both.length, picking.length, placing.length]); // prettier-ignore
      seen.both += both.length;
      const crossing = railsOf(one).across !== placingRails.across;
      seen[crossing ? 'crossing' : 'overlapping'] += clashing.picking.length;
    }
    for (const [what, number] of Object.entries(seen)) expect(number, what).toBeGreaterThan(50);
  });

  test('planks and guardrails are the fewest that cover the length, posts go by the bracket, none without a catalogue', () => {
    const seen = { planks: 0, guardrails: 0, posts: 0, stops: 0, braced: 0, unbraced: 0 };
    for (const { name, system, design } of cases()) {
      const found = taken(system, design);
      const platform = system.rules.brackets?.platform;
      const row = (kind: string): Record<string, number> => {
        const pieces = system.components.flatMap(({ kind: its, code, lengthNm = 0 }) =>
          its === kind ? [{ code, lengthNm }] : [],
        );
        const by: Record<string, number> = {};
        if (pieces.length === 0) return by;
        for (const { code } of smallestCover(pieces, found.widthNm)) by[code] = (by[code] ?? 0) + 1;
        return by;
      };
      const counts = quantities(found);
      for (const [kind, rows, key] of [
        ['plank', platform?.planksWide ?? 0, 'planks'],
        ['guardrail', platform?.guardrailRows ?? 0, 'guardrails'],
      ] as const) {
        const expected = row(kind);
        const codes = system.components.filter((item) => item.kind === kind).map(({ code }) => code);
        for (const code of codes) {
          expect(counts[code] ?? 0, `${name} ${code}`).toBe(rows * (expected[code] ?? 0));
          seen[key] += counts[code] ?? 0;
        }
        const stop = placesOf(found, `brackets.platform.${kind === 'plank' ? 'planksWide' : 'guardrailRows'}`, 'stop'); // prettier-ignore
        expect(stop, name).toEqual(rows > 0 && codes.length === 0 ? ['platform'] : []);
        seen.stops += stop.length;
      }
      const brackets = counts['bracket'] ?? 0;
      expect(found.brackets.length, name).toBe(brackets);
      expect(counts['post'] ?? 0, name).toBe(brackets * (platform?.postsPerBracket ?? 0));
      seen.posts += counts['post'] ?? 0;
      const spacing = found.brackets.map(({ xNm }, index) => xNm - (found.brackets[index - 1]?.xNm ?? xNm));
      expect(Math.max(...spacing), name).toBeLessThanOrEqual(1_200_000_001);
      expect(found.braces.length, name).toBe(counts['brace'] ?? 0);
      if (design.braced === false) expect(found.braces, name).toEqual([]);
      seen[design.braced === false ? 'unbraced' : 'braced'] += 1;
    }
    for (const [what, number] of Object.entries(seen)) expect(number, what).toBeGreaterThan(50);
  });

  test('hooks may stand where the top of the gang is looked at box by box; the pressure is the least of its panels', () => {
    const seen = { joints: 0, members: 0, tops: 0, known: 0, unknown: 0 };
    for (const { name, system, design } of cases()) {
      const found = taken(system, design);
      const { panels, fillers } = boxesOf(system, design);
      const top = Math.max(...[...panels, ...fillers].map((box) => box.y + box.h));
      const allowed = system.rules.hooks?.places ?? [];
      const expected = new Set<number>();
      for (const [index, box] of panels.entries()) {
        const placed = design.panels[index];
        const panel = system.panels.find(({ code }) => code === placed?.panel);
        if (box.y + box.h !== top || placed === undefined || panel === undefined) continue;
        if (allowed.includes('top-member') && !placed.onSide) {
          expected.add(Math.round(box.x + box.w / 2));
          seen.tops += 1;
        }
        if (allowed.includes('cross-member') && placed.onSide) {
          for (const member of panel.crossMembersNm ?? []) expected.add(box.x + box.w - member);
          seen.members += panel.crossMembersNm?.length ?? 0;
        }
        for (const other of panels) {
          if (!allowed.includes('panel-joint') || other.x !== box.x + box.w) continue;
          if (other.y + other.h !== top) continue;
          expected.add(other.x);
          seen.joints += 1;
        }
      }
      expect(found.hookPlaces.map(({ xNm }) => xNm), name).toEqual([...expected].toSorted((a, b) => a - b)); // prettier-ignore
      const figures = design.panels.map(({ panel, onSide }) => {
        const item = system.panels.find(({ code }) => code === panel);
        return onSide ? item?.pressureOnSidePa : item?.pressurePa;
      });
      const known = figures.flatMap((pa) => pa ?? []);
      const least = known.length === figures.length ? Math.min(...known) : undefined;
      expect(found.permittedPressure?.pa, name).toBe(least);
      seen[least === undefined ? 'unknown' : 'known'] += 1;
    }
    for (const [what, number] of Object.entries(seen)) expect(number, what).toBeGreaterThan(10);
  });
});

function placesOf({ findings }: TakeOff, rule: string, severity: string): readonly string[] {
  return findings
    .filter((finding) => finding.rule === rule && finding.severity === severity)
    .map(({ where }) => (typeof where === 'object' ? `${where.xNm} ${where.yNm}` : (where ?? '')))
    .toSorted();
}

/** Rails of one line that lie end to end are one group; others must be apart. */
function groupsOf(
  rails: readonly { from: number; to: number }[],
): readonly { from: number; to: number; lengths: readonly number[] }[] {
  const groups: { from: number; to: number; lengths: number[] }[] = [];
  for (const { from, to } of rails) {
    const last = groups.at(-1);
    expect(last === undefined || last.to <= from).toBe(true);
    if (last !== undefined && last.to === from) {
      last.to = to;
      last.lengths.push(to - from);
    } else groups.push({ from, to, lengths: [to - from] });
  }
  return groups;
}

/** Thin rails: two of one direction on one line over some length, or two that cross or touch. */
function clash(one: PlacedRail, other: PlacedRail): boolean {
  const [a, b] = [along(one), along(other)];
  if (one.direction === other.direction) return a.line === b.line && a.from < b.to && b.from < a.to;
  return a.from <= b.line && b.line <= a.to && b.from <= a.line && a.line <= b.to;
}

function count(rails: readonly PlacedRail[], code: string): number {
  return rails.filter(({ component }) => component === code).length;
}

function same(one: PlacedRail, other: PlacedRail): boolean {
  return (
    one.component === other.component &&
    one.direction === other.direction &&
    one.xNm === other.xNm &&
    one.yNm === other.yNm
  );
}
