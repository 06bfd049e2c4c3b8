// Rails that picking needs and rails that placing needs, where both cannot stay on: they cross, or they lie over
// each other on one line. Such rails are moved between the pick and the pour and counted once.
import type { Component } from '../catalogue/component.ts';
import type { Finding, PointNm } from './findings.ts';
import type { PlacedRail } from './rails-of-table.ts';

/** Where a rail is or comes to, its left or lower end. */
export interface RailStand extends PointNm {
  readonly direction: 'level' | 'upright';
}

/** A rail taken off (`to` null), put on (`from` null), or moved, before the pour or before the next pick. */
export interface RailMove {
  readonly step: 'before-the-pour' | 'before-the-pick';
  readonly component: string;
  readonly from: RailStand | null;
  readonly to: RailStand | null;
}

export interface RailClash {
  readonly picking: ReadonlySet<PlacedRail>;
  readonly placing: ReadonlySet<PlacedRail>;
  readonly findings: readonly Finding[];
  readonly moves: readonly RailMove[];
}

/** Rails of both tables that lie in one place are one and do not clash; they are not among those given. */
export function clashingRails(
  picking: readonly PlacedRail[],
  placing: readonly PlacedRail[],
  components: readonly Component[],
  source: string,
): RailClash {
  const widths = new Map(components.map(({ code, widthNm = 0 }) => [code, widthNm]));
  const byLine = {
    level: placing.filter(({ direction }) => direction === 'level').sort((one, other) => one.yNm - other.yNm),
    upright: placing
      .filter(({ direction }) => direction === 'upright')
      .sort((one, other) => one.xNm - other.xNm),
  };
  const widest = Math.max(0, ...placing.map(({ component }) => widths.get(component) ?? 0));
  const clashing = { picking: new Set<PlacedRail>(), placing: new Set<PlacedRail>() };
  const findings: Finding[] = [];
  for (const rail of picking) {
    const widthNm = widths.get(rail.component) ?? 0;
    const reachNm = (widthNm + widest) / 2;
    const beside = between(byLine[rail.direction], lineOf(rail) - reachNm, lineOf(rail) + reachNm)
      .filter((other) => {
        const apart = Math.abs(lineOf(rail) - lineOf(other));
        return apart === 0 || 2 * apart < widthNm + (widths.get(other.component) ?? 0);
      })
      .filter((other) => startOf(rail) < endOf(other) && startOf(other) < endOf(rail))
      .map((other) => ({ other, where: pointOn(rail, Math.max(startOf(rail), startOf(other))) }));
    const across = between(
      byLine[rail.direction === 'level' ? 'upright' : 'level'],
      startOf(rail),
      endOf(rail),
    )
      .filter((other) => startOf(other) <= lineOf(rail) && lineOf(rail) <= endOf(other))
      .map((other) => ({ other, where: pointOn(rail, lineOf(other)) }));
    const [first] = [...beside, ...across];
    if (first === undefined) continue;
    clashing.picking.add(rail);
    for (const { other } of [...beside, ...across]) clashing.placing.add(other);
    findings.push({
      rule: 'rails.clash',
      severity: 'caution',
      message: `Rail ${rail.component} that picking needs and rail ${first.other.component} that placing needs cannot both stay on here: move rails before the pour, and back before the pick.`,
      where: first.where,
      source,
    });
  }
  return { ...clashing, findings, moves: movesOf([...clashing.picking], [...clashing.placing]) };
}

/** Those of rails sorted by their line whose line is between two positions, both included. */
function between(sorted: readonly PlacedRail[], from: number, to: number): readonly PlacedRail[] {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const rail = sorted[middle];
    if (rail !== undefined && lineOf(rail) < from) low = middle + 1;
    else high = middle;
  }
  const found: PlacedRail[] = [];
  for (let at = low; at < sorted.length; at++) {
    const rail = sorted[at];
    if (rail === undefined || lineOf(rail) > to) break;
    found.push(rail);
  }
  return found;
}

/** The position of its line, and its start and end along it. */
function lineOf({ direction, xNm, yNm }: PlacedRail): number {
  return direction === 'level' ? yNm : xNm;
}

function startOf({ direction, xNm, yNm }: PlacedRail): number {
  return direction === 'level' ? xNm : yNm;
}

function endOf(rail: PlacedRail): number {
  return startOf(rail) + rail.lengthNm;
}

function pointOn({ direction, xNm, yNm }: PlacedRail, alongNm: number): PointNm {
  return direction === 'level' ? { xNm: alongNm, yNm } : { xNm, yNm: alongNm };
}

/** Before the pour a rail goes from its place for the pick to one for placing, in order of places; then back. */
function movesOf(picking: readonly PlacedRail[], placing: readonly PlacedRail[]): readonly RailMove[] {
  const there: RailMove[] = [];
  for (const component of new Set([...picking, ...placing].map((rail) => rail.component))) {
    const from = picking.filter((rail) => rail.component === component).sort(byPlace);
    const to = placing.filter((rail) => rail.component === component).sort(byPlace);
    for (let index = 0; index < Math.max(from.length, to.length); index++) {
      const [start, end] = [standOf(from[index]), standOf(to[index])];
      there.push({ step: 'before-the-pour', component, from: start, to: end });
    }
  }
  return [
    ...there,
    ...there.map(({ component, from, to }) => ({
      step: 'before-the-pick' as const,
      component,
      from: to,
      to: from,
    })),
  ];
}

function byPlace(one: PlacedRail, other: PlacedRail): number {
  return one.xNm - other.xNm || one.yNm - other.yNm;
}

function standOf(rail: PlacedRail | undefined): RailStand | null {
  return rail === undefined ? null : { xNm: rail.xNm, yNm: rail.yNm, direction: rail.direction };
}
