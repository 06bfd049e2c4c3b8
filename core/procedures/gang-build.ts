// Builds a gang: its pieces go from a place to the location that bears its tag, all of them or none.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { layings } from '../yard/gang.ts';
import { buildGang } from '../yard/gang-moves.ts';
import { firstGangStep, nextGangStep } from '../yard/gang-steps.ts';
import { movementsOf } from '../yard/piece-moves.ts';
import { readIssue, settleFillings } from './gang-issue.ts';
import { makeUpInForce } from './gang-make-up.ts';
import { makeGangPlace } from './gang-places.ts';
import { findTurn, mayStandAt } from './gang-turns.ts';
import { command } from './procedure.ts';
import { code, commandId, instant } from './shapes.ts';

export const gangBuild = command({
  name: 'gang.build',
  input: z.strictObject({
    commandId,
    /** Its tag: free, or that of a gang that was broken down. */
    gang: code,
    design: code,
    /** The place whose loose pieces it is built from, and where it is then. */
    from: code,
    at: instant,
    laying: z.enum(layings).default('laid-down'),
    /** The turn it is built for, and of which job. */
    turn: z.string().max(80).optional(),
    job: code.optional(),
    /** Whose pieces go before all others. */
    owners: z.array(code).max(60).optional(),
    remark: z.string().trim().max(400).optional(),
  }),
  output: z.strictObject({ gang: code, pieces: z.int(), movements: z.int() }),
  run: async (book, input, { at: recordedAt, who }) => {
    const { gang: tag, design, from, at, laying, turn } = input;
    const makeUp = await makeUpInForce(book, design);
    if (!makeUp.ok) return makeUp;
    const { pieces, designState, ruleVersion } = makeUp.value;
    const gangs = await book.gangs();
    const before = gangs.find((each) => each.code === tag);
    const forTurn = turn === undefined ? null : await findTurn(book, input.job, turn);
    if (forTurn !== null) {
      if (!forTurn.ok) return forTurn;
      const may = mayStandAt({ code: tag, last: { design } }, forTurn.value, gangs);
      if (!may.ok) return may;
    }
    const built = {
      at,
      design,
      designState,
      ruleVersion,
      place: from,
      laying,
      job: forTurn?.value.job.code ?? input.job ?? null,
      nextTurn: turn ?? null,
      remark: input.remark ?? null,
    };
    if (before !== undefined && before.last.state !== 'broken-down')
      return refuse(
        'tag-taken',
        `${tag} is a gang already: ${before.last.design}, at ${before.last.place}.`,
        {
          field: 'gang',
          hint: 'Maybe take another tag, or re-gang that one.',
        },
      );
    const step =
      before === undefined
        ? answer(firstGangStep(tag, built))
        : nextGangStep(before, { ...built, state: 'assembled' });
    if (!step.ok) return step;
    const place = await makeGangPlace(book, tag, design);
    if (!place.ok) return place;
    const issue = await readIssue(book, { from, at, owners: input.owners, pieces });
    if (!issue.ok) return issue;
    const moves = buildGang(tag, issue.value);
    if (!moves.ok) return moves;
    const remark = `Built as ${design}`;
    const movements = movementsOf(moves.value, { id: input.commandId, at, who, remark, paper: null });
    await book.appendMovements(movements, recordedAt);
    await settleFillings(book, moves.value, at);
    await book.addGangStep(step.value);
    const count = moves.value.reduce((sum, move) => sum + move.quantity, 0);
    return answer({ gang: tag, pieces: count, movements: movements.length });
  },
});
