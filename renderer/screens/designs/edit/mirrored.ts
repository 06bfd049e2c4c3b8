// The chosen pieces of an open design as in a mirror; with none chosen the whole gang, whose edges change places.
import type { PanelSystem } from '../../../../core/catalogue/system.ts';
import { mirrorPieces } from '../../../../core/gang/edit-design.ts';
import { mirrorDesign } from '../../../../core/gang/mirror.ts';
import { selectionOf } from './chosen-pieces.ts';
import type { Changed, Kept } from './editor-state.ts';

/** Undefined where the design cannot be placed: the take-off says why. */
export function mirrored(system: PanelSystem, { geometry, chosen }: Kept): Changed | undefined {
  const image =
    chosen.length === 0
      ? mirrorDesign(system, geometry)
      : mirrorPieces(system, geometry, selectionOf(chosen));
  return image.ok ? { geometry: image.value } : undefined;
}
