// cranes.csv: cranes with their charts, one radius a row. What speaks of the whole crane stands on its first row;
// later rows repeat it or leave it blank.
import { checkChart } from '../pick/crane-chart.ts';
import type { Crane } from '../pick/setup.ts';
import { readCode, readDecimal, readLength, readText, readWeight } from './cells.ts';
import type { Column } from './columns.ts';
import type { Parsed } from './gather.ts';
import { codeSign } from './nearest.ts';
import { addTo, readTable, type Row } from './table.ts';

export const craneColumns = [
  { name: 'crane', needed: true, wanted: 'the code of the crane, on every row' },
  { name: 'name', needed: true, wanted: 'what people call it' },
  { name: 'radius', needed: true, wanted: 'a radius of its chart, rising from row to row', unit: 'length' },
  { name: 'capacity', needed: true, wanted: 'what it carries there, as the chart has it', unit: 'weight' },
  { name: 'deduct', needed: false, wanted: 'weight that always hangs on it; blank for none', unit: 'weight' },
  {
    name: 'caution percent',
    needed: false,
    wanted: 'percent of the chart from which the weight is to be proven; blank for 75',
  },
  {
    name: 'stop percent',
    needed: false,
    wanted: 'percent of the chart from which the site refuses; blank for 100',
  },
  {
    name: 'wind limit',
    needed: false,
    wanted: 'wind in metres a second over which it stands; blank for not known',
  },
  { name: 'wind whose', needed: false, wanted: 'whose limit that is' },
] as const satisfies readonly Column[];

type Name = (typeof craneColumns)[number]['name'];
type CraneRow = Row<Name>;

const percent = readDecimal('over zero', 100);
/** Common practice, no source: from three quarters of the chart on the weight is proven, not estimated. */
const usualCautionPercent = 75;

export function readCranes(
  text: string,
  names: Readonly<Record<string, string>>,
  known: Iterable<string>,
): Parsed<Crane> {
  const table = readTable<Name>(text, craneColumns, names);
  const groups = new Map<string, CraneRow[]>();
  const signs = new Map([...known].map((code) => [codeSign(code), code]));
  for (const row of table.rows) {
    const code = row.need('crane', readCode);
    if (code === undefined) continue;
    const alike = signs.get(codeSign(code)) ?? code;
    if (alike === code) addTo(groups, code, row);
    else row.refuse('crane', `a code that differs from ${alike} by more than spaces, marks or case`);
    signs.set(codeSign(code), alike);
  }
  const values = [...groups].flatMap(([code, rows]) => readCrane(code, rows) ?? []);
  const bad = [...table.bad].sort((one, other) => one.line - other.line);
  return { values, rows: table.rows.length, skipped: table.skipped, bad };
}

function readCrane(code: string, rows: readonly CraneRow[]): Crane | undefined {
  const [first] = rows;
  if (first === undefined) return undefined;
  for (const row of rows) checkHeads(row, first);
  const name = first.need('name', readText(80));
  const deductGrams = first.maybe('deduct', readWeight) ?? 0;
  const cautionPercent = first.maybe('caution percent', percent) ?? usualCautionPercent;
  const stopPercent = first.maybe('stop percent', percent) ?? 100;
  const windLimitMps = first.maybe('wind limit', readDecimal('over zero', 100)) ?? null;
  const windWhose = first.maybe('wind whose', readText(200)) ?? '';
  const chart = rows.map((row) => ({
    radiusNm: row.need('radius', readLength('positive')) ?? 0,
    capacityGrams: row.need('capacity', readWeight) ?? 0,
  }));
  if (cautionPercent > stopPercent)
    first.refuse('caution percent', `a percentage not over the ${stopPercent} at which the site refuses`);
  if (rows.some((row) => row.isBad()) || name === undefined) return undefined;
  const weightless = chart.findIndex(({ capacityGrams }) => capacityGrams <= 0);
  rows[weightless]?.refuse('capacity', 'a weight over zero');
  const falling = chart.findIndex(({ radiusNm }, row) => radiusNm <= (chart[row - 1]?.radiusNm ?? 0));
  const checked = checkChart(chart, () => 'radius');
  if (!checked.ok) rows[falling]?.refuse('radius', `a radius over the one before: ${checked.error.message}`);
  if (rows.length > 200) first.refuse('crane', 'at most 200 radii');
  if (rows.some((row) => row.isBad())) return undefined;
  return { code, name, chart, deductGrams, cautionPercent, stopPercent, windLimitMps, windWhose };
}

/** Refuses a later row that says something else of the whole crane than its first. */
function checkHeads(row: CraneRow, first: CraneRow): void {
  for (const column of [
    'name',
    'deduct',
    'caution percent',
    'stop percent',
    'wind limit',
    'wind whose',
  ] as const) {
    const text = row.text(column);
    if (text !== '' && text !== first.text(column))
      row.refuse(column, `nothing, or what line ${first.line} says of the crane: "${first.text(column)}"`);
  }
}
