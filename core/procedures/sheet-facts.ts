// Everything of the book that the sheets of a gang rest on; laying it out comes after (core/sheets).
import { answer, refuse, type Answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { rulesInForce } from '../book/systems.ts';
import { type RuleTables, ruleSource } from '../catalogue/rules.ts';
import type { Job, Pour, PourSide } from '../plan/pours.ts';
import type { HookRule } from '../sheets/hooks-part.ts';
import type { SheetGangName } from '../sheets/title-part.ts';
import type { WallSide } from '../sheets/wall-part.ts';
import { found } from './by-code.ts';
import { readDesignFacts, type DesignFacts } from './design-facts.ts';
import { turnsByDesign, type DesignTurn } from './design-turns.ts';
import { unknownDesign, unknownJob, unknownPour } from './unknown.ts';

export interface SheetAsked {
  readonly design: string;
  readonly job?: string;
  readonly pour?: string;
  readonly units?: 'us' | 'metric';
}

export interface SheetFacts {
  readonly facts: DesignFacts;
  readonly gang: SheetGangName;
  readonly hookRule: HookRule | null;
  readonly job: Job | null;
  readonly walls: readonly WallSide[];
  /** Where else it is planned to stand, in words. */
  readonly othersInWords: string;
  readonly units: 'us' | 'metric';
}

export async function readSheetFacts(book: BookReader, asked: SheetAsked): Promise<Answer<SheetFacts>> {
  const [designs, turnsOfAll, versions, states] = await Promise.all([
    readDesignFacts(book),
    turnsByDesign(book),
    book.ruleVersions(),
    book.designRevisions(asked.design),
  ]);
  if (!designs.ok) return designs;
  const facts = designs.value.get(asked.design);
  if (facts === undefined) return unknownDesign(asked.design);
  const turns = turnsOfAll.get(asked.design) ?? [];
  const jobCode = asked.job ?? onlyJobOf(turns);
  if (asked.pour !== undefined && jobCode === undefined)
    return refuse('job-needed', `The pour ${asked.pour} needs its job.`, { field: 'job' });
  const job = jobCode === undefined ? null : await book.job(jobCode);
  if (jobCode !== undefined && job === null) return unknownJob(jobCode);
  const ofJob = turns.filter((turn) => turn.job === job?.code);
  const pour = await pourOf(book, asked, job, ofJob);
  if (!pour.ok) return pour;
  const rule = rulesInForce(versions).get(facts.design.system);
  const { code, name, revision, hand, system } = facts.design;
  const state = states.at(-1);
  return answer({
    facts,
    gang: {
      code,
      name,
      revision,
      hand,
      systemName: rule?.systemName ?? system,
      ruleVersion: facts.ruleVersion,
      state: { number: state?.number ?? 1, savedAt: state?.savedAt ?? null, who: state?.who ?? null },
    },
    hookRule: hookRuleOf(rule?.rules),
    job,
    walls: pour.value === null ? [] : wallsOf(pour.value, asked.design, designs.value),
    othersInWords: othersOf(ofJob, pour.value),
    units: asked.units ?? job?.units ?? 'us',
  });
}

function onlyJobOf(turns: readonly DesignTurn[]): string | undefined {
  const jobs = new Set(turns.map(({ job }) => job));
  return jobs.size === 1 ? [...jobs][0] : undefined;
}

async function pourOf(
  book: BookReader,
  asked: SheetAsked,
  job: Job | null,
  turns: readonly DesignTurn[],
): Promise<Answer<Pour | null>> {
  if (job === null) return answer(null);
  const first = [...turns].sort((one, other) => Date.parse(one.from) - Date.parse(other.from))[0];
  const code = asked.pour ?? first?.pour;
  if (code === undefined) return answer(null);
  const pour = (await book.pours(job.code)).find((each) => each.code === code);
  if (pour === undefined) return unknownPour(code, job.code);
  if (pour.sides.some((side) => standsOn(side, asked.design))) return answer(pour);
  const others = [...new Set(turns.map((turn) => turn.pour))].slice(0, 5);
  return refuse('not-at-pour', `${asked.design} stands on no side of ${code}.`, {
    field: 'pour',
    ...(others.length > 0 && { hint: `Maybe one of ${others.join(', ')} was meant.` }),
  });
}

function standsOn(side: PourSide, design: string): boolean {
  return side.gangs.some((gang) => gang.design === design);
}

function wallsOf(pour: Pour, design: string, designs: ReadonlyMap<string, DesignFacts>): readonly WallSide[] {
  return pour.sides
    .filter((side) => standsOn(side, design))
    .map(({ side, gangs }) => ({
      pour: pour.code,
      pourName: pour.name,
      side,
      gangs: gangs.map(({ design: code, atNm }) => {
        const { widthNm, heightNm } = found(designs, code).takeOff;
        return { design: code, atNm, widthNm, heightNm };
      }),
    }));
}

function othersOf(turns: readonly DesignTurn[], drawn: Pour | null): string {
  const others = turns
    .filter((turn) => turn.pour !== drawn?.code)
    .map(({ pour, side }) => `${pour} side ${side}`);
  return others.length === 0 ? '' : `Also planned at: ${[...new Set(others)].join(', ')}.`;
}

function hookRuleOf(rules: RuleTables | undefined): HookRule | null {
  const hooks = rules?.hooks;
  if (rules === undefined || hooks === undefined) return null;
  const { capacityGrams, ratedFor, minimum, minimumAngleDeg } = hooks;
  const source = ruleSource(rules, 'hooks.capacityKg');
  return {
    capacityGrams,
    ratedFor,
    minimum,
    source,
    ...(minimumAngleDeg !== undefined && { minimumAngleDeg }),
  };
}
