// A book with one large job, made by a seed and brought in as CSV files, the way a user would: pours of four
// gangs over some weeks, with stock a little short of the most that the plan would hold.
import { openBook } from '../../core/book/open.ts';
import { importInto } from '../../core/exchange/import.ts';
import type { ImportKind } from '../../core/exchange/prepared.ts';
import { readJobFacts } from '../../core/procedures/job-facts.ts';
import { planJob } from '../../core/procedures/job-plan.ts';
import { demoText } from '../../seed-demo/make-demo.ts';
import { numbersFrom } from './jobs.ts';
import { designCodes, designsText, panelsText } from './large-designs.ts';

export const largeJob = 'LARGE';

export interface LargeJobSize {
  readonly seed: number;
  readonly pours: number;
  readonly weeks: number;
}

export interface MadeJob {
  readonly pours: number;
  readonly turns: number;
  readonly components: number;
}

/** Makes the file. Throws where any of it is refused: the files are ours. */
export async function makeLargeBook(file: string, size: LargeJobSize): Promise<MadeJob> {
  const context = { at: '2026-02-20T16:00:00-05:00', who: 'bench' };
  const opened = await openBook(file, { mode: 'create', now: context.at });
  if (!opened.ok) throw new Error(opened.error.message);
  const book = opened.value;
  const take = (kind: ImportKind, text: string): Promise<unknown> =>
    book.command(
      { commandId: `large-${kind}-${text.length}`, name: 'import.file', ...context },
      async (to) => {
        const done = await importInto(to, { commandId: 'large', kind, text, dryRun: false }, context);
        const [bad] = done.bad;
        if (bad !== undefined) throw new Error(`${kind}, line ${bad.line}: ${bad.read}, not ${bad.wanted}`);
        return { ok: true, value: null };
      },
    );
  const next = numbersFrom(size.seed);
  await take('components', demoText('components.csv'));
  await take('components', panelsText());
  await take('rules', demoText('rules.csv'));
  await take('places', demoText('places.csv'));
  await take('jobs', demoText('jobs.csv').replace('TB26,Tarrowmere Basin', `${largeJob},A large job`));
  await take('designs', designsText(next));
  await take('pours', poursText(size, next));
  const plan = await book.read(async (reader) => {
    const facts = await readJobFacts(reader, largeJob);
    return facts.ok ? planJob(facts.value) : facts;
  });
  if (!plan.ok) throw new Error(plan.error.message);
  // With nothing in stock, what is short is all that the plan holds.
  const most = new Map<string, number>();
  for (const { shortfall } of plan.value.shortfalls) {
    const { component, quantity } = shortfall;
    most.set(component, Math.max(quantity, most.get(component) ?? 0));
  }
  await take('stock', stockText(most, next));
  await book.close();
  return {
    pours: plan.value.facts.pours.length,
    turns: plan.value.turnsOf.turns.length,
    components: plan.value.input.components.length,
  };
}

/** Loose pieces that pours name one after another, so that the plan has many components. */
const looseCodes = ['BR', 'BRS', 'SH', 'PK10', 'GP', 'GR10', 'TN', 'IC8', 'IC4', 'OC8', 'OC4', 'SE8', 'SE4'];
const moreLoose = [
  'CLS',
  'XB',
  'AB',
  'AA',
  'FS8',
  'FS4',
  'R6',
  'R8',
  'R10',
  'LKA',
  'EQ',
  'RK',
  'BKT',
  'TR16',
  'TC',
  'P636',
];

function poursText({ pours, weeks }: LargeJobSize, next: () => number): string {
  const whole = (from: number, to: number): number => from + Math.floor(next() * (to - from + 1));
  const head =
    'job,pour,name,element,order,set A,set B,set hours A,set hours B,finish,strip minimum hours,strip hours,after,gangs A,gangs B,loose,gates,tie';
  const lines = Array.from({ length: pours }, (_, index) => {
    const week = Math.floor((index * weeks) / pours);
    const weekday = whole(0, 3);
    const set = dateAfter(week * 7 + weekday);
    const finish = dateAfter(week * 7 + weekday + 1);
    const gangs = `${designOf(next)} @ 0; ${designOf(next)} @ 12 ft`;
    const loose = [...looseCodes, ...moreLoose]
      .filter(() => next() < 0.3)
      .map((code) => `A ${code} ${whole(1, 8)} loose pieces`);
    const gates = `set: wall steel, Steel crew, ${set}; pour: inspection, Inspector of works, ${finish}`;
    const [hours, strip] = [whole(4, 8) / 4, whole(4, 8) / 4];
    const code = `L${String(index + 1).padStart(3, '0')}`;
    return [
      largeJob,
      code,
      `Wall ${index + 1}`,
      'tank wall',
      'steel-first',
      `${set} 07:00`,
      `${set} 10:30`,
      hours,
      hours,
      `${finish} 13:00`,
      whole(1, 3) * 24,
      strip,
      '',
      gangs,
      gangs,
      loose.join('; '),
      gates,
      'TR12',
    ].join(',');
  });
  // A gate holds commas and stands second to last.
  return [head, ...lines.map((line) => line.replace(/,(set: .*),TR12$/u, ',"$1",TR12'))].join('\n');
}

function designOf(next: () => number): string {
  return designCodes[Math.floor(next() * designCodes.length)] ?? 'G1';
}

function stockText(most: ReadonlyMap<string, number>, next: () => number): string {
  const head = 'component,quantity,condition,owner,location,basis,date';
  const lines = [...most].map(([code, quantity]) => {
    const there = Math.max(1, Math.round(quantity * (0.7 + 0.4 * next())));
    return `${code},${there},ready,OURS,ENN,counted,2026-02-20`;
  });
  return [head, ...lines].join('\n');
}

/** Days after the first Monday of the job. */
function dateAfter(days: number): string {
  return new Date(Date.UTC(2026, 2, 2 + days)).toISOString().slice(0, 10);
}
