// The sheet for the pick of a gang, by the rigging and crane entered for it. Where nothing is entered, the sheet
// says so and holds its weights alone.
import { z } from 'zod';
import { answer, type Answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { rulesInForce, systemOf } from '../book/systems.ts';
import { checkPick } from '../pick/pick-check.ts';
import { pickWeights } from '../pick/pick-weights.ts';
import { nothingEntered, type PickSetup, pickSetup } from '../pick/setup.ts';
import { findSplit } from '../pick/split.ts';
import { type PickEntered, pickSheet } from '../sheets/pick-sheet.ts';
import { asData } from './as-data.ts';
import type { DesignFacts } from './design-facts.ts';
import { query } from './procedure.ts';
import { readSheetFacts } from './sheet-facts.ts';
import { sheetInput, sheetOutput } from './sheet-shape.ts';
import { shownTakeOff } from './shown-takeoff.ts';

export const sheetPick = query({
  name: 'sheet.pick',
  input: sheetInput.extend({
    /** In place of the one that was kept: a pick that is still being entered. */
    setup: z.exactOptional(pickSetup),
  }),
  output: sheetOutput,
  run: async (book, asked) => {
    const read = await readSheetFacts(book, asked);
    if (!read.ok) return read;
    const { facts, gang, job, units } = read.value;
    const setup = asked.setup ?? (await book.pickSetup(asked.design));
    const entered = setup === null ? answer(null) : await readPick(book, facts, setup);
    if (!entered.ok) return entered;
    const drawn = shownTakeOff(facts.takeOff, facts.design.geometry.edges);
    const weights = pickWeights(facts.takeOff, nothingEntered, null).lines;
    return answer(asData(pickSheet({ gang, drawn, job, units, entered: entered.value, weights })));
  },
});

async function readPick(
  book: BookReader,
  { design }: DesignFacts,
  setup: PickSetup,
): Promise<Answer<PickEntered>> {
  const [cranes, components, versions] = await Promise.all([
    book.cranes(),
    book.components(),
    book.ruleVersions(),
  ]);
  const crane = cranes.find(({ code }) => code === setup.crane) ?? null;
  const system = systemOf(design.system, components, rulesInForce(versions));
  if (!system.ok) return system;
  const check = checkPick(system.value, design.geometry, setup, crane);
  if (!check.ok) return check;
  const isRefused = check.value.verdict === 'refused';
  const split = isRefused ? findSplit(system.value, design.geometry, setup, crane) : null;
  return answer({ setup, crane, check: check.value, split });
}
