// Re-gangs a gang into another design, or into the state of its own that is in force: exactly the difference moves.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { layings } from '../yard/gang.ts';
import { gangContent, regangDifference, regangTo } from '../yard/gang-moves.ts';
import { nextGangStep } from '../yard/gang-steps.ts';
import { conditions } from '../yard/movement.ts';
import { movementsOf, piecesOf } from '../yard/piece-moves.ts';
import { readIssue, settleFillings } from './gang-issue.ts';
import { makeUpInForce } from './gang-make-up.ts';
import { layingPlace } from './gang-places.ts';
import { findTurn, mayStandAt } from './gang-turns.ts';
import { command } from './procedure.ts';
import { code, commandId, instant } from './shapes.ts';
import { unknownGang } from './unknown.ts';

export const gangRegang = command({
  name: 'gang.regang',
  input: z.strictObject({
    commandId,
    gang: code,
    design: code,
    /** Where what is put in comes from, and where what is taken out is laid, in which condition. */
    from: code,
    to: code,
    condition: z.enum(conditions).exclude(['scrapped']),
    at: instant,
    /** Where it is then; where pieces came from, if absent. */
    place: code.optional(),
    laying: z.enum(layings).optional(),
    /** The turn it is re-ganged for. */
    turn: z.string().max(80).optional(),
    job: code.optional(),
    owners: z.array(code).max(60).optional(),
    remark: z.string().trim().max(400).optional(),
  }),
  output: z.strictObject({
    gang: code,
    takenOut: z.record(code, z.int()),
    putIn: z.record(code, z.int()),
    movements: z.int(),
  }),
  run: async (book, input, { at: recordedAt, who }) => {
    const { gang: tag, design, from, at, condition } = input;
    const gangs = await book.gangs();
    const gang = gangs.find((each) => each.code === tag);
    if (gang === undefined) return unknownGang(tag);
    if (gang.last.state === 'broken-down')
      return refuse('bad-step', `${tag} is broken down; it cannot be re-ganged next.`, {
        field: 'gang',
        hint: 'Maybe it is to be built.',
      });
    const makeUp = await makeUpInForce(book, design);
    if (!makeUp.ok) return makeUp;
    const { pieces, designState, ruleVersion } = makeUp.value;
    const forTurn = input.turn === undefined ? null : await findTurn(book, input.job, input.turn);
    if (forTurn !== null) {
      if (!forTurn.ok) return forTurn;
      const may = mayStandAt({ code: tag, last: { design } }, forTurn.value, gangs);
      if (!may.ok) return may;
    }
    const step = nextGangStep(gang, {
      state: 'assembled',
      at,
      design,
      designState,
      ruleVersion,
      place: input.place ?? from,
      laying: input.laying,
      job: forTurn?.value.job.code ?? input.job,
      nextTurn: input.turn ?? null,
      remark: input.remark,
    });
    if (!step.ok) return step;
    const out = await layingPlace(book, input.to);
    if (!out.ok) return out;
    const issue = await readIssue(book, { from, at, owners: input.owners, pieces });
    if (!issue.ok) return issue;
    const moves = regangTo(tag, issue.value, { place: out.value, condition });
    if (!moves.ok) return moves;
    const remark = `Re-ganged from ${gang.last.design} to ${design}`;
    const movements = movementsOf(moves.value, { id: input.commandId, at, who, remark, paper: null });
    await book.appendMovements(movements, recordedAt);
    await settleFillings(book, moves.value, at);
    await book.addGangStep(step.value);
    const difference = regangDifference(piecesOf(gangContent(issue.value.stock, tag)), pieces);
    return answer({
      gang: tag,
      takenOut: { ...difference.takenOut },
      putIn: { ...difference.putIn },
      movements: movements.length,
    });
  },
});
