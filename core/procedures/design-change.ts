// What differs between two take-offs: lines, weight and findings.
import { z } from 'zod';
import type { Design } from '../book/book.ts';
import type { Finding } from '../gang/findings.ts';
import type { TakeOff } from '../gang/take-off.ts';
import type { TakeOffLine } from '../gang/weights.ts';
import { code, finding } from './shapes.ts';

export const changedLine = z.strictObject({
  component: code,
  name: z.string(),
  before: z.int(),
  after: z.int(),
});

export const designChangeShape = z.strictObject({
  design: code,
  name: z.string(),
  lines: z.array(changedLine),
  weightGramsBefore: z.int(),
  weightGramsAfter: z.int(),
  findingsNew: z.array(finding),
  findingsGone: z.array(finding),
});

export type DesignChange = z.output<typeof designChangeShape>;

/** Null where they are equal. `before` is null where the design could not be taken off. */
export function designChange(design: Design, before: TakeOff | null, after: TakeOff): DesignChange | null {
  const lines = changedLines(before?.lines ?? [], after.lines);
  const findings = changedFindings(before?.findings ?? [], after.findings);
  const weights = { weightGramsBefore: before?.weightGrams ?? 0, weightGramsAfter: after.weightGrams };
  const same =
    lines.length === 0 &&
    findings.findingsNew.length === 0 &&
    findings.findingsGone.length === 0 &&
    weights.weightGramsBefore === weights.weightGramsAfter;
  return same ? null : { design: design.code, name: design.name, lines, ...weights, ...findings };
}

/** Only what differs, in the order in which both take-offs list it. */
export function changedLines(before: readonly TakeOffLine[], after: readonly TakeOffLine[]) {
  const was = new Map(before.map((line) => [line.component, line.quantity]));
  const is = new Map(after.map((line) => [line.component, line.quantity]));
  const order = [...before];
  let at = 0;
  for (const line of after) {
    const place = order.findIndex(({ component }) => component === line.component);
    if (place < 0) order.splice(at, 0, line);
    at = (place < 0 ? at : place) + 1;
  }
  return order
    .map(({ component, name }) => ({
      component,
      name,
      before: was.get(component) ?? 0,
      after: is.get(component) ?? 0,
    }))
    .filter((line) => line.before !== line.after);
}

type AnyFinding = Finding | z.output<typeof finding>;

export function changedFindings<T extends AnyFinding>(before: readonly T[], after: readonly T[]) {
  return { findingsNew: without(after, before), findingsGone: without(before, after) };
}

function without<T extends AnyFinding>(these: readonly T[], those: readonly T[]): T[] {
  const text = ({ rule, severity, message, where }: T): string =>
    JSON.stringify([rule, severity, message, typeof where === 'object' ? [where.xNm, where.yNm] : where]);
  const known = new Set(those.map(text));
  return these.filter((each) => !known.has(text(each)));
}
