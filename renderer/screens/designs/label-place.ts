// Where on a panel its code is written: in the middle, or above or below it where a tie hole, a level rail or
// the centre of gravity lies in the way.

export interface BoxPx {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Shares of the panel's height, measured from its top, in the order in which they are tried. */
const tries = [0.5, 0.36, 0.64, 0.25, 0.75];

/**
 * Middle of the label: the first place that hides nothing, else the one that hides least, and how many
 * things it hides; always inside.
 * @param size the label's own width and height on the screen
 */
export function labelPlace(
  panel: BoxPx,
  size: { readonly width: number; readonly height: number },
  inTheWay: readonly BoxPx[],
): { x: number; y: number; hidden: number } {
  const x = panel.x + panel.width / 2;
  const [least, most] = [panel.y + size.height / 2, panel.y + panel.height - size.height / 2];
  let best = { y: panel.y + panel.height / 2, hidden: Number.POSITIVE_INFINITY };
  for (const share of tries) {
    const y = Math.min(most, Math.max(least, panel.y + panel.height * share));
    const label = { x: x - size.width / 2, y: y - size.height / 2, ...size };
    const hidden = inTheWay.filter((box) => overlap(label, box)).length;
    if (hidden < best.hidden) best = { y, hidden };
  }
  return { x, ...best };
}

function overlap(one: BoxPx, other: BoxPx): boolean {
  return (
    one.x < other.x + other.width &&
    other.x < one.x + one.width &&
    one.y < other.y + other.height &&
    other.y < one.y + one.height
  );
}
