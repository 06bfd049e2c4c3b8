// When a job's plan rests on weak figures: nearly used up or short, of a component whose quantity was estimated, taken from
// a list or is old.
import { msOf } from '../plan/local-time.ts';
import { nearlyUsedUp } from '../plan/nearly-used-up.ts';
import { tolerancePercent } from '../yard/count-class.ts';
import type { JobPlan } from './job-plan.ts';

export interface WeakStretch {
  readonly component: string;
  readonly from: number;
  readonly to: number;
}

/** A weak figure is taken to be off by as much as the widest tolerance of a count. */
export function weakStretches({ facts, input, answer }: JobPlan): readonly WeakStretch[] {
  const weak = [...facts.figures].filter(([, figure]) => figure.basis !== 'counted' || figure.isOld);
  const near = nearlyUsedUp(input, answer, new Set(weak.map(([component]) => component)), tolerancePercent.C);
  if (!near.ok) return [];
  return near.value.map(({ component, from, to }) => ({ component, from: msOf(from), to: msOf(to) }));
}
