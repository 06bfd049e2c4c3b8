// Before a gang is built or re-ganged: which pieces it takes, what of them is in it already, what is there at a place,
// what is short, and what would come out.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { gangContent, regangDifference } from '../yard/gang-moves.ts';
import { isReady } from '../yard/movement.ts';
import { piecesOf } from '../yard/piece-moves.ts';
import { byCode, found } from './by-code.ts';
import { readIssue } from './gang-issue.ts';
import { makeUpInForce } from './gang-make-up.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { unknownGang } from './unknown.ts';

export const gangLines = query({
  name: 'gang.lines',
  input: z.strictObject({
    design: code,
    from: code,
    /** Of a gang that is there: what a re-gang would move. */
    gang: code.optional(),
    at: instant.optional(),
  }),
  output: z.strictObject({
    designState: z.int(),
    lines: z.array(
      z.strictObject({
        component: code,
        name: z.string(),
        /** By the take-off, without hooks. */
        wanted: z.int(),
        inGang: z.int(),
        putIn: z.int(),
        takenOut: z.int(),
        /** Ready at the place and in the containers that stand there. */
        there: z.int(),
        short: z.int(),
        weightGrams: z.int(),
      }),
    ),
    weightGrams: z.int(),
    /** Components of which there are too few. */
    short: z.int(),
  }),
  run: async (book, { design, from, gang, at }) => {
    if (gang !== undefined && !(await book.gangs()).some((each) => each.code === gang))
      return unknownGang(gang);
    const makeUp = await makeUpInForce(book, design);
    if (!makeUp.ok) return makeUp;
    const { pieces, designState } = makeUp.value;
    const issue = await readIssue(book, { from, at, pieces });
    if (!issue.ok) return issue;
    const component = byCode(await book.components());
    const { stock, order, from: places } = issue.value;
    const inGang = piecesOf(gang === undefined ? [] : gangContent(stock, gang));
    const { putIn, takenOut } = regangDifference(inGang, pieces);
    const there = piecesOf(
      stock.filter(
        (line) =>
          places.includes(line.location) &&
          isReady(line.condition) &&
          order.notOf?.includes(line.owner) !== true,
      ),
    );
    const lines = [...new Set([...Object.keys(pieces), ...Object.keys(inGang)])].map((each) => {
      const wanted = pieces[each] ?? 0;
      const { name, weightGrams } = found(component, each);
      return {
        component: each,
        name,
        wanted,
        inGang: inGang[each] ?? 0,
        putIn: putIn[each] ?? 0,
        takenOut: takenOut[each] ?? 0,
        there: there[each] ?? 0,
        short: Math.max(0, (putIn[each] ?? 0) - (there[each] ?? 0)),
        weightGrams: weightGrams * wanted,
      };
    });
    return answer({
      designState,
      lines,
      weightGrams: lines.reduce((sum, line) => sum + line.weightGrams, 0),
      short: lines.filter((line) => line.short > 0).length,
    });
  },
});
