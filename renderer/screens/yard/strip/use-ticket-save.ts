// Changes of an open ticket that can be taken back: the clearance, where a gang goes, where pieces are laid, a remark.
import { useCommand } from '../../../client/core.tsx';
import type { Refused } from '../../../client/refused.ts';
import { useUndo } from '../../../parts/undo.tsx';
import type { Clearance, Next } from './asked.ts';

interface TicketChange {
  readonly cleared?: Clearance | null;
  readonly next?: { part: string; next: Next }[];
  readonly place?: string;
  readonly remark?: string | null;
  readonly plannedAt?: string;
}

export function useTicketSave(ticket: string): {
  readonly error: Refused | null;
  readonly busy: boolean;
  readonly reset: () => void;
  readonly save: (words: string, before: TicketChange, after: TicketChange, onDone?: () => void) => void;
} {
  const command = useCommand('ticket.save');
  const { remember } = useUndo();
  const put = (change: TicketChange) => command.mutateAsync({ ticket, ...change });
  const keep = async (
    words: string,
    before: TicketChange,
    after: TicketChange,
    onDone?: () => void,
  ): Promise<void> => {
    try {
      await put(after);
    } catch {
      // The refusal stands at the form.
      return;
    }
    remember({ words, undo: () => put(before), redo: () => put(after) });
    onDone?.();
  };
  return {
    error: command.error,
    busy: command.isPending,
    reset: command.reset,
    save: (words, before, after, onDone) => {
      if (command.isPending) return;
      void keep(words, before, after, onDone);
    },
  };
}
