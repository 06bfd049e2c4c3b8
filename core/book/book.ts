// What the book can be asked and told, as types without SQL: procedures are written against these, so
// that SQLite today and PostgreSQL later stand behind the same words. A query is handed a reader and
// cannot write by mistake; a command is handed a writer inside its one transaction.
import type { Component } from '../catalogue/component.ts';
import type { RuleTables } from '../catalogue/rules.ts';
import type { DesignGeometry } from '../gang/design.ts';
import type { Crane, PickSetup } from '../pick/setup.ts';
import type { JobEntry, JobEntryKind, KeptEntry } from '../plan/job-entries.ts';
import type { Job, Pour } from '../plan/pours.ts';
import type { Condition, Location, Movement, Owner, Reason } from '../yard/movement.ts';
import type { StockLine } from '../yard/quantities.ts';
import type { YardReader, YardWriter } from './yard-book.ts';

/** A component as the book keeps it: the catalogue's facts, and what the yard and the hire desk add. */
export interface BookComponent extends Component {
  /** The panel system it belongs to; null for things of no system. */
  readonly system: string | null;
  /** Hire of one piece for one calendar day in minor units; null where it cannot be hired. */
  readonly hirePerDayCents: number | null;
  /** Hours of work that a re-gang spends on one such piece put in or taken out. */
  readonly regangPerPieceH: number;
  readonly remark: string | null;
  /** What a new one costs in minor units; absent where nobody has entered it. */
  readonly valueCents?: number;
}

/** The rule tables of a panel system; every change is a new version, old ones stay. */
export interface RuleVersion {
  readonly system: string;
  readonly systemName: string;
  readonly version: number;
  readonly rules: RuleTables;
}

export type Hand = 'left' | 'right' | 'symmetrical';

/** A gang on paper. Lists of pieces are never stored: they follow from geometry and rule tables. */
export interface Design {
  readonly code: string;
  readonly name: string;
  readonly system: string;
  readonly revision: string;
  readonly hand: Hand;
  readonly geometry: DesignGeometry;
  /** Shift hours to assemble it from loose pieces, and to break it down. */
  readonly assembleH: number;
  readonly breakDownH: number;
}

/** A design as it was saved once; the last one is in force. Nothing of it is ever changed. */
export interface DesignRevision extends Design {
  /** 1, 2, 3 ... for each design. */
  readonly number: number;
  /** The rule tables in force when it was saved; 0 where there were none. */
  readonly ruleVersion: number;
  /** When and by whom; null for what was there before states were kept. */
  readonly savedAt: string | null;
  readonly who: string | null;
}

export interface StoredPlan {
  readonly id: string;
  readonly job: string;
  readonly madeAt: string;
  /** The input and answer of `calc plan`, as JSON values. */
  readonly input: unknown;
  readonly answer: unknown;
}

export interface MovementFilter {
  readonly component?: string | undefined;
  readonly location?: string | undefined;
  readonly owner?: string | undefined;
  /** Only those booked by this note, ticket, count or repair. */
  readonly paper?: string | undefined;
  readonly reason?: Reason | undefined;
  /** In which the pieces left, or in which they arrived. */
  readonly condition?: Condition | undefined;
  /** Newest first, from before this ledger number. */
  readonly beforeNumber?: number | undefined;
  readonly limit: number;
}

/** The pieces that a number counts: of one component, at one location or at all that hold pieces. */
export interface HistoryFilter {
  readonly component: string;
  readonly owner?: string | undefined;
  readonly location?: string | undefined;
  readonly condition?: Condition | undefined;
  /** From before the movement of this ledger number, in order of time. */
  readonly beforeNumber?: number | undefined;
  readonly limit: number;
}

/** A booked movement with its place in the ledger; `reversedBy` names the movement that took it back. */
export interface BookedMovement extends Movement {
  readonly number: number;
  readonly recordedAt: string;
  readonly reversedBy: string | null;
}

/** By how much a movement changed a number (nothing, where pieces only went from one place of it to another). */
export interface HistoryRow extends BookedMovement {
  readonly change: number;
  readonly quantityAfter: number;
}

/** By what movements were booked, with its number as printed; a repair bears none. */
export interface PaperName {
  readonly kind: 'note' | 'ticket' | 'count' | 'repair';
  readonly number: string | null;
}

