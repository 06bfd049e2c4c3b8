// What happens to lines on the phone: a tap changes the draft of a paper, a draft becomes a batch with an id, a batch
// comes in, or is refused and goes back to the draft or to the late finds. Each is one transaction: nothing is in two
// places, nothing in none.
import { asked } from './database.ts';
import {
  type Batch,
  type BatchState,
  type Draft,
  type EntryLine,
  type KeptPaper,
  type KeptRefusal,
  type Paper,
  sameLine,
  sameThing,
  type Work,
} from './kept.ts';
import { keep } from './state.ts';

type Stores = (name: 'drafts' | 'batches') => IDBObjectStore;

const paperOf = ({ key, kind, id, name, counter }: Paper): Paper => ({ key, kind, id, name, counter });

/** `change` gets the lines of the draft as they stand in the store, whatever is shown, and answers the new ones. */
export async function changeDraft(
  paper: Paper,
  change: (lines: readonly EntryLine[]) => readonly EntryLine[],
): Promise<void> {
  await keep(['drafts'], async (store) => {
    const before = await draftOf(store, paper.key);
    await putDraft(store, paper, change(before?.lines ?? []), new Date().toISOString());
  });
}

async function draftOf(store: Stores, key: string): Promise<Draft | null> {
  return ((await asked(store('drafts').get(key))) as Draft | undefined) ?? null;
}

async function putDraft(store: Stores, paper: Paper, lines: readonly EntryLine[], at: string): Promise<void> {
  if (lines.length === 0) await asked(store('drafts').delete(paper.key));
  else await asked(store('drafts').put({ paper: paperOf(paper), lines, at } satisfies Draft));
}

/** Drafts that nothing was added to since `before` become batches. What is sealed is never changed again. */
export async function sealDrafts(before: number): Promise<void> {
  await keep(['drafts', 'batches'], async (store) => {
    for (const draft of (await asked(store('drafts').getAll())) as Draft[]) {
      // A clock that was set back must not hold a draft for ever.
      const age = before - Date.parse(draft.at);
      if (age < 0 && age > -60_000) continue;
      const { paper, lines, at } = draft;
      const batch: Batch = { id: newId(), paper, lines, at, state: 'waiting', refusal: null };
      await asked(store('batches').add(batch));
      await asked(store('drafts').delete(paper.key));
    }
  });
}

/** Random, and there on a plain address too, where `randomUUID` is not. */
function newId(): string {
  return [...crypto.getRandomValues(new Uint8Array(16))]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('');
}

/** Only what is still on its way is settled: an answer that comes twice changes nothing. */
export async function settle(id: string, state: BatchState, refusal: KeptRefusal | null): Promise<void> {
  await keep(['batches'], async (store) => {
    const batch = (await asked(store('batches').get(id))) as Batch | undefined;
    if (batch?.state !== 'waiting') return;
    await asked(store('batches').put({ ...batch, state, refusal } satisfies Batch));
  });
}

/** What is to be sent once more as it is, under the same id, or kept for late finds. */
export async function turnBatch(id: string, from: readonly BatchState[], to: BatchState): Promise<void> {
  await keep(['batches'], async (store) => {
    const batch = (await asked(store('batches').get(id))) as Batch | undefined;
    if (batch === undefined || !from.includes(batch.state)) return;
    await asked(store('batches').put({ ...batch, state: to } satisfies Batch));
  });
}

/** The lines of a refused batch back to be counted on, on its own paper or on another. */
export async function takeBack(id: string, onto: Paper | null = null): Promise<void> {
  await keep(['drafts', 'batches'], async (store) => {
    const batch = (await asked(store('batches').get(id))) as Batch | undefined;
    if (batch?.state !== 'refused' && batch?.state !== 'late') return;
    const paper = onto ?? batch.paper;
    const draft = await draftOf(store, paper.key);
    const lines = merged(paper, draft?.lines ?? [], batch.lines);
    await putDraft(store, paper, lines, draft?.at ?? batch.at);
    await asked(store('batches').delete(id));
  });
}

/** On a ticket figures add up; on a count the later one, that of the draft, stands. */
function merged(
  { kind }: Paper,
  draft: readonly EntryLine[],
  back: readonly EntryLine[],
): readonly EntryLine[] {
  if (kind === 'count')
    return [...draft, ...back.filter((line) => !draft.some((other) => sameThing(line, other)))];
  const summed = draft.map((line) => ({
    ...line,
    quantity: line.quantity + (back.find((other) => sameLine(line, other))?.quantity ?? 0),
  }));
  return [...summed, ...back.filter((line) => !draft.some((other) => sameLine(line, other)))];
}

/** By a person who looked at it and wants it gone. */
export async function throwAway(id: string): Promise<void> {
  await keep(['batches'], async (store) => {
    const batch = (await asked(store('batches').get(id))) as Batch | undefined;
    if (batch?.state === 'refused' || batch?.state === 'late') await asked(store('batches').delete(id));
  });
}

/** @param done batches that had come in before it was read: it holds them */
export async function keepPaper(paper: KeptPaper, done: readonly string[]): Promise<void> {
  await keep(['papers', 'batches'], async (store) => {
    await asked(store('papers').put(paper));
    for (const id of done) await asked(store('batches').delete(id));
  });
}

export async function keepWork(work: Work): Promise<void> {
  await keep(['facts'], async (store) => {
    await asked(store('facts').put(work, 'work'));
  });
}

export async function keepName(name: string): Promise<void> {
  await keep(['facts'], async (store) => {
    await asked(store('facts').put(name, 'name'));
  });
}
