// All that is found of one pour: of its own entries, of what else was entered of it, of the crane that serves it.
import type { BookComponent } from '../book/book.ts';
import type { Crane } from '../pick/setup.ts';
import { type PourFinding, pourFindings } from '../plan/pour-findings.ts';
import type { Job, Pour } from '../plan/pours.ts';
import { enteredFindings } from '../plan/work/entered-findings.ts';
import { reachFindings } from '../plan/work/reach.ts';
import { found } from './by-code.ts';
import type { DesignFacts } from './design-facts.ts';
import type { JobFacts } from './job-facts.ts';
import type { JobPlanning } from './job-planning.ts';

export interface FoundFrom {
  readonly job: Job;
  /** Those that have a date. */
  readonly pours: readonly Pour[];
  readonly designs: ReadonlyMap<string, DesignFacts>;
  readonly planning: Pick<JobPlanning, 'pourFacts'>;
  readonly components: ReadonlyMap<string, BookComponent>;
  readonly cranes: readonly Crane[];
}

export function findingsOfPour(
  { job, pours, designs, planning, components, cranes }: FoundFrom,
  pour: Pour,
): PourFinding[] {
  const entered = planning.pourFacts.get(pour.code);
  // Those of walkways are in the gangs; what carries a storey is entered among other things as well.
  const isBracket = (code: string): boolean => {
    const component = components.get(code);
    return component?.kind === 'bracket' || /bracket|anchor/iu.test(component?.name ?? '');
  };
  return [
    ...pourFindings(job, pour, pours, designs),
    ...enteredFindings(job, pour, pours, entered, isBracket),
    ...reachFindings(pour.code, entered?.reach ?? null, heaviestOf(pour, designs), cranes),
  ];
}

export function foundFrom(facts: JobFacts): FoundFrom {
  const { job, pours, designs, planning, components, source } = facts;
  return { job, pours, designs, planning, components, cranes: source.cranes };
}

function heaviestOf(pour: Pour, designs: ReadonlyMap<string, DesignFacts>) {
  const gangs = pour.sides.flatMap((side) => side.gangs.map(({ design }) => design));
  const weights = [...new Set(gangs)].map((design) => ({
    design,
    weightGrams: found(designs, design).takeOff.weightGrams,
  }));
  return weights.reduce<(typeof weights)[number] | null>(
    (most, each) => (most === null || each.weightGrams > most.weightGrams ? each : most),
    null,
  );
}
