// One gang: what is in it by owner and condition, what it should hold, every step it took, and its movements.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { gangStates, layings } from '../yard/gang.ts';
import { conditions } from '../yard/movement.ts';
import { byCode, found } from './by-code.ts';
import { gangRow, readGangFacts } from './gang-facts.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { unknownGang } from './unknown.ts';
import { movementRow } from './yard-movements.ts';

const step = z.strictObject({
  gang: code,
  number: z.int(),
  state: z.enum(gangStates),
  at: instant,
  who: z.string(),
  design: code,
  designState: z.int(),
  ruleVersion: z.exactOptional(z.int()),
  place: code,
  laying: z.enum(layings),
  job: code.nullable(),
  turn: z.string().nullable(),
  nextTurn: z.string().nullable(),
  remark: z.string().nullable(),
});

export const gangRead = query({
  name: 'gang.read',
  input: z.strictObject({ gang: code }),
  output: z.strictObject({
    gang: gangRow,
    content: z.array(
      z.strictObject({
        component: code,
        name: z.string(),
        owner: code,
        condition: z.enum(conditions),
        quantity: z.int(),
        weightGrams: z.int(),
      }),
    ),
    /** Newest first. */
    steps: z.array(step),
    movements: z.array(movementRow),
    moreMovements: z.boolean(),
  }),
  run: async (book, { gang: tag }) => {
    const facts = await readGangFacts(book);
    const gang = facts.gangs.find((each) => each.code === tag);
    if (gang === undefined) return unknownGang(tag);
    const limit = 200;
    const [steps, movements] = await Promise.all([
      book.gangSteps(tag),
      book.movements({ location: tag, limit: limit + 1 }),
    ]);
    const components = byCode([...facts.components.values()]);
    return answer({
      gang: facts.row(gang),
      content: facts.contentOf(tag).map(({ component, owner, condition, quantity }) => {
        const { name, weightGrams } = found(components, component);
        return { component, name, owner, condition, quantity, weightGrams: weightGrams * quantity };
      }),
      steps: steps.toReversed(),
      movements: movements
        .slice(0, limit)
        .map((row) => ({ ...row, name: found(components, row.component).name })),
      moreMovements: movements.length > limit,
    });
  },
});
