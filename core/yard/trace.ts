// Follows the pieces from the start of a plan through the ledger: when each quantity joins and leaves what a plan
// counts on, what is still to clean and since when, and what left the plan's count and has not come back.
//
// A plan holds the pieces of a turn itself until they are clean again. A quantity that a strip made dirty therefore
// counts on until that time is over, or until it turns out to be damaged or gone; taken off at the strip it would be
// missed twice.
import { awayOf, type AwayLot, isAwayState } from './away-lots.ts';
import { type Change, type DirtyLot, exitChanges } from './dirty-lots.ts';
import { Lots } from './lots.ts';
import type { Location, Movement, Owner } from './movement.ts';
import { pieceState, type PieceState } from './piece-state.ts';
import type { StockLine } from './quantities.ts';

export interface TraceInput {
  /** Quantities when the plan begins. */
  readonly start: readonly StockLine[];
  /** What of them was to clean, by the moment at which it became so. */
  readonly dirtyAtStart: readonly Omit<DirtyLot, 'movement' | 'paper' | 'heldUntilMs'>[];
  /** Movements after that, oldest first. */
  readonly movements: readonly Movement[];
  readonly locations: readonly Location[];
  readonly owners: readonly Owner[];
  /** Epoch milliseconds of a movement's time. */
  readonly at: (movement: Movement) => number;
  /** How long after a strip a plan holds the pieces of the turn itself. */
  readonly cleanMs: number;
  /** Ids of the strip tickets: whatever they made dirty came from a turn, also where it was never issued to one. */
  readonly stripTickets: ReadonlySet<string>;
}

export interface Trace {
  readonly base: ReadonlyMap<string, number>;
  readonly changes: readonly Change[];
  readonly dirty: readonly DirtyLot[];
  readonly away: readonly AwayLot[];
  /** What is to repair in the end, by component, owner and location. */
  readonly toRepair: ReadonlyMap<string, number>;
}

export function traceYard(input: TraceInput): Trace {
  return new Tracer(input).run();
}

/** One text for a component, owner and location. */
export function placeKey(component: string, owner: string, location: string): string {
  return JSON.stringify([component, owner, location]);
}

class Tracer {
  readonly #input: TraceInput;
  readonly #kinds: ReadonlyMap<string, Location['kind']>;
  readonly #notOurs: ReadonlySet<string>;
  readonly #changes: Change[] = [];
  readonly #dirty = new Lots<DirtyLot>();
  readonly #away = new Lots<AwayLot>();
  readonly #toRepair = new Map<string, number>();

  constructor(input: TraceInput) {
    this.#input = input;
    this.#kinds = new Map(input.locations.map(({ code, kind }) => [code, kind]));
    this.#notOurs = new Set(input.owners.filter(({ kind }) => kind === 'others').map(({ code }) => code));
  }

