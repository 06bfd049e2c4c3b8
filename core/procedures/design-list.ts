// Every gang design with the figures by which people tell them apart.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { readDesignFacts } from './design-facts.ts';
import { summaryOf, turnsByDesign } from './design-turns.ts';
import { query } from './procedure.ts';
import { code, lengthNm } from './shapes.ts';

export const designSummary = z.strictObject({
  code,
  name: z.string(),
  system: z.string(),
  revision: z.string(),
  hand: z.enum(['left', 'right', 'symmetrical']),
  widthNm: lengthNm,
  heightNm: lengthNm,
  areaM2: z.number(),
  weightGrams: z.int(),
  pieces: z.int(),
  stops: z.int(),
  cautions: z.int(),
  /** Turns of all jobs that ask for it. */
  turns: z.int(),
});

export const designList = query({
  name: 'design.list',
  input: z.strictObject({}),
  output: z.strictObject({ designs: z.array(designSummary) }),
  run: async (book) => {
    const [facts, turns] = await Promise.all([readDesignFacts(book), turnsByDesign(book)]);
    if (!facts.ok) return facts;
    return answer({
      designs: [...facts.value.values()].map((each) => summaryOf(each, turns.get(each.design.code) ?? [])),
    });
  },
});
