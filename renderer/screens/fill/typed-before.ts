// What was typed and asked on this screen before somebody went elsewhere and came back; it lasts as long as the window.
import type { Asked, Proposal } from './fill-shapes.ts';
import type { FillTexts } from './fill-texts.ts';

interface Typed {
  readonly texts: FillTexts;
  readonly asked: Asked | null;
  readonly chosen: Proposal['order'] | null;
}

const before: { typed: Typed | null } = { typed: null };

export function typedBefore(): Typed | null {
  return before.typed;
}

export function rememberTyped(typed: Typed): void {
  before.typed = typed;
}
