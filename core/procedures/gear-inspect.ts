// An inspection of a piece of lifting gear: who looked at it, whether it passed, and until when that holds. Inspections
// are only ever added; the newest one stands.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { inspectionText } from '../yard/lifting-gear.ts';
import { serial } from './gear-list.ts';
import { unknownSerial } from './gear-save.ts';
import { command } from './procedure.ts';
import { commandId, date } from './shapes.ts';

export const gearInspect = command({
  name: 'gear.inspect',
  input: z.strictObject({ commandId, serial, ...inspectionText.shape }),
  output: z.strictObject({ serial, goodUntil: date, passed: z.boolean() }),
  run: async (book, { serial: number, inspectedOn, goodUntil, passed, by, remark }) => {
    const gear = (await book.liftingGear()).find((each) => each.serial === number);
    if (gear === undefined) return unknownSerial(number);
    if (goodUntil < inspectedOn)
      return refuse(
        'bad-dates',
        `It cannot have been inspected on ${inspectedOn} and hold until ${goodUntil}.`,
        {
          field: 'goodUntil',
        },
      );
    if (gear.last !== null && inspectedOn < gear.last.inspectedOn)
      return refuse(
        'inspected-since',
        `${number} was inspected on ${gear.last.inspectedOn}, after ${inspectedOn}; that one stands.`,
        { field: 'inspectedOn', hint: 'Maybe the day is wrong.' },
      );
    await book.addInspection(number, { inspectedOn, goodUntil, passed, by, remark });
    return answer({ serial: number, goodUntil, passed });
  },
});
