// One design: where every panel stands, what the rule tables take off and why, what they find, and
// everything that its elevation is drawn from. Seen from the back, lengths from the lower left corner.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { readDesignFacts } from './design-facts.ts';
import { detailOf } from './design-detail.ts';
import { turnsByDesign } from './design-turns.ts';
import { unknownDesign } from './unknown.ts';
import { designSummary } from './design-list.ts';
import { query } from './procedure.ts';
import { code, finding, hours, instant, lengthNm, quantity } from './shapes.ts';

const point = z.strictObject({ xNm: lengthNm, yNm: lengthNm });
const place = z.union([z.string(), point]);

export const takeoffLine = z.strictObject({
  component: code,
  name: z.string(),
  kind: z.string(),
  quantity,
  weightGrams: z.int(),
  because: z.array(z.strictObject({ rule: z.string(), count: z.int(), where: place })),
});

export const designDetail = z.strictObject({
  summary: designSummary,
  ruleVersion: z.int(),
  assembleH: hours,
  breakDownH: hours,
  edges: z.strictObject({ left: z.string(), right: z.string() }),
  panels: z.array(
    z.strictObject({
      panel: code,
      xNm: lengthNm,
      yNm: lengthNm,
      widthNm: lengthNm,
      heightNm: lengthNm,
      onSide: z.boolean(),
    }),
  ),
  fillers: z.array(z.strictObject({ xNm: lengthNm, yNm: lengthNm, widthNm: lengthNm, heightNm: lengthNm })),
  joints: z.array(
    z.strictObject({
      kind: z.enum(['vertical', 'horizontal', 'filler']),
      xNm: lengthNm,
      yNm: lengthNm,
      lengthNm,
      locks: z.int(),
    }),
  ),
  rails: z.array(
    z.strictObject({
      component: code,
      direction: z.enum(['level', 'upright']),
      /** Its left or lower end. */
      xNm: lengthNm,
      yNm: lengthNm,
      lengthNm,
      bolts: z.int(),
    }),
  ),
  hooks: z.array(z.strictObject({ xNm: lengthNm, yNm: lengthNm, loadGrams: z.int() })),
  holes: z.array(point),
  centreOfGravity: point,
  lines: z.array(takeoffLine),
  findings: z.array(finding),
  /** Where it is planned to stand. */
  turns: z.array(
    z.strictObject({ job: code, pour: code, side: z.enum(['A', 'B']), from: instant, to: instant }),
  ),
});

export const designRead = query({
  name: 'design.read',
  input: z.strictObject({ design: code }),
  output: designDetail,
  run: async (book, { design: designCode }) => {
    const [facts, turns] = await Promise.all([readDesignFacts(book), turnsByDesign(book)]);
    if (!facts.ok) return facts;
    const chosen = facts.value.get(designCode);
    if (chosen === undefined) return unknownDesign(designCode);
    return answer(detailOf(chosen, turns.get(designCode) ?? []));
  },
});
