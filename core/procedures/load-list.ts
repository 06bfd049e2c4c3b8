// The loads that were kept, with the figures by which they are told apart.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { weightOf } from '../yard/deck.ts';
import { loadId } from './load-shapes.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';

export const loadList = query({
  name: 'load.list',
  input: z.strictObject({}),
  output: z.strictObject({
    loads: z.array(
      z.strictObject({
        load: loadId,
        truck: code,
        truckName: z.string(),
        /** The note that it carries, by its id and its number. */
        paper: z.string().nullable(),
        number: z.string().nullable(),
        stacks: z.int(),
        stops: z.int(),
        weightGrams: z.int(),
        payloadGrams: z.int(),
        leavesAt: instant.nullable(),
        tiedDownBy: z.string().nullable(),
      }),
    ),
  }),
  run: async (book) => {
    const [loads, trucks, notes] = await Promise.all([book.truckLoads(), book.trucks(), book.notes()]);
    const numbers = new Map(notes.map(({ id, number }) => [id, number]));
    const rows = loads.map(({ id, truck, paper, stacks, leavesAt, tiedDownBy }) => {
      const of = trucks.find((each) => each.code === truck);
      const layers = stacks.flatMap((stack) => stack.layers);
      return {
        load: id,
        truck,
        truckName: of?.name ?? '',
        paper,
        number: paper === null ? null : (numbers.get(paper) ?? null),
        stacks: stacks.length,
        stops: new Set(layers.map(({ stop }) => stop)).size,
        weightGrams: weightOf(layers),
        payloadGrams: of?.payloadGrams ?? 0,
        leavesAt,
        tiedDownBy,
      };
    });
    return answer({ loads: rows });
  },
});
