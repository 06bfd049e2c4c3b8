// A line of a day's list as doors are shown it: with names, tags, gates that are open, and what waits for it.
import { z } from 'zod';
import { never } from '../answer.ts';
import type { DayLine } from '../plan/day-end/day-lines.ts';
import { missReasons } from '../plan/day-end/reasons.ts';
import { instantText, localDate } from '../plan/local-time.ts';
import { gateNeededBy } from '../plan/pour-findings.ts';
import { closingSide, setFromOf } from '../plan/pour-times.ts';
import { reportedKinds } from '../plan/steps.ts';
import { type DayFacts, tagsAt } from './day-facts.ts';
import { code, date, instant, quantity } from './shapes.ts';

export const reason = z.enum(missReasons);
const ended = {
  done: z.boolean(),
  reason: reason.nullable(),
  from: instant.nullable(),
  to: instant.nullable(),
  people: z.number().min(0).max(1000).nullable(),
};

export const dayLine = z.strictObject({
  id: z.string(),
  kind: z.enum(reportedKinds),
  pour: code,
  pourName: z.string(),
  toPour: code.nullable(),
  turns: z.array(z.string()),
  designs: z.array(z.strictObject({ design: code, quantity })),
  /** Tags of the gangs that are built for it. */
  gangs: z.array(z.string()),
  /** As planned. */
  from: instant,
  to: instant,
  /** The date for which it was planned first. */
  leftFrom: date.nullable(),
  /** Gates not done that stand before it. */
  openGates: z.array(
    z.strictObject({ name: z.string(), who: z.string(), promised: date, late: z.boolean() }),
  ),
  /** What waits for it. */
  feeds: z.array(
    z.strictObject({ kind: z.enum(['set', 'close', 'pour', 'strip']), pour: code, at: instant }),
  ),
  reported: z.strictObject(ended).nullable(),
});

export function shownLine(line: DayLine, day: DayFacts): z.input<typeof dayLine> {
  const { id, kind, pour, toPour, leftFrom, reported } = line;
  const { job, pours } = day.facts;
  return {
    id,
    kind,
    pour,
    pourName: pours.find((each) => each.code === pour)?.name ?? '',
    toPour,
    turns: [...line.turns],
    designs: line.designs.map((each) => ({ ...each })),
    gangs: [...tagsAt(day.gangs, job.code, line.turns)],
    from: instantText(line.from, job.timeZone),
    to: instantText(line.to, job.timeZone),
    leftFrom,
    openGates: openGates(line, day),
    feeds: feedsOf(line, day),
    reported:
      reported === null
        ? null
        : {
            done: reported.done,
            reason: reported.reason,
            from: reported.from,
            to: reported.to,
            people: reported.people,
          },
  };
}

function openGates({ kind, pour: codeOf }: DayLine, { facts, plan }: DayFacts) {
  const pour = facts.pours.find((each) => each.code === codeOf);
  const times = plan.turnsOf.times.get(codeOf);
  if (pour === undefined || times === undefined) return [];
  return pour.gates
    .filter((gate) => !gate.done && gate.before === kind)
    .map((gate) => ({
      name: gate.name,
      who: gate.who,
      promised: gate.promised,
      late: gate.promised > localDate(gateNeededBy(times, gate), facts.job.timeZone),
    }));
}

interface Fed {
  readonly kind: 'set' | 'close' | 'pour' | 'strip';
  readonly pour: string;
  readonly atMs: number;
}

function feedsOf(line: DayLine, day: DayFacts) {
  const { timeZone } = day.facts.job;
  const seen = new Map(fedBy(line, day).map((each) => [JSON.stringify(each), each]));
  return [...seen.values()]
    .sort((one, other) => one.atMs - other.atMs)
    .map(({ kind, pour, atMs }) => ({ kind, pour, at: instantText(atMs, timeZone) }));
}

function fedBy({ kind, pour, toPour, turns }: DayLine, { facts, plan }: DayFacts): readonly Fed[] {
  const times = plan.turnsOf.times.get(pour);
  const own = facts.pours.find((each) => each.code === pour);
  if (times === undefined || own === undefined) return [];
  const setOf = (id: string): readonly Fed[] =>
    plan.turnsOf.turns
      .filter((turn) => turn.id === id)
      .map((turn) => ({ kind: 'set', pour: turn.pour, atMs: turn.from }));
  switch (kind) {
    case 'assemble':
      return turns.flatMap(setOf);
    case 'fly-on':
    case 'regang':
      return turns.flatMap(setOf).filter((each) => each.pour === toPour);
    case 'set':
      return own.order === 'face-first'
        ? [{ kind: 'close', pour, atMs: setFromOf(times, closingSide(times)) }]
        : [{ kind: 'pour', pour, atMs: times.finish }];
    case 'close':
      return [{ kind: 'pour', pour, atMs: times.finish }];
    case 'pour':
      return [{ kind: 'strip', pour, atMs: times.stripFrom }];
    case 'strip':
      return plan.runs
        .flatMap(({ follows }) => follows)
        .filter(({ from }) => turns.includes(from))
        .flatMap(({ to }) => setOf(to));
    case 'break-down':
      return [];
    default:
      return never(kind);
  }
}
