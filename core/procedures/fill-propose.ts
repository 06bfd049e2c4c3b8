// Gangs for both sides of a wall, or for a column: proposed from the designs that are there and the panels that are
// ready at the locations chosen. Stores nothing.
import { type Answer, answer, refuse } from '../answer.ts';
import type { BookReader, Design } from '../book/book.ts';
import { rulesInForce, systemOf } from '../book/systems.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { fillColumn } from '../face/fill-column.ts';
import { squareTurns } from '../face/wall-check.ts';
import type { WallAnswer, WallProposal } from '../face/wall.ts';
import { isReady } from '../yard/movement.ts';
import { asData } from './as-data.ts';
import { proposeInput, wallProposals } from './fill-wall-shapes.ts';
import { query } from './procedure.ts';
import { wallBeside } from './wall-beside.ts';
import type { z } from 'zod';

type Asked = z.output<typeof proposeInput>;

export const fillPropose = query({
  name: 'fill.propose',
  input: proposeInput,
  output: wallProposals,
  run: async (book, asked) => {
    const gathered = await gather(book, asked);
    if (!gathered.ok) return gathered;
    const filled = await fillAsked(asked, gathered.value);
    if (!filled.ok) return filled;
    const { proposals, proven, findings } = filled.value;
    return answer(asData({ proposals: proposals.map(shownProposal), proven, findings }));
  },
});

interface Gathered {
  readonly system: PanelSystem;
  readonly designs: readonly Design[];
  /** Null: as if there were always enough. */
  readonly stock: Readonly<Record<string, number>> | null;
}

async function gather(book: BookReader, { system: code, useStock }: Asked): Promise<Answer<Gathered>> {
  const [components, versions, designs] = await Promise.all([
    book.components(),
    book.ruleVersions(),
    book.designs(),
  ]);
  const system = systemOf(code, components, rulesInForce(versions));
  if (!system.ok) return { ok: false, error: { ...system.error, field: 'system' } };
  if (useStock === null) return answer({ system: system.value, designs, stock: null });
  const known = new Set((await book.locations()).map((location) => location.code));
  const stray = useStock.locations.find((location) => !known.has(location));
  if (stray !== undefined)
    return refuse('unknown-location', `There is no location ${stray}.`, { field: 'useStock.locations' });
  const chosen = new Set(useStock.locations);
  const stock: Record<string, number> = {};
  for (const { component, quantity, location, condition } of await book.stock(useStock.at))
    if (chosen.has(location) && isReady(condition)) stock[component] = (stock[component] ?? 0) + quantity;
  return answer({ system: system.value, designs, stock });
}

async function fillAsked(asked: Asked, { system, designs, stock }: Gathered): Promise<Answer<WallAnswer>> {
  const { wall, column } = asked;
  const ofSystem = designs.filter((design) => design.system === asked.system);
  const common = {
    system,
    stock,
    designs: asked.useDesigns ? ofSystem.map(({ code, name, geometry }) => ({ code, name, geometry })) : [],
    takenCodes: designs.map((design) => design.code),
    maximumFillerNm: asked.maximumFillerNm ?? system.rules.fillerLocks?.maximumWidthNm ?? 0,
    tieToleranceNm: asked.tieToleranceNm ?? 0,
    limits: asked.limits ?? {},
    best: asked.best ?? 3,
  };
  if (wall !== undefined && column === undefined) {
    const { outOfScope = [], turns: entered, ...rest } = wall;
    const turns = squareTurns(entered, outOfScope);
    if (!turns.ok) return turns;
    return await wallBeside({ ...common, wall: { ...rest, turns: turns.value } });
  }
  // two faces of a few panels: no thread beside is worth its start
  if (column !== undefined && wall === undefined) return fillColumn({ ...common, column });
  return refuse('wall-or-column', 'Give either the wall or the column that is to be formed.', {
    field: 'wall',
  });
}

function shownProposal({ score, ...proposal }: WallProposal) {
  const [newFaceNm, holesAlone, shortage, fillerNm, panelCount, asymmetry] = score;
  return {
    ...proposal,
    score: { newFaceNm, holesAlone, shortage, fillerNm, panelCount, asymmetry },
  };
}
