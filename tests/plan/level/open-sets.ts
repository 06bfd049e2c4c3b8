// The open benchmark sets of resource-constrained scheduling as their files have them, and as questions for `calc level`.
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { levelInput, type LevelInput } from '../../../core/plan/level/contract.ts';

export const setNames = ['j30', 'j60', 'j120'] as const;
export type SetName = (typeof setNames)[number];

export interface OpenInstance {
  readonly name: string;
  readonly criticalPath: number;
  /** Where it is known; else the best known bounds. */
  readonly optimum?: number;
  readonly lb?: number;
  readonly ub?: number;
  readonly capacity: readonly number[];
  readonly duration: readonly number[];
  readonly demand: readonly (readonly number[])[];
  /** Numbers of activities, counted from 1. */
  readonly successors: readonly (readonly number[])[];
}

/** A part of each set, copied with source and terms in the files. */
export const copied = path.join(import.meta.dirname, 'data');

export function readSet(folder: string, name: SetName): readonly OpenInstance[] {
  const text = readFileSync(path.join(folder, `${name}.json`), 'utf8');
  return (JSON.parse(text) as { instances: OpenInstance[] }).instances;
}

export function hasSets(folder: string): boolean {
  return setNames.every((name) => existsSync(path.join(folder, `${name}.json`)));
}

export function questionOf(instance: OpenInstance, schedules: number, seed = 1): LevelInput {
  return levelInput.parse({
    activities: instance.duration.map((duration, index) => ({
      id: String(index + 1),
      duration,
      demand: Object.fromEntries((instance.demand[index] ?? []).map((each, at) => [`R${at + 1}`, each])),
      successors: (instance.successors[index] ?? []).map(String),
    })),
    capacity: Object.fromEntries(instance.capacity.map((each, at) => [`R${at + 1}`, each])),
    schedules,
    seed,
  });
}

/** The best known makespan and the best known lower bound. */
export function knownOf({ optimum, lb, ub, name }: OpenInstance): {
  readonly lower: number;
  readonly upper: number;
} {
  const [lower, upper] = [optimum ?? lb, optimum ?? ub];
  if (lower === undefined || upper === undefined) throw new Error(`${name} has no known bounds`);
  return { lower, upper };
}
