// Everything of the book that the plan of a job rests on, read at once; deciding comes after (job-plan.ts).
import { answer, type Answer } from '../answer.ts';
import type { BookComponent, BookReader } from '../book/book.ts';
import { instantText } from '../plan/local-time.ts';
import type { Job, Pour } from '../plan/pours.ts';
import { readyLevels } from '../yard/availability.ts';
import type { ComponentFigure } from '../yard/component-figure.ts';
import { componentFigures } from '../yard/component-figure.ts';
import type { SpareLine } from '../yard/spares.ts';
import { byCode } from './by-code.ts';
import { readDesignFacts, type DesignFacts } from './design-facts.ts';
import { jobSpares } from './job-spares.ts';
import { unknownJob } from './unknown.ts';
import { type JobYard, readJobYard } from './yard-facts.ts';

/** A component's stock as the plan sees it. */
export interface PlanStock {
  /** ISO 8601 with offset; null: from the start of the plan. */
  readonly levels: readonly { readonly from: string | null; readonly quantity: number }[];
}

export interface JobFacts {
  readonly job: Job;
  readonly pours: readonly Pour[];
  readonly designs: ReadonlyMap<string, DesignFacts>;
  readonly components: ReadonlyMap<string, BookComponent>;
  readonly stock: ReadonlyMap<string, PlanStock>;
  readonly figures: ReadonlyMap<string, ComponentFigure>;
  /** What the yard has and expects, and what the stock was made from. */
  readonly yard: JobYard;
  readonly spares: readonly SpareLine[];
  readonly changeNumber: number;
}

/** @param now what the question takes for now; absent: when something was last booked, but not before the plan begins */
export async function readJobFacts(book: BookReader, code: string, now?: string): Promise<Answer<JobFacts>> {
  const job = await book.job(code);
  if (job === null) return unknownJob(code);
  const [pours, designs, components, yard, changeNumber] = await Promise.all([
    book.pours(code),
    readDesignFacts(book),
    book.components(),
    readJobYard(book, job, now),
    book.changeNumber(),
  ]);
  if (!designs.ok) return designs;
  const spares = jobSpares({ job, pours, designs: designs.value, components, yard });
  const kept = yard.settings.keepSpares ? spares : [];
  const levels = readyLevels({
    ...yard,
    spares: new Map(kept.map(({ component, spare }) => [component, spare])),
  });
  return answer({
    job,
    pours,
    designs: designs.value,
    components: byCode(components),
    stock: new Map([...levels].map(([component, list]) => [component, { levels: list.map(shown(job)) }])),
    figures: figuresOf(yard),
    yard,
    spares,
    changeNumber,
  });
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
