// How a day ended as somebody says it, checked against the list of the day: a step that did not happen has a reason,
// times follow one another, and no later step of a pour was done before an earlier one.
import { z } from 'zod';
import { answer, type Answer, refuse } from '../answer.ts';
import type { DayLine } from '../plan/day-end/day-lines.ts';
import type { EndedLine } from '../plan/day-end/day-moves.ts';
import { msOf } from '../plan/local-time.ts';
import { stepWords } from '../sheets/step-words.ts';
import { code, date, instant } from './shapes.ts';
import { reason } from './shown-day.ts';

export const endedStep = z.strictObject({
  /** Of the list of the day. */
  id: z.string(),
  done: z.boolean(),
  reason: z.exactOptional(reason.nullable()),
  /** When it really began and ended, and how many people did it. */
  from: z.exactOptional(instant.nullable()),
  to: z.exactOptional(instant.nullable()),
  people: z.exactOptional(z.number().min(0).max(1000).nullable()),
});
export type EndedStep = z.output<typeof endedStep>;

export const endedDay = { job: code, date, steps: z.array(endedStep).max(400) };

/** A line with what was said of it. */
export interface SaidLine {
  readonly line: EndedLine;
  readonly said: EndedStep;
}

const dayMs = 86_400_000;

/** Codes: unknown-step, step-missing, reason-needed, times-order, times-far, step-out-of-order. */
export function endedLines(
  lines: readonly DayLine[],
  steps: readonly EndedStep[],
): Answer<readonly SaidLine[]> {
  const said = new Map(steps.map((step, index) => [step.id, { step, index }]));
  const unknown = steps.findIndex(({ id }) => !lines.some((line) => line.id === id));
  if (unknown >= 0)
    return refuse('unknown-step', `The day has no step ${steps[unknown]?.id ?? ''}.`, {
      field: `steps[${unknown}].id`,
      hint: 'Maybe the plan was changed since the list was read: read it once more.',
    });
  const all: SaidLine[] = [];
  for (const line of lines) {
    const found = said.get(line.id);
    if (found === undefined)
      return refuse('step-missing', `Nothing is said of "${stepWords(line)}".`, {
        field: 'steps',
        hint: 'Maybe the plan was changed since the list was read: read it once more.',
      });
    const wrong = wrongTimes(line, found.step, `steps[${found.index}]`);
    if (wrong !== null) return wrong;
    all.push({ line: endedLine(line, found.step), said: found.step });
  }
  return outOfOrder(all) ?? answer(all);
}

function endedLine(line: DayLine, { done, reason: why, to }: EndedStep): EndedLine {
  return {
    ...line,
    done,
    reason: done ? null : (why ?? null),
    endedAt: done && to !== undefined && to !== null ? msOf(to) : null,
  };
}

function wrongTimes(line: DayLine, step: EndedStep, field: string): Answer<never> | null {
  const words = stepWords(line);
  if (!step.done && (step.reason ?? null) === null)
    return refuse('reason-needed', `"${words}" did not happen, and no reason is given.`, {
      field: `${field}.reason`,
      hint: 'Maybe weather, crane, or one of the others.',
    });
  if (!step.done) return null;
  const { from = null, to = null } = step;
  if (from !== null && to !== null && msOf(to) < msOf(from))
    return refuse('times-order', `"${words}" ended at ${to}, before it began at ${from}.`, {
      field: `${field}.to`,
    });
  for (const [name, at] of [
    ['from', from],
    ['to', to],
  ] as const)
    if (at !== null && Math.abs(msOf(at) - line.to) > 7 * dayMs)
      return refuse('times-far', `"${words}" was planned for another week than ${at}.`, {
        field: `${field}.${name}`,
        hint: 'Maybe the date was mistyped.',
      });
  return null;
}

const stages = ['set', 'close', 'pour', 'strip'];

/** A pour that was not closed cannot have been poured; who says so has ticked one too many. */
function outOfOrder(all: readonly SaidLine[]): Answer<never> | null {
  for (const { line } of all) {
    if (line.done || !stages.includes(line.kind)) continue;
    const index = all.findIndex(
      ({ line: other }) =>
        other.pour === line.pour && other.done && stages.indexOf(other.kind) > stages.indexOf(line.kind),
    );
    const later = all[index]?.line;
    if (later !== undefined)
      return refuse(
        'step-out-of-order',
        `"${stepWords(later)}" cannot have been done while "${stepWords(line)}" was not.`,
        { field: `steps[${index}].done` },
      );
  }
  return null;
}
