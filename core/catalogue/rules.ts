// Rule tables: the data by which a gang is taken off and checked. They are shown, edited and versioned like
// any other data, in internal units; the sense of every table is told in the take-off that reads it
// (core/gang). What is absent is not taken off. Whether a table makes sense: check-rules.ts.
import { z } from 'zod';
import { type Answer, answer, refuse } from '../answer.ts';
import { edgeKinds } from './edges.ts';

const code = z.string().min(1).max(40);
const count = z.int().min(0).max(1_000_000);
const lengthNm = z.int();

const bands = z.array(z.strictObject({ upToNm: lengthNm, count })).max(200);

export const ruleTables = z.strictObject({
  /** Locks of a panel joint by its length; `extra` by what stands at the edge where a level joint ends. */
  locks: z.exactOptional(
    z.strictObject({
      component: code,
      bands,
      minimumStretchNm: z.exactOptional(lengthNm),
      extra: z.exactOptional(z.partialRecord(z.enum(edgeKinds), count)),
    }),
  ),
  /** Adjustable locks over a filler of at most this width; without bands of their own, by those of `locks`. */
  fillerLocks: z.exactOptional(
    z.strictObject({ component: code, maximumWidthNm: lengthNm, bands: z.exactOptional(bands) }),
  ),
  /** Stiffening rails; which of the catalogue's rails serve follows from their lengths. */
  rails: z.exactOptional(
    z.strictObject({
      across: z.enum(['horizontal-joints', 'vertical-joints']),
      cover: z.enum(['each-joint', 'full-length']),
      maximumAverageSpacingNm: lengthNm,
      lengths: z.array(z.strictObject({ gangUpToNm: lengthNm, minimumNm: lengthNm })).max(200),
      bolt: z.exactOptional(code),
      boltsPerPanelCrossed: z.exactOptional(count),
      boltClearanceNm: z.exactOptional(lengthNm),
    }),
  ),
  hooks: z.exactOptional(
    z.strictObject({
      component: code,
      capacityGrams: z.int(),
      /** The pull along the sling, or the hook's share of the gang's weight. */
      ratedFor: z.enum(['sling-tension', 'gang-weight']),
      minimum: count,
      /** Flattest sling, from the horizontal. */
      minimumAngleDeg: z.exactOptional(z.number()),
      maximumHeightNm: z.exactOptional(lengthNm),
    }),
  ),
  onSide: z.exactOptional(
    z.strictObject({ narrowerThanNm: lengthNm, onlyAt: z.array(z.enum(['top', 'bottom'])).max(2) }),
  ),
  brackets: z.exactOptional(
    z.strictObject({ component: code, maximumSpacingNm: lengthNm, atEachEnd: z.exactOptional(z.boolean()) }),
  ),
  braces: z.exactOptional(
    z.strictObject({
      component: code,
      maximumSpacingNm: lengthNm,
      atEachEnd: z.exactOptional(z.boolean()),
      shoe: z.exactOptional(code),
    }),
  ),
  ties: z.exactOptional(z.strictObject({ holes: z.boolean() })),
  /** Where a number comes from, by its place: {"hooks.capacityKg": "maker's sheet 4"}; others are defaults. */
  sources: z.exactOptional(z.record(z.string().max(120), z.string().max(400))),
});

export type RuleTables = z.output<typeof ruleTables>;
export type RuleName = Exclude<keyof RuleTables, 'sources'>;
export type Band = NonNullable<RuleTables['locks']>['bands'][number];

export const ruleNames = [
  'locks',
  'fillerLocks',
  'rails',
  'hooks',
  'onSide',
  'brackets',
  'braces',
  'ties',
] as const satisfies readonly RuleName[];

/** Source of the number at a place ("rails.maximumAverageSpacing"), else of its table, else 'default'. */
export function ruleSource(rules: RuleTables, place: string): string {
  const table = place.split('.')[0] ?? place;
  return rules.sources?.[place] ?? rules.sources?.[table] ?? 'default';
}

/** Reads stored rule tables. Refuses `rules-unreadable` with the place; sense is checked by checkRules. */
export function readRuleTables(value: unknown): Answer<RuleTables> {
  const parsed = ruleTables.safeParse(value);
  if (parsed.success) return answer(parsed.data);
  const [issue] = parsed.error.issues;
  const field = (issue?.path ?? []).map(String).join('.');
  return refuse(
    'rules-unreadable',
    `Rule tables, ${field || 'as a whole'}: ${issue?.message ?? 'unreadable'}.`,
    {
      field,
    },
  );
}
