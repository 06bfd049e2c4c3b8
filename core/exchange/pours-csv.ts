// pours.csv: one pour a row with both its sides. Local times are read in the job's time zone. A sequence
// that goes in a circle, a close before its set and whatever else contradicts itself is refused with its line.
import { checkPour } from '../plan/check-pour.ts';
import type { Job, Pour, PourSide, SideName } from '../plan/pours.ts';
import { circlesIn, shortestCircle } from '../plan/circles.ts';
import { readCode, readHours, readKnown, readList, readText, readWord } from './cells.ts';
import type { Column } from './columns.ts';
import { gatherByCode, type Parsed } from './gather.ts';
import { readInstant } from './local-time.ts';
import { maybe } from './nearest.ts';
import { readGate, readLoose, readPlacedGang } from './pour-cells.ts';
import { addTo, readTable, type Row } from './table.ts';

const time = 'as YYYY-MM-DD HH:MM by the clock of the site';

export const pourColumns = [
  {
    name: 'job',
    needed: false,
    wanted: 'the code of the job; may be left out where it is named beside the file',
  },
  { name: 'pour', needed: true, wanted: 'the code of the pour' },
  { name: 'name', needed: true, wanted: 'what people call it' },
  { name: 'element', needed: false, wanted: 'what is built, such as wall or core' },
  { name: 'order', needed: true, wanted: 'face-first or steel-first' },
  { name: 'set A', needed: true, wanted: `when setting of side A begins, ${time}` },
  { name: 'set B', needed: true, wanted: `when setting of side B begins, ${time}` },
  { name: 'set hours A', needed: true, wanted: 'shift hours that setting side A takes' },
  { name: 'set hours B', needed: true, wanted: 'shift hours that setting side B takes' },
  { name: 'finish', needed: true, wanted: `when placing ends, ${time}` },
  {
    name: 'strip minimum hours',
    needed: true,
    wanted: 'clock hours from the finish until it may be stripped',
  },
  { name: 'strip hours', needed: true, wanted: 'shift hours that stripping takes' },
  { name: 'after', needed: false, wanted: 'pours that come before it, parted by semicolons' },
  {
    name: 'gangs A',
    needed: true,
    unit: 'length',
    wanted: `designs with their places, such as GA @ 0; GB @ 12'-0"`,
  },
  {
    name: 'gangs B',
    needed: true,
    unit: 'length',
    wanted: `designs with their places, such as GA @ 0; GB @ 12'-0"`,
  },
  {
    name: 'loose',
    needed: false,
    wanted: 'loose pieces, such as both LK 10 locks between gangs; A BR 4 braces',
  },
  {
    name: 'gates',
    needed: false,
    wanted: 'work by others, such as close: steel fixed, steel crew, 2026-03-03',
  },
  {
    name: 'tie',
    needed: false,
    wanted: 'the tie counted once a pair of opposite holes; blank where ties are not planned',
  },
] as const satisfies readonly Column[];

type Name = (typeof pourColumns)[number]['name'];

export interface PourContext {
  readonly jobs: readonly Job[];
  /** The job of rows that name none. */
  readonly job: string | undefined;
  readonly designs: ReadonlySet<string>;
  readonly components: ReadonlySet<string>;
  readonly poursOf: ReadonlyMap<string, readonly Pour[]>;
}

export interface JobPour {
  readonly job: string;
  readonly pour: Pour;
}

export function readPours(
  text: string,
  names: Readonly<Record<string, string>>,
  context: PourContext,
): Parsed<JobPour> {
  const table = readTable<Name>(text, pourColumns, names);
  const values: JobPour[] = [];
  for (const [code, rows] of rowsByJob(table.rows, context)) {
    const job = context.jobs.find((one) => one.code === code);
    if (job !== undefined)
      for (const pour of readJobPours(job, rows, context)) values.push({ job: code, pour });
  }
  const bad = [...table.bad].sort((one, other) => one.line - other.line);
  return { values, rows: table.rows.length, skipped: table.skipped, bad };
}

function rowsByJob(rows: readonly Row<Name>[], context: PourContext): Map<string, Row<Name>[]> {
  const codes = context.jobs.map((job) => job.code);
  const known = readKnown('job', codes);
  const groups = new Map<string, Row<Name>[]>();
  for (const row of rows) {
    const code = row.maybe('job', known) ?? (row.isBad() ? undefined : context.job);
    if (code === undefined) {
      if (!row.isBad()) row.refuse('job', 'the code of a job');
    } else if (!codes.includes(code)) row.refuse('job', `a known job, not ${code}${maybe(code, codes)}`);
    else addTo(groups, code, row);
  }
  return groups;
}

