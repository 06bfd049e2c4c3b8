// What the rule tables make of the designs in the book. Lists of pieces are never stored; they follow here,
// for the screens, the plan and the ties alike.
import { answer, refuse, type Answer } from '../answer.ts';
import type { BookReader, Design } from '../book/book.ts';
import { rulesInForce, systemOf } from '../book/systems.ts';
import type { RuleTables } from '../catalogue/rules.ts';
import type { PointNm } from '../gang/findings.ts';
import { takeOff, type TakeOff } from '../gang/take-off.ts';
import type { PourDesign } from '../plan/meeting-locks.ts';

export interface DesignFacts extends PourDesign {
  readonly design: Design;
  readonly ruleVersion: number;
  readonly takeOff: TakeOff;
  /** The tables it was taken off by. */
  readonly rules: RuleTables;
  /** What the gang holds while it stands: the take-off without its hooks, which fly with the crane. */
  readonly pieces: Readonly<Record<string, number>>;
}

/** The take-off of every design, by code. Refused where a design cannot be taken off at all. */
export async function readDesignFacts(book: BookReader): Promise<Answer<ReadonlyMap<string, DesignFacts>>> {
  const [designs, components, versions] = await Promise.all([
    book.designs(),
    book.components(),
    book.ruleVersions(),
  ]);
  const rules = rulesInForce(versions);
  const hooks = new Set(components.filter((each) => each.kind === 'hook').map((each) => each.code));
  const shrinking = new Set(components.filter((each) => each.canShrink === true).map((each) => each.code));
  const facts = new Map<string, DesignFacts>();
  for (const design of designs) {
    const system = systemOf(design.system, components, rules);
    if (!system.ok) return ofDesign(design, system);
    const taken = takeOff(system.value, design.geometry);
    if (!taken.ok) return ofDesign(design, taken);
    facts.set(design.code, {
      design,
      ruleVersion: rules.get(design.system)?.version ?? 0,
      takeOff: taken.value,
      rules: system.value.rules,
      edges: design.geometry.edges,
      braced: design.geometry.braced ?? true,
      shrinking,
      pieces: Object.fromEntries(
        taken.value.lines
          .filter((line) => !hooks.has(line.component))
          .map((line) => [line.component, line.quantity]),
      ),
      widthNm: taken.value.widthNm,
      holes: holesFromCorner(taken.value),
    });
  }
  return answer(facts);
}

/** Holes from the gang's lower left corner, wherever its drawing begins. */
function holesFromCorner({ holes, origin }: TakeOff): readonly PointNm[] {
  return (holes ?? []).map(({ xNm, yNm }) => ({ xNm: xNm - origin.xNm, yNm: yNm - origin.yNm }));
}

function ofDesign(design: Design, refused: Answer<unknown>): Answer<never> {
  if (refused.ok) throw new Error('A refusal was expected');
  const { code, message, ...more } = refused.error;
  return refuse(code, `Design ${design.code}: ${message}`, more);
}
