// What follows from a job as the book has it before anything is decided: its working calendar, its dated pours, the
// stock over time. Deciding comes after (job-plan.ts).
import { answer, type Answer } from '../answer.ts';
import type { BookComponent, BookReader } from '../book/book.ts';
import { instantText } from '../plan/local-time.ts';
import { withPlanned } from '../plan/planned-levels.ts';
import type { Job, Pour } from '../plan/pours.ts';
import { readyLevels } from '../yard/availability.ts';
import type { ComponentFigure } from '../yard/component-figure.ts';
import { componentFigures } from '../yard/component-figure.ts';
import type { SpareLine } from '../yard/spares.ts';
import { byCode } from './by-code.ts';
import type { DesignFacts } from './design-facts.ts';
import type { JobPlanning } from './job-planning.ts';
import { type JobSource, readJobSource, workingJob } from './job-source.ts';
import { jobSpares } from './job-spares.ts';
import { type JobYard, paceOf } from './yard-facts.ts';

/** A component's stock as the plan sees it. */
export interface PlanStock {
  /** ISO 8601 with offset; null: from the start of the plan. */
  readonly levels: readonly { readonly from: string | null; readonly quantity: number }[];
}

export interface JobFacts {
  /** What they follow from. */
  readonly source: JobSource;
  /** With the exceptions of the calendar in its shifts. */
  readonly job: Job;
  /** Those that have a date. */
  readonly pours: readonly Pour[];
  readonly undatedPours: readonly Pour[];
  readonly designs: ReadonlyMap<string, DesignFacts>;
  readonly components: ReadonlyMap<string, BookComponent>;
  readonly stock: ReadonlyMap<string, PlanStock>;
  readonly figures: ReadonlyMap<string, ComponentFigure>;
  /** What the yard has and expects, and what the stock was made from. */
  readonly yard: JobYard;
  readonly planning: JobPlanning;
  readonly spares: readonly SpareLine[];
  readonly changeNumber: number;
}

/** @param now what the question takes for now; absent: when something was last booked, but not before the plan begins */
export async function readJobFacts(book: BookReader, code: string, now?: string): Promise<Answer<JobFacts>> {
  const source = await readJobSource(book, code, now);
  return source.ok ? answer(factsOf(source.value)) : source;
}

export function factsOf(source: JobSource): JobFacts {
  const { designs, components, planning, changeNumber } = source;
  const job = workingJob(source.job, planning);
  const isOpen = ({ code }: Pour): boolean => planning.pourFacts.get(code)?.dateOpen === true;
  const pours = source.pours.filter((pour) => !isOpen(pour));
  const yard = { ...source.yard, pace: paceOf(job, source.yard.cleanMs, source.yard.settings) };
  const spares = jobSpares({ job, pours, designs, components, yard, planning });
  const kept = yard.settings.keepSpares ? spares : [];
  const levels = readyLevels({
    ...yard,
    spares: new Map(kept.map(({ component, spare }) => [component, spare])),
  });
  const planned = Map.groupBy(planning.plannedStock, ({ component }) => component);
  const codes = new Set([...levels.keys(), ...planned.keys()]);
  const stock = [...codes].map((component): [string, PlanStock] => {
    const list = withPlanned(levels.get(component) ?? [], planned.get(component) ?? []);
    return [component, { levels: list.map(shown(job)) }];
  });
  return {
    source,
    job,
    pours,
    undatedPours: source.pours.filter(isOpen),
    designs,
    components: byCode(components),
    stock: new Map(stock),
    figures: figuresOf(yard),
    yard,
    planning,
    spares,
    changeNumber,
  };
}

function shown({ timeZone }: Job) {
  return ({ fromMs, quantity }: { readonly fromMs: number | null; readonly quantity: number }) => ({
    from: fromMs === null ? null : instantText(fromMs, timeZone),
    quantity,
  });
}

function figuresOf(yard: JobYard): ReadonlyMap<string, ComponentFigure> {
  const { start, stock, counts, locations, owners, today, settings } = yard;
  return componentFigures({
    stock: [...start, ...stock],
    counts,
    locations,
    owners,
    oldAfterDays: settings.figureOldAfterDays,
    today,
  });
}
