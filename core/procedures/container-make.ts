// Gives a piece a tag, so that it can hold pieces: there has to be one of that component and owner at the place that
// bears none yet.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { fillings } from '../yard/container.ts';
import { mayTag } from '../yard/container-steps.ts';
import { makePlace, standingPlace } from './gang-places.ts';
import { command } from './procedure.ts';
import { code, commandId, instant } from './shapes.ts';
import { unknownComponent } from './unknown.ts';

export const containerMake = command({
  name: 'container.make',
  input: z.strictObject({
    commandId,
    /** Its tag. */
    container: code,
    component: code,
    owner: code,
    place: code,
    filling: z.enum(fillings).default('empty'),
    at: instant,
    remark: z.string().trim().max(400).optional(),
  }),
  output: z.strictObject({ container: code }),
  run: async (book, { container: tag, component, owner, place, filling, at, remark }) => {
    const [containers, components, owners, stock] = await Promise.all([
      book.containers(),
      book.components(),
      book.owners(),
      book.stock(at),
    ]);
    if (containers.some((each) => each.code === tag))
      return refuse('tag-taken', `${tag} is a container already.`, {
        field: 'container',
        hint: 'Maybe another tag is free.',
      });
    const known = components.find((each) => each.code === component);
    if (known === undefined) return unknownComponent(component);
    if (!owners.some((each) => each.code === owner))
      return refuse('unknown-owner', `There is no owner ${owner} in this book.`, { field: 'owner' });
    const where = await standingPlace(book, place);
    if (!where.ok) return where;
    const may = mayTag({ component, owner, place }, containers, stock);
    if (!may.ok) return may;
    const made = await makePlace(book, { code: tag, name: `${known.name} ${tag}`, kind: 'container' });
    if (!made.ok) return made;
    await book.addContainerStep(
      { code: tag, component, owner },
      { at, place, filling, grossGrams: null, remark: remark ?? null },
    );
    return answer({ container: tag });
  },
});
