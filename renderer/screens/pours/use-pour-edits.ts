// What the parts of this screen can do to pours. What the core or the reader refuses stays in its cell as it
// was typed, with the reason; a refusal that belongs to no cell stands over the table.
import { useCallback, useMemo, useState } from 'react';
import { Refused, wordsOf } from '../../client/refused.ts';
import { type CellDrafts, useCellDrafts } from './cell-drafts.ts';
import type { PastedPour } from './pasted-cells.ts';
import { type CellId, cellOfField, cells, cellWords } from './pour-cells.ts';
import type { CellContext, Pour, PourRow } from './pour-shapes.ts';
import { type PourStore, usePourStore } from './use-pour-store.ts';

export interface PourEdits {
  readonly drafts: CellDrafts;
  /** What was refused and belongs to no cell. */
  readonly error: unknown;
  readonly busy: boolean;
  readonly write: (code: string, cell: CellId, text: string) => void;
  /** Drops a refused text and shows again what stands in the book. */
  readonly drop: (code: string, cell: string) => void;
  /** Changes a pour in another way than by a cell. True where it was saved. */
  readonly change: (code: string, by: (pour: Pour) => Pour, words: string) => Promise<boolean>;
  readonly add: (pour: Pour, words: string) => Promise<boolean>;
  readonly remove: (code: string) => Promise<boolean>;
  /** Answers how many cells were saved: all of a row, or none. */
  readonly savePasted: (pasted: PastedPour) => Promise<number>;
}

export function usePourEdits(job: string, rows: readonly PourRow[], context: CellContext): PourEdits {
  const store = usePourStore(job, rows);
  const { current, inTurn, send, takeOut } = store;
  const [drafts, setDraft] = useCellDrafts();
  const [error, setError] = useState<unknown>(null);

  const write = useCallback(
    (code: string, cell: CellId, text: string): void => {
      setDraft(code, cell, { text, message: null });
      setError(null);
      inTurn(() => writeCell({ current, send }, code, cell, text, context))
        .then(() => setDraft(code, cell, null))
        .catch((refused: unknown) => setDraft(code, cell, { text, ...wordsOf(refused) }));
    },
    [current, inTurn, send, context, setDraft],
  );
  const drop = useCallback((code: string, cell: string) => setDraft(code, cell, null), [setDraft]);
  const attempt = useCallback(
    async (work: () => Promise<void>): Promise<boolean> => {
      setError(null);
      try {
        await inTurn(work);
        return true;
      } catch (refused) {
        setError(refused);
        return false;
      }
    },
    [inTurn],
  );
  const others = useMemo(
    () => ({
      change: (code: string, by: (pour: Pour) => Pour, words: string) =>
        attempt(async () => {
          const before = current(code);
          if (before !== undefined) await send(before, by(before), words);
        }),
      add: (pour: Pour, words: string) => attempt(() => send(null, pour, words)),
      remove: (code: string) => attempt(() => takeOut(code)),
    }),
    [attempt, current, send, takeOut],
  );
  const savePasted = useCallback(
    (pasted: PastedPour) => inTurn(() => savePastedPour({ current, send }, pasted, context, setDraft)),
    [current, send, inTurn, context, setDraft],
  );
  return { drafts, error, busy: store.busy, write, drop, savePasted, ...others };
}

type Saving = Pick<PourStore, 'current' | 'send'>;

/** Reads a cell's text and saves its pour; throws what refuses it. The text that stands there is no change. */
async function writeCell(
  { current, send }: Saving,
  code: string,
  cell: CellId,
  text: string,
  context: CellContext,
): Promise<void> {
  const before = current(code);
  if (before === undefined || text === cells[cell].text(before, context)) return;
  const written = cells[cell].write(before, text, context);
  if (!written.ok) throw new Refused(written.error);
  await send(before, written.value, `${code}: ${cellWords[cell]} ${text.trim()}`);
}

async function savePastedPour(
  { current, send }: Saving,
  pasted: PastedPour,
  context: CellContext,
  setDraft: ReturnType<typeof useCellDrafts>[1],
): Promise<number> {
  const { pour, changed, refused } = pasted;
  // Nothing of a row is saved where a part of it is refused: every pasted text stays in its cell, the
  // reason at the cell it belongs to.
  const keep = (at: CellId | undefined, words: { message: string; hint?: string }): void => {
    for (const cell of changed) {
      const see = { message: `Not saved: see ${at === undefined ? 'the row' : cellWords[at]}.` };
      setDraft(pour.code, cell, { text: cells[cell].text(pour, context), ...(cell === at ? words : see) });
    }
  };
  for (const { cell, text, refusal } of refused)
    setDraft(pour.code, cell, { text, ...wordsOf(new Refused(refusal)) });
  const before = current(pour.code);
  const [first] = refused;
  if (first !== undefined) keep(first.cell, first.refusal);
  if (before === undefined || first !== undefined || changed.length === 0) return 0;
  try {
    await send(before, pour, `${pour.code}: ${changed.length} pasted cells`);
    for (const cell of changed) setDraft(pour.code, cell, null);
    return changed.length;
  } catch (error) {
    const named = error instanceof Refused ? cellOfField(error.field) : undefined;
    keep(changed.find((cell) => cell === named) ?? changed[0], wordsOf(error));
    return 0;
  }
}
