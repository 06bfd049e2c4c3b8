// What the rule tables make of a gang that is still being drawn, or of rule tables that are still being typed.
// Stores nothing.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { changedCatalogue, rulesInForce, systemOf } from '../book/systems.ts';
import { ruleTables } from '../catalogue/rules.ts';
import { designGeometry } from '../gang/design.ts';
import { takeOff } from '../gang/take-off.ts';
import { bookComponent } from './component-shape.ts';
import { likenessOf, likenessShape } from './design-likeness.ts';
import { query } from './procedure.ts';
import { code, lengthNm } from './shapes.ts';
import { shownTakeOff, shownTakeOffShape } from './shown-takeoff.ts';

export const designDraft = query({
  name: 'design.draft',
  input: z.strictObject({
    system: code,
    geometry: designGeometry,
    /** In place of those in force. */
    rules: z.exactOptional(ruleTables),
    /** Changed or new ones, in place of those in the book. */
    components: z.exactOptional(z.array(bookComponent).max(5000)),
    /** The design it is a draft of, which it is not held against. */
    design: z.exactOptional(code),
  }),
  output: z.strictObject({
    ...shownTakeOffShape,
    /** Where the gang's lower left corner lies on the draft: places in the answer are from there. */
    origin: z.strictObject({ xNm: lengthNm, yNm: lengthNm }),
    ...likenessShape,
  }),
  run: async (book, { system: systemCode, geometry, rules, components: changed = [], design }) => {
    const [components, versions, designs] = await Promise.all([
      book.components(),
      book.ruleVersions(),
      book.designs(),
    ]);
    const inForce = new Map(rulesInForce(versions));
    if (rules !== undefined)
      inForce.set(systemCode, { system: systemCode, systemName: systemCode, version: 0, rules });
    const system = systemOf(systemCode, changedCatalogue(components, changed), inForce);
    if (!system.ok) return system;
    const taken = takeOff(system.value, geometry);
    if (!taken.ok) return taken;
    const others = designs.filter((each) => each.system === systemCode && each.code !== design);
    const alike = likenessOf(system.value, geometry, others);
    if (!alike.ok) return alike;
    const { origin } = taken.value;
    return answer({
      ...shownTakeOff(taken.value, geometry.edges),
      origin: { ...origin },
      ...alike.value,
    });
  },
});
