// A wall or a column as it is typed, and what is asked of the core: every text that cannot be read is named by its
// field, and nothing typed is lost.
import type { Answer } from '../../../core/answer.ts';
import { checkWall } from '../../../core/face/wall-check.ts';
import { parseLength, type UnitSystem } from '../../../core/units/length.ts';
import { parseWeight } from '../../../core/units/weight.ts';
import type { Asked } from './fill-shapes.ts';
import { readLegs } from './legs-text.ts';

export type EndKind = 'free' | 'old-concrete' | 'next-pour';

export interface FillTexts {
  readonly system: string;
  readonly what: 'wall' | 'column';
  readonly legs: string;
  readonly closed: boolean;
  readonly thickness: string;
  readonly height: string;
  readonly freeboard: string;
  readonly rows: string;
  readonly startKind: EndKind;
  readonly startBy: string;
  readonly endKind: EndKind;
  readonly endBy: string;
  /** Legs of the corner pieces along a face; empty where the system's own are meant. */
  readonly insideLeg: string;
  readonly outsideLeg: string;
  readonly widthA: string;
  readonly widthB: string;
  readonly filler: string;
  readonly tolerance: string;
  readonly mostLength: string;
  readonly mostHeight: string;
  readonly mostWeight: string;
  readonly useStock: boolean;
  /** Codes of the locations whose stock counts. */
  readonly locations: readonly string[];
  readonly date: string;
  readonly useDesigns: boolean;
}

export type FillField = Exclude<keyof FillTexts, 'what' | 'closed' | 'startKind' | 'endKind' | 'useDesigns'>;
export type FillProblems = Partial<Record<FillField, string>>;

/** Common practice, no source: a wall a foot thick, gangs of at most twenty feet. */
export function firstTexts(system: string, date: string, units: UnitSystem): FillTexts {
  const us = units === 'us';
  return {
    system,
    what: 'wall',
    legs: us ? "24'" : '7.2 m',
    closed: false,
    thickness: us ? '12"' : '300 mm',
    height: us ? "12'" : '3.6 m',
    freeboard: '',
    rows: '',
    startKind: 'free',
    startBy: '',
    endKind: 'free',
    endBy: '',
    insideLeg: '',
    outsideLeg: '',
    widthA: us ? '24"' : '600 mm',
    widthB: us ? '24"' : '600 mm',
    filler: '',
    tolerance: '',
    mostLength: us ? "20'" : '6 m',
    mostHeight: '',
    mostWeight: '',
    useStock: false,
    locations: [],
    date,
    useDesigns: true,
  };
}

/** `at` makes the instant of the stock from a date. */
export function askedBy(
  texts: FillTexts,
  units: UnitSystem,
  at: (date: string) => string,
): { readonly asked: Asked | null; readonly problems: FillProblems } {
  const problems: Record<string, string> = {};
  const refused = (field: FillField, read: Answer<unknown>): void => {
    if (!read.ok) problems[field] = `${read.error.message} ${read.error.hint ?? ''}`.trim();
  };
  const taken = (field: FillField, read: Answer<number>, least: number): number => {
    refused(field, read);
    if (read.ok && read.value < least)
      problems[field] = least > 0 ? 'It must be over zero.' : 'It must not be under zero.';
    return read.ok ? read.value : 0;
  };
  const small = (field: FillField, text: string): number =>
    text.trim() === '' ? 0 : taken(field, lengthOf(text, units, 'small'), 0);
  const large = (field: FillField, text: string): number => taken(field, lengthOf(text, units, 'large'), 1);
  const limits = {
    ...maybe('lengthNm', texts.mostLength, () => large('mostLength', texts.mostLength)),
    ...maybe('heightNm', texts.mostHeight, () => large('mostHeight', texts.mostHeight)),
    ...maybe('weightGrams', texts.mostWeight, () =>
      taken('mostWeight', weightOf(texts.mostWeight, units), 1),
    ),
  };
  const common = {
    system: texts.system,
    useDesigns: texts.useDesigns,
    limits,
    ...maybe('maximumFillerNm', texts.filler, () => small('filler', texts.filler)),
    ...maybe('tieToleranceNm', texts.tolerance, () => small('tolerance', texts.tolerance)),
    useStock: texts.useStock ? { locations: [...texts.locations], at: at(texts.date) } : null,
  };
  if (texts.useStock && texts.locations.length === 0) problems['locations'] = 'Choose where the panels lie.';
  if (texts.useStock && !/^\d{4}-\d{2}-\d{2}$/u.test(texts.date)) problems['date'] = 'A date is needed.';
  const heightNm = large('height', texts.height);
  const freeboardNm = small('freeboard', texts.freeboard);
  if (texts.what === 'column') {
    const column = {
      widthANm: taken('widthA', lengthOf(texts.widthA, units, 'small'), 1),
      widthBNm: taken('widthB', lengthOf(texts.widthB, units, 'small'), 1),
      heightNm,
      freeboardNm,
    };
    return done({ ...common, column }, problems);
  }
  const legs = readLegs(texts.legs, (text) => lengthOf(text, units, 'large'));
  refused('legs', legs);
  const rows = rowsOf(texts.rows, units);
  refused('rows', rows);
  const end = (kind: EndKind, field: 'startBy' | 'endBy') => {
    if (texts.closed || kind === 'next-pour') return { kind: 'next-pour' as const };
    const byNm = small(field, texts[field]);
    return kind === 'free' ? { kind, overhangNm: byNm } : { kind, lapNm: byNm };
  };
  const wall = {
    legs: legs.ok ? legs.value.lengthsNm.map((lengthNm) => ({ lengthNm })) : [],
    turns: legs.ok ? [...legs.value.turns] : [],
    closed: texts.closed,
    start: end(texts.startKind, 'startBy'),
    end: end(texts.endKind, 'endBy'),
    thicknessNm: taken('thickness', lengthOf(texts.thickness, units, 'small'), 1),
    heightNm,
    freeboardNm,
    ...(rows.ok && rows.value.length > 0 && { rowsNm: [...rows.value] }),
    ...(hasCorners(texts) && {
      ...maybe('insideCornerLegNm', texts.insideLeg, () => small('insideLeg', texts.insideLeg)),
      ...maybe('outsideCornerLegNm', texts.outsideLeg, () => small('outsideLeg', texts.outsideLeg)),
    }),
  };
  if (legs.ok) refused('legs', checkWall(wall));
  return done({ ...common, wall }, problems);
}

