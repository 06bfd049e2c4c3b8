// A job and its pours as people enter them: the two sides with their own set dates, the order of
// setting and steel, the planned finish of the pour, gates by others, and the loose pieces.
import type { Shifts } from './calendar.ts';

export interface Job {
  readonly code: string;
  readonly name: string;
  readonly timeZone: string;
  readonly currency: string;
  readonly units: 'us' | 'metric';
  /** The first day that the plan may use, YYYY-MM-DD; stock is what was ready when it began. */
  readonly planFrom: string;
  readonly shifts: Shifts;
  /** People who do one step together. */
  readonly crew: number;
  readonly labourPerHCents: number;
  /** Clock hours from a strip until the same gang can stand again. */
  readonly flyOnH: number;
  /** Hours of work of any re-gang, before what its pieces add. */
  readonly regangBaseH: number;
  /** Clock hours until stripped pieces are ready. */
  readonly cleanH: number;
}

export type SideName = 'A' | 'B';

/** A gang's place on a side: its left edge as seen from side A, along the wall from the pour's start. */
export interface PlacedGang {
  readonly design: string;
  readonly atNm: number;
}

export interface PourSide {
  readonly side: SideName;
  /** Setting begins: ISO 8601 with offset. */
  readonly setAt: string;
  /** Shift hours that setting takes. */
  readonly setH: number;
  readonly gangs: readonly PlacedGang[];
}

/** Work by others that must be done before a step. */
export interface Gate {
  readonly name: string;
  readonly who: string;
  readonly before: 'set' | 'close' | 'pour';
  /** The date promised, YYYY-MM-DD. */
  readonly promised: string;
  readonly done: boolean;
}

export interface LooseLine {
  /** The side whose set date they go with; `both` goes with the later one. */
  readonly side: SideName | 'both';
  readonly component: string;
  readonly quantity: number;
  /** What they are there for: locks between gangs, corners, stop-ends, braces. */
  readonly purpose: string;
}

/** `face-first`: side A, steel, close side B. `steel-first`: steel, then both sides. */
export type SettingOrder = 'face-first' | 'steel-first';

export interface Pour {
  readonly code: string;
  readonly name: string;
  readonly element: string;
  readonly order: SettingOrder;
  readonly sides: readonly [PourSide, PourSide];
  /** Planned end of placing: ISO 8601 with offset. Curing counts from here. */
  readonly finishAt: string;
  /** Clock hours from `finishAt` until it may be stripped. */
  readonly stripMinimumH: number;
  /** Shift hours that stripping takes. */
  readonly stripH: number;
  /** Pours that must be poured before this one. */
  readonly after: readonly string[];
  readonly gates: readonly Gate[];
  readonly loose: readonly LooseLine[];
  /** The tie to count once per pair of opposite holes; null where ties are not planned. */
  readonly tieComponent: string | null;
}
