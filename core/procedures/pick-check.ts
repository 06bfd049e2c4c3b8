// Checks a pick as it is entered: what hangs on the hooks and on the crane, and what stands against it. Stores
// nothing.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { rulesInForce, systemOf } from '../book/systems.ts';
import { checkPick } from '../pick/pick-check.ts';
import { pickSetup } from '../pick/setup.ts';
import { findSplit } from '../pick/split.ts';
import { shownPick, shownPickShape } from './pick-shapes.ts';
import { query } from './procedure.ts';
import { code } from './shapes.ts';
import { unknownDesign } from './unknown.ts';

export const pickCheck = query({
  name: 'pick.check',
  input: z.strictObject({ design: code, setup: pickSetup }),
  output: shownPickShape,
  run: async (book, { design: designCode, setup }) => {
    const [designs, components, versions, cranes] = await Promise.all([
      book.designs(),
      book.components(),
      book.ruleVersions(),
      book.cranes(),
    ]);
    const design = designs.find((each) => each.code === designCode);
    if (design === undefined) return unknownDesign(designCode);
    const crane = cranes.find((each) => each.code === setup.crane) ?? null;
    if (crane === null && setup.crane !== null) return unknownCrane(setup.crane);
    const system = systemOf(design.system, components, rulesInForce(versions));
    if (!system.ok) return system;
    const { geometry } = design;
    const check = checkPick(system.value, geometry, setup, crane);
    if (!check.ok) return check;
    const refused = check.value.verdict === 'refused';
    const split = refused ? findSplit(system.value, geometry, setup, crane) : null;
    return answer(shownPick(check.value, split, geometry.edges));
  },
});

export function unknownCrane(craneCode: string) {
  return refuse('unknown-crane', `There is no crane ${craneCode} in this book.`, { field: 'setup.crane' });
}
