// What a key means while the drawing of an open design has the focus. With nothing chosen, arrows and signs
// move and zoom the drawing as they do where it is only looked at.
export type EditorKey =
  | {
      readonly does: 'move';
      readonly right: -1 | 0 | 1;
      readonly up: -1 | 0 | 1;
      readonly how: 'step' | 'fine' | 'edge';
    }
  | { readonly does: 'step'; readonly by: 1 | -1; readonly adds: boolean }
  | {
      readonly does: 'turn' | 'mirror' | 'copy' | 'cut' | 'paste' | 'double' | 'remove' | 'all' | 'leave';
    };

export interface Pressed {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

const arrows: Readonly<Record<string, readonly [-1 | 0 | 1, -1 | 0 | 1]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

const plain: Readonly<Record<string, 'turn' | 'mirror' | 'remove' | 'leave'>> = {
  t: 'turn',
  m: 'mirror',
  Delete: 'remove',
  Backspace: 'remove',
  Escape: 'leave',
};

const withControl: Readonly<Record<string, 'copy' | 'cut' | 'paste' | 'double' | 'all'>> = {
  c: 'copy',
  x: 'cut',
  v: 'paste',
  d: 'double',
  a: 'all',
};

/** Undefined where the key is not the editor's: undo and redo are the window's, the rest the drawing's. */
export function editorKey(pressed: Pressed, chosen: number): EditorKey | undefined {
  if (pressed.altKey) return undefined;
  const key = pressed.key.length === 1 ? pressed.key.toLowerCase() : pressed.key;
  const control = pressed.ctrlKey || pressed.metaKey;
  if (key === 'Enter') return { does: 'step', by: pressed.shiftKey ? -1 : 1, adds: control };
  const arrow = arrows[key];
  if (arrow !== undefined) {
    const how = control ? 'edge' : pressed.shiftKey ? 'fine' : 'step';
    return chosen === 0 ? undefined : { does: 'move', right: arrow[0], up: arrow[1], how };
  }
  if (control) {
    const does = pressed.shiftKey ? undefined : withControl[key];
    return does === undefined ? undefined : { does };
  }
  const does = plain[key];
  return does === undefined ? undefined : { does };
}