/** Has the wall a turn? Asked of the text, so that a field of corners does not go while a length is typed. */
export function hasCorners({ legs }: FillTexts): boolean {
  return /\b(?:left|right|l|r)\b/iu.test(legs);
}

export interface WallPlan {
  readonly kind: 'wall';
  readonly lengthsNm: readonly number[];
  readonly turns: readonly ('left' | 'right')[];
  readonly thicknessNm: number;
}

export interface ColumnSize {
  readonly kind: 'column';
  readonly widthANm: number;
  readonly widthBNm: number;
}

/** What a plan needs, though other fields cannot be read yet; null where that cannot be read either. */
export function planBy(texts: FillTexts, units: UnitSystem): WallPlan | ColumnSize | null {
  const small = (text: string): number | null => {
    const read = lengthOf(text, units, 'small');
    return read.ok && read.value > 0 ? read.value : null;
  };
  if (texts.what === 'column') {
    const [widthANm, widthBNm] = [small(texts.widthA), small(texts.widthB)];
    return widthANm === null || widthBNm === null ? null : { kind: 'column', widthANm, widthBNm };
  }
  const legs = readLegs(texts.legs, (text) => lengthOf(text, units, 'large'));
  const thicknessNm = small(texts.thickness);
  return legs.ok && thicknessNm !== null ? { kind: 'wall', ...legs.value, thicknessNm } : null;
}

function done(asked: Asked, problems: FillProblems): ReturnType<typeof askedBy> {
  return { asked: Object.keys(problems).length === 0 ? asked : null, problems };
}

/** A bare number of a small length is inches or millimetres, of a large one feet or metres. */
function lengthOf(text: string, units: UnitSystem, size: 'small' | 'large'): Answer<number> {
  const bare = /^[\d.,]+$/u.test(text.trim());
  const unit = size === 'small' ? (units === 'us' ? 'in' : 'mm') : units === 'us' ? 'ft' : 'm';
  return parseLength(bare ? `${text.trim()} ${unit}` : text);
}

function weightOf(text: string, units: UnitSystem): Answer<number> {
  const plain = text.trim().replaceAll(/,(?=\d{3}(?!\d))/gu, '');
  return parseWeight(/^[\d.]+$/u.test(plain) ? `${plain} ${units === 'us' ? 'lb' : 'kg'}` : plain);
}

/** Heights from the bottom, parted by +; none where the core is to choose. */
function rowsOf(text: string, units: UnitSystem): Answer<readonly number[]> {
  const rows: number[] = [];
  for (const part of text.split('+').map((each) => each.trim())) {
    if (part === '') continue;
    const read = lengthOf(part, units, 'large');
    if (!read.ok) return read;
    rows.push(read.value);
  }
  return { ok: true, value: rows };
}

/** What was left open is not asked for. */
function maybe<K extends string>(key: K, text: string, read: () => number): Partial<Record<K, number>> {
  return text.trim() === '' ? {} : ({ [key]: read() } as Partial<Record<K, number>>);
}
