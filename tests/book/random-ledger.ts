// Random histories of a yard as they could happen: every reason between the kinds of places it belongs to, mostly one
// after another in time, now and then booked late for an earlier day or taken back. Nothing is known here of how the
// book keeps its figures; whether a list may be booked the book says.
import type { BookWriter } from '../../core/book/book.ts';
import { bases, conditions, reasons, reversalOf } from '../../core/yard/movement.ts';
import type { Condition, LocationKind, Movement, Reason } from '../../core/yard/movement.ts';
import { component, movement } from './a-book.ts';
import type { Dice } from './dice.ts';

export const placeKinds: Readonly<Record<string, LocationKind>> = {
  NORTH: 'yard',
  RACK: 'rack',
  SITE: 'site',
  BIN: 'container',
  'G-1': 'gang',
  'G-2': 'gang',
  'J/P1': 'pour',
  SHOP: 'repair',
  AWAY: 'other-job',
  H1: 'supplier',
  HIRE: 'supplier',
  SCRAP: 'scrap',
  LOST: 'lost',
  START: 'opening',
};
export const components = ['P1', 'P2', 'LK', 'RB'] as const;
export const owners = { OURS: 'ours', H1: 'supplier', THEM: 'others' } as const;

export async function putRandomYard(writer: BookWriter): Promise<void> {
  for (const [code, kind] of Object.entries(placeKinds)) await writer.putLocation({ code, name: code, kind });
  for (const [code, kind] of Object.entries(owners))
    await writer.putOwner({ code, name: code, kind, agreement: null });
  for (const code of components) await writer.putComponent(component(code));
}

const of = (...kinds: readonly LocationKind[]): readonly string[] =>
  Object.keys(placeKinds).filter((code) => kinds.includes(placeKinds[code] ?? 'yard'));

/** Ours to answer for: whatever is not outside. */
export const heldPlaces = of('yard', 'rack', 'site', 'container', 'gang', 'pour', 'repair', 'other-job');
const standing = of('gang', 'pour', 'site');
const suppliers = of('supplier');

/** Where a reason takes from and brings to, as the trade uses the words. */
const ends: Readonly<Record<Reason, readonly [readonly string[], readonly string[]]>> = {
  opening: [['START'], heldPlaces],
  delivery: [suppliers, heldPlaces],
  'hire-on': [suppliers, heldPlaces],
  return: [heldPlaces, suppliers],
  'hire-off': [heldPlaces, suppliers],
  transfer: [heldPlaces, heldPlaces],
  issue: [heldPlaces, standing],
  'break-down': [['G-1', 'G-2'], heldPlaces],
  strip: [standing, heldPlaces],
  clean: [heldPlaces, heldPlaces],
  repair: [heldPlaces, heldPlaces],
  quarantine: [heldPlaces, heldPlaces],
  scrap: [heldPlaces, ['SCRAP']],
  lost: [heldPlaces, ['LOST']],
  found: [['LOST'], heldPlaces],
  'owner-swap': [heldPlaces, suppliers],
  reversal: [[], []],
};

/** A yard's day to day: what lies where, so that most of what is thrown can be booked. */
export class RandomLedger {
  readonly booked: Movement[] = [];
  readonly #throws: Dice;
  readonly #there = new Map<string, number>();
  readonly #takenBack = new Set<string>();
  #ms = Date.UTC(2024, 0, 1, 5);

  constructor(throws: Dice) {
    this.#throws = throws;
  }

