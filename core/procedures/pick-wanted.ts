// What a pick list is for, and what that wants from the yard: the take-off of a design; of a pour what its plan has not
// got yet, gang by gang, with its loose pieces; the lines of a note. Hooks fly with the crane and are told apart.
import { answer, type Answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { closingSide } from '../plan/pour-times.ts';
import type { Job, Pour, SideName } from '../plan/pours.ts';
import { instantText } from '../plan/local-time.ts';
import type { RunDescription } from '../plan/describe-runs.ts';
import { noteName } from '../yard/note-movements.ts';
import type { PickFor } from '../yard/pick-id.ts';
import type { WantedPieces } from '../yard/pick-list.ts';
import { found } from './by-code.ts';
import { makeUpInForce } from './gang-make-up.ts';
import { pourPlaceCode } from './gang-places.ts';
import { type JobFacts, readJobFacts } from './job-facts.ts';
import { type JobPlan, planJob } from './job-plan.ts';
import { readNote } from './note-shapes.ts';
import { unknownPour } from './unknown.ts';

/** How a gang of a pour comes to it. Only what is built new or changed is picked. */
export interface ComingGang {
  readonly turn: string;
  readonly side: SideName;
  readonly design: string;
  readonly how: 'new' | 'regang' | 'fly-on' | 'is-built';
  /** The turn it comes from, or the tag of the gang that is built. */
  readonly from: string | null;
}

export interface PickWanted {
  readonly code: string;
  readonly name: string;
  readonly job: Job | null;
  /** When the first of it is set; null where no day is known. */
  readonly neededAt: string | null;
  readonly wanted: readonly WantedPieces[];
  readonly hooks: readonly WantedPieces[];
  readonly coming: readonly ComingGang[];
  /** Where a note takes its pieces from, and where to. */
  readonly from: string | null;
  readonly to: string | null;
}

/** @param at of which moment the stock is */
export async function readPickWanted(
  book: BookReader,
  asked: PickFor,
  at: string,
): Promise<Answer<PickWanted>> {
  if (asked.of === 'design') return ofDesign(book, asked.design);
  if (asked.of === 'note') return ofNote(book, asked.note);
  const facts = await readJobFacts(book, asked.job);
  if (!facts.ok) return facts;
  const pour = facts.value.pours.find(({ code }) => code === asked.pour);
  if (pour === undefined) return unknownPour(asked.pour, asked.job);
  return ofPour(book, facts.value, pour, asked.side, at);
}

async function ofDesign(book: BookReader, code: string): Promise<Answer<PickWanted>> {
  const made = await makeUpInForce(book, code);
  if (!made.ok) return made;
  const { pieces, takeOff } = made.value;
  const [designs, jobs] = await Promise.all([book.designs(), book.jobs()]);
  const hooks = takeOff.lines.filter(({ component }) => !Object.hasOwn(pieces, component));
  const [only, ...others] = jobs;
  return answer({
    code,
    name: designs.find((each) => each.code === code)?.name ?? '',
    job: only !== undefined && others.length === 0 ? only : null,
    neededAt: null,
    wanted: piecesList(pieces),
    hooks: hooks.map(({ component, quantity }) => ({ component, quantity })),
    coming: [],
    from: null,
    to: null,
  });
}

async function ofNote(book: BookReader, id: string): Promise<Answer<PickWanted>> {
  const read = await readNote(book, id);
  if (!read.ok) return read;
  const note = read.value;
  return answer({
    code: note.number,
    name: noteName(note),
    job: note.job === null ? null : await book.job(note.job),
    neededAt: note.expectedAt,
    wanted: note.lines.map(({ component, owner, condition, sent, counted }) => ({
      component,
      owner,
      condition,
      quantity: counted ?? sent,
    })),
    hooks: [],
    coming: [],
    from: note.from,
    to: note.to,
  });
}

async function ofPour(
  book: BookReader,
  facts: JobFacts,
  pour: Pour,
  side: SideName | null,
  at: string,
): Promise<Answer<PickWanted>> {
  const plan = planJob(facts);
  if (!plan.ok) return plan;
  const [gangs, stock] = await Promise.all([book.gangs(), book.stock(at)]);
  const { job } = facts;
  const built = new Map(
    gangs
      .filter(({ last }) => last.state !== 'broken-down' && last.job === job.code)
      .flatMap(({ code, last }) =>
        [last.turn, last.nextTurn].filter((turn) => turn !== null).map((turn) => [turn, code] as const),
      ),
  );
  const turns = plan.value.turnsOf.turns.filter(
    (turn) => turn.pour === pour.code && (side === null || turn.side === side),
  );
  const coming = turns.map(({ id, side: on, design }) => ({
    turn: id,
    side: on,
    design,
    ...comesFrom(id, plan.value.runs, built),
  }));
  const place = pourPlaceCode(job.code, pour.code);
  const there = stock.filter(({ location }) => location === place);
  const first = Math.min(...turns.map(({ from }) => from));
  return answer({
    code: side === null ? pour.code : `${pour.code} side ${side}`,
    name: pour.name,
    job,
    neededAt: turns.length === 0 ? null : instantText(first, job.timeZone),
    wanted: [
      ...coming.flatMap(({ how, turn, design }) => gangPieces(how, turn, design, plan.value)),
      ...loosePieces(plan.value, pour, side, there),
    ],
    hooks: mostHooks(
      turns.map(({ design }) => design),
      facts,
    ),
    coming,
    from: null,
    to: null,
  });
}

function comesFrom(
  turn: string,
  runs: readonly RunDescription[],
  built: ReadonlyMap<string, string>,
): Pick<ComingGang, 'how' | 'from'> {
  const tag = built.get(turn);
  if (tag !== undefined) return { how: 'is-built', from: tag };
  const follow = runs.flatMap((run) => run.follows).find((each) => each.to === turn);
  return follow === undefined ? { how: 'new', from: null } : { how: follow.kind, from: follow.from };
}

function gangPieces(
  how: ComingGang['how'],
  turn: string,
  design: string,
  { facts, runs }: JobPlan,
): readonly WantedPieces[] {
  if (how === 'fly-on' || how === 'is-built') return [];
  if (how === 'new') return piecesList(found(facts.designs, design).pieces);
  return runs.flatMap((run) => run.follows).find((each) => each.to === turn)?.putIn ?? [];
}

/** Of the side, less what was issued to the pour before. Ties and what goes with both sides go with the later one. */
function loosePieces(
  { turnsOf }: JobPlan,
  pour: Pour,
  side: SideName | null,
  there: readonly { readonly component: string; readonly quantity: number }[],
): readonly WantedPieces[] {
  const closing = closingSide(found(turnsOf.times, pour.code));
  const ties = turnsOf.loose.filter((line) => line.pour === pour.code && line.counted);
  const all = [
    ...pour.loose.map((line) => ({ ...line, side: line.side === 'both' ? closing : line.side })),
    ...ties.map(({ component, quantity }) => ({ component, quantity, side: closing })),
  ];
  const ofSide = all.filter((line) => side === null || line.side === side);
  return [...new Set(ofSide.map(({ component }) => component))].flatMap((component) => {
    const open = sumOf(all, component) - sumOf(there, component);
    const quantity = Math.min(sumOf(ofSide, component), open);
    return quantity > 0 ? [{ component, quantity }] : [];
  });
}

function sumOf(
  lines: readonly { readonly component: string; readonly quantity: number }[],
  component: string,
): number {
  return lines
    .filter((line) => line.component === component)
    .reduce((sum, { quantity }) => sum + quantity, 0);
}

/** Of the gang that takes most: one is in the air at a time. */
function mostHooks(designs: readonly string[], facts: JobFacts): readonly WantedPieces[] {
  const most = new Map<string, number>();
  for (const design of designs)
    for (const { component, quantity, kind } of found(facts.designs, design).takeOff.lines)
      if (kind === 'hook') most.set(component, Math.max(most.get(component) ?? 0, quantity));
  return piecesList(Object.fromEntries(most));
}

function piecesList(pieces: Readonly<Record<string, number>>): readonly WantedPieces[] {
  return Object.entries(pieces).map(([component, quantity]) => ({ component, quantity }));
}
