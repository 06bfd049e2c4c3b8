// trucks.csv: the trucks that loads are made for, one a row.
import type { Truck } from '../yard/truck.ts';
import { readCode, readLength, readText, readWeight } from './cells.ts';
import type { Column } from './columns.ts';
import { gatherByCode, type Parsed } from './gather.ts';
import { readTable, type Row } from './table.ts';

export const truckColumns = [
  { name: 'truck', needed: true, wanted: 'the code of the truck' },
  { name: 'name', needed: true, wanted: 'what people call it' },
  { name: 'payload', needed: true, wanted: 'what it may carry, by its papers', unit: 'weight' },
  { name: 'deck length', needed: true, wanted: 'length of its deck', unit: 'length' },
  { name: 'deck width', needed: true, wanted: 'width of its deck', unit: 'length' },
  { name: 'stack height', needed: true, wanted: 'how high a stack may be above the deck', unit: 'length' },
] as const satisfies readonly Column[];

type Name = (typeof truckColumns)[number]['name'];

export function readTrucks(
  text: string,
  names: Readonly<Record<string, string>>,
  known: Iterable<string>,
): Parsed<Truck> {
  const table = readTable<Name>(text, truckColumns, names);
  const { values } = gatherByCode(table.rows, 'truck', known, readTruck);
  const bad = [...table.bad].sort((one, other) => one.line - other.line);
  return { values, rows: table.rows.length, skipped: table.skipped, bad };
}

function readTruck(row: Row<Name>): Truck | undefined {
  const code = row.need('truck', readCode);
  const name = row.need('name', readText(80));
  const payloadGrams = row.need('payload', readWeight);
  const deckLengthNm = row.need('deck length', readLength('positive'));
  const deckWidthNm = row.need('deck width', readLength('positive'));
  const stackHeightNm = row.need('stack height', readLength('positive'));
  if (payloadGrams !== undefined && payloadGrams <= 0) row.refuse('payload', 'a weight over zero');
  if (
    row.isBad() ||
    code === undefined ||
    name === undefined ||
    payloadGrams === undefined ||
    deckLengthNm === undefined ||
    deckWidthNm === undefined ||
    stackHeightNm === undefined
  )
    return undefined;
  return { code, name, payloadGrams, deckLengthNm, deckWidthNm, stackHeightNm };
}
