// The catalogue as it stands in the book.
import { z } from 'zod';
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
        remark: z.string().nullable(),
      }),
    ),
  }),
  run: () => Promise.reject(new Error('being built')),
});
