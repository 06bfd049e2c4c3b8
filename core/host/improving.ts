// The search for a better plan that is under way, or ended last: a thread of its own, its figures, its best plan.
import { Worker } from 'node:worker_threads';
import { answer, never, refuse, type Answer } from '../answer.ts';
import type { OpenBook } from '../book/open.ts';
import type { PlanAnswer } from '../plan/contract.ts';
import { readJobFacts } from '../procedures/job-facts.ts';
import { planInputOfJob } from '../procedures/job-plan.ts';
import { questionMark } from '../procedures/question-mark.ts';
import { badInput } from './bad-input.ts';
import { type ImproveCallName, improveCalls, type ImproveState, type PlanFigures } from './improve-calls.ts';

interface ImprovingOptions {
  /** Null while no book is open. */
  readonly book: () => Pick<OpenBook, 'read'> | null;
  readonly now: () => string;
  readonly elapsedMs: () => number;
}

type Search = NonNullable<ImproveState['search']>;
type Ending = Exclude<Search['state'], 'running'>;

interface Running {
  readonly id: string;
  readonly job: string;
  readonly startedAt: string;
  readonly startedMs: number;
  readonly allowedSeconds: number;
  readonly question: string;
  readonly worker: Worker;
  ended: { readonly how: Ending; readonly atMs: number } | null;
  refusal: string | null;
  first: PlanAnswer | null;
  best: PlanAnswer | null;
}

/** The same file in the sources and, under its other ending, in what was built. */
const program = new URL(
  import.meta.url.endsWith('.ts') ? 'improve-worker.ts' : 'improve-worker.mjs',
  import.meta.url,
);

export class Improving {
  readonly #options: ImprovingOptions;
  #search: Running | null = null;
  #count = 0;

  constructor(options: ImprovingOptions) {
    this.#options = options;
  }

  async call(name: ImproveCallName, input: unknown): Promise<Answer<ImproveState>> {
    const parsed = improveCalls[name].input.safeParse(input);
    if (!parsed.success) return badInput(parsed.error, input);
    switch (name) {
      case 'host.improve.state':
        return answer(this.#state());
      case 'host.improve.start':
        return this.#start(improveCalls[name].input.parse(input));
      case 'host.improve.stop':
        await this.#end('stopped');
        return answer(this.#state());
      default:
        return never(name);
    }
  }

  /** Of another book nothing is left of it. */
  async close(): Promise<void> {
    await this.#end('stopped');
    this.#search = null;
  }

  async #start(asked: {
    readonly job: string;
    readonly seconds: number;
    readonly now?: string | undefined;
  }): Promise<Answer<ImproveState>> {
    const book = this.#options.book();
    if (book === null) return refuse('no-book', 'No book is open.');
    const facts = await book.read((reader) => readJobFacts(reader, asked.job, asked.now));
    if (!facts.ok) return facts;
    await this.#end('stopped');
    this.#count += 1;
    const input = planInputOfJob(facts.value);
    const worker = new Worker(program, { workerData: { input, seconds: asked.seconds } });
    const search: Running = {
      id: `improve-${this.#count}`,
      job: asked.job,
      startedAt: this.#options.now(),
      startedMs: this.#options.elapsedMs(),
      allowedSeconds: asked.seconds,
      question: questionMark(input),
      worker,
      ended: null,
      refusal: null,
      first: null,
      best: null,
    };
    this.#search = search;
    worker.on('message', (found: Answer<PlanAnswer>) => {
      if (!found.ok) {
        search.refusal = found.error.message;
        return;
      }
      search.first ??= found.value;
      search.best = found.value;
    });
    worker.once('error', (error) => {
      search.refusal ??= error.message;
    });
    worker.once('exit', () => {
      // Whatever it had said is here by now: messages come before the end.
      const how = search.refusal !== null ? 'failed' : search.best?.proven === true ? 'proven' : 'over';
      search.ended ??= { how, atMs: this.#options.elapsedMs() };
    });
    return answer(this.#state());
  }

  async #end(how: Ending): Promise<void> {
    const search = this.#search;
    if (search === null || search.ended !== null) return;
    search.ended = { how, atMs: this.#options.elapsedMs() };
    await search.worker.terminate();
  }

  #state(): ImproveState {
    const search = this.#search;
    if (search === null) return { search: null };
    const { id, job, startedAt, allowedSeconds, question, ended, refusal, first, best } = search;
    const untilMs = ended?.atMs ?? this.#options.elapsedMs();
    return {
      search: {
        id,
        job,
        startedAt,
        allowedSeconds,
        seconds: Math.max(0, (untilMs - search.startedMs) / 1000),
        state: ended?.how ?? 'running',
        refusal,
        before: first === null ? null : figuresOf(first),
        best: best === null ? null : figuresOf(best),
        boundCents: best?.bound ?? 0,
        gapPercent: best?.gapPercent ?? 100,
        question,
        runs: ended === null || best === null ? null : best.runs,
      },
    };
  }
}

function figuresOf({ cost, shortfalls, changed }: PlanAnswer): PlanFigures {
  return {
    totalCents: cost.total,
    unmet: cost.unmet,
    shortfalls: shortfalls.length,
    changedTold: changed?.length ?? 0,
  };
}
