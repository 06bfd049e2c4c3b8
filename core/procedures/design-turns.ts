// The figures by which designs are told apart, and the turns of all jobs that ask for each.
import type { BookReader } from '../book/book.ts';
import { instantText } from '../plan/local-time.ts';
import { turnsFromPours } from '../plan/turns-from-pours.ts';
import { areaM2 } from '../units/area.ts';
import type { DesignFacts } from './design-facts.ts';
import { datedPours } from './dated-pours.ts';
import { readJobPlanning } from './job-planning.ts';
import { workingJob } from './job-source.ts';

export interface DesignTurn {
  readonly job: string;
  readonly pour: string;
  readonly side: 'A' | 'B';
  readonly from: string;
  readonly to: string;
}

export async function turnsByDesign(book: BookReader): Promise<ReadonlyMap<string, readonly DesignTurn[]>> {
  const byDesign = new Map<string, DesignTurn[]>();
  for (const each of await book.jobs()) {
    const planning = await readJobPlanning(book, each.code);
    const job = workingJob(each, planning);
    const pours = datedPours(await book.pours(job.code), planning);
    const { turns } = turnsFromPours(job, pours, new Map(), planning.pourFacts);
    for (const { design, pour, side, from, to } of turns) {
      const text = (ms: number): string => instantText(ms, job.timeZone);
      const turn = { job: job.code, pour, side, from: text(from), to: text(to) };
      byDesign.set(design, [...(byDesign.get(design) ?? []), turn]);
    }
  }
  return byDesign;
}

export function summaryOf({ design, takeOff }: DesignFacts, turns: readonly DesignTurn[]) {
  const { code, name, system, revision, hand } = design;
  const ofSeverity = (severity: string): number =>
    takeOff.findings.filter((finding) => finding.severity === severity).length;
  return {
    code,
    name,
    system,
    revision,
    hand,
    widthNm: takeOff.widthNm,
    heightNm: takeOff.heightNm,
    areaM2: areaM2(takeOff.areaNm2),
    weightGrams: takeOff.weightGrams,
    pieces: takeOff.lines.reduce((sum, line) => sum + line.quantity, 0),
    stops: ofSeverity('stop'),
    cautions: ofSeverity('caution'),
    turns: turns.length,
  };
}
