// Everything that can be done to an open design, each as one step that can be taken back, from whatever asked
// for it: key, button, pointer or the row that was typed.
import { useMemo, useReducer, useRef } from 'react';
import type { PanelSystem } from '../../../../core/catalogue/system.ts';
import type { DesignGeometry } from '../../../../core/gang/design.ts';
import {
  copyPieces,
  movePieces,
  placeFiller,
  placePanel,
  removePieces,
  setFiller,
  turnPieces,
} from '../../../../core/gang/edit-design.ts';
import { useOwnHistory } from '../../../parts/undo.tsx';
import type { PointNm } from '../design-shapes.ts';
import { besideChosen, copied, type Copied, idsOf, putDown, selectionOf } from './chosen-pieces.ts';
import { around, type DraftPiece, draftPieces, type PanelSizes } from './draft-pieces.ts';
import {
  type Changed,
  edited,
  type EditorState,
  type Kept,
  openEditor,
  type PieceId,
  pieceOf,
} from './editor-state.ts';
import type { TrayPiece } from './gesture.ts';
import { mirrored } from './mirrored.ts';

export interface SizeNm {
  readonly widthNm: number;
  readonly heightNm: number;
}

export interface Editor {
  readonly state: EditorState;
  readonly pieces: readonly DraftPiece[];
  readonly choose: (chosen: readonly PieceId[]) => void;
  readonly move: (by: PointNm, joins?: string) => void;
  readonly place: (piece: TrayPiece, at: PointNm) => void;
  readonly placeBeside: (piece: TrayPiece) => void;
  readonly turn: () => void;
  readonly mirror: () => void;
  readonly copy: () => void;
  readonly cut: () => void;
  readonly paste: () => void;
  readonly double: () => void;
  readonly remove: () => void;
  readonly resizeFiller: (id: PieceId, size: SizeNm) => void;
  /** Panels and fillers as they were typed; edges and the rest stay. */
  readonly retype: (typed: DesignGeometry) => void;
  readonly set: (words: string, change: Partial<DesignGeometry>) => void;
}

export function useEditor(start: DesignGeometry, system: PanelSystem, sizes: PanelSizes): Editor {
  const [state, tell] = useReducer(edited, start, openEditor);
  const clipboard = useRef<Copied | null>(null);
  const { geometry, chosen, past, future } = state;
  const pieces = useMemo(() => draftPieces(geometry, sizes), [geometry, sizes]);
  useOwnHistory(
    useMemo(
      () => ({
        undo: () => tell({ kind: 'undo' }),
        redo: () => tell({ kind: 'redo' }),
        undoWords: past.at(-1)?.words ?? null,
        redoWords: future.at(-1)?.words ?? null,
      }),
      [past, future],
    ),
  );

  const always = useMemo(() => {
    const edit = (words: string, change: (now: Kept) => Changed | undefined, joins?: string): void =>
      tell({ kind: 'edit', words, change, ...(joins === undefined ? {} : { joins }) });
    const place = (piece: TrayPiece, at: (now: Kept) => PointNm): void =>
      edit(`place ${piece.panel ?? 'a filler'}`, (now) => {
        const { panel, widthNm, heightNm } = piece;
        const { design, placed } =
          panel === null
            ? placeFiller(now.geometry, { widthNm, heightNm }, at(now))
            : placePanel(now.geometry, panel, at(now));
        return { geometry: design, chosen: idsOf(placed) };
      });
    const some = (words: string, change: (now: Kept) => Changed, joins?: string): void =>
      edit(words, (now) => (now.chosen.length === 0 ? undefined : change(now)), joins);
    const standing = (now: Kept): readonly DraftPiece[] => draftPieces(now.geometry, sizes);
    const remove = (words: string): void =>
      some(words, (now) => ({ geometry: removePieces(now.geometry, selectionOf(now.chosen)), chosen: [] }));
    return {
      choose: (next: readonly PieceId[]): void => tell({ kind: 'choose', chosen: next }),
      move: (by: PointNm, joins?: string): void =>
        some('move', (now) => ({ geometry: movePieces(now.geometry, selectionOf(now.chosen), by) }), joins),
      place: (piece: TrayPiece, at: PointNm): void => place(piece, () => at),
      placeBeside: (piece: TrayPiece): void => place(piece, (now) => besideChosen(standing(now), now.chosen)),
      turn: (): void =>
        some('turn', (now) => ({ geometry: turnPieces(now.geometry, selectionOf(now.chosen)) })),
      mirror: (): void => edit('mirror', (now) => mirrored(system, now)),
      remove: (): void => remove('take out'),
      paste: (): void =>
        edit('paste', (now) => {
          const taken = clipboard.current;
          if (taken === null) return undefined;
          const room = around(draftPieces({ ...now.geometry, ...taken }, sizes));
          const to = besideChosen(standing(now), now.chosen);
          return putDown(now.geometry, taken, {
            xNm: to.xNm - (room?.xNm ?? 0),
            yNm: to.yNm - (room?.yNm ?? 0),
          });
        }),
      double: (): void =>
        some('double', (now) => {
          const room = around(standing(now).filter(({ id }) => now.chosen.includes(id)));
          const by = { xNm: room?.widthNm ?? 0, yNm: 0 };
          const { design, placed } = copyPieces(now.geometry, selectionOf(now.chosen), by);
          return { geometry: design, chosen: idsOf(placed) };
        }),
      resizeFiller: (id: PieceId, size: SizeNm): void =>
        edit('change a filler', (now) => ({ geometry: setFiller(now.geometry, pieceOf(id).index, size) })),
      retype: ({ panels, fillers }: DesignGeometry): void =>
        edit('type a row', (now) => ({ geometry: { ...now.geometry, panels, fillers }, chosen: [] }), 'row'),
      set: (words: string, change: Partial<DesignGeometry>): void =>
        edit(words, (now) => ({ geometry: { ...now.geometry, ...change } })),
    };
  }, [system, sizes]);

  const copy = (): void => {
    if (chosen.length > 0) clipboard.current = copied(geometry, chosen);
  };
  return {
    state,
    pieces,
    ...always,
    copy,
    cut: () => {
      copy();
      always.remove();
    },
  };
}