  run(): Trace {
    const base = new Map<string, number>();
    for (const { component, owner, location, condition, quantity } of this.#input.start) {
      if (this.#notOurs.has(owner)) continue;
      const state = this.#stateAt(location, condition);
      if (state === 'counted') base.set(component, (base.get(component) ?? 0) + quantity);
      if (state === 'to-repair') addTo(this.#toRepair, placeKey(component, owner, location), quantity);
    }
    for (const lot of this.#input.dirtyAtStart)
      if (!this.#notOurs.has(lot.owner) && this.#stateAt(lot.location, 'to-clean') === 'to-clean')
        this.#dirty.put(keyOf(lot), { ...lot, movement: null, paper: null, heldUntilMs: null });
    for (const movement of this.#input.movements)
      if (!this.#notOurs.has(movement.owner)) this.#follow(movement);
    return {
      base,
      changes: this.#changes,
      dirty: this.#dirty.all(),
      away: this.#away.all(),
      toRepair: this.#toRepair,
    };
  }

  #follow(movement: Movement): void {
    const { component, owner, quantity } = movement;
    const before = this.#stateAt(movement.from, movement.condition);
    const after = this.#stateAt(movement.to, movement.conditionAfter);
    if (before === 'to-repair') addTo(this.#toRepair, placeKey(component, owner, movement.from), -quantity);
    if (after === 'to-repair') addTo(this.#toRepair, placeKey(component, owner, movement.to), quantity);
    this.#followAway(movement, before, after);
    if (before === 'to-clean') this.#leaveDirty(movement, after);
    else if (after === 'to-clean') this.#becomeDirty(movement, before);
    else this.#change(movement, (after === 'counted' ? quantity : 0) - (before === 'counted' ? quantity : 0));
  }

  #leaveDirty(movement: Movement, after: PieceState): void {
    const { component, owner, from, to, quantity, id, reverses } = movement;
    const atMs = this.#input.at(movement);
    // What the plan waits for is cleaned before what has lain there for long.
    const rank = ({ movement: by, heldUntilMs }: DirtyLot): number =>
      by === reverses && reverses !== null ? 0 : heldUntilMs !== null && heldUntilMs >= atMs ? 1 : 2;
    const taken = this.#dirty.take(placeKey(component, owner, from), quantity, id, rank);
    const known = taken.reduce((sum, lot) => sum + lot.quantity, 0);
    for (const lot of taken) {
      if (after === 'to-clean') this.#dirty.put(placeKey(component, owner, to), this.#carried(lot, movement));
      else this.#changes.push(...exitChanges(lot, atMs, after));
    }
    if (after === 'counted') this.#change(movement, quantity - known);
  }

  #becomeDirty(movement: Movement, before: PieceState): void {
    const { component, owner, to, quantity, id, paper } = movement;
    const atMs = this.#input.at(movement);
    const key = placeKey(component, owner, to);
    let rest = quantity;
    if (movement.reverses !== null)
      for (const lot of this.#dirty.takenBy(movement.reverses, key)) {
        rest -= lot.quantity;
        this.#dirty.put(key, lot);
        for (const change of exitChanges(lot, atMs, before))
          this.#changes.push({ ...change, by: -change.by });
      }
    const isHeld = before === 'counted' && this.#isOfTurn(movement);
    const heldUntilMs = isHeld ? this.#heldUntil(movement) : null;
    if (before === 'counted' && !isHeld) this.#change(movement, -rest);
    this.#dirty.put(key, {
      component,
      owner,
      location: to,
      quantity: rest,
      sinceMs: atMs,
      movement: id,
      paper,
      heldUntilMs,
    });
  }

  #isOfTurn({ reason, paper }: Movement): boolean {
    const isOfTicket = paper !== null && this.#input.stripTickets.has(paper);
    return reason === 'strip' || reason === 'break-down' || isOfTicket;
  }

  /** A gang that stays together is cleaned as it hangs, and the plan holds it until it is broken down. */
  #heldUntil(movement: Movement): number {
    const isGang = this.#kinds.get(movement.to) === 'gang';
    return isGang ? Infinity : this.#input.at(movement) + this.#input.cleanMs;
  }

  #carried(lot: DirtyLot, movement: Movement): DirtyLot {
    const { to: location } = movement;
    const isTakenOut = lot.heldUntilMs === Infinity;
    return isTakenOut ? { ...lot, location, heldUntilMs: this.#heldUntil(movement) } : { ...lot, location };
  }

  #followAway(movement: Movement, before: PieceState, after: PieceState): void {
    if (before === after) return;
    const { component, owner, quantity, id, reverses } = movement;
    const taken = isAwayState(before)
      ? this.#away.take(awayKey(component, owner, before), quantity, id, (lot) =>
          Number(lot.movement !== reverses),
        )
      : null;
    if (!isAwayState(after)) return;
    const key = awayKey(component, owner, after);
    const back = reverses === null ? [] : this.#away.takenBy(reverses, key);
    for (const lot of back) this.#away.put(key, lot);
    // What was away already when the plan began changes nothing for it by being away elsewhere.
    const most = taken === null ? quantity : taken.reduce((sum, lot) => sum + lot.quantity, 0);
    const rest = most - back.reduce((sum, lot) => sum + lot.quantity, 0);
    const lot = awayOf(movement, before, after, rest, this.#input.at(movement));
    if (lot !== null) this.#away.put(key, lot);
  }

  #change(movement: Movement, by: number): void {
    if (by !== 0) this.#changes.push({ component: movement.component, atMs: this.#input.at(movement), by });
  }

  #stateAt(location: string, condition: Movement['condition']): PieceState {
    return pieceState(this.#kinds.get(location) ?? 'supplier', condition);
  }
}

function keyOf({ component, owner, location }: Pick<DirtyLot, 'component' | 'owner' | 'location'>): string {
  return placeKey(component, owner, location);
}

function awayKey(component: string, owner: string, state: PieceState): string {
  return JSON.stringify([component, owner, state]);
}

function addTo(sums: Map<string, number>, key: string, by: number): void {
  sums.set(key, (sums.get(key) ?? 0) + by);
}
