// The steps of a day as its report keeps them: with what was planned, and the contact face of their gangs.
import { instantText } from '../plan/local-time.ts';
import type { JobEntry } from '../plan/job-entries.ts';
import { found } from './by-code.ts';
import type { EndOfDay } from './end-of-day.ts';

export function reportedSteps({ said, day }: EndOfDay): JobEntry<'day-report'>['steps'] {
  const { job, designs } = day.facts;
  const text = (ms: number): string => instantText(ms, job.timeZone);
  return said.map(({ line, said: step }) => {
    const face = line.designs.reduce(
      (sum, { design, quantity }) =>
        sum + (designs.has(design) ? found(designs, design).takeOff.areaNm2 * BigInt(quantity) : 0n),
      0n,
    );
    return {
      kind: line.kind,
      pour: line.pour,
      toPour: line.toPour,
      turns: [...line.turns],
      designs: line.designs.map((each) => ({ ...each })),
      areaNm2: face.toString(),
      plannedFrom: text(line.from),
      plannedTo: text(line.to),
      leftFrom: line.leftFrom,
      done: line.done,
      reason: line.reason,
      // Times of what did not happen say nothing.
      from: line.done ? (step.from ?? null) : null,
      to: line.done ? (step.to ?? null) : null,
      people: line.done ? (step.people ?? null) : null,
    };
  });
}
