// A panel system: its catalogue and its rule tables, in force or of an earlier version.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { catalogueOf, rulesInForce } from '../book/systems.ts';
import { ruleTables } from '../catalogue/rules.ts';
import { asData } from './as-data.ts';
import { bookComponent } from './component-shape.ts';
import { query } from './procedure.ts';
import { code } from './shapes.ts';
import { unknownSystem } from './unknown.ts';

export const rulesRead = query({
  name: 'rules.read',
  /** Without a system the first one; without a version the one in force. */
  input: z.strictObject({ system: z.exactOptional(code), version: z.exactOptional(z.int().min(1)) }),
  output: z.strictObject({
    systems: z.array(z.strictObject({ code, name: z.string(), versions: z.array(z.int()) })),
    system: code,
    version: z.int(),
    rules: ruleTables,
    /** Those of the system and those of none, in catalogue order, as they are now. */
    components: z.array(bookComponent),
  }),
  run: async (book, { system, version }) => {
    const [versions, components] = await Promise.all([book.ruleVersions(), book.components()]);
    const inForce = rulesInForce(versions);
    const systems = [...inForce.values()].map((each) => ({
      code: each.system,
      name: each.systemName,
      versions: versions.filter((one) => one.system === each.system).map((one) => one.version),
    }));
    const chosen = system ?? systems[0]?.code;
    if (chosen === undefined)
      return refuse('no-system', 'There is no panel system in this book.', {
        hint: 'Maybe import components and rule tables first.',
      });
    const newest = inForce.get(chosen);
    if (newest === undefined) return unknownSystem(chosen);
    const read =
      version === undefined
        ? newest
        : versions.find((each) => each.system === chosen && each.version === version);
    if (read === undefined)
      return refuse('unknown-version', `The rule tables of ${chosen} have no version ${version}.`, {
        field: 'version',
      });
    return answer({
      systems,
      system: chosen,
      version: read.version,
      rules: asData(read.rules),
      components: asData([...catalogueOf(components, chosen)]),
    });
  },
});