/** Lines of stock of one of these components, or at one of these locations. */
export interface StockOf {
  readonly components: readonly string[];
  readonly locations: readonly string[];
}

export interface BookProblem {
  readonly check: 'integrity' | 'foreign-keys' | 'ledger';
  readonly message: string;
}

export interface BookReader extends YardReader {
  /** Rises with every command that changed the book: a cheap key for what was computed from it. */
  changeNumber(): Promise<number>;
  components(): Promise<readonly BookComponent[]>;
  ruleVersions(): Promise<readonly RuleVersion[]>;
  locations(): Promise<readonly Location[]>;
  owners(): Promise<readonly Owner[]>;
  designs(): Promise<readonly Design[]>;
  /** Every saved state of a design, oldest first; also of one that was taken out. */
  designRevisions(design: string): Promise<readonly DesignRevision[]>;
  cranes(): Promise<readonly Crane[]>;
  pickSetup(design: string): Promise<PickSetup | null>;
  jobs(): Promise<readonly Job[]>;
  job(code: string): Promise<Job | null>;
  /** In the order in which they were entered. */
  pours(job: string): Promise<readonly Pour[]>;
  /** The place of each in that order; places may be free between. */
  pourPositions(job: string): Promise<ReadonlyMap<string, number>>;
  /** What the job keeps around its plan, in the order in which it was entered. */
  jobEntries<Kind extends JobEntryKind>(job: string, kind: Kind): Promise<readonly KeptEntry<Kind>[]>;
  /**
   * Quantities by component, owner, location and condition after everything up to `at` (all, if absent); with `only`
   * the lines of these components, and those at these locations.
   */
  stock(at?: string, only?: StockOf): Promise<readonly StockLine[]>;
  /** Every movement after `at`, oldest first: what a plan knows to be coming. */
  movementsAfter(at: string): Promise<readonly BookedMovement[]>;
  /** What came into a condition within a stretch of time, the newest first. */
  arrivals(
    condition: Condition,
    period: { readonly afterMs: number; readonly upToMs: number },
  ): Promise<readonly BookedMovement[]>;
  movements(filter: MovementFilter): Promise<readonly BookedMovement[]>;
  /** The newest first in order of time. */
  history(filter: HistoryFilter): Promise<readonly HistoryRow[]>;
  movement(id: string): Promise<BookedMovement | null>;
  /** By their ids; those that are no paper of the yard are left out. */
  paperNames(ids: readonly string[]): Promise<ReadonlyMap<string, PaperName>>;
  latestPlan(job: string): Promise<StoredPlan | null>;
  check(): Promise<readonly BookProblem[]>;
}

/** `put` adds or replaces by code; the ledger only ever grows. */
export interface BookWriter extends BookReader, YardWriter {
  putComponent(component: BookComponent): Promise<void>;
  /** Stored as the next version of its system. */
  putRules(system: string, systemName: string, rules: RuleTables): Promise<RuleVersion>;
  putLocation(location: Location): Promise<void>;
  putOwner(owner: Owner): Promise<void>;
  /** Kept as a new state where it differs from the last; answers the number of the state in force. */
  putDesign(design: Design): Promise<number>;
  /** Its saved states stay. A design that stands at a pour cannot be taken out: ask first. */
  removeDesign(code: string): Promise<void>;
  putCrane(crane: Crane): Promise<void>;
  putPickSetup(design: string, setup: PickSetup): Promise<void>;
  putJob(job: Job): Promise<void>;
  /** An existing pour stays where it is; a new one goes to the end, or to `position` where that is free. */
  putPour(job: string, pour: Pour, position?: number): Promise<void>;
  removePour(job: string, code: string): Promise<void>;
  /** Adds or replaces by id; a record (telling, day-report, sheet-print) is only ever added. */
  putJobEntry<Kind extends JobEntryKind>(
    of: { readonly job: string; readonly kind: Kind; readonly id: string },
    entry: JobEntry<Kind>,
  ): Promise<void>;
  removeJobEntry(of: {
    readonly job: string;
    readonly kind: JobEntryKind;
    readonly id: string;
  }): Promise<void>;
  /** In order; `recordedAt` is the command's time. */
  appendMovements(movements: readonly Movement[], recordedAt: string): Promise<void>;
  putPlan(plan: StoredPlan): Promise<void>;
}
