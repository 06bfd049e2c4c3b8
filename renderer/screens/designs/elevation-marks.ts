// Everything that is drawn on an elevation, as marks in nanometres: what it is, where it stands, and which
// take-off lines count it. Nothing here knows of pixels, so that tests can hold it against the design.
import type { PointNm, RectangleNm, ShownTakeOff } from './design-shapes.ts';
import { fillerOfJoint, locksAlong } from './joint-marks.ts';

interface MarkBase {
  readonly id: string;
  /** Components whose take-off lines count this mark. */
  readonly lines: readonly string[];
}

export interface PanelMark extends MarkBase, RectangleNm {
  readonly kind: 'panel';
  readonly panel: string;
  readonly onSide: boolean;
}

export interface FillerMark extends MarkBase, RectangleNm {
  readonly kind: 'filler';
}

export interface JointMark extends MarkBase, PointNm {
  readonly kind: 'joint';
  readonly direction: 'upright' | 'level';
  readonly lengthNm: number;
  /** Width of the filler that the locks span; zero where two panels touch. */
  readonly spanNm: number;
  /** Middles of the locks, spread evenly: how many is the core's, their places are only drawn. */
  readonly locks: readonly PointNm[];
}

export interface RailMark extends MarkBase, PointNm {
  readonly kind: 'rail';
  readonly component: string;
  readonly direction: 'upright' | 'level';
  readonly lengthNm: number;
  readonly bolts: number;
  readonly boltPlaces: readonly PointNm[];
  readonly neededFor: 'picking' | 'placing' | 'both';
}

export interface HookMark extends MarkBase, PointNm {
  readonly kind: 'hook';
  readonly loadGrams: number;
}

export interface HoleMark extends MarkBase, PointNm {
  readonly kind: 'hole';
}

/** Somewhere that a hook may stand and none does. */
export interface HookPlaceMark extends MarkBase, PointNm {
  readonly kind: 'hook-place';
}

/** A walkway bracket at the top edge, or the shoe of a brace at the foot. */
export interface FootMark extends MarkBase, PointNm {
  readonly kind: 'bracket' | 'brace';
}

export type Mark =
  | PanelMark
  | FillerMark
  | JointMark
  | RailMark
  | HookMark
  | HookPlaceMark
  | FootMark
  | HoleMark;

type Lines = ShownTakeOff['lines'];

/** Take-off lines that name this very point as a reason under a rule that begins with one of `rules`. */
function linesAt(lines: Lines, point: PointNm, rules: readonly string[]): string[] {
  return lines
    .filter((line) =>
      line.because.some(
        ({ rule, where }) =>
          typeof where !== 'string' &&
          where.xNm === point.xNm &&
          where.yNm === point.yNm &&
          rules.some((start) => rule.toLowerCase().startsWith(start)),
      ),
    )
    .map((line) => line.component);
}

/** Lines of a kind that have a reason under a rule, whatever its place. */
function linesUnder(lines: Lines, start: string): string[] {
  return lines
    .filter((line) => line.because.some(({ rule }) => rule.toLowerCase().startsWith(start)))
    .map((line) => line.component);
}

/** All marks in the order of drawing: locks come after rails so that they can be counted behind them. */
export function elevationMarks(design: ShownTakeOff): Mark[] {
  const { lines } = design;
  const panelCodes = new Set(design.panels.map(({ panel }) => panel));
  const hookLines = linesUnder(lines, 'hook').filter((code) => !panelCodes.has(code));
  return [
    ...design.panels.map((panel, index): PanelMark => ({
      kind: 'panel',
      id: `panel-${index}`,
      lines: [panel.panel],
      ...panel,
    })),
    ...design.fillers.map((filler, index): FillerMark => ({
      kind: 'filler',
      id: `filler-${index}`,
      lines: [],
      ...filler,
    })),
    ...design.rails.map((rail, index): RailMark => ({
      kind: 'rail',
      id: `rail-${index}`,
      component: rail.component,
      direction: rail.direction,
      xNm: rail.xNm,
      yNm: rail.yNm,
      lengthNm: rail.lengthNm,
      bolts: rail.bolts,
      boltPlaces: rail.boltPlaces,
      neededFor: rail.neededFor,
      lines: [...new Set([rail.component, ...linesAt(lines, rail, ['rail'])])],
    })),
    ...design.joints.map((joint, index) => jointMark(design, joint, index)),
    ...design.holes.map((hole, index): HoleMark => ({
      kind: 'hole',
      id: `hole-${index}`,
      lines: [],
      ...hole,
    })),
    ...feet(design, 'bracket', design.brackets),
    ...feet(design, 'brace', design.braces),
    ...freePlaces(design).map((place, index): HookPlaceMark => ({
      kind: 'hook-place',
      id: `hook-place-${index}`,
      lines: hookLines,
      ...place,
    })),
    ...design.hooks.map((hook, index): HookMark => ({
      kind: 'hook',
      id: `hook-${index}`,
      lines: hookLines,
      ...hook,
    })),
  ];
}

function feet(design: ShownTakeOff, kind: FootMark['kind'], places: readonly PointNm[]): FootMark[] {
  const lines = linesUnder(design.lines, kind);
  return places.map((place, index) => ({ kind, id: `${kind}-${index}`, lines, ...place }));
}

function freePlaces({ hooks, hookPlaces }: ShownTakeOff): readonly PointNm[] {
  const taken = new Set(hooks.map(({ xNm }) => xNm));
  return hookPlaces.filter(({ xNm }) => !taken.has(xNm));
}

function jointMark(design: ShownTakeOff, joint: ShownTakeOff['joints'][number], index: number): JointMark {
  const filler = joint.kind === 'filler' ? fillerOfJoint(joint, design.fillers) : undefined;
  const direction = filler === undefined ? plainDirection(joint.kind) : filler.direction;
  const spanNm = filler === undefined ? 0 : filler.spanNm;
  const start = { xNm: filler?.xNm ?? joint.xNm, yNm: filler?.yNm ?? joint.yNm };
  return {
    kind: 'joint',
    id: `joint-${index}`,
    direction,
    ...start,
    lengthNm: joint.lengthNm,
    spanNm,
    locks: locksAlong({ ...start, direction, lengthNm: joint.lengthNm, spanNm }, joint.locks),
    lines: linesAt(design.lines, joint, joint.kind === 'filler' ? ['filler'] : ['lock']),
  };
}

function plainDirection(kind: ShownTakeOff['joints'][number]['kind']): 'upright' | 'level' {
  return kind === 'horizontal' ? 'level' : 'upright';
}

/** Marks that belong to a take-off line. */
export function marksOfLine(marks: readonly Mark[], component: string): ReadonlySet<string> {
  return new Set(marks.filter(({ lines }) => lines.includes(component)).map(({ id }) => id));
}
