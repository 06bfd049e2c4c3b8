// places.csv: where pieces can be, and whose they are. Suppliers stand twice: as a location that pieces
// come from, and as an owner with the agreement under which they are here.
import { locationKinds, ownerKinds, type Location, type Owner } from '../yard/movement.ts';
import { readCode, readText, readWord } from './cells.ts';
import type { Column } from './columns.ts';
import { gatherByCode, type Parsed } from './gather.ts';
import { readTable, type Row } from './table.ts';

/** Gangs, containers and what stands at a pour are made where they are built, tagged and issued. */
const enteredKinds = locationKinds.filter((kind) => !['container', 'gang', 'pour'].includes(kind));

export const placeColumns = [
  { name: 'what', needed: true, wanted: 'location or owner' },
  { name: 'code', needed: true, wanted: 'the code by which the place or owner is known' },
  { name: 'name', needed: true, wanted: 'what people call it' },
  {
    name: 'kind',
    needed: true,
    wanted: `of a location ${enteredKinds.join(', ')}; of an owner ${ownerKinds.join(', ')}`,
  },
  { name: 'agreement', needed: false, wanted: 'of a supplier as owner: the number of the hire agreement' },
] as const satisfies readonly Column[];

type Name = (typeof placeColumns)[number]['name'];
export type Place = ({ readonly what: 'location' } & Location) | ({ readonly what: 'owner' } & Owner);

export function readPlaces(
  text: string,
  names: Readonly<Record<string, string>>,
  known: { readonly locations: Iterable<string>; readonly owners: Iterable<string> },
): Parsed<Place> {
  const table = readTable<Name>(text, placeColumns, names);
  const what = (row: Row<Name>): string => row.text('what').toLowerCase();
  const owners = table.rows.filter((row) => what(row) === 'owner');
  const others = table.rows.filter((row) => what(row) !== 'owner');
  const values = [
    ...gatherByCode(others, 'code', known.locations, readPlace).values,
    ...gatherByCode(owners, 'code', known.owners, readPlace).values,
  ];
  const bad = [...table.bad].sort((one, other) => one.line - other.line);
  return { values, rows: table.rows.length, skipped: table.skipped, bad };
}

function readPlace(row: Row<Name>): Place | undefined {
  const what = row.need('what', readWord(['location', 'owner']));
  const code = row.need('code', readCode);
  const name = row.need('name', readText(120));
  if (what === 'owner') {
    const kind = row.need('kind', readWord(ownerKinds));
    const agreement = row.maybe('agreement', readText(60)) ?? null;
    if (kind === 'ours' && agreement !== null)
      row.refuse('agreement', 'nothing: what is ours has no agreement');
    if (code === undefined || name === undefined || kind === undefined) return undefined;
    return { what, code, name, kind, agreement };
  }
  const kind = row.need('kind', readWord(enteredKinds));
  if (row.text('agreement') !== '') row.refuse('agreement', 'nothing: only an owner has an agreement');
  if (what === undefined || code === undefined || name === undefined || kind === undefined) return undefined;
  return { what, code, name, kind };
}
