// The only things a signed-in phone may ask: the open tickets of the job, the open counts, one of them in full, and
// to enter what was counted. Whose it is, from which device and when is said by the door, not by the phone.
import { z } from 'zod';
import { answer, refuse, type Answer } from '../answer.ts';
import { countId } from '../procedures/count-shapes.ts';
import { instant } from '../procedures/shapes.ts';
import { enteredLines, ticketId } from '../procedures/ticket-shapes.ts';
import { countEntry } from '../yard/stock-count.ts';
import { badInput } from './bad-input.ts';
import { countedMoment, type SaidMoments } from './phone-clock.ts';
import type { PhoneSession } from './phone-sessions.ts';

export type CallCore = (name: string, input: unknown, who?: string) => Promise<Answer<unknown>>;

export interface Asking {
  readonly call: CallCore;
  /** The one job whose tickets are shown. */
  readonly job: string;
  readonly session: PhoneSession;
  /** Now, by the clock of this machine. */
  readonly at: string;
}

/** Runs one of the few; any other is refused without a word of what there is. */
export async function askOfPhone(asking: Asking, name: string, input: unknown): Promise<Answer<unknown>> {
  const ask = Object.hasOwn(asks, name) ? asks[name] : undefined;
  return ask === undefined ? refuse('not-for-phones', 'A phone cannot ask that.') : ask(asking, input);
}

/** Made on the phone: the same id is the same entry, however often it comes. */
const batchId = z.string().min(16).max(64);
/** `at` is when the last line was counted, `sentAt` when it left, both by the phone's own clock. */
const said = { id: batchId, at: instant, sentAt: instant };
const counter = z.union([z.literal(1), z.literal(2)]);

const asks: Readonly<Record<string, (asking: Asking, input: unknown) => Promise<Answer<unknown>>>> = {
  'phone.hello': reading(z.strictObject({}), ({ job, session }) =>
    Promise.resolve(answer({ job, name: session.name })),
  ),
  'ticket.list': reading(z.strictObject({}), ({ call, job }) => call('ticket.list', { job, state: 'open' })),
  'ticket.read': reading(z.strictObject({ ticket: ticketId }), ticketOfJob),
  'ticket.enter': reading(
    z.strictObject({ ticket: ticketId, lines: enteredLines, ...said }),
    async (asking, input) => {
      const ticket = await ticketOfJob(asking, input);
      return ticket.ok ? enter(asking, 'ticket.enter', input) : ticket;
    },
  ),
  'count.list': reading(z.strictObject({}), ({ call }) => call('count.list', {})),
  // Always as one of the counters: who is none of them sees more than they do.
  'count.read': reading(z.strictObject({ count: countId, counter }), ({ call }, input) =>
    call('count.read', input),
  ),
  'count.enter': reading(
    z.strictObject({ count: countId, counter, lines: countEntry.shape.lines, ...said }),
    (asking, input) => enter(asking, 'count.enter', input),
  ),
};

function reading<Shape extends z.ZodType>(
  shape: Shape,
  run: (asking: Asking, input: z.output<Shape>) => Promise<Answer<unknown>>,
): (asking: Asking, input: unknown) => Promise<Answer<unknown>> {
  return async (asking, input) => {
    const parsed = shape.safeParse(input);
    return parsed.success ? run(asking, parsed.data) : badInput(parsed.error, input);
  };
}

const ofSomeJob = z.looseObject({ ticket: z.looseObject({ job: z.string() }) });

async function ticketOfJob(
  { call, job }: Asking,
  { ticket }: { readonly ticket: string },
): Promise<Answer<unknown>> {
  const read = await call('ticket.read', { ticket });
  if (!read.ok) return read;
  const of = ofSomeJob.parse(read.value).ticket.job;
  return of === job
    ? read
    : refuse('other-job', `Ticket ${ticket} is of job ${of}; this door was opened for job ${job}.`, {
        field: 'ticket',
        hint: `Maybe have the door opened for ${of}.`,
      });
}

interface EnteredLine {
  readonly component: string;
  readonly part?: string;
  readonly location?: string;
  readonly owner?: string | null | undefined;
}

/** As a person counts them: one in several conditions is one. */
function linesOnPaper(lines: readonly EnteredLine[]): number {
  return new Set(
    lines.map(({ component, part, location, owner }) => JSON.stringify([part, location, component, owner])),
  ).size;
}

async function enter(
  { call, session, at: arrival }: Asking,
  name: 'ticket.enter' | 'count.enter',
  { sentAt, ...input }: SaidMoments & { readonly id: string; readonly lines: readonly EnteredLine[] },
): Promise<Answer<unknown>> {
  const { at, clockSaid } = countedMoment(arrival, { at: input.at, sentAt });
  const device = `phone of ${session.name}${clockSaid === null ? '' : `, its clock ${clockSaid}`}`;
  const entered = await call(name, { ...input, commandId: input.id, at, device }, session.name);
  if (entered.ok) {
    session.entries += 1;
    session.lines += linesOnPaper(input.lines);
  }
  return entered;
}
