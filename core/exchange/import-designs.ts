// Designs against the book: their panels must be in the catalogue of their system, which needs rule tables.
import type { BookReader, Design } from '../book/book.ts';
import { placeDesign } from '../gang/placed.ts';
import { readDesigns } from './designs-csv.ts';
import { counted, type ImportInput, type Prepared } from './prepared.ts';
import { rulesInForce, systemOf } from '../book/systems.ts';

export async function importDesigns(
  book: BookReader,
  { text, columns = {} }: ImportInput,
): Promise<Prepared> {
  const [components, versions, stored] = await Promise.all([
    book.components(),
    book.ruleVersions(),
    book.designs(),
  ]);
  const rules = rulesInForce(versions);
  const known = new Set(stored.map((design) => design.code));
  const refusal = (design: Design): string | undefined => {
    const system = systemOf(design.system, components, rules);
    const gang = system.ok ? placeDesign(system.value, design.geometry) : system;
    return gang.ok ? undefined : gang.error.message;
  };
  const parsed = readDesigns(text, columns, {
    systems: new Set(rules.keys()),
    components,
    designs: known,
    refusal,
  });
  return {
    parsed,
    ...counted(
      parsed.values.map((design) => design.code),
      known,
    ),
    store: async (writer) => {
      for (const design of parsed.values) await writer.putDesign(design);
    },
  };
}
