// components.csv: the catalogue, one component a row, with what the yard and the hire desk add.
import type { BookComponent } from '../book/book.ts';
import { componentKinds, readComponentKind } from '../catalogue/component.ts';
import {
  type Read,
  readCode,
  readHours,
  readLength,
  readList,
  readMoney,
  readPressure,
  readText,
  readWeight,
  readYesNo,
} from './cells.ts';
import type { Column } from './columns.ts';
import { gatherByCode, type Parsed } from './gather.ts';
import { maybe } from './nearest.ts';
import { readTable, type Row } from './table.ts';

export const componentColumns = [
  { name: 'code', needed: true, wanted: 'the code by which the component is known' },
  { name: 'name', needed: true, wanted: 'what people call it' },
  { name: 'kind', needed: true, wanted: `one of ${componentKinds.join(', ')}` },
  { name: 'system', needed: false, wanted: 'the panel system it belongs to; blank for none' },
  { name: 'weight', needed: true, unit: 'weight', wanted: 'the weight of one piece, such as 200 lb' },
  { name: 'width', needed: false, unit: 'length', wanted: 'its width; panels need one' },
  { name: 'height', needed: false, unit: 'length', wanted: 'its height; panels need one' },
  { name: 'length', needed: false, unit: 'length', wanted: 'its length; stiffening rails need one' },
  {
    name: 'cross members',
    needed: false,
    unit: 'length',
    wanted: 'heights of the cross members that carry a hook, parted by semicolons: 6 in; 48 in',
  },
  {
    name: 'tie holes',
    needed: false,
    unit: 'length',
    wanted:
      'places of the tie holes, across x up from the lower left corner, parted by semicolons: 2 in x 12 in; 34 in x 12 in',
  },
  {
    name: 'permitted pressure',
    needed: false,
    unit: 'pressure',
    wanted: 'the pressure of fresh concrete that a panel may take upright, such as 1250 psf or 60 kPa',
  },
  {
    name: 'permitted pressure on side',
    needed: false,
    unit: 'pressure',
    wanted: 'the same of a panel on its side; blank where the designer is to be asked',
  },
  {
    name: 'can shrink',
    needed: false,
    wanted: 'yes for a corner or strip that can be drawn in, so that a closed box comes off',
  },
  {
    name: 'hire per day',
    needed: false,
    wanted: 'hire of one piece for one day; blank where it cannot be hired',
  },
  { name: 'value', needed: false, wanted: 'what a new one costs; blank where nobody knows' },
  { name: 'regang hours a piece', needed: false, wanted: 'hours to put one in or take one out; blank for 0' },
  { name: 'remark', needed: false, wanted: 'a note' },
] as const satisfies readonly Column[];

type Name = (typeof componentColumns)[number]['name'];

export interface ParsedComponents extends Parsed<BookComponent> {
  readonly lines: ReadonlyMap<string, Row<Name>>;
}

export function readComponents(
  text: string,
  names: Readonly<Record<string, string>>,
  known: Iterable<string>,
): ParsedComponents {
  const table = readTable<Name>(text, componentColumns, names);
  const { values, lines } = gatherByCode(table.rows, 'code', known, readComponent);
  return { values, lines, rows: table.rows.length, skipped: table.skipped, bad: table.bad };
}

function readComponent(row: Row<Name>): BookComponent | undefined {
  const code = row.need('code', readCode);
  const name = row.need('name', readText(120));
  const kind = row.need('kind', readKind);
  const weightGrams = row.need('weight', readWeight);
  const system = row.maybe('system', readCode) ?? null;
  const sizes = {
    widthNm: row.maybe('width', readLength('positive')),
    heightNm: row.maybe('height', readLength('positive')),
    lengthNm: row.maybe('length', readLength('positive')),
    crossMembersNm: row.maybe('cross members', readList(readLength('zero'), 60)),
    tieHolesNm: row.maybe('tie holes', readList(readHole, 200)),
    pressurePa: row.maybe('permitted pressure', readPressure),
    pressureOnSidePa: row.maybe('permitted pressure on side', readPressure),
    // said of few: no and nothing said are one
    canShrink: row.maybe('can shrink', readYesNo) === true ? true : null,
  };
  const hirePerDayCents = row.maybe('hire per day', readMoney) ?? null;
  const regangPerPieceH = row.maybe('regang hours a piece', readHours) ?? 0;
  const valueCents = row.maybe('value', readMoney) ?? null;
  const remark = row.maybe('remark', readText(400)) ?? null;
  if (code === undefined || name === undefined || kind === undefined || weightGrams === undefined)
    return undefined;
  const component = {
    code,
    name,
    kind,
    weightGrams,
    ...given(sizes),
    system,
    hirePerDayCents,
    regangPerPieceH,
    ...given({ valueCents }),
    remark,
  };
  if (!row.isBad()) checkSizes(row, component);
  return row.isBad() ? undefined : component;
}

function checkSizes(row: Row<Name>, { kind, ...piece }: BookComponent): void {
  const { widthNm = 0, heightNm = 0, lengthNm = 0, crossMembersNm = [], tieHolesNm = [] } = piece;
  if (kind === 'panel') {
    if (widthNm === 0) row.refuse('width', 'the width of the panel');
    if (heightNm === 0) row.refuse('height', 'the height of the panel');
  }
  if (kind === 'stiffening-rail' && lengthNm === 0) row.refuse('length', 'the length of the stiffening rail');
  if (crossMembersNm.some((at) => at > heightNm))
    row.refuse('cross members', 'heights within the height of the panel');
  if (tieHolesNm.some(([across, up]) => across > widthNm || up > heightNm))
    row.refuse('tie holes', 'places within width and height of the panel');
}

const readKind: Read<BookComponent['kind']> = (text) => {
  const kind = readComponentKind(text);
  if (kind !== undefined) return { value: kind };
  return { wanted: `one of ${componentKinds.join(', ')}${maybe(text, componentKinds)}` };
};

const readHole: Read<readonly [number, number]> = (text, unit) => {
  const parts = text.split(/\s*[x×]\s*/u);
  const read = readLength('zero');
  const [across, up] = parts.map((part) => read(part, unit));
  if (parts.length === 2 && across !== undefined && up !== undefined && 'value' in across && 'value' in up)
    return { value: [across.value, up.value] };
  return { wanted: 'places of tie holes as across x up, such as 2 in x 12 in; 34 in x 12 in' };
};

/** Only the facts that were given: an absent size is an absent key. */
function given<T extends object>(facts: T): { [Key in keyof T]?: NonNullable<T[Key]> } {
  const entries = Object.entries(facts).filter(([, value]) => value !== null && value !== undefined);
  return Object.fromEntries(entries) as { [Key in keyof T]?: NonNullable<T[Key]> };
}
