// An arrangement of a wall as a proposal: its gangs as designs, its loose pieces, its score and what was found.
import { answer, type Answer } from '../answer.ts';
import { type Finding, shown } from '../gang/findings.ts';
import { isSymmetrical } from '../gang/hand-of.ts';
import { placeDesign } from '../gang/placed.ts';
import { takeOff, type TakeOff } from '../gang/take-off.ts';
import { formatLengthUs } from '../units/length.ts';
import type { Arrangement, ArrangedLeg } from './wall-arrange.ts';
import type { CornerStack, Corners } from './wall-corners.ts';
import { type FaceGang, partToGangs, type StandingUnit } from './wall-gangs.ts';
import { innerSide, panelLengthNm } from './wall-legs.ts';
import { closureItems, cornerItems, meetingItems, stopEndItems, tieItem } from './wall-loose.ts';
import { legTies } from './wall-ties.ts';
import type {
  AloneHole,
  LooseItem,
  ProposalOrder,
  ProposedDesign,
  SideName,
  StandingGang,
  WallProposal,
  WallTask,
} from './wall.ts';

const sides: readonly SideName[] = ['A', 'B'];

export function proposalOf(
  task: WallTask,
  rowsNm: readonly number[],
  arranged: Arrangement,
  corners: Corners,
  order: ProposalOrder,
): WallProposal {
  const { system, wall } = task;
  const formNm = rowsNm.reduce((sum, each) => sum + each, 0);
  const designs = new DesignList(task);
  const gangs: StandingGang[] = [];
  const findings: Finding[] = [...corners.findings];
  const loose: LooseItem[] = [
    ...cornerItems(wall, corners.corners),
    ...stopEndItems(
      system,
      wall,
      arranged.legs.map(({ leg }) => leg),
      formNm,
    ),
  ];
  const aloneHoles: AloneHole[] = [];
  let pairs = 0;
  for (const { leg, units } of arranged.legs) {
    const faces = { A: partFace(task, rowsNm, leg, 'A', units), B: partFace(task, rowsNm, leg, 'B', units) };
    for (const side of sides) {
      const face = faces[side];
      findings.push(...face.findings);
      for (const gang of face.gangs)
        gangs.push({
          side,
          leg: leg.index,
          design: designs.of(gang),
          fromNm: gang.fromNm,
          widthNm: gang.widthNm,
          bottomNm: gang.bottomNm,
        });
      loose.push(...closureItems(system, side, leg, units[side], formNm));
      loose.push(...meetingItems(system, leg, side, face.gangs, cornersOf(task, corners, leg.index, side)));
      findings.push(...closureFindings(task, leg.index, side, units[side]));
    }
    const ties = legTies(system, leg, { A: faces.A.gangs, B: faces.B.gangs }, task.tieToleranceNm);
    findings.push(...ties.findings, ...fillersApart(leg.index, units));
    pairs += ties.pairs;
    aloneHoles.push(...ties.alone);
  }
  const alone = aloneHoles.filter(({ facesForm }) => facesForm).length;
  if (pairs > 0) loose.push(tieItem(system, pairs, 'wall'));
  const lengthNm = arranged.legs.reduce(
    (sum, { leg }) => sum + panelLengthNm(leg, 'A') + panelLengthNm(leg, 'B'),
    0,
  );
  return {
    order,
    score: [
      lengthNm - arranged.coveredNm,
      alone,
      Object.values(arranged.short).reduce((sum, each) => sum + each, 0),
      arranged.fillerNm,
      arranged.panelCount,
      arranged.legs.reduce((sum, { units }) => sum + uneven(units.A) + uneven(units.B), 0),
    ],
    // heights within the tolerance of each other may pair more holes than the search counted
    proven: arranged.proven && alone === arranged.alone,
    rowsNm,
    designs: designs.all(),
    gangs,
    loose,
    alone: aloneHoles,
    short: arranged.short,
    findings: [...findings, ...designs.findings()],
  };
}

function partFace(
  task: WallTask,
  rowsNm: readonly number[],
  leg: ArrangedLeg['leg'],
  side: SideName,
  units: ArrangedLeg['units'],
): { gangs: readonly FaceGang[]; findings: readonly Finding[] } {
  return partToGangs({
    system: task.system,
    side,
    units: units[side],
    edges: { from: leg.from[side].edge, to: leg.to[side].edge },
    rowsNm,
    limits: task.limits,
    where: `side ${side}, leg ${leg.index + 1}`,
  });
}

