// Stock against the book: every row becomes a movement whose id follows from the command and the line, so
// that the same command sent twice books the same pieces once.
import { createHash } from 'node:crypto';
import type { BookReader } from '../book/book.ts';
import type { Location } from '../yard/movement.ts';
import type { ImportContext, ImportInput, Prepared } from './prepared.ts';
import { readStock, stockKey } from './stock-csv.ts';

/** Made where the book has no location of kind opening yet: where the figures of the first day come from. */
const openingPlace: Location = { code: 'OPENING', name: 'Opening figures', kind: 'opening' };

export async function importStock(
  book: BookReader,
  { text, job, columns = {}, commandId }: ImportInput,
  { at, who }: ImportContext,
): Promise<Prepared> {
  const [components, locations, owners] = await Promise.all([
    book.components(),
    book.locations(),
    book.owners(),
  ]);
  const opening = locations.find((location) => location.kind === 'opening') ?? openingPlace;
  const isNew = !locations.some((location) => location.kind === 'opening');
  const digest = createHash('sha256').update(commandId).digest('hex').slice(0, 32);
  const parsed = readStock(text, columns, {
    components: components.map((component) => component.code),
    locations,
    owners,
    opening: opening.code,
    timeZone: await timeZoneOf(book, job),
    who,
    opened: isNew ? new Set() : await openedKeys(book, opening.code),
    idOfLine: (line) => `${digest}-${line}`,
  });
  return {
    parsed,
    added: parsed.values.length,
    changed: 0,
    store: async (writer) => {
      if (parsed.values.length === 0) return;
      if (isNew) await writer.putLocation(opening);
      await writer.appendMovements(parsed.values, at);
    },
  };
}

/** The zone of the job that was named, else the only zone of all jobs; null where there is none or several. */
export async function timeZoneOf(book: BookReader, code: string | undefined): Promise<string | null> {
  const jobs = await book.jobs();
  const zones = new Set(
    jobs.filter((job) => code === undefined || job.code === code).map((job) => job.timeZone),
  );
  const [zone = null] = zones;
  return zones.size === 1 ? zone : null;
}

/** What has an opening figure that was not taken back. */
async function openedKeys(book: BookReader, opening: string): Promise<Set<string>> {
  const keys = new Set<string>();
  const limit = 1000;
  let beforeNumber: number | undefined;
  for (;;) {
    const page = await book.movements({ location: opening, beforeNumber, limit });
    for (const movement of page)
      if (movement.reason === 'opening' && movement.reversedBy === null)
        keys.add(stockKey({ ...movement, location: movement.to }));
    beforeNumber = page.at(-1)?.number;
    if (page.length < limit) return keys;
  }
}
