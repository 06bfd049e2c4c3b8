// What stands on a week plan, line by line: the words of each, by which the next printing sees what has changed.
import type { UnitSystem } from '../units/length.ts';
import type { PrintState, SheetLine } from './changes.ts';
import { dayWords, momentWords } from './day-words.ts';
import type { Phone } from './phones-part.ts';

export interface WeekPour {
  readonly code: string;
  readonly name: string;
  /** Instants in the job's time zone, the steel a date; null where there is none. */
  readonly steel: { readonly date: string; readonly done: boolean } | null;
  readonly set: string;
  /** Null where both sides begin at once. */
  readonly close: string | null;
  readonly pour: string;
  readonly strip: string;
  readonly gates: readonly {
    readonly name: string;
    readonly who: string;
    readonly promised: string;
    readonly late: boolean;
  }[];
  /** Why its set is kept standing, and who says so; null where it is not. */
  readonly held: string | null;
  /** Of the two weeks; the lines of the others are only kept for the next printing. */
  readonly isShown: boolean;
}

export interface WeekDay {
  readonly date: string;
  /** "38 of 51 h" in numbers. */
  readonly crewHours: number;
  readonly crewHoursThere: number;
  /** Null where no crane hours are entered. */
  readonly crane: { readonly minutes: number; readonly minutesThere: number } | null;
  readonly short: readonly { readonly component: string; readonly name: string; readonly quantity: number }[];
}

export interface WeekSheetFacts {
  readonly job: { readonly code: string; readonly name: string };
  readonly from: string;
  readonly to: string;
  readonly pours: readonly WeekPour[];
  readonly days: readonly WeekDay[];
  readonly print: PrintState;
  /** Those who get this printing. */
  readonly given: readonly string[];
  readonly changeNumber: number;
  readonly phones: readonly Phone[];
  readonly units: UnitSystem;
}

export const stages = ['steel', 'set', 'close', 'pour', 'strip'] as const;
export type Stage = (typeof stages)[number];

/** What is kept of a printing: every pour of the job, so that one that comes into the weeks is not taken for new. */
export function weekLines(facts: Pick<WeekSheetFacts, 'pours' | 'days'>): readonly SheetLine[] {
  return [
    ...facts.pours.flatMap((pour) => [
      ...stages.map((stage) => ({ key: `${pour.code} ${stage}`, text: stageText(pour, stage) })),
      { key: `${pour.code} gates`, text: gatesText(pour) },
    ]),
    ...facts.days.map(({ date, short }) => ({ key: `short ${date}`, text: shortText(short) })),
  ];
}

export function stageText(pour: WeekPour, stage: Stage): string {
  if (stage === 'steel')
    return pour.steel === null ? '' : `${pour.steel.done ? 'in ' : ''}${dayWords(pour.steel.date)}`;
  const at = pour[stage];
  return at === null ? '' : momentWords(at);
}

/** What keeps the pour from being ready. */
export function gatesText({ gates, held }: WeekPour): string {
  const open = gates.map(
    ({ name, who, promised, late }) => `${name} by ${who}, ${dayWords(promised)}${late ? ', too late' : ''}`,
  );
  return [...open, ...(held === null ? [] : [`set kept standing: ${held}`])].join('; ');
}

export function shortText(short: WeekDay['short']): string {
  return short.map(({ component, name, quantity }) => `${quantity} ${component} ${name}`).join('; ');
}
