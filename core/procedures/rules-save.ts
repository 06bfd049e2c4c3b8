// Keeps changed components and, where they differ from those in force, the rule tables as the next version.
// Refused where rules.check finds a problem.
import { isDeepStrictEqual } from 'node:util';
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { rulesInForce } from '../book/systems.ts';
import { ruleTables } from '../catalogue/rules.ts';
import { checkChangedRules } from './changed-rules.ts';
import { bookComponent } from './component-shape.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';

export const rulesSave = command({
  name: 'rules.save',
  input: z.strictObject({
    commandId,
    system: code,
    systemName: z.string().trim().min(1).max(120),
    rules: ruleTables,
    components: z.array(bookComponent).max(5000).default([]),
  }),
  /** Of the rule tables in force. */
  output: z.strictObject({ version: z.int() }),
  run: async (book, { system, systemName, rules, components }) => {
    const { problems } = await checkChangedRules(book, { system, rules, components });
    const [first] = problems;
    if (first !== undefined) {
      const { code: reason, message, ...more } = first;
      const others = problems.length === 1 ? '' : ` There are ${problems.length} problems.`;
      return refuse(reason, message + others, more);
    }
    for (const component of components) await book.putComponent(component);
    const before = rulesInForce(await book.ruleVersions()).get(system);
    if (before?.systemName === systemName && isDeepStrictEqual(before.rules, rules))
      return answer({ version: before.version });
    return answer({ version: (await book.putRules(system, systemName, rules)).version });
  },
});
