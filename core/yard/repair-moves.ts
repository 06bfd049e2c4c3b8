// What a repair asks of the ledger: pieces to repair that no other repair has in hand, pieces sent to the shop, and, when
// it is done, pieces back in the conditions they came out in and the donors of parts scrapped.
import { type Answer, answer, refuse, type Refusal } from '../answer.ts';
import { type CareBooking, type CareOf, careMovements, donorMovements } from './care-moves.ts';
import { type Condition, isInHand, type Location, type Movement } from './movement.ts';
import type { StockLine } from './quantities.ts';
import type { RepairJob } from './repair-job.ts';
import { takeFrom } from './take-from.ts';

/** Pieces to repair at the place of a repair that no other open one has. */
export function freeToRepair(
  { component, owner, location }: Omit<CareOf, 'quantity'>,
  stock: readonly StockLine[],
  others: readonly RepairJob[],
): number {
  const there = stock
    .filter(
      (line) =>
        line.component === component &&
        line.owner === owner &&
        line.location === location &&
        line.condition === 'to-repair',
    )
    .reduce((sum, { quantity }) => sum + quantity, 0);
  const inHand = others
    .filter(
      (each) =>
        each.state === 'open' &&
        each.component === component &&
        each.owner === owner &&
        each.place === location,
    )
    .reduce((sum, { quantity }) => sum + quantity, 0);
  return there - inHand;
}

/** Code: not-enough. */
export function checkToRepair(
  of: CareOf,
  stock: readonly StockLine[],
  others: readonly RepairJob[],
): Refusal | null {
  const free = freeToRepair(of, stock, others);
  if (free >= of.quantity) return null;
  return {
    code: 'not-enough',
    message: `${of.quantity} of ${of.component} would be repaired; ${of.location} has ${Math.max(0, free)} of ${of.owner} to repair that no other repair has in hand.`,
    field: 'quantity',
    hint: 'Maybe they are booked in another condition or at another place.',
  };
}

/** What a donor may be, the least worth first; what is scrapped already may still give parts. */
const donorConditions: readonly Condition[] = [
  'scrapped',
  'to-repair',
  'quarantine',
  'to-clean',
  'ready-hidden',
  'ready',
];

export interface RepairOutcome {
  readonly ready: number;
  readonly readyHidden: number;
  readonly scrapped: number;
}

/**
 * Codes: where-to, does-not-add-up, second-name, same-name, no-place, not-enough.
 * @param backTo where what was repaired is then; null: where it is
 */
export function finishMovements(
  repair: RepairJob,
  outcome: RepairOutcome,
  backTo: string | null,
  yard: { readonly stock: readonly StockLine[]; readonly locations: readonly Location[] },
  booking: CareBooking,
): Answer<readonly Movement[]> {
  const { component, owner, quantity, place, partsFrom, fault } = repair;
  const to = backTo ?? place;
  const kind = yard.locations.find(({ code }) => code === to)?.kind;
  if (outcome.ready + outcome.readyHidden > 0 && (kind === undefined || !isInHand(kind)))
    return refuse(
      'where-to',
      `What was repaired at ${place} is to come back to a yard, a rack or a site${backTo === null ? '' : `; ${backTo} is none`}.`,
      { field: 'backTo', hint: 'Maybe it goes back to the yard it came from.' },
    );
  const about = { ...booking, remark: joined(`Repair: ${fault}.`, booking.remark) };
  const of = { component, owner, location: place, quantity };
  const how = { condition: 'to-repair', reason: 'repair' } as const;
  const repaired = careMovements(of, { ...outcome, toRepair: 0 }, how, about, to);
  if (!repaired.ok) return repaired;
  const donors: (CareOf & { readonly condition: Condition })[] = [];
  const left = lessRepaired(yard.stock, of);
  for (const donor of partsFrom) {
    const taken = takeFrom(left, donor, {
      owners: [donor.owner],
      notOf: left.map((line) => line.owner).filter((code) => code !== donor.owner),
      conditions: donorConditions,
      locations: [donor.place],
    });
    if (!taken.ok) return { ok: false, error: { ...taken.error, field: 'partsFrom' } };
    // What lies on the scrap already only gives its parts.
    const toScrap = taken.value.filter(({ location }) => location !== booking.scrap);
    donors.push(...toScrap.map((one) => ({ component: donor.component, ...one })));
  }
  const words = `Given up for its parts: repair of ${quantity} ${component} at ${place}.`;
  const scrapped = donorMovements(
    donors,
    { ...booking, remark: joined(words, booking.remark) },
    repaired.value.length + 1,
  );
  return scrapped.ok ? answer([...repaired.value, ...scrapped.value]) : scrapped;
}

/** The pieces that are repaired are no donors of their own repair. */
function lessRepaired(stock: readonly StockLine[], of: CareOf): readonly StockLine[] {
  return stock.map((line) =>
    line.component === of.component &&
    line.owner === of.owner &&
    line.location === of.location &&
    line.condition === 'to-repair'
      ? { ...line, quantity: line.quantity - of.quantity }
      : line,
  );
}

function joined(...words: readonly (string | null | undefined)[]): string {
  return words.filter((each) => each !== null && each !== undefined && each !== '').join(' ');
}