function readJobPours(job: Job, rows: readonly Row<Name>[], context: PourContext): readonly Pour[] {
  const stored = context.poursOf.get(job.code) ?? [];
  const storedCodes = stored.map((pour) => pour.code);
  const pourCodes = new Set([...storedCodes, ...rows.map((row) => row.text('pour'))]);
  const readers = readersOf(job, context, pourCodes);
  const { values, lines } = gatherByCode(rows, 'pour', storedCodes, (row) => readPour(row, readers));
  for (const pour of values) {
    const row = lines.get(pour.code);
    // The sequence is looked through once for all pours, below; unknown predecessors were refused above.
    const problem = checkPour(job, { ...pour, after: [] }, [], context);
    if (problem === undefined || row === undefined) continue;
    const hint = problem.hint === undefined ? '' : ` ${problem.hint}`;
    row.refuse(
      columnOfField[problem.field ?? ''] ?? 'pour',
      `${wantedOf(problem.code)}. ${problem.message}${hint}`,
    );
  }
  refuseCircles([...stored.filter((pour) => !lines.has(pour.code)), ...values], lines);
  return values;
}

/** Names every row on a circle: any of them may be the one to mend. */
function refuseCircles(pours: readonly Pour[], lines: ReadonlyMap<string, Row<Name>>): void {
  const named = new Set<string>();
  const before = new Map(pours.map((pour) => [pour.code, pour.after]));
  for (const walked of circlesIn(before)) {
    // A shorter one is looked for from every code of it, which for a very long one takes too long.
    const circle = walked.length > 500 ? walked : shortestCircle(walked, before);
    const shown = [...circle, circle[0]].slice(-12).join(' after ');
    for (const code of circle) {
      if (named.has(code)) continue;
      named.add(code);
      lines.get(code)?.refuse('after', `a sequence that does not go in a circle: ${shown}`);
    }
  }
}

function wantedOf(code: string): string {
  if (code === 'close-before-set') return 'side B closed after side A is set';
  if (code === 'finish-before-set') return 'a finish after both sides are set';
  return 'a pour that does not contradict itself';
}

/** The column of the file in which a field that checkPour refuses is mended. */
const columnOfField: Readonly<Record<string, Name>> = {
  'sides.A.gangs': 'gangs A',
  'sides.B.gangs': 'gangs B',
  'sides.B.setAt': 'set B',
  finishAt: 'finish',
  after: 'after',
  loose: 'loose',
  tieComponent: 'tie',
};

/** The readers of cells that depend on the job and the book, made once for all rows. */
function readersOf(job: Job, { designs, components }: PourContext, pourCodes: Iterable<string>) {
  return {
    instant: readInstant(job.timeZone),
    gangs: readList(readPlacedGang(designs), 60),
    loose: readList(readLoose(components), 80),
    after: readList(readKnown('pour of the job', pourCodes), 60),
    tie: readKnown('component', components),
  };
}

type Readers = ReturnType<typeof readersOf>;

function readPour(row: Row<Name>, readers: Readers): Pour | undefined {
  const code = row.need('pour', readCode);
  const name = row.need('name', readText(120));
  const element = row.maybe('element', readText(40)) ?? '';
  const order = row.need('order', readWord(['face-first', 'steel-first']));
  const sideA = readSide(row, 'A', readers);
  const sideB = readSide(row, 'B', readers);
  const finishAt = row.need('finish', readers.instant);
  const stripMinimumH = row.need('strip minimum hours', readHours);
  const stripH = row.need('strip hours', readHours);
  const after = row.maybe('after', readers.after) ?? [];
  const loose = row.maybe('loose', readers.loose) ?? [];
  const gates = row.maybe('gates', readList(readGate, 30)) ?? [];
  const tieComponent = row.maybe('tie', readers.tie) ?? null;
  if (code === undefined || name === undefined || order === undefined) return undefined;
  if (sideA === undefined || sideB === undefined || finishAt === undefined) return undefined;
  if (stripMinimumH === undefined || stripH === undefined) return undefined;
  const times = { finishAt, stripMinimumH, stripH };
  return { code, name, element, order, sides: [sideA, sideB], ...times, after, gates, loose, tieComponent };
}

function readSide(row: Row<Name>, side: SideName, readers: Readers): PourSide | undefined {
  const setAt = row.need(`set ${side}`, readers.instant);
  const setH = row.need(`set hours ${side}`, readHours);
  const gangs = row.maybe(`gangs ${side}`, readers.gangs) ?? [];
  return setAt === undefined || setH === undefined ? undefined : { side, setAt, setH, gangs };
}
