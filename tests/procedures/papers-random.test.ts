// Random notes saved, edited by two, booked, dropped and reversed in any order: after every step the yard holds what a
// second reckoning says, nothing of a refused step is left, every component balances over all places, and what is owed
// to the supplier is minus what stands at the places outside.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { dice, someSeed } from '../book/dice.ts';
import { demoHost, type DemoHost } from './demo-host.ts';
import { type ModelLine, type ModelNote, PapersModel } from './papers-model.ts';

let host: DemoHost;

beforeAll(async () => {
  host = await demoHost();
});
afterAll(() => host.close());

const components = ['LK', 'WB', 'R8'] as const;
const outside = ['TFH', 'OPENING'];
const owner = 'TFH';
const ends: readonly (readonly [ModelNote['kind'], string, string])[] = [
  ['delivery', 'TFH', 'ENN'],
  ['hire-on', 'TFH', 'TB'],
  ['return', 'ENN', 'TFH'],
  ['hire-off', 'TB', 'TFH'],
  ['transfer', 'ENN', 'TB'],
  ['transfer', 'TB', 'ENN'],
];
const text = {
  job: null,
  expectedAt: null,
  arrivedAt: null,
  leftAt: null,
  vehicle: null,
  signedHere: null,
  signedThere: null,
  protest: null,
  remark: null,
};

test('160 and more random steps with notes keep the balance, and what is owed right', async () => {
  const seed = someSeed();
  const throws = dice(seed);
  const below = (limit: number): number => throws.below(limit);
  const chance = (percent: number): boolean => throws.chance(percent);
  const of = <T>(list: readonly T[]): T => throws.of(list);
  const at = (step: number, what: string): string => `SEED=${seed}, step ${step}, ${what}`;
  const model = new PapersModel(outside);
  const notes = new Map<string, ModelNote>();
  let made = 0;
  const id = (): string => `random-${(made += 1)}-of-${seed}`;
  const claimsBefore = (await host.ask('yard.owed', {})).claims.length;
  await readStart(model);

  const someLines = (): ModelLine[] =>
    Array.from({ length: chance(5) ? 0 : 1 + below(6) }, () => {
      const sent = below(chance(8) ? 400 : 9);
      const counted = chance(4) ? null : chance(70) ? sent : below(9);
      return { component: of(components), sent, counted };
    });
  const save = async (note: ModelNote): Promise<string | null> =>
    attempt('note.save', {
      commandId: id(),
      note: {
        ...text,
        id: note.id,
        kind: note.kind,
        number: note.id,
        from: note.from,
        to: note.to,
        version: note.version,
        lines: note.lines.map((line) => ({
          ...line,
          owner,
          condition: 'ready',
          container: null,
          remark: null,
        })),
      },
    });

  const done = { booked: 0, reversed: 0, refused: 0 };
  const least = (): number => Math.min(done.booked, done.reversed, done.refused);
  // On until every sort of step was seen: a run in which one never happened would have shown nothing of it.
  for (let step = 1; step <= 160 || (least() < 4 && step <= 3000); step += 1) {
    const live = [...notes.values()].filter(({ state }) => state === 'draft' || state === 'booked');
    const note = live.length === 0 || chance(25) ? null : of(chance(85) ? live : [...notes.values()]);
    if (note === null) {
      const [kind, from, to] = of(ends);
      const fresh = { id: id(), kind, from, to, version: 0, state: 'draft', lines: someLines() } as const;
      expect(await save(fresh), at(step, 'save')).toBe(null);
      notes.set(fresh.id, { ...fresh, version: 1 });
    } else if (chance(20)) {
      const stale = chance(30);
      const edited = { ...note, version: note.version - (stale ? 1 : 0), lines: someLines() };
      const expected = note.state !== 'draft' ? `note-${note.state}` : stale ? 'changed-meanwhile' : null;
      expect(await save(edited), at(step, 'edit')).toBe(expected);
      if (expected === null) notes.set(note.id, { ...edited, version: note.version + 1 });
      else done.refused += 1;
    } else if (chance(note.state === 'booked' ? 25 : 80)) {
      const expected = model.refusal(note);
      const found = await attempt('note.book', { commandId: id(), note: note.id });
      expect(found, at(step, `book ${note.kind} of ${JSON.stringify(note.lines)}`)).toBe(expected);
      if (expected === null) {
        model.book(note);
        notes.set(note.id, { ...note, state: 'booked', version: note.version + 1 });
        done.booked += 1;
      } else done.refused += 1;
    } else if (chance(80)) {
      const expected = model.reversalRefusal(note);
      const found = await attempt('note.reverse', { commandId: id(), note: note.id, remark: 'again' });
      if (expected === 'moved-on') expect(found, at(step, 'reverse')).not.toBe(null);
      else expect(found, at(step, 'reverse')).toBe(expected);
      if (expected === null) {
        model.reverse(note);
        notes.set(note.id, { ...note, state: 'reversed' });
        done.reversed += 1;
      } else done.refused += 1;
    } else {
      const expected = note.state === 'draft' ? null : `note-${note.state}`;
      expect(await attempt('note.drop', { commandId: id(), note: note.id }), at(step, 'drop')).toBe(expected);
      if (expected === null) notes.set(note.id, { ...note, state: 'dropped', version: note.version + 1 });
    }
    await agree(model, [...notes.values()], claimsBefore, at(step, 'after it'));
  }
  expect(least(), at(3000, JSON.stringify(done))).toBeGreaterThan(3);
}, 60_000);

