// What the palette offers, and when what was typed means it.
export interface PaletteItem {
  readonly id: string;
  readonly name: string;
  readonly what: string;
  readonly run: () => void;
}

/** Every word typed must begin a word of the name or of what it is; numbers may stand inside a code. */
export function finds(typed: string, item: Pick<PaletteItem, 'name' | 'what'>): boolean {
  const text = ` ${item.name} ${item.what}`.toLowerCase();
  return typed
    .toLowerCase()
    .split(/\s+/u)
    .filter(Boolean)
    .every((word) => text.includes(` ${word}`) || (/^\d/u.test(word) && text.includes(word)));
}
