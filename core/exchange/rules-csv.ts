// rules.csv: the rule tables of panel systems, one number a row, each with the source it comes from or the
// word default. A system's tables are replaced as a whole by what its rows say.
import { rulesProblems } from '../catalogue/check-rules.ts';
import { readRuleTables, type RuleTables } from '../catalogue/rules.ts';
import type { Component } from '../catalogue/component.ts';
import { readCode, readText } from './cells.ts';
import { type Column, headingSign } from './columns.ts';
import type { Parsed } from './gather.ts';
import { maybe } from './nearest.ts';
import { readEdge, readUpTo, type RuleSetting, ruleSettings } from './rule-settings.ts';
import { addTo, readTable, type Row } from './table.ts';

const tableNames = [...new Set(ruleSettings.map((one) => one.table))];

export const ruleColumns = [
  { name: 'system', needed: true, wanted: 'the code of the panel system' },
  { name: 'system name', needed: false, wanted: 'what people call the system; once is enough' },
  { name: 'table', needed: true, wanted: `one of ${tableNames.join(', ')}` },
  { name: 'setting', needed: true, wanted: 'the setting of the table' },
  {
    name: 'condition',
    needed: false,
    wanted:
      'for what the row holds: a joint or gang up to a length, such as 4 ft; what stands at an edge; else blank',
  },
  { name: 'value', needed: true, wanted: 'the value, lengths and weights with their unit' },
  { name: 'source', needed: true, wanted: 'where the number comes from, or default' },
] as const satisfies readonly Column[];

type Name = (typeof ruleColumns)[number]['name'];

export interface SystemRules {
  readonly system: string;
  readonly systemName: string;
  readonly rules: RuleTables;
}

/** @param catalogueOf the components that a system's rules may name */
export function readRules(
  text: string,
  names: Readonly<Record<string, string>>,
  catalogueOf: (system: string) => readonly Component[],
): Parsed<SystemRules> {
  const table = readTable<Name>(text, ruleColumns, names);
  const groups = new Map<string, Row<Name>[]>();
  for (const row of table.rows) {
    const system = row.need('system', readCode);
    if (system !== undefined) addTo(groups, system, row);
  }
  const values: SystemRules[] = [];
  for (const [system, rows] of groups) {
    const one = readSystem(system, rows, catalogueOf(system));
    if (one !== undefined) values.push(one);
  }
  const bad = [...table.bad].sort((one, other) => one.line - other.line);
  return { values, rows: table.rows.length, skipped: table.skipped, bad };
}

interface Draft {
  /** Tables by their key, settings by theirs; checked as a whole when all rows were read. */
  readonly tables: Record<string, Record<string, unknown>>;
  readonly sources: Record<string, string>;
  readonly rowAt: Map<string, Row<Name>>;
}

function readSystem(
  system: string,
  rows: readonly Row<Name>[],
  catalogue: readonly Component[],
): SystemRules | undefined {
  const draft: Draft = { tables: {}, sources: {}, rowAt: new Map() };
  let systemName = '';
  for (const row of rows) {
    const name = row.maybe('system name', readText(120)) ?? '';
    if (name !== '' && systemName !== '' && name !== systemName)
      row.refuse('system name', `the name that an earlier row gave to ${system}: ${systemName}`);
    systemName ||= name;
    readSetting(row, draft);
  }
  if (rows.some((row) => row.isBad())) return undefined;
  shareSources(draft.sources);
  const rules = {
    ...draft.tables,
    ...(Object.keys(draft.sources).length > 0 ? { sources: draft.sources } : {}),
  };
  const read = readRuleTables(rules);
  const problems = read.ok ? rulesProblems(read.value, catalogue) : [read.error];
  if (read.ok && problems.length === 0)
    return { system, systemName: systemName || system, rules: read.value };
  for (const { field = '', message, hint } of problems) {
    const row = rowOf(draft, field) ?? rows[0];
    row?.refuse('value', `rule tables that make sense: ${message}${hint === undefined ? '' : ` ${hint}`}`);
  }
  return undefined;
}

