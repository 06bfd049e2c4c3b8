// The work of a large plan by day: hours by rates, picks laid into the crane's hours, places on the pads, overloads.
import { describeRuns } from '../../core/plan/describe-runs.ts';
import { dateOfDay, dayOfDate } from '../../core/plan/days.ts';
import { planReuse } from '../../core/plan/plan-reuse.ts';
import { firstPlanningSettings } from '../../core/plan/planning-settings.ts';
import { runWork } from '../../core/plan/run-work.ts';
import type { Work } from '../../core/plan/steps.ts';
import type { PourTurn } from '../../core/plan/turns-from-pours.ts';
import { type WorkFacts, workOf } from '../../core/plan/work/job-work.ts';
import { job as basin } from '../plan/pours-for-tests.ts';
import type { Bench, BenchLine } from './bench-line.ts';
import { jobOf } from './jobs.ts';
import { median, referenceMs } from './reference-work.ts';

export const bench: Bench = { name: 'Crew, crane and pads', run: lines };

const everyDay = [1, 2, 3, 4, 5, 6, 7];

async function* lines(): AsyncGenerator<BenchLine> {
  const facts = factsOf();
  const times: number[] = [];
  let found = workOf(facts);
  for (let round = 0; round < 9; round += 1) {
    const started = performance.now();
    found = workOf(facts);
    times.push(performance.now() - started);
  }
  const what = `the work of ${facts.turnsOf.turns.length} turns on ${facts.dates.length} days`;
  yield {
    what: `${what}: ${found.overloads.length} overloads`,
    value: `${median(times).toFixed(1)} ms`,
    aim: 'a few ms',
  };
  yield { what: `${what}, of the reference`, value: (median(times) / referenceMs()).toFixed(3) };
}

function factsOf(): WorkFacts {
  const input = jobOf({ seed: 1, turns: 300, components: 60, weeks: 20 });
  const plan = planReuse(input, () => 0);
  if (!plan.ok) throw new Error(plan.error.message);
  const runs = describeRuns(input, plan.value.runs);
  if (!runs.ok) throw new Error(runs.error.message);
  const turns = input.turns.map(({ id, design, from, to }): PourTurn => ({
    id,
    pour: id,
    side: 'A',
    design,
    from: Date.parse(from),
    to: Date.parse(to),
  }));
  const job = { ...basin, crew: 12, shifts: { ...basin.shifts, days: everyDay } };
  const hour = 3_600_000;
  const own = turns.flatMap(({ id, design, from, to }): Work[] => {
    const of = { pour: id, toPour: null, designs: [design], turns: [id] };
    return [
      { kind: 'set', from, to: from + 2 * hour, ...of },
      { kind: 'strip', from: to - hour, to, ...of },
    ];
  });
  const times = turns.map(({ id, from, to }) => {
    const stripFrom = to - hour;
    return [
      id,
      { pour: id, sides: [], finish: from, ready: stripFrom, stripFrom, stripTo: to, free: to },
    ] as const;
  });
  const pieces = new Map(input.designs.map((design) => [design.code, design.pieces]));
  const designs = new Map(turns.map(({ id, design }) => [id, design]));
  const first = dayOfDate('2026-02-23');
  return {
    job,
    turnsOf: { turns, loose: [], times: new Map(times) },
    runs: runs.value,
    work: [...own, ...runWork(runs.value, new Map(turns.map((turn) => [turn.id, turn])), job)],
    settings: {
      ...firstPlanningSettings,
      laidDown: true,
      labourRates: [{ step: 'set', unit: 'h/m2', personHours: 0.4, owner: 'bench', source: null }],
      cranes: [{ crane: 'T', days: everyDay, start: '07:00', end: '15:30', minutesPerPick: 12 }],
      pads: [{ code: 'N', name: 'N', use: 'both', places: 10, reach: null }],
    },
    bookings: [],
    cranes: [],
    pourFacts: new Map(),
    sizes: {
      areaNm2: () => 13n * 10n ** 18n,
      pieces: (design) => pieces.get(design) ?? {},
      designOf: (turn) => designs.get(turn) ?? '',
    },
    dates: Array.from({ length: 160 }, (_, index) => dateOfDay(first + index)),
  };
}
