// Counted less booked, line by line: with its bases, value, likely causes, and how it may be explained. Of a count
// made blind only the lines that every counter has entered.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { percentOf } from '../yard/count-bases.ts';
import { tolerancePercent } from '../yard/count-class.ts';
import type { CountDifference } from '../yard/count-differences.ts';
import { explainsDifference, explanationRules } from '../yard/explanation-rules.ts';
import type { LikelyCause } from '../yard/likely-causes.ts';
import type { Location } from '../yard/movement.ts';
import { recordAccuracy } from '../yard/record-accuracy.ts';
import { countResult, explanations } from '../yard/stock-count.ts';
import { found } from './by-code.ts';
import { readCauses } from './cause-facts.ts';
import { readCountFacts } from './count-facts.ts';
import { headOf } from './count-list.ts';
import { movedDuring } from './count-moved.ts';
import { accuracy, countHead, countId, differenceLine, movedMeanwhile } from './count-shapes.ts';
import { query } from './procedure.ts';

export const countDifferences = query({
  name: 'count.differences',
  input: z.strictObject({ count: countId }),
  output: z.strictObject({
    count: countHead,
    lines: z.array(differenceLine),
    /** Lines that a counter has still to enter. */
    waiting: z.int(),
    /** Of the lines counted, as they stand: never netted. */
    accuracy,
    /** Values of what is short and of what is over, side by side; lines whose pieces have no value are in neither. */
    shortCents: z.int(),
    overCents: z.int(),
    withoutValue: z.int(),
    moved: z.array(movedMeanwhile),
    entries: z.int(),
    /** As it was booked; null until then. */
    result: countResult.nullable(),
  }),
  run: async (book, { count: id }) => {
    const facts = await readCountFacts(book, id);
    if (!facts.ok) return facts;
    const { count, entries, differences, components, locations } = facts.value;
    const causes = await readCauses(book, facts.value);
    const shown = differences.flatMap((line, index) => {
      if (count.blind && count.state === 'open' && line.state === 'waiting') return [];
      return [shownLine(line, found(components, line.component).name, causes[index] ?? [], locations)];
    });
    const counted = differences.filter(({ state }) => state === 'counted');
    const values = counted.flatMap(({ valueCents }) => valueCents ?? []);
    return answer({
      count: headOf(count, entries),
      lines: shown,
      waiting: differences.filter(({ state }) => state === 'waiting').length,
      accuracy: recordAccuracy(counted),
      shortCents: -values.filter((value) => value < 0).reduce((sum, value) => sum + value, 0),
      overCents: values.filter((value) => value > 0).reduce((sum, value) => sum + value, 0),
      withoutValue: counted.filter(({ valueCents, difference }) => valueCents === null && difference !== 0)
        .length,
      moved: await movedDuring(book, count, differences),
      entries: entries.length,
      result: count.result,
    });
  },
});

function shownLine(
  line: CountDifference,
  name: string,
  causes: readonly LikelyCause[],
  locations: readonly Location[],
): z.input<typeof differenceLine> {
  const { changes, bases, difference, booked } = line;
  const size = Math.abs(difference);
  return {
    location: line.location,
    component: line.component,
    owner: line.owner,
    name,
    state: line.state,
    figures: line.figures.map((figure) => ({ ...figure, notes: [...figure.notes] })),
    stands: line.stands === null ? null : { ...line.stands, notes: [...line.stands.notes] },
    booked,
    bookedByCondition: line.bookedByCondition,
    difference,
    conditionMoves: changes.moves.map((move) => ({ ...move })),
    unclear: line.unclear,
    bases: {
      ...bases,
      percentOfOwned: percentOf(size, bases.owned),
      percentOfExpected: percentOf(size, bases.expectedInYard),
      percentOfBooked: percentOf(size, booked),
    },
    valueCents: line.valueCents,
    class: line.class,
    tolerancePercent: tolerancePercent[line.class],
    within: line.within,
    recount: line.recount,
    causes: [...causes],
    offered: offeredFor(line, locations),
  };
}

function offeredFor(
  line: CountDifference,
  locations: readonly Location[],
): z.input<typeof differenceLine>['offered'] {
  return explanations
    .filter((how) =>
      how === 'condition-changed'
        ? line.changes.moves.length > 0
        : !line.unclear && explainsDifference(how, line.difference),
    )
    .filter((how) => how !== 'owner-mixed' || line.owner !== null)
    .map((how) => {
      const { places, isPlaceNeeded } = explanationRules[how];
      return {
        how,
        isPlaceNeeded,
        places: locations
          .filter(({ kind, code }) => places.includes(kind) && code !== line.location)
          .map(({ code }) => code),
      };
    });
}
