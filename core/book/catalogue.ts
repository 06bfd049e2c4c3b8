// Components and rule tables in the book.
import { z } from 'zod';
import type { Kysely } from 'kysely';
import { componentKinds } from '../catalogue/component.ts';
import { ruleTables } from '../catalogue/rules.ts';
import type { RuleTables } from '../catalogue/rules.ts';
import type { BookComponent, RuleVersion } from './book.ts';
import { storedJson, toStoredJson } from './stored-json.ts';
import type { BookTables, ComponentRow } from './tables.ts';

const kind = z.enum(componentKinds);
const lengths = z.array(z.int());
const places = z.array(z.tuple([z.int(), z.int()]));

export async function readComponents(db: Kysely<BookTables>): Promise<readonly BookComponent[]> {
  const rows = await db.selectFrom('component').selectAll().orderBy('code').execute();
  return rows.map(componentOfRow);
}

function componentOfRow(row: ComponentRow): BookComponent {
  const place = `component ${row.code}`;
  return {
    code: row.code,
    name: row.name,
    kind: kind.parse(row.kind),
    weightGrams: row.weight_grams,
    ...(row.width_nm === null ? {} : { widthNm: row.width_nm }),
    ...(row.height_nm === null ? {} : { heightNm: row.height_nm }),
    ...(row.length_nm === null ? {} : { lengthNm: row.length_nm }),
    ...(row.cross_members_nm === null
      ? {}
      : { crossMembersNm: storedJson(lengths, row.cross_members_nm, place) }),
    ...(row.tie_holes_nm === null ? {} : { tieHolesNm: storedJson(places, row.tie_holes_nm, place) }),
    ...(row.pressure_pa === null ? {} : { pressurePa: row.pressure_pa }),
    ...(row.pressure_on_side_pa === null ? {} : { pressureOnSidePa: row.pressure_on_side_pa }),
    ...(row.can_shrink === 1 && { canShrink: true }),
    ...(row.value_cents === null ? {} : { valueCents: row.value_cents }),
    system: row.system,
    hirePerDayCents: row.hire_per_day_cents,
    regangPerPieceH: row.regang_per_piece_h,
    remark: row.remark,
  };
}

export async function putComponent(db: Kysely<BookTables>, component: BookComponent): Promise<void> {
  const { crossMembersNm, tieHolesNm } = component;
  const row: ComponentRow = {
    code: component.code,
    name: component.name,
    kind: component.kind,
    weight_grams: component.weightGrams,
    width_nm: component.widthNm ?? null,
    height_nm: component.heightNm ?? null,
    length_nm: component.lengthNm ?? null,
    cross_members_nm: crossMembersNm === undefined ? null : JSON.stringify(crossMembersNm),
    tie_holes_nm: tieHolesNm === undefined ? null : JSON.stringify(tieHolesNm),
    system: component.system,
    hire_per_day_cents: component.hirePerDayCents,
    regang_per_piece_h: component.regangPerPieceH,
    remark: component.remark,
    pressure_pa: component.pressurePa ?? null,
    pressure_on_side_pa: component.pressureOnSidePa ?? null,
    can_shrink: component.canShrink === true ? 1 : 0,
    value_cents: component.valueCents ?? null,
  };
  await db
    .insertInto('component')
    .values(row)
    .onConflict((conflict) => conflict.column('code').doUpdateSet(row))
    .execute();
}

/** By system, then oldest version first. */
export async function readRuleVersions(db: Kysely<BookTables>): Promise<readonly RuleVersion[]> {
  const rows = await db.selectFrom('rule_version').selectAll().orderBy('system').orderBy('version').execute();
  return rows.map((row) => ({
    system: row.system,
    systemName: row.system_name,
    version: row.version,
    rules: storedJson(ruleTables, row.rules, `rule tables ${row.system}, version ${row.version}`),
  }));
}

export async function putRules(
  db: Kysely<BookTables>,
  system: string,
  systemName: string,
  rules: RuleTables,
): Promise<RuleVersion> {
  const last = await db
    .selectFrom('rule_version')
    .select((select) => select.fn.max<number | null>('version').as('version'))
    .where('system', '=', system)
    .executeTakeFirst();
  const version = (last?.version ?? 0) + 1;
  const row = {
    system,
    version,
    system_name: systemName,
    rules: toStoredJson(ruleTables, rules, `rule tables ${system}`),
  };
  await db.insertInto('rule_version').values(row).execute();
  return { system, systemName, version, rules };
}
