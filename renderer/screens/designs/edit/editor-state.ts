// What an open design is while it is edited: where its pieces stand, which of them are chosen, and what can
// be taken back. Plain data and one function, so that every way of editing (typing, mouse, keys) is the same.
import type { DesignGeometry } from '../../../../core/gang/design.ts';

/** "panel-3", "filler-0": the place of a piece in its list of the geometry. */
export type PieceId = `panel-${number}` | `filler-${number}`;

export interface Kept {
  readonly geometry: DesignGeometry;
  readonly chosen: readonly PieceId[];
}

interface Step extends Kept {
  /** What was done to come from here, as "move 2 pieces". */
  readonly words: string;
}

export interface EditorState extends Kept {
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  /** Edits with the same word one after another are taken back together: a row typed, arrows held down. */
  readonly joining: string | null;
}

export interface Changed {
  readonly geometry: DesignGeometry;
  /** Chosen afterwards; absent: as before, as far as the pieces are still there. */
  readonly chosen?: readonly PieceId[];
}

export type EditorAction =
  | {
      readonly kind: 'edit';
      readonly words: string;
      /** From the design as it is then; undefined where there is nothing to do. */
      readonly change: (now: Kept) => Changed | undefined;
      readonly joins?: string;
    }
  | { readonly kind: 'choose'; readonly chosen: readonly PieceId[] }
  | { readonly kind: 'undo' }
  | { readonly kind: 'redo' };

const mostSteps = 200;

export function openEditor(geometry: DesignGeometry): EditorState {
  return { geometry, chosen: [], past: [], future: [], joining: null };
}

export function edited(state: EditorState, action: EditorAction): EditorState {
  const { geometry, chosen, past, future } = state;
  switch (action.kind) {
    case 'edit': {
      const next = action.change(state);
      if (next === undefined) return state;
      const joins = action.joins ?? null;
      const joined = joins !== null && joins === state.joining;
      return {
        geometry: next.geometry,
        chosen: there(next.geometry, next.chosen ?? chosen),
        past: joined ? past : [...past, { geometry, chosen, words: action.words }].slice(-mostSteps),
        future: [],
        joining: joins,
      };
    }
    case 'choose':
      return { ...state, chosen: there(geometry, action.chosen), joining: null };
    case 'undo': {
      const step = past.at(-1);
      if (step === undefined) return state;
      return {
        geometry: step.geometry,
        chosen: step.chosen,
        past: past.slice(0, -1),
        future: [...future, { geometry, chosen, words: step.words }],
        joining: null,
      };
    }
    case 'redo': {
      const step = future.at(-1);
      if (step === undefined) return state;
      return {
        geometry: step.geometry,
        chosen: step.chosen,
        past: [...past, { geometry, chosen, words: step.words }],
        future: future.slice(0, -1),
        joining: null,
      };
    }
    default:
      return state;
  }
}

/** The chosen pieces that the geometry has, each once. */
function there(geometry: DesignGeometry, chosen: readonly PieceId[]): readonly PieceId[] {
  return [...new Set(chosen)].filter((id) => {
    const { kind, index } = pieceOf(id);
    return index < (kind === 'panel' ? geometry.panels : geometry.fillers).length;
  });
}

export function pieceOf(id: PieceId): { readonly kind: 'panel' | 'filler'; readonly index: number } {
  const [kind, index] = id.split('-');
  return { kind: kind === 'panel' ? 'panel' : 'filler', index: Number(index) };
}
