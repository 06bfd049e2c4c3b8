// Adds a signed figure: the owner's, ours, or the agreed one. Nothing that was signed before is changed by it.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { figureText } from './figure-shapes.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';

export const figureAdd = command({
  name: 'figure.add',
  input: z.strictObject({ commandId, figure: figureText }),
  output: z.strictObject({ owner: code, component: code }),
  run: async (book, { figure }) => {
    const [owners, components] = await Promise.all([book.owners(), book.components()]);
    if (!owners.some((each) => each.code === figure.owner))
      return refuse('unknown-owner', `The book has no owner ${figure.owner}.`, { field: 'figure.owner' });
    if (!components.some((each) => each.code === figure.component))
      return refuse('unknown-component', `The book has no component ${figure.component}.`, {
        field: 'figure.component',
      });
    await book.addSignedFigure(figure);
    return answer({ owner: figure.owner, component: figure.component });
  },
});
