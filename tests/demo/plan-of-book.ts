// The plan of a book's only job, put together from the core's own parts, with pours moved where a claim is
// about moving them.
import type { BookReader } from '../../core/book/book.ts';
import type { PlanAnswer, PlanInput } from '../../core/plan/contract.ts';
import { movePour } from '../../core/plan/move-pour.ts';
import { planReuse } from '../../core/plan/plan-reuse.ts';
import type { Job, Pour } from '../../core/plan/pours.ts';
import { startOfDate, instantText } from '../../core/plan/local-time.ts';
import { planInputOf, turnsFromPours, type TurnsOfPours } from '../../core/plan/turns-from-pours.ts';
import { type DesignFacts, readDesignFacts } from '../../core/procedures/design-facts.ts';
import { readJobYard } from '../../core/procedures/yard-facts.ts';
import { readyLevels } from '../../core/yard/availability.ts';

export interface JobPlan {
  readonly job: Job;
  readonly pours: readonly Pour[];
  readonly designs: ReadonlyMap<string, DesignFacts>;
  readonly turns: TurnsOfPours;
  readonly input: PlanInput;
  readonly answer: PlanAnswer;
}

export async function planOfBook(
  book: BookReader,
  moves: Readonly<Record<string, number>> = {},
): Promise<JobPlan> {
  const [job] = await book.jobs();
  const facts = await readDesignFacts(book);
  if (job === undefined || !facts.ok) throw new Error('The book has no job that can be planned.');
  const pours = (await book.pours(job.code)).map((pour) => movePour(pour, moves[pour.code] ?? 0, job));
  const designs = facts.value;
  const turns = turnsFromPours(job, pours, designs);
  const components = await book.components();
  const planDesigns = [...designs.values()].map(({ design, pieces }) => ({
    code: design.code,
    pieces: { ...pieces },
    assembleH: design.assembleH,
    breakDownH: design.breakDownH,
  }));
  const regang = Object.fromEntries(components.map(({ code, regangPerPieceH }) => [code, regangPerPieceH]));
  const input = planInputOf(job, turns, planDesigns, await planComponents(book, job), regang);
  const answer = planReuse(input, () => 0);
  if (!answer.ok) throw new Error(answer.error.message);
  return { job, pours, designs, turns, input, answer: answer.value };
}

async function planComponents(book: BookReader, job: Job): Promise<PlanInput['components']> {
  const from = instantText(startOfDate(job.planFrom, job.timeZone), job.timeZone);
  const [components, yard] = await Promise.all([book.components(), readJobYard(book, job)]);
  const ready = readyLevels({ ...yard, spares: new Map() });
  return components.map(({ code, hirePerDayCents }) => ({
    code,
    hirePerDay: hirePerDayCents,
    stock: (ready.get(code) ?? [{ fromMs: null, quantity: 0 }]).map(({ fromMs, quantity }) => ({
      from: fromMs === null ? from : instantText(fromMs, job.timeZone),
      quantity,
    })),
  }));
}
