// What gangs are made of by the designs they were built to: a saved state of a design, taken off by the rule tables
// by which its pieces were counted, so that a later change of either does not change what was built.
import { type Answer, answer, refuse } from '../answer.ts';
import type { BookComponent, BookReader, DesignRevision, Hand, RuleVersion } from '../book/book.ts';
import { catalogueOf, rulesInForce } from '../book/systems.ts';
import { panelSystem } from '../catalogue/system.ts';
import { takeOff, type TakeOff } from '../gang/take-off.ts';
import type { GangStep } from '../yard/gang.ts';
import type { MakeUp } from '../yard/gang-findings.ts';
import type { Pieces } from '../yard/piece-moves.ts';
import { unknownDesign } from './unknown.ts';

export interface GangMakeUp extends MakeUp {
  /** The design's name and drawn revision in that state. */
  readonly name: string;
  readonly revision: string;
  /** Null where that state is not known. */
  readonly hand: Hand | null;
  readonly takeOff: TakeOff | null;
}

type BuiltTo = Pick<GangStep, 'design' | 'designState' | 'ruleVersion'>;

/** One question for every state of a design that a gang was built to. */
export async function readMakeUps(
  book: BookReader,
  builtTo: readonly BuiltTo[],
): Promise<(built: BuiltTo) => GangMakeUp> {
  const [designs, components, versions] = await Promise.all([
    book.designs(),
    book.components(),
    book.ruleVersions(),
  ]);
  const codes = [...new Set(builtTo.map((each) => each.design))];
  const states = new Map<string, readonly DesignRevision[]>();
  for (const design of codes) states.set(design, await book.designRevisions(design));
  const isThere = new Set(designs.map((each) => each.code));
  const known = new Map<string, GangMakeUp>();
  return (built) => {
    const key = JSON.stringify([built.design, built.designState, built.ruleVersion ?? null]);
    const before = known.get(key);
    if (before !== undefined) return before;
    const saved = states.get(built.design) ?? [];
    const state = saved.find((each) => each.number === built.designState);
    const taken = state === undefined ? null : takeOffOf(state, built.ruleVersion, components, versions);
    const made: GangMakeUp = {
      name: state?.name ?? built.design,
      revision: state?.revision ?? '',
      hand: state?.hand ?? null,
      takeOff: taken,
      pieces: taken === null ? null : piecesOfGang(taken, components),
      inForce: isThere.has(built.design) ? (saved.at(-1)?.number ?? null) : null,
    };
    known.set(key, made);
    return made;
  };
}

export interface MakeUpInForce {
  readonly design: string;
  readonly designState: number;
  readonly ruleVersion: number;
  readonly pieces: Pieces;
  readonly takeOff: TakeOff;
}

/** Of a design as it is in force now: what a gang is built or re-ganged to. */
export async function makeUpInForce(book: BookReader, design: string): Promise<Answer<MakeUpInForce>> {
  const [designs, states, components, versions] = await Promise.all([
    book.designs(),
    book.designRevisions(design),
    book.components(),
    book.ruleVersions(),
  ]);
  const state = states.at(-1);
  if (state === undefined || !designs.some((each) => each.code === design)) return unknownDesign(design);
  const ruleVersion = rulesInForce(versions).get(state.system)?.version ?? 0;
  const taken = takeOffOf(state, ruleVersion, components, versions);
  if (taken === null)
    return refuse('no-take-off', `Design ${design} cannot be taken off by the rule tables in force.`, {
      field: 'design',
      hint: 'Maybe a panel of it is not among the components any more.',
    });
  return answer({
    design,
    designState: state.number,
    ruleVersion,
    pieces: piecesOfGang(taken, components),
    takeOff: taken,
  });
}

/** Without hooks: they are lifting gear and fly with the crane. */
function piecesOfGang({ lines }: TakeOff, components: readonly BookComponent[]): Pieces {
  const hooks = new Set(components.filter((each) => each.kind === 'hook').map((each) => each.code));
  return Object.fromEntries(
    lines.filter((line) => !hooks.has(line.component)).map((line) => [line.component, line.quantity]),
  );
}

function takeOffOf(
  state: DesignRevision,
  ruleVersion: number = state.ruleVersion,
  components: readonly BookComponent[],
  versions: readonly RuleVersion[],
): TakeOff | null {
  const rules = versions.find((each) => each.system === state.system && each.version === ruleVersion);
  if (rules === undefined) return null;
  const system = panelSystem(catalogueOf(components, state.system), rules.rules);
  const taken = system.ok ? takeOff(system.value, state.geometry) : system;
  return taken.ok ? taken.value : null;
}
