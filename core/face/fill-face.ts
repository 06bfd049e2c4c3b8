// Fills a face with upright panels in rows, from one stock: the best proposals, in order. Rows of different heights
// share no panel, so each height is filled by itself and the results are joined; rows of one height share theirs.
import { type Answer, answer, refuse } from '../answer.ts';
import type { Panel } from '../catalogue/component.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { type Finding, shown } from '../gang/findings.ts';
import { fillerFindings, noWay } from './fill-findings.ts';
import { compareFillings, fillable, fillRows } from './fill-rows.ts';
import type { Filling } from './rows.ts';

export interface FaceRequest {
  readonly lengthNm: number;
  /** From the bottom; they add up to the face's height. */
  readonly rowsNm: readonly number[];
  /** Panels there are by code; a code missing from it has none. Null: nothing is short. */
  readonly stock: Readonly<Record<string, number>> | null;
  readonly maximumFillerNm: number;
  /** Proposals at most. */
  readonly best: number;
}

export interface FaceProposal {
  /** Codes from the left, one list a row, from the bottom. */
  readonly rows: readonly (readonly string[])[];
  /** Of each row; it stands at the right end. */
  readonly fillersNm: readonly number[];
  readonly short: Readonly<Record<string, number>>;
  /** Panels beyond the stock, fillers of all rows, panels: the less the better, the first before the second. */
  readonly score: readonly [shortage: number, fillerNm: number, panelCount: number];
}

export interface FaceProposals {
  readonly proposals: readonly FaceProposal[];
  /** Is there nothing better than each of them, nor, where they are fewer than asked for, any other? */
  readonly proven: boolean;
  readonly findings: readonly Finding[];
}

/** A filling over the whole catalogue: counts by the panel's place in it. */
interface Whole {
  readonly counts: readonly number[];
  /** By the row's place from the bottom. */
  readonly rows: ReadonlyMap<number, readonly number[]>;
  readonly shortage: number;
  readonly fillerNm: number;
  readonly panelCount: number;
}

/** Refuses `face-too-long`: more panels than are added up. Lengths are over zero, the filler not negative. */
export function fillFace(system: PanelSystem, request: FaceRequest): Answer<FaceProposals> {
  const { rowsNm, best } = request;
  const heights = [...new Set(rowsNm)];
  const findings: Finding[] = [];
  let [proven, impossible] = [true, false];
  let found: readonly Whole[] = [emptyFace(system)];
  for (const heightNm of heights) {
    const places = system.panels.flatMap((panel, place) => (panel.heightNm === heightNm ? [place] : []));
    const rows = rowsNm.flatMap((each, row) => (each === heightNm ? [row] : []));
    const asked = rowsOf(system, request, places, rows.length);
    if (!fillable(asked)) {
      return refuse('face-too-long', `A row of ${shown(request.lengthNm)} would take too many panels.`, {
        field: 'face.length',
        hint: 'Maybe a unit is missing: plain numbers are millimetres.',
      });
    }
    const { fillings, proven: ofHeight } = fillRows(asked);
    proven &&= ofHeight;
    if (fillings.length === 0) findings.push(noWay(system, request, heightNm, ofHeight));
    impossible ||= ofHeight && fillings.length === 0;
    const whole = fillings.map((filling) => onWholeCatalogue(system, filling, places, rows));
    found = found
      .flatMap((one) => whole.map((other) => joined(one, other)))
      .sort(compareFillings)
      .slice(0, best);
  }
  const proposals = found.map((one) => proposalOf(system, request, one));
  // one row that nothing fills is proof enough
  return answer({
    proposals,
    proven: proven || impossible,
    findings: [...findings, ...fillerFindings(system, proposals)],
  });
}

function emptyFace({ panels }: PanelSystem): Whole {
  return { counts: panels.map(() => 0), rows: new Map(), shortage: 0, fillerNm: 0, panelCount: 0 };
}

function rowsOf(
  system: PanelSystem,
  { lengthNm, stock, maximumFillerNm, best }: FaceRequest,
  places: readonly number[],
  rows: number,
) {
  const panels = places.flatMap((place) => system.panels[place] ?? []);
  return {
    lengthNm,
    rows,
    widthsNm: panels.map((panel) => panel.widthNm),
    ...(stock !== null && { stock: panels.map((panel) => stock[panel.code] ?? 0) }),
    maximumFillerNm,
    best,
  };
}

function onWholeCatalogue(
  { panels }: PanelSystem,
  filling: Filling,
  places: readonly number[],
  rows: readonly number[],
): Whole {
  const spread = (counts: readonly number[]): readonly number[] =>
    panels.map((_, place) => counts[places.indexOf(place)] ?? 0);
  return {
    ...filling,
    counts: spread(filling.counts),
    rows: new Map(rows.map((row, index) => [row, spread(filling.rows[index] ?? [])])),
  };
}

function joined(one: Whole, other: Whole): Whole {
  return {
    counts: one.counts.map((count, place) => count + (other.counts[place] ?? 0)),
    rows: new Map([...one.rows, ...other.rows]),
    shortage: one.shortage + other.shortage,
    fillerNm: one.fillerNm + other.fillerNm,
    panelCount: one.panelCount + other.panelCount,
  };
}

function proposalOf({ panels }: PanelSystem, request: FaceRequest, found: Whole): FaceProposal {
  const { stock, lengthNm } = request;
  const rows = request.rowsNm.map((_, row) => standing(panels, found.rows.get(row) ?? []));
  const short = panels.flatMap(({ code }, place): [string, number][] => {
    const over = stock === null ? 0 : (found.counts[place] ?? 0) - (stock[code] ?? 0);
    return over > 0 ? [[code, over]] : [];
  });
  return {
    rows: rows.map((row) => row.map((panel) => panel.code)),
    fillersNm: rows.map((row) => row.reduce((left, panel) => left - panel.widthNm, lengthNm)),
    short: Object.fromEntries(short),
    score: [found.shortage, found.fillerNm, found.panelCount],
  };
}

/** In catalogue order from the left. */
function standing(panels: readonly Panel[], counts: readonly number[]): readonly Panel[] {
  return panels.flatMap((panel, place) => Array.from({ length: counts[place] ?? 0 }, () => panel));
}
