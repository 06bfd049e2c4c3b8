// What a pour must not be: side A missing, closed before it was set, poured before it was closed, after
// itself. Such a pour is refused before it is stored. The checks run in a fixed order, one code a reason.
import { refuse, type Refusal } from '../answer.ts';
import { circlesIn, shortestCircle } from './circles.ts';
import { instantText } from './local-time.ts';
import { pourTimes, setFromOf, type PourTimes } from './pour-times.ts';
import type { Job, Pour } from './pours.ts';

/** The codes that a pour may name. */
export interface KnownCodes {
  readonly designs: ReadonlySet<string>;
  readonly components: ReadonlySet<string>;
}

/**
 * The first reason to refuse the pour, if there is one.
 * @param others all pours of the job; one of the same code is taken to be replaced
 */
export function checkPour(
  job: Job,
  pour: Pour,
  others: readonly Pour[],
  known: KnownCodes,
): Refusal | undefined {
  const times = pourTimes(pour, job);
  return (
    checkSides(pour) ??
    checkKnown(pour, known) ??
    checkOrder(job, pour, times) ??
    checkPredecessors(pour, others)
  );
}

function checkSides(pour: Pour): Refusal | undefined {
  const names = pour.sides.map((side) => side.side).join(' and ');
  if (names !== 'A and B')
    return refuse('sides', `Pour ${pour.code} has sides ${names}; it needs A and B.`, { field: 'sides' })
      .error;
  for (const side of pour.sides)
    for (const gang of side.gangs)
      if (gang.atNm < 0)
        return refuse(
          'gang-before-start',
          `Pour ${pour.code}: gang ${gang.design} on side ${side.side} begins before the pour does.`,
          { field: `sides.${side.side}.gangs` },
        ).error;
  return undefined;
}

function checkKnown(pour: Pour, known: KnownCodes): Refusal | undefined {
  for (const side of pour.sides)
    for (const gang of side.gangs)
      if (!known.designs.has(gang.design))
        return refuse(
          'unknown-design',
          `Pour ${pour.code}, side ${side.side}: there is no design ${gang.design}.`,
          {
            field: `sides.${side.side}.gangs`,
            hint: 'Maybe the design is still to be imported.',
          },
        ).error;
  const named = [
    ...pour.loose.map((line) => ({ component: line.component, field: 'loose' })),
    ...(pour.tieComponent === null ? [] : [{ component: pour.tieComponent, field: 'tieComponent' }]),
  ];
  for (const { component, field } of named)
    if (!known.components.has(component))
      return refuse('unknown-component', `Pour ${pour.code}: there is no component ${component}.`, {
        field,
        hint: 'Maybe the component is still to be imported.',
      }).error;
  return undefined;
}

function checkOrder(job: Job, pour: Pour, times: PourTimes): Refusal | undefined {
  const text = (ms: number): string => instantText(ms, job.timeZone);
  const [setA, setB] = [setFromOf(times, 'A'), setFromOf(times, 'B')];
  if (pour.order === 'face-first' && setB < setA)
    return refuse(
      'close-before-set',
      `Pour ${pour.code} closes side B at ${text(setB)}, before side A is set at ${text(setA)}.`,
      { field: 'sides.B.setAt', hint: 'Maybe the two set dates were exchanged.' },
    ).error;
  for (const side of times.sides)
    if (times.finish <= side.setFrom)
      return refuse(
        'finish-before-set',
        `Pour ${pour.code} finishes at ${text(times.finish)}, before side ${side.side} is set at ${text(side.setFrom)}.`,
        { field: 'finishAt' },
      ).error;
  return undefined;
}

function checkPredecessors(pour: Pour, others: readonly Pour[]): Refusal | undefined {
  const byCode = new Map(others.map((each) => [each.code, each]));
  byCode.set(pour.code, pour);
  for (const code of pour.after)
    if (!byCode.has(code))
      return refuse('unknown-pour', `Pour ${pour.code} comes after ${code}, which is not in this job.`, {
        field: 'after',
      }).error;
  const before = new Map([...byCode].map(([code, { after }]) => [code, after]));
  const [walked] = circlesIn(before);
  const circle = walked === undefined ? undefined : shortestCircle(walked, before);
  if (circle !== undefined)
    return refuse('cyclic-sequence', `The pours go in a circle: ${roundTrip(circle, pour.code)}.`, {
      field: 'after',
    }).error;
  return undefined;
}

/** The circle from the pour at hand, where it is in it, back to where it began. */
function roundTrip(circle: readonly string[], from: string): string {
  const start = Math.max(0, circle.indexOf(from));
  const turned = [...circle.slice(start), ...circle.slice(0, start)];
  return [...turned, turned[0]].join(' after ');
}
