// A gang on paper as it is stored: where its panels and fillers stand, seen from the back, and what stands at
// its edges. Everything else follows from it and the rule tables.
import { z } from 'zod';
import { edgeKinds } from '../catalogue/edges.ts';

const lengthNm = z.int();

export const designGeometry = z.strictObject({
  /** Lower left corners. A panel on its side is turned a quarter to the left: (x, y) comes to (height - y, x). */
  panels: z
    .array(z.strictObject({ panel: z.string(), xNm: lengthNm, yNm: lengthNm, onSide: z.boolean() }))
    .max(2000),
  fillers: z
    .array(z.strictObject({ xNm: lengthNm, yNm: lengthNm, widthNm: lengthNm, heightNm: lengthNm }))
    .max(2000),
  edges: z.strictObject({ left: z.enum(edgeKinds), right: z.enum(edgeKinds) }),
  /** Is there rigging that shares the load evenly among more than two hooks? */
  equalised: z.boolean(),
  /** Do braces stand at it? Absent: yes. The gangs of a wall's other side may have none. */
  braced: z.exactOptional(z.boolean()),
  /** The wall face it is made for, from its lower left corner, where one is stated. */
  face: z.exactOptional(z.strictObject({ widthNm: lengthNm, heightNm: lengthNm })),
});

export type DesignGeometry = z.output<typeof designGeometry>;
