// The panels of the system by their sizes, and a filler: dragged onto the drawing, or pressed to stand beside
// what was placed last.
import { memo, type PointerEvent as ReactPointerEvent, type ReactNode, useMemo } from 'react';
import type { Units } from '../../../parts/units.tsx';
import { dimensionWords } from '../size-words.ts';
import type { PanelSizes } from './draft-pieces.ts';
import type { TrayPiece } from './gesture.ts';

export const Tray = memo(function Tray(props: {
  readonly sizes: PanelSizes;
  readonly filler: TrayPiece;
  readonly units: Units;
  readonly onTake: (event: ReactPointerEvent, piece: TrayPiece) => void;
  /** Pressed without a drag, by pointer or key. */
  readonly onPress: (piece: TrayPiece) => void;
}): ReactNode {
  const { sizes, units } = props;
  const groups = useMemo(() => byHeight(sizes), [sizes]);
  const item = (piece: TrayPiece, words: string): ReactNode => (
    <li key={piece.panel}>
      <button
        type="button"
        className="tray-piece"
        onPointerDown={(event) => props.onTake(event, piece)}
        onClick={() => props.onPress(piece)}
      >
        <span>
          <span className="visually-hidden">Place </span>
          <b>{piece.panel ?? 'Filler'}</b>
        </span>{' '}
        <span className="soft">{words}</span>
      </button>
    </li>
  );
  return (
    <section className="tray" aria-label="Panels to place">
      {groups.map(({ heightNm, panels }) => (
        <div key={heightNm}>
          <h3>{units.length(heightNm)} high</h3>
          <ul>{panels.map((piece) => item(piece, dimensionWords(piece.widthNm, units.system)))}</ul>
        </div>
      ))}
      <div>
        <h3>Between panels</h3>
        <ul>{item(props.filler, dimensionWords(props.filler.widthNm, units.system))}</ul>
      </div>
    </section>
  );
});

/** The tallest first, in each the widest first. */
function byHeight(sizes: PanelSizes): { heightNm: number; panels: (TrayPiece & { panel: string })[] }[] {
  const groups = new Map<number, (TrayPiece & { panel: string })[]>();
  for (const [panel, size] of sizes) {
    const group = groups.get(size.heightNm) ?? [];
    group.push({ panel, ...size });
    groups.set(size.heightNm, group);
  }
  return [...groups]
    .sort(([one], [other]) => other - one)
    .map(([heightNm, panels]) => ({
      heightNm,
      panels: panels.sort((one, other) => other.widthNm - one.widthNm),
    }));
}
