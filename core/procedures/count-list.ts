// The counts of the yard, the newest first, and how right the records were found by them.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { countedLines } from '../yard/count-figures.ts';
import { accuracyBestPercent, accuracyFloorPercent, recordAccuracy } from '../yard/record-accuracy.ts';
import { countClasses, countName, type CountEntry, type StockCount } from '../yard/stock-count.ts';
import { accuracy, countHead } from './count-shapes.ts';
import { query } from './procedure.ts';
import { instant } from './shapes.ts';

export const countList = query({
  name: 'count.list',
  input: z.strictObject({}),
  output: z.strictObject({
    counts: z.array(
      countHead.extend({
        /** Of what was booked by it. */
        accuracy: accuracy.nullable(),
        bookedAt: instant.nullable(),
        bookedBy: z.string().nullable(),
        /** Lines booked with a difference in pieces. */
        differing: z.int().nullable(),
        leftOpen: z.int().nullable(),
      }),
    ),
    /** Of all lines of all booked counts; never netted. */
    accuracy,
    byClass: z.array(accuracy.extend({ class: z.enum(countClasses) })),
    floorPercent: z.number(),
    bestPercent: z.number(),
  }),
  run: async (book) => {
    const counts = await book.counts();
    const entries = await Promise.all(counts.map(({ id }) => book.countEntries(id)));
    const lines = counts.flatMap(({ result }) => result?.lines ?? []);
    return answer({
      counts: counts
        .map((count, index) => ({
          ...headOf(count, entries[index] ?? []),
          accuracy: count.result === null ? null : recordAccuracy(count.result.lines),
          bookedAt: count.result?.at ?? null,
          bookedBy: count.result?.who ?? null,
          differing: count.result?.lines.filter((line) => line.counted !== line.booked).length ?? null,
          leftOpen: count.result?.lines.reduce((sum, line) => sum + line.leftOpen, 0) ?? null,
        }))
        .sort((one, other) => other.number - one.number),
      accuracy: recordAccuracy(lines),
      byClass: countClasses.map((place) => ({
        class: place,
        ...recordAccuracy(lines.filter((line) => line.class === place)),
      })),
      floorPercent: accuracyFloorPercent,
      bestPercent: accuracyBestPercent,
    });
  },
});

export function headOf(count: StockCount, entries: readonly CountEntry[]): z.input<typeof countHead> {
  const { id, number, kind, state, startedAt, blind, counters, remark } = count;
  const lines = countedLines(count, entries);
  return {
    id,
    number,
    name: countName(count),
    kind,
    state,
    startedAt,
    blind,
    counters,
    remark,
    places: [...new Set(lines.map(({ location }) => location))],
    lines: lines.length,
    counted: lines.filter(({ figures }) => figures.length === counters).length,
  };
}
