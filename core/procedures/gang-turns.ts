// The turns of a job's plan by name, for a gang that is to stand at one: P01/A1 is the first gang on side A of P01.
import { type Answer, answer, refuse } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import type { Job, Pour } from '../plan/pours.ts';
import { type PourTurn, turnsFromPours } from '../plan/turns-from-pours.ts';
import type { Gang } from '../yard/gang.ts';
import { unknownJob } from './unknown.ts';

export interface JobTurn {
  readonly job: Job;
  readonly pour: Pour;
  readonly turn: PourTurn;
}

/** The one job of the book where none is named. Codes: unknown-job, needs-job, unknown-turn. */
export async function findTurn(
  book: BookReader,
  job: string | undefined,
  turn: string,
): Promise<Answer<JobTurn>> {
  const jobs = await book.jobs();
  const [only, ...others] = job === undefined ? jobs : jobs.filter((each) => each.code === job);
  if (only === undefined) return unknownJob(job ?? '');
  if (others.length > 0)
    return refuse(
      'needs-job',
      `The book holds ${jobs.length} jobs; of which ${turn} is a turn is not said.`,
      {
        field: 'job',
      },
    );
  const pours = await book.pours(only.code);
  const found = turnsFromPours(only, pours, new Map()).turns.find((each) => each.id === turn);
  const pour = pours.find((each) => each.code === found?.pour);
  if (found === undefined || pour === undefined)
    return refuse('unknown-turn', `Job ${only.code} has no turn ${turn}.`, {
      field: 'turn',
      hint: 'Maybe the pour was changed; a turn is written as P01/A1, the first gang on side A of P01.',
    });
  return answer({ job: only, pour, turn: found });
}

/** Whether a gang may stand at a turn. Codes: wrong-design, turn-taken. */
export function mayStandAt(
  gang: Pick<Gang, 'code'> & { readonly last: Pick<Gang['last'], 'design'> },
  { job, turn }: JobTurn,
  gangs: readonly Gang[],
): Answer<null> {
  if (turn.design !== gang.last.design)
    return refuse(
      'wrong-design',
      `${turn.id} asks for ${turn.design}; ${gang.code} is built as ${gang.last.design}.`,
      { field: 'turn', hint: 'Maybe re-gang it first.' },
    );
  const other = gangs.find(
    (each) =>
      each.code !== gang.code &&
      each.last.state === 'standing' &&
      each.last.job === job.code &&
      each.last.turn === turn.id,
  );
  if (other === undefined) return answer(null);
  return refuse('turn-taken', `${other.code} stands at ${turn.id} already.`, {
    field: 'turn',
    hint: 'Maybe that one was stripped and nobody has said so.',
  });
}
