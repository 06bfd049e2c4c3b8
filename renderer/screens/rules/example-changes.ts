// An example gang by the tables of the book and by those that are being written: which of its joints and
// pieces change.
import type { ExampleGang } from './rules-shapes.ts';

export type ExampleJoint = ExampleGang['joints'][number] & {
  /** Locks by the tables of the book, where that is another number. */
  readonly before: number | null;
};

type Shown = Pick<ExampleGang, 'joints' | 'lines'>;

export function exampleJoints(after: Shown, before: Shown | undefined): readonly ExampleJoint[] {
  const old = new Map((before?.joints ?? []).map((joint) => [keyOf(joint), joint.locks]));
  return after.joints.map((joint) => {
    const was = old.get(keyOf(joint));
    return { ...joint, before: was === undefined || was === joint.locks ? null : was };
  });
}

function keyOf({ kind, xNm, yNm, lengthNm }: ExampleGang['joints'][number]): string {
  return `${kind} ${xNm} ${yNm} ${lengthNm}`;
}

export interface ExampleLine {
  readonly component: string;
  readonly name: string;
  readonly before: number;
  readonly after: number;
}

/** Pieces that the tables add to the panels, and those that they no longer add. */
export function exampleLines(
  after: Shown,
  before: Shown | undefined,
  panels: ReadonlySet<string>,
): readonly ExampleLine[] {
  const codes = [...after.lines, ...(before?.lines ?? [])].filter(({ component }) => !panels.has(component));
  return [...new Map(codes.map(({ component, name }) => [component, name]))].map(([component, name]) => ({
    component,
    name,
    before: quantityOf(before, component) ?? 0,
    after: quantityOf(after, component) ?? 0,
  }));
}

function quantityOf(shown: Shown | undefined, component: string): number | undefined {
  return shown?.lines.find((line) => line.component === component)?.quantity;
}
