// The lightest split of a gang that its crane and hooks refuse: at joint lines through its full height, and, where
// it is too high for one pick, at level joint lines first. Every part is taken off and checked by itself. Of
// all splits whose parts have no stop, the one with the fewest parts, then the lightest heaviest part. Exact:
// both figures only grow along a chain of parts, so the best chain to a line is found line by line.
import type { PanelSystem } from '../catalogue/system.ts';
import type { DesignGeometry } from '../gang/design.ts';
import { type Gang, placeDesign } from '../gang/placed.ts';
import { cutLines, type Direction, partBetween } from './cut-lines.ts';
import { checkPick, type PickCheck } from './pick-check.ts';
import type { Crane, PickSetup } from './setup.ts';
import { panelsAreTooHeavy, refusesEveryPart } from './surely-refused.ts';

export interface SplitPart {
  readonly geometry: DesignGeometry;
  readonly check: PickCheck;
}

export type Split =
  /** `extraPicks` at the setting, and as many again at the strip. */
  | { readonly kind: 'found'; readonly parts: readonly SplitPart[]; readonly extraPicks: number }
  /** No split at its joint lines has parts without a stop. */
  | { readonly kind: 'none' }
  /** Too many joint lines to look at every part. */
  | { readonly kind: 'not-finished' };

/** After this many parts looked at the search gives up, and says so. */
const mostParts = 2500;

interface Chain {
  readonly parts: readonly SplitPart[];
  readonly heaviestGrams: number;
}

interface Search {
  readonly system: PanelSystem;
  readonly setup: PickSetup;
  readonly crane: Crane | null;
  readonly isTooHeavy: (geometry: DesignGeometry) => boolean;
  left: number;
}

export function findSplit(
  system: PanelSystem,
  geometry: DesignGeometry,
  setup: PickSetup,
  crane: Crane | null,
): Split {
  const isTooHeavy = panelsAreTooHeavy(system, setup, crane);
  const search: Search = { system, setup, crane, isTooHeavy, left: mostParts };
  const whole = checkPick(system, geometry, setup, crane);
  if (!whole.ok || refusesEveryPart(whole.value, setup)) return { kind: 'none' };
  const tooHigh = whole.value.findings.some(({ rule }) => rule === 'hooks.maximumHeight');
  const best = tooHigh
    ? bestChain(search, geometry, 'level', (band) => bestChain(search, band, 'upright', partOf(search)))
    : bestChain(search, geometry, 'upright', partOf(search));
  if (search.left < 0) return { kind: 'not-finished' };
  if (best === undefined) return { kind: 'none' };
  return { kind: 'found', parts: best.parts, extraPicks: best.parts.length - 1 };
}

/** A part by itself, where nothing stops it. */
function partOf(search: Search): (geometry: DesignGeometry) => Chain | undefined {
  return (geometry) => {
    if (search.isTooHeavy(geometry)) return undefined;
    search.left -= 1;
    if (search.left < 0) return undefined;
    const check = checkPick(search.system, geometry, search.setup, search.crane);
    if (!check.ok || check.value.verdict === 'refused') return undefined;
    return { parts: [{ geometry, check: check.value }], heaviestGrams: check.value.onCraneGrams };
  };
}

/** The best chain of pieces of the gang, each piece between two of its lines and made of parts by `piece`. */
function bestChain(
  { system }: Search,
  geometry: DesignGeometry,
  direction: Direction,
  piece: (geometry: DesignGeometry) => Chain | undefined,
): Chain | undefined {
  const placed = placeDesign(system, geometry);
  if (!placed.ok) return undefined;
  const gang = placed.value;
  const lines = [
    ...ends(gang, direction, 'first'),
    ...cutLines(gang, direction),
    ...ends(gang, direction, 'last'),
  ];
  const best: (Chain | undefined)[] = [{ parts: [], heaviestGrams: 0 }];
  for (const [to, toNm] of lines.entries()) {
    if (to === 0) continue;
    let chain: Chain | undefined;
    for (const [from, fromNm] of lines.slice(0, to).entries()) {
      const before = best[from];
      if (before === undefined || (chain !== undefined && before.parts.length >= chain.parts.length))
        continue;
      const part = piece(partBetween(geometry, gang, direction, fromNm, toNm));
      if (part === undefined) continue;
      const longer = {
        parts: [...before.parts, ...part.parts],
        heaviestGrams: Math.max(before.heaviestGrams, part.heaviestGrams),
      };
      if (chain === undefined || isBetter(longer, chain)) chain = longer;
    }
    best[to] = chain;
  }
  return best[lines.length - 1];
}

function isBetter(one: Chain, other: Chain): boolean {
  return one.parts.length === other.parts.length
    ? one.heaviestGrams < other.heaviestGrams
    : one.parts.length < other.parts.length;
}

function ends({ extent }: Gang, direction: Direction, which: 'first' | 'last'): readonly number[] {
  if (direction === 'upright') return [which === 'first' ? extent.leftNm : extent.rightNm];
  return [which === 'first' ? extent.bottomNm : extent.topNm];
}
