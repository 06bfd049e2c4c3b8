// One design: where every panel stands, what the rule tables take off and why, what they find, and
// everything that its elevation is drawn from. Seen from the back, lengths from the lower left corner.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { catalogueSystem } from '../book/systems.ts';
import { atCorner } from '../gang/at-corner.ts';
import { designGeometry } from '../gang/design.ts';
import { rowText } from '../gang/row-text.ts';
import { asData } from './as-data.ts';
import { readDesignFacts } from './design-facts.ts';
import { detailOf } from './design-detail.ts';
import { likenessOf, likenessShape } from './design-likeness.ts';
import { turnsByDesign } from './design-turns.ts';
import { unknownDesign } from './unknown.ts';
import { designSummary } from './design-list.ts';
import { query } from './procedure.ts';
import { code, hours, instant, lengthNm } from './shapes.ts';
import { shownTakeOffShape } from './shown-takeoff.ts';

export const designDetail = z.strictObject({
  summary: designSummary,
  /** Of the rule tables in force, by which this is taken off. */
  ruleVersion: z.int(),
  assembleH: hours,
  breakDownH: hours,
  ...shownTakeOffShape,
  /** Where it is planned to stand. */
  turns: z.array(
    z.strictObject({ job: code, pour: code, side: z.enum(['A', 'B']), from: instant, to: instant }),
  ),
});

export const designRead = query({
  name: 'design.read',
  input: z.strictObject({ design: code }),
  output: designDetail.extend({
    /** From the gang's lower left corner, unless a face gives the origin: then see `origin`. */
    geometry: designGeometry,
    origin: z.strictObject({ xNm: lengthNm, yNm: lengthNm }),
    /** How many states of it were saved. */
    revisions: z.int(),
    /** Of the rule tables in force when it was last saved. */
    savedWithRuleVersion: z.int(),
    /** The design typed as rows; null where rows cannot say it. */
    rowText: z.strictObject({ us: z.string().nullable(), metric: z.string().nullable() }),
    ...likenessShape,
  }),
  run: async (book, { design: designCode }) => {
    const [facts, turns, states, components] = await Promise.all([
      readDesignFacts(book),
      turnsByDesign(book),
      book.designRevisions(designCode),
      book.components(),
    ]);
    if (!facts.ok) return facts;
    const chosen = facts.value.get(designCode);
    if (chosen === undefined) return unknownDesign(designCode);
    const { design, takeOff } = chosen;
    const system = catalogueSystem(design.system, components);
    if (!system.ok) return system;
    const others = [...facts.value.values()]
      .map((each) => each.design)
      .filter((each) => each.system === design.system && each.code !== designCode);
    const alike = likenessOf(system.value, design.geometry, others);
    if (!alike.ok) return alike;
    const last = states.at(-1);
    return answer({
      ...detailOf(chosen, turns.get(designCode) ?? []),
      geometry: asData(atCorner(design.geometry, takeOff.origin)),
      origin: design.geometry.face === undefined ? { xNm: 0, yNm: 0 } : { ...takeOff.origin },
      revisions: states.length,
      savedWithRuleVersion: last?.ruleVersion ?? 0,
      rowText: {
        us: rowText(system.value, design.geometry, 'us'),
        metric: rowText(system.value, design.geometry, 'metric'),
      },
      ...alike.value,
    });
  },
});