/** The corner pieces at both ends of a leg on a side, where there are any. */
function cornersOf(
  { wall }: WallTask,
  { corners }: Corners,
  leg: number,
  side: SideName,
): Record<'from' | 'to', CornerStack | undefined> {
  const before = leg > 0 ? leg - 1 : wall.closed ? wall.legs.length - 1 : -1;
  const at = (turn: number): CornerStack | undefined => {
    const pieces = innerSide(wall, turn) === side ? corners[turn]?.inside : corners[turn]?.outside;
    return pieces === undefined || pieces.pieces.length === 0 ? undefined : pieces;
  };
  return { from: at(before), to: at(leg) };
}

function closureFindings(
  task: WallTask,
  leg: number,
  side: SideName,
  units: readonly StandingUnit[],
): readonly Finding[] {
  return units
    .filter(({ unit }) => unit.kind === 'closure')
    .map(({ fromNm, widthNm }) => ({
      rule: 'closure',
      severity: 'caution',
      message: `A made-up closure of ${shown(widthNm)}: a filler may be ${shown(task.maximumFillerNm)} wide.`,
      where: `side ${side}, leg ${leg + 1}, ${shown(fromNm)} along`,
    }));
}

/** Fillers of both sides of which neither lies within the other's stretch. */
function fillersApart(leg: number, units: ArrangedLeg['units']): readonly Finding[] {
  const [one] = units.A.filter(({ unit }) => unit.kind !== 'piece');
  const [other] = units.B.filter(({ unit }) => unit.kind !== 'piece');
  if (one === undefined || other === undefined || within(one, other) || within(other, one)) return [];
  return [
    {
      rule: 'fillers-facing',
      severity: 'caution',
      message: `The fillers of side A at ${shown(one.fromNm)} and of side B at ${shown(other.fromNm)} do not face each other; no filling of the leg has them so.`,
      where: `leg ${leg + 1}`,
    },
  ];
}

function within(inner: StandingUnit, outer: StandingUnit): boolean {
  return inner.fromNm >= outer.fromNm && inner.fromNm + inner.widthNm <= outer.fromNm + outer.widthNm;
}

/** Pieces of a face that do not stand as in a mirror at its middle. */
function uneven(units: readonly StandingUnit[]): number {
  const names = units.map(({ unit, widthNm }) => (unit.kind === 'piece' ? unit.piece.key : `${widthNm}`));
  return names.filter((name, index) => name !== names[names.length - 1 - index]).length;
}

/** Gangs that are drawn alike are one design. */
class DesignList {
  private readonly task: WallTask;
  private readonly byDrawing = new Map<string, ProposedDesign>();
  private readonly taken = new Map<string, TakeOff>();

  constructor(task: WallTask) {
    this.task = task;
  }

  of(gang: FaceGang): string {
    const key = JSON.stringify([gang.known, gang.geometry]);
    const known = this.byDrawing.get(key);
    if (known !== undefined) return known.code;
    const described = this.describe(gang);
    if (!described.ok) throw new Error(described.error.message);
    this.byDrawing.set(key, described.value);
    return described.value.code;
  }

  all(): readonly ProposedDesign[] {
    return [...this.byDrawing.values()];
  }

  /** Stops of the gangs for themselves: what the take-off of a new design will say. */
  findings(): readonly Finding[] {
    return [...this.taken].flatMap(([code, { findings }]) =>
      findings
        .filter(({ severity }) => severity === 'stop')
        .map(({ rule, severity, message }) => ({ rule, severity, message, where: `design ${code}` })),
    );
  }

  private describe(gang: FaceGang): Answer<ProposedDesign> {
    const { system, designs } = this.task;
    const taken = takeOff(system, gang.geometry);
    if (!taken.ok) return taken;
    const placed = placeDesign(system, gang.geometry);
    if (!placed.ok) return placed;
    const { widthNm, heightNm, weightGrams } = taken.value;
    const known = designs.find(({ code }) => code === gang.known);
    const code = known?.code ?? this.freeCode();
    if (known === undefined) this.taken.set(code, taken.value);
    return answer({
      code,
      name: known?.name ?? `Gang ${formatLengthUs(widthNm)} by ${formatLengthUs(heightNm)}`,
      isNew: known === undefined,
      geometry: gang.geometry,
      symmetrical: isSymmetrical(placed.value),
      widthNm,
      heightNm,
      weightGrams,
    });
  }

  private freeCode(): string {
    const used = new Set([
      ...this.task.takenCodes,
      ...this.task.designs.map(({ code }) => code),
      ...this.all().map(({ code }) => code),
    ]);
    let number = 1;
    while (used.has(`G${number}`)) number += 1;
    return `G${number}`;
  }
}
