// Enters a piece of lifting gear by its serial number, or says where it is now. Moves nothing in the ledger: where more
// serial numbers are at a place than pieces, the answer says so.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { serialsOver } from '../yard/gear-ready.ts';
import { serial, serialOver } from './gear-list.ts';
import { standingPlace } from './gang-places.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';
import { unknownComponent } from './unknown.ts';

export const gearSave = command({
  name: 'gear.save',
  input: z.strictObject({ commandId, serial, component: code, owner: code, place: code, isNew: z.boolean() }),
  output: z.strictObject({ serialsOver: z.array(serialOver) }),
  run: async (book, { serial: number, component, owner, place, isNew }) => {
    const [gear, components, owners] = await Promise.all([
      book.liftingGear(),
      book.components(),
      book.owners(),
    ]);
    const before = gear.find((each) => each.serial === number);
    if (isNew && before !== undefined)
      return refuse('serial-taken', `${number} is there already: a ${before.component} at ${before.place}.`, {
        field: 'serial',
        hint: 'Maybe two pieces bear the same number: add what tells them apart.',
      });
    if (!isNew && before === undefined) return unknownSerial(number);
    if (!components.some((each) => each.code === component)) return unknownComponent(component);
    if (!owners.some((each) => each.code === owner))
      return refuse('unknown-owner', `There is no owner ${owner} in this book.`, { field: 'owner' });
    if (before !== undefined && before.last !== null && before.component !== component)
      return refuse(
        'gear-is-other',
        `${number} was inspected as a ${before.component} on ${before.last.inspectedOn}; it cannot become a ${component}.`,
        { field: 'component', hint: 'Maybe enter it under another serial number.' },
      );
    const where = await standingPlace(book, place);
    if (!where.ok) return where;
    await book.putLiftingGear({ serial: number, component, owner, place });
    const [now, stock] = await Promise.all([book.liftingGear(), book.stock()]);
    return answer({ serialsOver: [...serialsOver(now, stock)] });
  },
});

export function unknownSerial(number: string) {
  return refuse('unknown-serial', `There is no lifting gear of serial number ${number} in this book.`, {
    field: 'serial',
    hint: 'Maybe it has to be entered first.',
  });
}
