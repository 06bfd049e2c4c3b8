// The lines of a take-off out of what the rules took, their weight, and the centre of gravity of the panels.
import type { Component } from '../catalogue/component.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { rectangleNm2 } from '../units/area.ts';
import type { Ratio } from '../units/exact.ts';
import type { Place, Taken } from './findings.ts';
import type { Gang, StandingPanel } from './placed.ts';

export interface Reason {
  readonly rule: string;
  readonly count: number;
  readonly where: Place;
}

/** One component of the take-off. The counts of its reasons add up to its quantity. */
export interface TakeOffLine {
  readonly component: string;
  readonly name: string;
  readonly kind: string;
  readonly quantity: number;
  /** Of all its pieces: whole grams of one, times the quantity. */
  readonly weightGrams: number;
  readonly because: readonly Reason[];
}

/** Lines in catalogue order, panels first; a line with quantity zero is left out. */
export function takeOffLines(system: PanelSystem, taken: readonly Taken[]): readonly TakeOffLine[] {
  const reasons = new Map<string, Reason[]>();
  for (const { component, rule, count, where } of taken) {
    if (count === 0) continue;
    const known = reasons.get(component);
    if (known === undefined) reasons.set(component, [{ rule, count, where }]);
    else known.push({ rule, count, where });
  }
  const catalogue: readonly Component[] = [...system.panels, ...system.components];
  return catalogue.flatMap(({ code, name, kind, weightGrams: pieceGrams }) => {
    const because = reasons.get(code);
    if (because === undefined) return [];
    const quantity = because.reduce((sum, reason) => sum + reason.count, 0);
    return [{ component: code, name, kind, quantity, weightGrams: quantity * pieceGrams, because }];
  });
}

export function totalGrams(lines: readonly TakeOffLine[]): number {
  return lines.reduce((sum, line) => sum + line.weightGrams, 0);
}

/**
 * Centre of gravity of the panels by weight, as exact fractions in nanometres; each panel's weight is taken at
 * the middle of its sheet. Where no panel weighs anything, by area.
 */
export function centreOfGravity({ panels }: Gang): { readonly x: Ratio; readonly y: Ratio } {
  const weightless = panels.every(({ panel }) => panel.weightGrams === 0);
  const share = ({ panel }: StandingPanel): bigint =>
    weightless ? rectangleNm2(panel.widthNm, panel.heightNm) : BigInt(panel.weightGrams);
  let [sum, x, y] = [0n, 0n, 0n];
  for (const panel of panels) {
    const weight = share(panel);
    sum += weight;
    x += weight * BigInt(panel.leftNm + panel.rightNm);
    y += weight * BigInt(panel.bottomNm + panel.topNm);
  }
  return { x: { over: x, under: 2n * sum }, y: { over: y, under: 2n * sum } };
}
