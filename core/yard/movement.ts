// The words of the yard's ledger: what a movement is, in which condition pieces are, and where they
// can be. Every piece is always at one location and has one owner; a movement takes a quantity from
// one place to another and is never changed afterwards, only reversed by another movement.
import { never } from '../answer.ts';

/** `ready` is good for faces that stay exposed, `ready-hidden` only for those that do not. */
export const conditions = [
  'ready',
  'ready-hidden',
  'to-clean',
  'to-repair',
  'quarantine',
  'scrapped',
] as const;
export type Condition = (typeof conditions)[number];

/** Whether pieces in this condition may be planned with. */
export function isReady(condition: Condition): boolean {
  return condition === 'ready' || condition === 'ready-hidden';
}

/**
 * Kinds of location. Pieces at a yard, rack or site, in a container, built into a gang or standing loose at a
 * pour are in hand and count when ready; `repair` and `other-job` are held by us but away. `supplier`, `scrap`,
 * `lost` and `opening` (where figures come from on the book's first day) stand outside, so that the sum over
 * all locations is zero for every component and owner.
 */
export const locationKinds = [
  'yard',
  'rack',
  'site',
  'container',
  'gang',
  'pour',
  'repair',
  'other-job',
  'supplier',
  'scrap',
  'lost',
  'opening',
] as const;
export type LocationKind = (typeof locationKinds)[number];

/** `others`: pieces found with us that are not ours and on no agreement of ours; no plan counts on them. */
export const ownerKinds = ['ours', 'supplier', 'others'] as const;
export type OwnerKind = (typeof ownerKinds)[number];

export const reasons = [
  'opening',
  'delivery',
  'return',
  'transfer',
  'hire-on',
  'hire-off',
  'issue',
  'break-down',
  'strip',
  'clean',
  'repair',
  'quarantine',
  'scrap',
  'lost',
  'found',
  'owner-swap',
  'reversal',
] as const;
export type Reason = (typeof reasons)[number];

/** How an opening figure was got. */
export const bases = ['counted', 'estimated', 'taken-from-list'] as const;
export type Basis = (typeof bases)[number];

export interface Location {
  readonly code: string;
  readonly name: string;
  readonly kind: LocationKind;
}

/** Ours, or the agreement under which a supplier's pieces are here. */
export interface Owner {
  readonly code: string;
  readonly name: string;
  readonly kind: OwnerKind;
  readonly agreement: string | null;
}

export interface Movement {
  /** Made by the caller; the same id twice is one movement. */
  readonly id: string;
  readonly component: string;
  /** Whole pieces, more than zero. */
  readonly quantity: number;
  readonly owner: string;
  readonly from: string;
  readonly to: string;
  /** The condition in which the pieces leave `from`. */
  readonly condition: Condition;
  /** The condition in which they arrive at `to`. */
  readonly conditionAfter: Condition;
  readonly reason: Reason;
  /** When it happened: ISO 8601 with offset. */
  readonly at: string;
  readonly who: string;
  readonly noteNumber: string | null;
  readonly remark: string | null;
  /** Only with reason `opening`: how the figure was got, and the date it speaks of. */
  readonly basis: Basis | null;
  readonly basisDate: string | null;
  /** Only with reason `reversal`: the movement that this one takes back. */
  readonly reverses: string | null;
  /** The id of the note, strip ticket, count or repair by which it was booked; null for one booked by itself. */
  readonly paper: string | null;
}

/** Locations whose ready pieces a plan may count on. */
export function isInHand(kind: LocationKind): boolean {
  switch (kind) {
    case 'yard':
    case 'rack':
    case 'site':
    case 'container':
    case 'gang':
    case 'pour':
      return true;
    case 'repair':
    case 'other-job':
    case 'supplier':
    case 'scrap':
    case 'lost':
    case 'opening':
      return false;
    default:
      return never(kind);
  }
}

/** Locations whose pieces are held by us: those in hand, what is out for repair, and what other jobs have. */
export function isHeld(kind: LocationKind): boolean {
  return isInHand(kind) || kind === 'repair' || kind === 'other-job';
}

/** Locations where there cannot be less than nothing: all but those that stand outside. */
export function holdsPieces(kind: LocationKind): boolean {
  return isHeld(kind);
}

/** Where loose pieces lie, to be taken for a gang or a load: not built in, not standing at a pour. */
export function isLoose(kind: LocationKind): boolean {
  return kind === 'yard' || kind === 'rack' || kind === 'site' || kind === 'container';
}

/** The movement that takes another back: the same pieces the other way, in the condition they had. */
export function reversalOf(
  movement: Movement,
  by: { readonly id: string; readonly at: string; readonly who: string; readonly remark: string | null },
): Movement {
  return {
    id: by.id,
    component: movement.component,
    quantity: movement.quantity,
    owner: movement.owner,
    from: movement.to,
    to: movement.from,
    condition: movement.conditionAfter,
    conditionAfter: movement.condition,
    reason: 'reversal',
    at: by.at,
    who: by.who,
    noteNumber: null,
    remark: by.remark,
    basis: null,
    basisDate: null,
    reverses: movement.id,
    paper: movement.paper,
  };
}
