// Undo and redo for edits of the plan and its pours: each kept edit says how to take it back, which is
// itself a command to the core. Platform shortcuts; the desktop's menu calls the same two functions. While an
// editor with a history of its own is open, keys and buttons speak to that history instead.
import {
  createContext,
  type ReactNode,
  useCallback,
  useContext,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { useWindowKeys } from './window-keys.ts';

interface Edit {
  /** What was done, as "move W5 by 1 day". */
  readonly words: string;
  readonly undo: () => Promise<unknown>;
  readonly redo: () => Promise<unknown>;
}

/** What an editor has done and not saved yet. */
export interface OwnHistory {
  readonly undo: () => void;
  readonly redo: () => void;
  readonly undoWords: string | null;
  readonly redoWords: string | null;
}

export interface UndoStack extends OwnHistory {
  readonly remember: (edit: Edit) => void;
  /** The last thing undone, redone or refused, for the status line. */
  readonly said: string | null;
}

const UndoContext = createContext<UndoStack | null>(null);
const OwnContext = createContext<(history: OwnHistory | null) => void>(() => undefined);

/** From now until the editor closes, undo and redo are its own: the plan's edits lie behind it untouched. */
export function useOwnHistory(history: OwnHistory): void {
  const tell = useContext(OwnContext);
  useLayoutEffect(() => {
    tell(history);
    return () => tell(null);
  }, [tell, history]);
}

export function useUndo(): UndoStack {
  const stack = useContext(UndoContext);
  if (stack === null) throw new Error('A screen stands outside UndoProvider.');
  return stack;
}

interface Stacks {
  readonly done: readonly Edit[];
  readonly undone: readonly Edit[];
}

export function UndoProvider(props: { readonly children: ReactNode }): ReactNode {
  const [stacks, setStacks] = useState<Stacks>({ done: [], undone: [] });
  const [said, setSaid] = useState<string | null>(null);
  const [own, setOwn] = useState<OwnHistory | null>(null);
  const busy = useRef(false);

  const remember = useCallback((edit: Edit) => {
    setStacks((old) => ({ done: [...old.done, edit].slice(-50), undone: [] }));
    setSaid(`Kept: ${edit.words}`);
  }, []);

  const step = useCallback(async (edit: Edit | undefined, way: 'undo' | 'redo') => {
    if (edit === undefined || busy.current) return;
    busy.current = true;
    try {
      await edit[way]();
      setStacks((old) =>
        way === 'undo'
          ? { done: old.done.slice(0, -1), undone: [...old.undone, edit] }
          : { done: [...old.done, edit], undone: old.undone.slice(0, -1) },
      );
      setSaid(way === 'undo' ? `Undone: ${edit.words}` : `Done again: ${edit.words}`);
    } catch (error) {
      setSaid(
        `Not ${way === 'undo' ? 'undone' : 'done again'}: ${error instanceof Error ? error.message : ''}`,
      );
    } finally {
      busy.current = false;
    }
  }, []);

  const undo = useCallback(
    () => (own === null ? void step(stacks.done.at(-1), 'undo') : own.undo()),
    [own, step, stacks],
  );
  const redo = useCallback(
    () => (own === null ? void step(stacks.undone.at(-1), 'redo') : own.redo()),
    [own, step, stacks],
  );
  useUndoKeys(undo, redo);

  const stack = useMemo<UndoStack>(
    () => ({
      remember,
      undo,
      redo,
      said: own === null ? said : null,
      undoWords: own === null ? (stacks.done.at(-1)?.words ?? null) : own.undoWords,
      redoWords: own === null ? (stacks.undone.at(-1)?.words ?? null) : own.redoWords,
    }),
    [remember, undo, redo, said, own, stacks],
  );
  return (
    <OwnContext value={setOwn}>
      <UndoContext value={stack}>{props.children}</UndoContext>
    </OwnContext>
  );
}

function useUndoKeys(undo: () => void, redo: () => void): void {
  useWindowKeys((event) => {
    // Inside a field the field's own undo goes first.
    if (!(event.ctrlKey || event.metaKey) || isField(event.target)) return;
    const key = event.key.toLowerCase();
    if (key === 'z' && !event.shiftKey) undo();
    else if (key === 'y' || (key === 'z' && event.shiftKey)) redo();
    else return;
    event.preventDefault();
  });
}

export function isField(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement && (target.isContentEditable || target.matches('input, textarea, select'))
  );
}
