// One load whole: its truck, where everything stands, and in which order it comes off.
import { z } from 'zod';
import { type Answer, answer, refuse } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { checkLoad } from '../yard/check-load.ts';
import type { Truck, TruckLoad } from '../yard/truck.ts';
import { figuresOf, loadNames } from './load-figures.ts';
import { loadFigures, loadId, loadShape, thingNames } from './load-shapes.ts';
import { unknownTruck } from './load-propose.ts';
import { query } from './procedure.ts';

export const loadRead = query({
  name: 'load.read',
  input: z.strictObject({ load: loadId }),
  output: z.strictObject({
    load: loadShape,
    figures: z.strictObject(loadFigures),
    names: thingNames,
    number: z.string().nullable(),
    /** Limits of the truck that it passes: they were changed since it was kept. */
    passes: z.array(z.string()),
  }),
  run: async (book, { load }) => {
    const read = await readLoad(book, load);
    if (!read.ok) return read;
    const { load: kept, truck, names, number } = read.value;
    const { id, paper, version, ...text } = kept;
    return answer({
      load: { id, paper, version, ...text },
      figures: figuresOf(kept.stacks, truck),
      names: { ...names },
      number,
      passes: [...new Set(checkLoad(kept.stacks, truck).map(({ rule }) => rule))],
    });
  },
});

export interface LoadRead {
  readonly load: TruckLoad;
  readonly truck: Truck;
  readonly names: Readonly<Record<string, string>>;
  readonly number: string | null;
}

export async function readLoad(book: BookReader, id: string): Promise<Answer<LoadRead>> {
  const [loads, trucks, components] = await Promise.all([
    book.truckLoads(),
    book.trucks(),
    book.components(),
  ]);
  const load = loads.find((each) => each.id === id);
  if (load === undefined)
    return refuse('unknown-load', `There is no load ${id} in this book.`, { field: 'load' });
  const truck = trucks.find(({ code }) => code === load.truck);
  if (truck === undefined) return unknownTruck(load.truck);
  const [note] = load.paper === null ? [] : await book.notes({ id: load.paper });
  const names = await loadNames(book, load.stacks, components);
  return answer({ load, truck, names, number: note?.number ?? null });
}
