// Issues the loose pieces of a pour to it: locks between gangs, corners, braces and ties as its plan has them, less
// what lies there already. They come back with its strip ticket.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { turnsFromPours } from '../plan/turns-from-pours.ts';
import { gangContent, regangDifference } from '../yard/gang-moves.ts';
import { issuePieces, movementsOf, piecesOf } from '../yard/piece-moves.ts';
import { readDesignFacts } from './design-facts.ts';
import { readIssue, settleFillings } from './gang-issue.ts';
import { makePourPlace } from './gang-places.ts';
import { command } from './procedure.ts';
import { code, commandId, instant } from './shapes.ts';
import { unknownJob, unknownPour } from './unknown.ts';

export const pourIssue = command({
  name: 'pour.issue',
  input: z.strictObject({
    commandId,
    job: code,
    pour: code,
    from: code,
    at: instant,
    owners: z.array(code).max(60).optional(),
  }),
  output: z.strictObject({ place: code, pieces: z.record(code, z.int()), movements: z.int() }),
  run: async (book, input, { at: recordedAt, who }) => {
    const { job: jobCode, pour: pourCode, from, at } = input;
    const job = await book.job(jobCode);
    if (job === null) return unknownJob(jobCode);
    const pours = await book.pours(jobCode);
    const pour = pours.find((each) => each.code === pourCode);
    if (pour === undefined) return unknownPour(pourCode, jobCode);
    const designs = await readDesignFacts(book);
    if (!designs.ok) return designs;
    const planned = piecesOf(turnsFromPours(job, [pour], designs.value).loose);
    const place = await makePourPlace(book, jobCode, pour);
    if (!place.ok) return place;
    const issue = await readIssue(book, { from, at, owners: input.owners, pieces: planned });
    if (!issue.ok) return issue;
    const there = piecesOf(gangContent(issue.value.stock, place.value));
    const { putIn } = regangDifference(there, planned);
    if (Object.keys(putIn).length === 0)
      return refuse('nothing-to-issue', `All loose pieces that ${pourCode} asks for are at ${place.value}.`, {
        field: 'pour',
        hint: 'Maybe they were issued before, or the pour has no loose pieces.',
      });
    const moves = issuePieces({ ...issue.value, pieces: putIn }, place.value);
    if (!moves.ok) return moves;
    const remark = `Loose pieces of ${pourCode}`;
    const movements = movementsOf(moves.value, { id: input.commandId, at, who, remark, paper: null });
    await book.appendMovements(movements, recordedAt);
    await settleFillings(book, moves.value, at);
    return answer({ place: place.value, pieces: { ...putIn }, movements: movements.length });
  },
});
