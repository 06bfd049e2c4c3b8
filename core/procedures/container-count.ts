// How many pieces of a component a container holds by its weight, with every count that is possible, beside what is
// booked to it. Books nothing: the figure goes into a count.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { countByWeight } from '../yard/count-by-weight.ts';
import { query } from './procedure.ts';
import { code } from './shapes.ts';
import { unknownComponent, unknownContainer } from './unknown.ts';

const grams = z.int().min(0).max(1_000_000_000);

export const containerCount = query({
  name: 'container.count',
  input: z.strictObject({
    container: code,
    component: code,
    grossGrams: grams,
    /** As weighed empty; the weight of the component that it is, if absent. */
    tareGrams: grams.optional(),
    tareToleranceGrams: grams.default(0),
    /** As weighed; the weight entered with the component, if absent. */
    pieceGrams: grams.optional(),
    pieceToleranceGrams: grams.default(0),
    scaleStepGrams: grams.default(0),
  }),
  output: z.strictObject({
    quantity: z.int(),
    least: z.int(),
    most: z.int(),
    tareGrams: z.int(),
    pieceGrams: z.int(),
    /** Of that component, of all owners and conditions. */
    booked: z.int(),
    /** Other components booked to it: then the weight is not of one kind of piece. */
    others: z.array(code),
  }),
  run: async (book, input) => {
    const [containers, components, stock] = await Promise.all([
      book.containers(),
      book.components(),
      book.stock(),
    ]);
    const container = containers.find((each) => each.code === input.container);
    if (container === undefined) return unknownContainer(input.container);
    const component = components.find((each) => each.code === input.component);
    if (component === undefined) return unknownComponent(input.component);
    const itself = components.find((each) => each.code === container.component);
    const tareGrams = input.tareGrams ?? itself?.weightGrams ?? 0;
    const pieceGrams = input.pieceGrams ?? component.weightGrams;
    const { grossGrams, tareToleranceGrams, pieceToleranceGrams, scaleStepGrams } = input;
    const counted = countByWeight({
      grossGrams,
      tareGrams,
      tareToleranceGrams,
      pieceGrams,
      pieceToleranceGrams,
      scaleStepGrams,
    });
    if (!counted.ok) return counted;
    const inside = stock.filter((line) => line.location === container.code && line.quantity > 0);
    return answer({
      ...counted.value,
      tareGrams,
      pieceGrams,
      booked: inside
        .filter((line) => line.component === component.code)
        .reduce((sum, line) => sum + line.quantity, 0),
      others: [...new Set(inside.map((line) => line.component))].filter((each) => each !== component.code),
    });
  },
});
