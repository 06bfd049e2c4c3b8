// A step of a gang in which no piece changes its place in the ledger: stood at a turn, stripped, standing by, moved,
// laid down or put upright. Built, re-ganged and broken down are commands of their own.
import { z } from 'zod';
import { type Answer, answer, refuse } from '../answer.ts';
import type { BookWriter } from '../book/book.ts';
import { type Gang, gangStates, layings } from '../yard/gang.ts';
import { isBuiltToOlder } from '../yard/gang-findings.ts';
import { nextGangStep, type StepChange } from '../yard/gang-steps.ts';
import { readMakeUps } from './gang-make-up.ts';
import { makePourPlace, standingPlace } from './gang-places.ts';
import { findTurn, mayStandAt } from './gang-turns.ts';
import { command } from './procedure.ts';
import { code, commandId, instant } from './shapes.ts';
import { unknownGang } from './unknown.ts';

const input = z.strictObject({
  commandId,
  gang: code,
  state: z.enum(gangStates).exclude(['broken-down']),
  at: instant,
  /** Where it is then: of one that stands, its pour, if absent; of another, where it was. */
  place: code.optional(),
  laying: z.enum(layings).optional(),
  /** Of one that is to stand, and of which job; the turn that was next, if absent. */
  turn: z.string().max(80).optional(),
  job: code.optional(),
  nextTurn: z.string().max(80).nullable().optional(),
  /** Someone said that it flies on although its design has changed since it was built. */
  fliesOnOlder: z.boolean().optional(),
  remark: z.string().trim().max(400).optional(),
});
type Input = z.output<typeof input>;

export const gangStep = command({
  name: 'gang.step',
  input,
  output: z.strictObject({ gang: code, state: z.enum(gangStates), place: code, turn: z.string().nullable() }),
  run: async (book, given, { who }) => {
    const gangs = await book.gangs();
    const gang = gangs.find((each) => each.code === given.gang);
    if (gang === undefined) return unknownGang(given.gang);
    const { state, at, laying, nextTurn } = given;
    const change = { state, at, laying, nextTurn, remark: given.remark };
    const where = state === 'standing' ? await atTurn(book, given, gang, gangs) : await atPlace(book, given);
    if (!where.ok) return where;
    const next =
      nextTurn === undefined || nextTurn === null
        ? null
        : await findTurn(book, given.job ?? gang.last.job ?? undefined, nextTurn);
    if (next !== null && !next.ok) return { ok: false, error: { ...next.error, field: 'nextTurn' } };
    const older = state === 'standing' ? await olderWords(book, given, gang, who) : answer(null);
    if (!older.ok) return older;
    const remark = [older.value, given.remark]
      .filter((each) => each !== null && each !== undefined)
      .join('. ');
    const step = nextGangStep(gang, {
      ...change,
      ...(next !== null && { job: next.value.job.code }),
      ...where.value,
      remark: remark === '' ? null : remark,
    });
    if (!step.ok) return step;
    await book.addGangStep(step.value);
    return answer({ gang: gang.code, state, place: step.value.place, turn: step.value.turn });
  },
});

async function atTurn(
  book: BookWriter,
  given: Input,
  gang: Gang,
  gangs: readonly Gang[],
): Promise<Answer<Partial<StepChange>>> {
  const wanted = given.turn ?? gang.last.nextTurn;
  if (wanted === null) return answer({});
  const turn = await findTurn(book, given.job ?? gang.last.job ?? undefined, wanted);
  if (!turn.ok) return turn;
  const may = mayStandAt(gang, turn.value, gangs);
  if (!may.ok) return may;
  const job = turn.value.job.code;
  const place =
    given.place === undefined
      ? await makePourPlace(book, job, turn.value.pour)
      : await standingPlace(book, given.place);
  return place.ok ? answer({ place: place.value, turn: wanted, job }) : place;
}

async function atPlace(book: BookWriter, given: Input): Promise<Answer<Partial<StepChange>>> {
  if (given.place === undefined) return answer({});
  const place = await standingPlace(book, given.place);
  return place.ok ? answer({ place: place.value }) : place;
}

/** A gang built to an older state does not fly on until someone says so; who did is kept with the step. */
async function olderWords(
  book: BookWriter,
  given: Input,
  { code: tag, last }: Gang,
  who: string,
): Promise<Answer<string | null>> {
  const { inForce } = (await readMakeUps(book, [last]))(last);
  if (!isBuiltToOlder(last, inForce)) return answer(null);
  const built = `${tag} was built to state ${last.designState} of ${last.design}; state ${inForce ?? 0} is in force`;
  if (given.fliesOnOlder === true) return answer(`${who} said that it flies on: ${built}`.slice(0, 200));
  return refuse('older-design', `${built}. It does not fly on until someone says so.`, {
    field: 'fliesOnOlder',
    hint: 'Maybe re-gang it to the state in force, or say that it flies on as it is.',
  });
}
