// Loads for what is to go, on the trucks that may be used: as few as can be found, with what they take at the least,
// what fits on none, and which sizes are defaults.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { proposeLoading } from '../yard/loading.ts';
import { bearersNm, laidBox, laidGangHeightNm } from '../yard/laid-sizes.ts';
import { loadLayer } from '../yard/truck.ts';
import { asData } from './as-data.ts';
import { byCode, found } from './by-code.ts';
import { linesOfNote, readLoadFacts } from './load-facts.ts';
import { figuresOf } from './load-figures.ts';
import { loadFigures, thingNames, toSend } from './load-shapes.ts';
import { readNote } from './note-shapes.ts';
import { query } from './procedure.ts';
import { code, lengthNm } from './shapes.ts';

export const loadPropose = query({
  name: 'load.propose',
  input: z.strictObject({
    /** One of the two: the lines of a note, or these. */
    note: z.exactOptional(z.string().min(1).max(64)),
    lines: z.exactOptional(z.array(toSend).max(500)),
    /** Those that may be used, each as often as it takes. */
    trucks: z.array(code).min(1).max(20),
  }),
  output: z.strictObject({
    loads: z.array(z.strictObject(loadFigures)),
    notFitting: z.array(
      z.strictObject({
        layer: loadLayer,
        passes: z.array(z.enum(['weight', 'length', 'width', 'height'])),
      }),
    ),
    /** Trucks that it takes however well they are loaded. */
    atLeast: z.strictObject({ byWeight: z.int(), byDeck: z.int() }),
    /** Fewer are surely not possible. */
    fewest: z.boolean(),
    names: thingNames,
    /** How pieces lie: of one piece, or of their box. */
    sizes: z.array(
      z.strictObject({
        component: code,
        how: z.enum(['bundle', 'box']),
        lengthNm,
        widthNm: lengthNm,
        thicknessNm: lengthNm,
        pieces: z.int(),
        defaults: z.array(z.string()),
      }),
    ),
    defaults: z.strictObject({ bearersNm: lengthNm, gangHeightNm: lengthNm, boxGrams: z.int() }),
  }),
  run: async (book, { note: id, lines, trucks: codes }) => {
    if ((id === undefined) === (lines === undefined))
      return refuse('one-of-two', 'Loads are made for a note or for lines, one of the two.', {
        field: 'lines',
      });
    const all = byCode(await book.trucks());
    const strange = codes.find((each) => !all.has(each));
    if (strange !== undefined) return unknownTruck(strange);
    const trucks = [...new Set(codes)].map((each) => found(all, each));
    const note = id === undefined ? answer(null) : await readNote(book, id);
    if (!note.ok) return note;
    const sent = note.value === null ? (lines ?? []) : await linesOfNote(book, note.value);
    const facts = await readLoadFacts(book, sent, trucks, note.value);
    if (!facts.ok) return facts;
    const { loads, notFitting, atLeast, fewest } = proposeLoading(facts.value.layers, trucks);
    return answer({
      loads: loads.map(({ truck, stacks }) => figuresOf(stacks, found(all, truck))),
      notFitting: asData([...notFitting]),
      atLeast,
      fewest,
      names: { ...facts.value.names },
      sizes: [...facts.value.sizes].map(([component, size]) => ({
        component,
        how: size.how,
        lengthNm: size.lengthNm,
        widthNm: size.widthNm,
        thicknessNm: size.thicknessNm,
        pieces: size.pieces,
        defaults: [...size.defaults],
      })),
      defaults: { bearersNm, gangHeightNm: laidGangHeightNm, boxGrams: laidBox.contentGrams },
    });
  },
});

export function unknownTruck(truck: string) {
  return refuse('unknown-truck', `There is no truck ${truck} in this book.`, {
    field: 'truck',
    hint: 'Maybe enter it first: payload, deck and how high it may be stacked.',
  });
}
