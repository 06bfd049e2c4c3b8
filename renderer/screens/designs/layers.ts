// What of an elevation is drawn: each kind of mark can be switched off. Kept while the page is open, the same
// for every design.
import { useSyncExternalStore } from 'react';
import type { Mark } from './elevation-marks.ts';

export const layers = [
  ['joints', 'joints and locks'],
  ['rails', 'rails and bolts'],
  ['platform', 'walkway brackets'],
  ['braces', 'braces'],
  ['holes', 'tie holes'],
  ['hooks', 'hooks and hook places'],
  ['centre', 'centre of gravity'],
  ['words', 'panel names'],
  ['dimensions', 'dimensions'],
  ['findings', 'findings'],
] as const;

type MarkKind = Mark['kind'];

export type Layer = (typeof layers)[number][0];

const ofMarks: Readonly<Partial<Record<MarkKind, Layer>>> = {
  joint: 'joints',
  rail: 'rails',
  bracket: 'platform',
  brace: 'braces',
  hole: 'holes',
  hook: 'hooks',
  'hook-place': 'hooks',
};

/** Null for panels and fillers, which are always drawn. */
export function layerOf(kind: MarkKind): Layer | null {
  return ofMarks[kind] ?? null;
}

let hidden: ReadonlySet<Layer> = new Set();
const listeners = new Set<() => void>();

/** The layers that are not drawn. */
export function useHiddenLayers(): ReadonlySet<Layer> {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => hidden,
  );
}

export function showLayers(shown: ReadonlySet<Layer>): void {
  hidden = new Set(layers.map(([layer]) => layer).filter((layer) => !shown.has(layer)));
  for (const listener of listeners) listener();
}
