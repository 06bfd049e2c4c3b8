// What typed changes may speak of, out of the book: pours, components, designs, notes that are still drafts.
import { useMemo } from 'react';
import { useCore } from '../../client/core.tsx';
import type { Output } from '../../client/shapes.ts';
import { calendarDays } from '../calendar-days.ts';
import { timeWords } from '../time-words.ts';
import { readWhen } from '../when-text.ts';
import { addDays, dayStartMs } from '../zoned.ts';
import type { Known } from './change-text.ts';
import type { ChangeNames } from './change-words.ts';

type Board = Output<'board.read'>;

/** @param now the hour of today where the plan runs; else pieces are there from the plan's first day on */
export function useKnown(board: Board, now: string | undefined): Known & { readonly names: ChangeNames } {
  const components = useCore('component.list', {}).data?.components;
  const designs = useCore('design.list', {}).data?.designs;
  const drafts = useCore('note.list', { state: 'draft' }).data?.notes;
  return useMemo(() => {
    const { timeZone, planFrom } = board.job;
    const words = timeWords(timeZone);
    const notes = drafts ?? [];
    return {
      pours: board.pours.map(({ pour }) => ({ code: pour.code, name: pour.name })),
      components: components ?? [],
      designs: designs ?? [],
      notes,
      from: now ?? new Date(dayStartMs(planFrom, timeZone)).toISOString(),
      timeZone,
      later: (instant: string, workingDays: number) => {
        const date = words.date(instant);
        const read = readWhen(addDays(date, calendarDays(date, workingDays, board.days)), instant, timeZone);
        return read.ok ? read.value : instant;
      },
      names: { words, note: (id: string) => notes.find((each) => each.id === id)?.number ?? id },
    };
  }, [board, components, designs, drafts, now]);
}