/** The code of the refusal, or null. */
async function attempt(
  name: 'note.save' | 'note.book' | 'note.reverse' | 'note.drop',
  input: unknown,
): Promise<string | null> {
  try {
    return await host.refused(name, input as never);
  } catch (error) {
    if (error instanceof Error && error.message === `${name} was not refused`) return null;
    throw error;
  }
}

async function readStart(model: PapersModel): Promise<void> {
  const { rows } = await host.ask('yard.quantities', {});
  for (const row of rows)
    if (row.owner === owner && row.condition === 'ready')
      model.held.set(
        `${row.location} ${row.component}`,
        model.at(row.location, row.component) + row.quantity,
      );
  for (const row of (await host.ask('yard.owed', {})).rows) {
    model.received.set(row.component, row.received);
    model.returned.set(row.component, row.returned);
  }
}

async function agree(
  model: PapersModel,
  notes: readonly ModelNote[],
  claimsBefore: number,
  where: string,
): Promise<void> {
  const { rows } = await host.ask('yard.quantities', { outside: true });
  const owed = await host.ask('yard.owed', {});
  for (const component of components) {
    const own = rows.filter((row) => row.component === component && row.owner === owner);
    const sum = (of: typeof own): number => of.reduce((total, row) => total + row.quantity, 0);
    expect(sum(own), where).toBe(0);
    for (const place of ['ENN', 'TB'])
      expect(sum(own.filter((row) => row.location === place)), `${where}: ${component} at ${place}`).toBe(
        model.at(place, component),
      );
    const outsideSum = sum(own.filter((row) => outside.includes(row.location)));
    const row = owed.rows.find((each) => each.component === component);
    expect(row, where).toMatchObject({
      received: model.received.get(component) ?? 0,
      returned: model.returned.get(component) ?? 0,
      owed: 0 - outsideSum,
    });
    if (row !== undefined)
      expect(row.ready + row.notReady + row.away + row.scrapped + row.lost, where).toBe(row.owed);
  }
  const claimed = notes
    .filter((note) => note.state === 'booked' && outside.includes(note.from))
    .flatMap((note) => note.lines.filter((line) => line.counted !== line.sent));
  expect(owed.claims.length - claimsBefore, where).toBe(claimed.length);
}
