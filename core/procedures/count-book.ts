// Books a count: every difference as a movement with its explanation, nothing overwritten, all or nothing. A count is
// booked once, by one person, on what was entered when it was looked at.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import type { BookWriter } from '../book/book.ts';
import { checkExplained, type LineToBook } from '../yard/count-explained.ts';
import { countMovements } from '../yard/count-movements.ts';
import type { Owner } from '../yard/movement.ts';
import { recordAccuracy } from '../yard/record-accuracy.ts';
import { countName, type CountResult } from '../yard/stock-count.ts';
import { readCountFacts } from './count-facts.ts';
import { accuracy, countId, explainedLine } from './count-shapes.ts';
import { command } from './procedure.ts';
import { commandId, instant } from './shapes.ts';

export const countBook = command({
  name: 'count.book',
  input: z.strictObject({
    commandId,
    count: countId,
    /** When it is booked; absent: now. Its movements bear the moments at which the lines were counted. */
    at: instant.optional(),
    /** Lines without a difference need not be named. */
    explained: z.array(explainedLine).max(2000),
    /** Entries that were there when it was explained; more of them since are not booked over. */
    entries: z.int().optional(),
    /** Lines that nobody counted are left out. */
    leaveOut: z.boolean().default(false),
  }),
  output: z.strictObject({ name: z.string(), movements: z.int(), accuracy, leftOpen: z.int() }),
  run: async (book, input, context) => {
    const facts = await readCountFacts(book, input.count);
    if (!facts.ok) return facts;
    const { count, entries, differences, stockAt, locations, partners } = facts.value;
    const name = countName(count);
    if (count.state !== 'open')
      return refuse(`count-${count.state}`, `Count ${name} is ${count.state} already.`, {
        field: 'count',
        hint: 'Maybe somebody else was quicker; nothing was booked a second time.',
      });
    if (input.entries !== undefined && input.entries !== entries.length)
      return refuse(
        'count-changed',
        `Count ${name} has ${entries.length} entries, and ${input.entries} when it was explained.`,
        { field: 'entries', hint: 'Maybe look at the differences again: somebody has counted since.' },
      );
    const lines = checkExplained(
      {
        differences,
        locations: new Map(locations.map(({ code, kind }) => [code, kind])),
        partners,
        leaveOut: input.leaveOut,
      },
      input.explained,
    );
    if (!lines.ok) return lines;
    const owners = await ownersFor(book, facts.value.owners, lines.value);
    const movements = countMovements({
      count,
      who: context.who,
      lines: lines.value,
      stockAt,
      locations,
      owners,
    });
    if (!movements.ok) return movements;
    await book.appendMovements(movements.value, context.at);
    const result = resultOf(lines.value, input.at ?? context.at, context.who);
    await book.putCount({ ...count, state: 'booked', result });
    return answer({
      name,
      movements: movements.value.length,
      accuracy: recordAccuracy(result.lines),
      leftOpen: result.lines.reduce((sum, line) => sum + line.leftOpen, 0),
    });
  },
});

function resultOf(lines: readonly LineToBook[], at: string, who: string): CountResult {
  return {
    at,
    who,
    lines: lines.map(({ line, explained, leftOpen }) => ({
      location: line.location,
      component: line.component,
      owner: line.owner,
      booked: line.booked,
      counted: line.booked + line.difference,
      uncertainty: line.stands?.uncertainty ?? 0,
      countedAt: line.stands?.at ?? at,
      class: line.class,
      within: line.within,
      explained: [...explained],
      leftOpen,
    })),
  };
}

/** Pieces found that are not ours need an owner to be booked to: one of kind others, made where there is none. */
async function ownersFor(
  book: BookWriter,
  owners: readonly Owner[],
  lines: readonly LineToBook[],
): Promise<readonly Owner[]> {
  const isNeeded = lines.some(({ explained }) =>
    explained.some(({ how, owner }) => how === 'not-ours' && owner === undefined),
  );
  if (!isNeeded || owners.some(({ kind }) => kind === 'others')) return owners;
  const code = ['NOT-OURS', 'NOT-OURS-2', 'NOT-OURS-3'].find((each) =>
    owners.every((owner) => owner.code !== each),
  );
  if (code === undefined) return owners;
  const others: Owner = { code, name: 'Found, not ours', kind: 'others', agreement: null };
  await book.putOwner(others);
  return [...owners, others];
}
