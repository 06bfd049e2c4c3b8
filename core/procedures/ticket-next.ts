// Which strips come next by the plan and are on no ticket yet, so that a ticket is one click away.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { instantText } from '../plan/local-time.ts';
import { momentMs } from '../yard/moment.ts';
import { loosePart } from '../yard/strip-ticket.ts';
import { found } from './by-code.ts';
import { readJobFacts } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { shownTurns } from './shown-turns.ts';
import { nextOf, standingAt } from './ticket-parts.ts';
import { nextWords } from './ticket-words.ts';
import { yardNow } from './yard-now.ts';

/** Strips of the days before that are on no ticket come first with those to come; those long gone after them. */
const daysBack = 14;
const msPerDay = 86_400_000;

export const ticketNext = query({
  name: 'ticket.next',
  input: z.strictObject({
    job: code,
    /** What counts as now; absent: when the book last heard of anything. */
    now: instant.optional(),
    limit: z.int().min(1).max(60).default(8),
  }),
  output: z.strictObject({
    strips: z.array(
      z.strictObject({
        pour: code,
        name: z.string(),
        /** By the plan: a forecast, no release. */
        stripFrom: instant,
        stripTo: instant,
        isPast: z.boolean(),
        turns: z.array(
          z.strictObject({
            turn: z.string(),
            design: code,
            gang: code.nullable(),
            nextWords: z.string(),
          }),
        ),
        /** Loose pieces of the pour that are on no ticket. */
        loose: z.int(),
      }),
    ),
  }),
  run: async (book, { job, now: asked, limit }) => {
    const facts = await readJobFacts(book, job);
    if (!facts.ok) return facts;
    const planned = planJob(facts.value);
    if (!planned.ok) return planned;
    const { turnsOf, runs } = planned.value;
    const { timeZone } = facts.value.job;
    const now = momentMs(await yardNow(book, asked)) ?? 0;
    const tickets = (await book.tickets({ job })).filter(({ state }) => state !== 'dropped');
    const gangs = await book.gangs();
    const onTicket = new Set(tickets.flatMap(({ parts }) => parts.flatMap(({ turn }) => turn ?? [])));
    const looseDone = new Set(
      tickets.flatMap(({ pour, parts }) => (parts.some(({ part }) => part === loosePart) ? [pour] : [])),
    );
    const all = shownTurns(runs, turnsOf.turns, timeZone);
    const strips = facts.value.pours.flatMap((pour) => {
      const { stripFrom, stripTo } = found(turnsOf.times, pour.code);
      const turns = all.filter((turn) => turn.pour === pour.code && !onTicket.has(turn.id));
      const loose = looseDone.has(pour.code)
        ? 0
        : turnsOf.loose.reduce((sum, line) => sum + (line.pour === pour.code ? line.quantity : 0), 0);
      if (turns.length === 0 && loose === 0) return [];
      return [{ pour, stripFrom, stripTo, turns, loose }];
    });
    const isLongGone = ({ stripTo }: { readonly stripTo: number }): boolean =>
      stripTo < now - daysBack * msPerDay;
    strips.sort((one, other) => one.stripFrom - other.stripFrom);
    const ordered = [
      ...strips.filter((each) => !isLongGone(each)),
      ...strips.filter((each) => isLongGone(each)).reverse(),
    ];
    return answer({
      strips: ordered.slice(0, limit).map(({ pour, stripFrom, stripTo, turns, loose }) => ({
        pour: pour.code,
        name: pour.name,
        stripFrom: instantText(stripFrom, timeZone),
        stripTo: instantText(stripTo, timeZone),
        isPast: stripTo < now,
        turns: turns.map((turn) => ({
          turn: turn.id,
          design: turn.design,
          gang: standingAt(gangs, job, turn.id)?.code ?? null,
          nextWords: nextWords(nextOf(turn, all, 'the yard'), 'the yard'),
        })),
        loose,
      })),
    });
  },
});
