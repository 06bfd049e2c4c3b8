// stock.csv: what is there on the first day, and what is already known to be coming. Every row becomes one
// movement of the ledger: an opening figure from the place of openings, or a delivery from a supplier.
import { bases, conditions, isInHand, type Location, type Movement, type Owner } from '../yard/movement.ts';
import { type Read, readKnown, readQuantity, readText, readWord } from './cells.ts';
import type { Column } from './columns.ts';
import type { Parsed } from './gather.ts';
import { readDateOrInstant } from './local-time.ts';
import { readTable, type Row } from './table.ts';

export const stockColumns = [
  { name: 'component', needed: true, wanted: 'the code of a component of the catalogue' },
  { name: 'quantity', needed: true, wanted: 'a whole number of pieces' },
  { name: 'condition', needed: true, wanted: `one of ${conditions.join(', ')}` },
  { name: 'owner', needed: true, wanted: 'the code of an owner' },
  {
    name: 'location',
    needed: true,
    wanted: 'the code of the yard, rack, site or repair shop where they lie or arrive',
  },
  {
    name: 'basis',
    needed: false,
    wanted: `how the figure was got: ${bases.join(', ')}; blank for a delivery`,
  },
  {
    name: 'date',
    needed: true,
    wanted: 'the date of the figure as YYYY-MM-DD, or date and time of a delivery',
  },
  { name: 'reason', needed: false, wanted: 'opening or delivery; blank for opening' },
  { name: 'from', needed: false, wanted: 'of a delivery: the code of the supplier as a location' },
  { name: 'note number', needed: false, wanted: 'the number of the paper' },
  { name: 'remark', needed: false, wanted: 'a note' },
] as const satisfies readonly Column[];

type Name = (typeof stockColumns)[number]['name'];

export interface StockContext {
  readonly components: Iterable<string>;
  readonly locations: readonly Location[];
  readonly owners: readonly Owner[];
  /** The location that opening figures come from. */
  readonly opening: string;
  /** Whose midnight a date without a time means; null where no job says. */
  readonly timeZone: string | null;
  readonly who: string;
  /** Keys (`stockKey`) that have an opening figure in the book already. */
  readonly opened: ReadonlySet<string>;
  readonly idOfLine: (line: number) => string;
}

export function stockKey(at: {
  readonly component: string;
  readonly owner: string;
  readonly location: string;
  readonly condition: string;
}): string {
  return JSON.stringify([at.component, at.owner, at.location, at.condition]);
}

/** One movement a row; a row of 0 pieces is a fact with nothing to move. */
export function readStock(
  text: string,
  names: Readonly<Record<string, string>>,
  context: StockContext,
): Parsed<Movement> {
  const table = readTable<Name>(text, stockColumns, names);
  const places = placesOf(context);
  const seen = new Map<string, number>();
  const values: Movement[] = [];
  for (const row of table.rows) {
    const reason = row.maybe('reason', readWord(['opening', 'delivery']));
    if (reason === undefined) continue;
    const movement =
      reason === 'delivery' ? readDelivery(row, context, places) : readOpening(row, context, places, seen);
    if (movement !== undefined && !row.isBad() && movement.quantity > 0) values.push(movement);
  }
  return { values, rows: table.rows.length, skipped: table.skipped, bad: table.bad };
}

/** The readers of known codes, made once for all rows. */
interface Places {
  readonly component: Read<string>;
  readonly owner: Read<string>;
  readonly location: Read<string>;
  readonly supplier: Read<string>;
}

function placesOf({ components, locations, owners }: StockContext): Places {
  const codes = (test: (location: Location) => boolean): string[] =>
    locations.filter(test).map((location) => location.code);
  const mayLie = codes(({ kind }) => isInHand(kind) || kind === 'repair');
  return {
    component: readKnown('component', components),
    owner: readKnown(
      'owner',
      owners.map((owner) => owner.code),
    ),
    location: readKnown('yard, rack, site or repair shop', mayLie),
    supplier: readKnown(
      'supplier',
      codes(({ kind }) => kind === 'supplier'),
    ),
  };
}

/** What opening figures and deliveries have in common. */
function readPieces(row: Row<Name>, context: StockContext, places: Places, least: 0 | 1) {
  const component = row.need('component', places.component);
  const quantity = row.need('quantity', readQuantity(least));
  const condition = row.need('condition', readWord(conditions));
  const owner = row.need('owner', places.owner);
  const location = row.need('location', places.location);
  const date = row.need('date', readDateOrInstant(context.timeZone));
  const noteNumber = row.maybe('note number', readText(60)) ?? null;
  const remark = row.maybe('remark', readText(400)) ?? null;
  if (component === undefined || quantity === undefined || condition === undefined) return undefined;
  if (owner === undefined || location === undefined || date === undefined) return undefined;
  const movement = { component, quantity, condition, conditionAfter: condition, owner, to: location };
  return {
    date: date.date,
    movement: {
      ...movement,
      id: context.idOfLine(row.line),
      at: date.at,
      who: context.who,
      noteNumber,
      remark,
      reverses: null,
      paper: null,
    },
  };
}

function readOpening(
  row: Row<Name>,
  context: StockContext,
  places: Places,
  seen: Map<string, number>,
): Movement | undefined {
  const pieces = readPieces(row, context, places, 0);
  const basis = row.need('basis', readWord(bases));
  if (row.text('from') !== '') row.refuse('from', 'nothing: an opening figure comes from nowhere');
  if (pieces === undefined || basis === undefined) return undefined;
  const key = stockKey({ ...pieces.movement, location: pieces.movement.to });
  const { component, owner, to, condition } = pieces.movement;
  const what = `${component} of ${owner}, ${condition}, at ${to}`;
  if (context.opened.has(key))
    row.refuse(
      'component',
      `no second opening figure: the book has one for ${what}. A later figure is a count`,
    );
  else if (seen.has(key))
    row.refuse('component', `one row for ${what}: line ${seen.get(key)} has it already`);
  seen.set(key, row.line);
  return { ...pieces.movement, from: context.opening, reason: 'opening', basis, basisDate: pieces.date };
}

function readDelivery(row: Row<Name>, context: StockContext, places: Places): Movement | undefined {
  const pieces = readPieces(row, context, places, 1);
  const from = row.need('from', places.supplier);
  if (row.text('basis') !== '') row.refuse('basis', 'nothing: only an opening figure has a basis');
  if (pieces === undefined || from === undefined) return undefined;
  return { ...pieces.movement, from, reason: 'delivery', basis: null, basisDate: null };
}
