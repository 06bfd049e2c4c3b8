// The catalogue as it stands in the book.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { query } from './procedure.ts';
import { code, lengthNm } from './shapes.ts';

export const componentList = query({
  name: 'component.list',
  input: z.strictObject({}),
  output: z.strictObject({
    components: z.array(
      z.strictObject({
        code,
        name: z.string(),
        kind: z.string(),
        system: z.string().nullable(),
        weightGrams: z.int(),
        widthNm: lengthNm.nullable(),
        heightNm: lengthNm.nullable(),
        lengthNm: lengthNm.nullable(),
        hirePerDayCents: z.int().nullable(),
        valueCents: z.int().nullable(),
        remark: z.string().nullable(),
      }),
    ),
  }),
  run: async (book) => {
    const components = await book.components();
    return answer({
      components: components.map((each) => ({
        code: each.code,
        name: each.name,
        kind: each.kind,
        system: each.system,
        weightGrams: each.weightGrams,
        widthNm: each.widthNm ?? null,
        heightNm: each.heightNm ?? null,
        lengthNm: each.lengthNm ?? null,
        hirePerDayCents: each.hirePerDayCents,
        valueCents: each.valueCents ?? null,
        remark: each.remark,
      })),
    });
  },
});