  /** A list to be booked together, of up to so many movements. */
  next(most: number): Movement[] {
    const throws = this.#throws;
    this.#ms += throws.below(4 * 3_600_000);
    if (this.booked.length > 0 && throws.chance(6)) return [this.#reversal()];
    // Late: for some moment of the months before.
    const isLate = throws.chance(12);
    const ms = isLate ? this.#ms - throws.below(60 * 86_400_000) : this.#ms;
    const list: Movement[] = [];
    while (list.length < (isLate ? Math.min(most, 3) : most))
      list.push(...this.#some(throws.of(reasons), isoOf(ms, throws)));
    return list;
  }

  /** What the book took. */
  keep(list: readonly Movement[]): void {
    for (const each of list) {
      this.booked.push(each);
      if (each.reverses !== null) this.#takenBack.add(each.reverses);
    }
  }

  /** Forgets what was thought to lie there, after a list that the book did not take. */
  drop(list: readonly Movement[]): void {
    for (const each of list) this.#move({ ...each, quantity: -each.quantity });
  }

  #some(reason: Reason, at: string): Movement[] {
    const throws = this.#throws;
    if (reason === 'reversal') return [];
    const owner = throws.of(Object.keys(owners));
    const piece = throws.of(components);
    const [from, to] = [throws.of(ends[reason][0]), throws.of(ends[reason][1])];
    if ((reason === 'return' || reason === 'hire-off') && owner !== 'H1') return [];
    if (reason === 'opening' && this.booked.length > 400 && throws.chance(90)) return [];
    const isFromHeld = heldPlaces.includes(from);
    const condition = isFromHeld ? this.#someCondition(piece, owner, from) : 'ready';
    const there = this.#at(piece, owner, from, condition);
    if (isFromHeld && there < 1) return [];
    const quantity = isFromHeld
      ? 1 + throws.below(Math.min(there, 12))
      : 1 + throws.below(reason === 'opening' ? 200 : 30);
    const conditionAfter = throws.chance(40) ? throws.of(conditions) : condition;
    if (from === to && condition === conditionAfter) return [];
    const one = movement({
      id: `m${this.#ms}-${throws.below(2 ** 31)}`,
      component: piece,
      owner,
      quantity,
      from,
      to,
      condition,
      conditionAfter,
      reason,
      at,
      ...(reason === 'opening' ? { basis: throws.of(bases), basisDate: '2024-01-01' } : {}),
    });
    this.#move(one);
    if (reason !== 'owner-swap') return [one];
    // As many of another owner come in their place.
    const other = throws.of(Object.keys(owners).filter((each) => each !== owner));
    const swapped = {
      owner: other,
      from: to,
      to: from,
      condition: conditionAfter,
      conditionAfter: condition,
    };
    const back = movement({ ...one, ...swapped, id: `${one.id}-for` });
    this.#move(back);
    return [one, back];
  }

  #reversal(): Movement {
    const open = this.booked.filter((each) => each.reverses === null && !this.#takenBack.has(each.id));
    const original = this.#throws.of(open.length > 0 ? open.slice(-200) : this.booked);
    const back = reversalOf(original, {
      id: `r${this.#ms}-${this.#throws.below(2 ** 31)}`,
      at: this.#throws.chance(50) ? original.at : isoOf(this.#ms, this.#throws),
      who: 'tester',
      remark: 'taken back',
    });
    this.#move(back);
    return back;
  }

  #someCondition(piece: string, owner: string, place: string): Condition {
    const there = conditions.filter((each) => this.#at(piece, owner, place, each) > 0);
    return there.length === 0 ? 'ready' : this.#throws.of(there);
  }

  #at(piece: string, owner: string, place: string, condition: string): number {
    return this.#there.get([piece, owner, place, condition].join('|')) ?? 0;
  }

  #move(each: Movement): void {
    const lift = (place: string, condition: string, by: number): void => {
      const key = [each.component, each.owner, place, condition].join('|');
      this.#there.set(key, (this.#there.get(key) ?? 0) + by);
    };
    lift(each.from, each.condition, -each.quantity);
    lift(each.to, each.conditionAfter, each.quantity);
  }
}

/** The moment written in one of several offsets. */
export function isoOf(ms: number, throws: Dice): string {
  const hours = throws.of([0, -5, 1, 12, -11]);
  const local = new Date(ms + hours * 3_600_000).toISOString().slice(0, 23);
  const sign = hours < 0 ? '-' : '+';
  return hours === 0 ? `${local}Z` : `${local}${sign}${String(Math.abs(hours)).padStart(2, '0')}:00`;
}
