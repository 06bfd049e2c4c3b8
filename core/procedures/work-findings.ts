// What is found of a job's cranes and pads as a whole: a crane without a chart or that reaches nothing, a pad out of reach.
import type { PourFinding } from '../plan/pour-findings.ts';
import { padFindings, uselessCranes } from '../plan/work/reach.ts';
import type { JobFacts } from './job-facts.ts';

export function workFindings({
  pours,
  planning,
  source,
}: Pick<JobFacts, 'pours' | 'planning' | 'source'>): PourFinding[] {
  const { settings, pourFacts } = planning;
  const reaches = pours.flatMap(({ code }) => pourFacts.get(code)?.reach ?? []);
  const used = [...settings.cranes.map(({ crane }) => crane), ...reaches.map(({ crane }) => crane)];
  return [...uselessCranes(used, reaches, source.cranes), ...padFindings(settings.pads, source.cranes)];
}