/** Where all rows of a list have one source, the list has it too: findings ask for either. */
function shareSources(sources: Record<string, string>): void {
  for (const list of ['locks.bands', 'fillerLocks.bands', 'rails.lengths', 'placingRails.lengths']) {
    const found = new Set(
      Object.entries(sources).flatMap(([place, source]) => (place.startsWith(`${list}[`) ? [source] : [])),
    );
    const [source] = found;
    if (found.size === 1 && source !== undefined) sources[list] = source;
  }
  // A default is told by the absence of a source.
  for (const [place, source] of Object.entries(sources)) if (source === '') delete sources[place];
}

/** The row that wrote the place, or the first of its table. */
function rowOf(draft: Draft, field: string): Row<Name> | undefined {
  const plain = field.replaceAll(/\.(\d+)(?=\.|$)/gu, '[$1]');
  const exact = [...draft.rowAt].findLast(([place]) => plain === place || plain.startsWith(`${place}.`));
  const table = plain.split(/[.[]/u)[0];
  return (exact ?? [...draft.rowAt].find(([place]) => place.split('.')[0] === table))?.[1];
}

function readSetting(row: Row<Name>, draft: Draft): void {
  const setting = findSetting(row);
  if (setting === undefined) return;
  const condition = readCondition(row, setting);
  const value = row.need('value', setting.read);
  const source =
    setting.place === null ? row.maybe('source', readText(400)) : row.need('source', readText(400));
  if (value === undefined || condition === undefined || row.isBad()) return;
  const place = put(row, draft, setting, condition, value);
  if (place === undefined || source === null || source === undefined || setting.place === null) return;
  draft.sources[place] = headingSign(source) === 'default' ? '' : source;
}

function findSetting(row: Row<Name>): RuleSetting | undefined {
  const table = row.need('table', readText(60));
  const name = row.need('setting', readText(60));
  if (table === undefined || name === undefined) return undefined;
  const settings = ruleSettings.filter((one) => headingSign(one.table) === headingSign(table));
  const found = settings.find((one) => headingSign(one.setting) === headingSign(name));
  if (found !== undefined) return found;
  if (settings.length === 0)
    row.refuse('table', `one of ${tableNames.join(', ')}${maybe(table, tableNames)}`);
  else {
    const known = settings.map((one) => one.setting);
    row.refuse('setting', `one of ${known.join(', ')}${maybe(name, known)}`);
  }
  return undefined;
}

function readCondition(row: Row<Name>, setting: RuleSetting): string | number | null | undefined {
  if (setting.condition === 'edge') return row.need('condition', readEdge);
  if (setting.condition === 'up-to') return row.need('condition', readUpTo);
  if (row.text('condition') === '') return null;
  row.refuse('condition', `nothing: ${setting.table}, ${setting.setting} holds everywhere`);
  return undefined;
}

/** Writes the value where it belongs and answers the place of its source. */
function put(
  row: Row<Name>,
  draft: Draft,
  setting: RuleSetting,
  condition: string | number | null,
  value: unknown,
): string | undefined {
  const table = (draft.tables[setting.tableKey] ??= {});
  const place = setting.place ?? `${setting.tableKey}.${setting.key}`;
  if (setting.condition === 'up-to') {
    const list = (table[setting.key] ??= []) as object[];
    const rowPlace = `${place}[${list.length}]`;
    list.push(
      setting.key === 'bands'
        ? { upToNm: condition, count: value }
        : { gangUpToNm: condition, minimumNm: value },
    );
    draft.rowAt.set(rowPlace, row);
    return rowPlace;
  }
  const key = condition === null ? place : `${place}.${condition}`;
  if (draft.rowAt.has(key)) {
    row.refuse(
      'setting',
      `${setting.table}, ${setting.setting} once: line ${draft.rowAt.get(key)?.line} has it already`,
    );
    return undefined;
  }
  if (setting.condition === 'edge')
    ((table[setting.key] ??= {}) as Record<string, unknown>)[String(condition)] = value;
  else setAt(table, setting.key, value);
  draft.rowAt.set(key, row);
  return key;
}

/** `platform.planksWide` is a setting of the table within the table. */
function setAt(table: Record<string, unknown>, key: string, value: unknown): void {
  const [first = key, ...rest] = key.split('.');
  if (rest.length === 0) table[first] = value;
  else setAt((table[first] ??= {}) as Record<string, unknown>, rest.join('.'), value);
}
