// The spares of a job: what its turns hold at most, by the rates of the book.
import type { BookComponent } from '../book/book.ts';
import { mostStanding } from '../plan/most-standing.ts';
import type { Job, Pour } from '../plan/pours.ts';
import { turnsFromPours } from '../plan/turns-from-pours.ts';
import { componentRates, type ComponentRate } from '../yard/rates.ts';
import { spareOf, type SpareLine } from '../yard/spares.ts';
import type { DesignFacts } from './design-facts.ts';
import { found } from './by-code.ts';
import type { JobPlanning } from './job-planning.ts';
import type { JobYard } from './yard-facts.ts';

export interface SpareFacts {
  readonly job: Job;
  readonly planning: Pick<JobPlanning, 'pourFacts'>;
  readonly pours: readonly Pour[];
  readonly designs: ReadonlyMap<string, DesignFacts>;
  readonly components: readonly BookComponent[];
  readonly yard: Pick<JobYard, 'tickets' | 'counts' | 'settings'>;
}

/** Of the components that the job's turns hold, in the order of the catalogue. */
export function jobSpares(facts: SpareFacts): readonly (SpareLine & { readonly of: ComponentRate })[] {
  const { job, pours, designs, components, yard, planning } = facts;
  const { turns, loose } = turnsFromPours(job, pours, designs, planning.pourFacts);
  const most = mostStanding(turns, loose, (design) => found(designs, design).pieces);
  return componentRates({ ...yard, components }).flatMap((rate) => {
    const own = most.get(rate.component);
    if (own === undefined) return [];
    const { component, used } = rate;
    return [{ component, rate: used, most: own, spare: spareOf(used, own), of: rate }];
  });
}
