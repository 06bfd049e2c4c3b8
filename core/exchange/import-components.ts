// Components against the book: a changed component must not break the rule tables that name it.
import type { BookComponent, BookReader } from '../book/book.ts';
import { readComponents } from './components-csv.ts';
import { counted, type ImportInput, type Prepared } from './prepared.ts';
import { rulesInForce, systemOf } from '../book/systems.ts';

export async function importComponents(
  book: BookReader,
  { text, columns = {} }: ImportInput,
): Promise<Prepared> {
  const [stored, versions] = await Promise.all([book.components(), book.ruleVersions()]);
  const known = new Set(stored.map((component) => component.code));
  const parsed = readComponents(text, columns, known);
  const all = new Map<string, BookComponent>();
  for (const component of [...stored, ...parsed.values]) all.set(component.code, component);
  const rules = rulesInForce(versions);
  for (const system of rules.keys()) {
    const checked = systemOf(system, [...all.values()], rules);
    if (checked.ok) continue;
    const { message } = checked.error;
    // The first row whose component the refusal names; else the whole file is to blame.
    const named = parsed.values.find(({ code }) => message.split(/[\s,.;]+/u).includes(code));
    const row = parsed.lines.get(named?.code ?? parsed.values[0]?.code ?? '');
    row?.refuse('kind', `components that the rule tables of ${system} can be used with: ${message}`);
  }
  return {
    parsed,
    ...counted(
      parsed.values.map((component) => component.code),
      known,
    ),
    store: async (writer) => {
      for (const component of parsed.values) await writer.putComponent(component);
    },
  };
}
