// What the end of a day would move, before it is saved: nothing is written.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { instantText } from '../plan/local-time.ts';
import { planChange } from '../plan/plan-changes.ts';
import { asData } from './as-data.ts';
import { endedDay } from './ended-lines.ts';
import { readEndOfDay } from './end-of-day.ts';
import { query } from './procedure.ts';
import { code, finding, instant } from './shapes.ts';

export const shownMove = z.strictObject({
  pour: code,
  what: z.enum(['set', 'close', 'pour', 'strip']),
  side: z.enum(['A', 'B']).nullable(),
  from: instant,
  to: instant,
  because: z.enum(['not-done', 'comes-after', 'really']),
});

export const dayendPreview = query({
  name: 'dayend.preview',
  input: z.strictObject(endedDay),
  output: z.strictObject({
    moves: z.array(shownMove),
    /** The same as changes of the plan, for asking what they would do to all of it. */
    changes: z.array(planChange),
    /** Whether what an earlier end of the day moved is put back first. */
    takesBack: z.boolean(),
    findings: z.array(finding),
  }),
  run: async (book, asked) => {
    const end = await readEndOfDay(book, asked, '');
    if (!end.ok) return end;
    const { moves, changes, takesBack, findings, day } = end.value;
    const { timeZone } = day.facts.job;
    return answer(
      asData({
        moves: moves.map((move) => ({
          ...move,
          from: instantText(move.from, timeZone),
          to: instantText(move.to, timeZone),
        })),
        changes,
        takesBack: takesBack !== null,
        findings,
      }),
    );
  },
});
