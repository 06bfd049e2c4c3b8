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

const railTable = z.strictObject({
  across: z.enum(['horizontal-joints', 'vertical-joints']),
  cover: z.enum(['each-joint', 'full-length']),
  maximumAverageSpacingNm: lengthNm,
  lengths: z.array(z.strictObject({ gangUpToNm: lengthNm, minimumNm: lengthNm })).max(200),
  bolt: z.exactOptional(code),
  boltsPerPanelCrossed: z.exactOptional(count),
  /** Least distance of a bolt from the joint that its rail lies across. */
  boltClearanceNm: z.exactOptional(lengthNm),
  /** Must a rail reach the next cross member of every panel it crosses? Absent: no. */
  reachCrossMember: z.exactOptional(z.boolean()),
  /** Do rails over single joints that meet or overlap on a line become one? Absent: no. */
  mergeMeeting: z.exactOptional(z.boolean()),
});

/** Stop-ends and made-up closures are built on the site: backing across them, and hours by their area. */
const madeUp = z.strictObject({
  backing: z.exactOptional(code),
  backingSpacingNm: z.exactOptional(lengthNm),
  hoursPerM2: z.number().min(0).max(1000),
});

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
    railTable.extend({
      /** What they are for; where absent they serve picking and placing alike. */
      neededFor: z.exactOptional(z.enum(['picking', 'placing'])),
    }),
  ),
  /** Rails that only placing needs, beside those of `rails`; where both cannot stay on, rails are moved. */
  placingRails: z.exactOptional(railTable),
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
      /** Where hooks may stand; absent: upright panel joints, and cross members of panels on their side. */
      places: z.exactOptional(
        z
          .array(z.enum(['panel-joint', 'cross-member', 'top-member']))
          .min(1)
          .max(3),
      ),
    }),
  ),
  onSide: z.exactOptional(
    z.strictObject({ narrowerThanNm: lengthNm, onlyAt: z.array(z.enum(['top', 'bottom'])).max(2) }),
  ),
  brackets: z.exactOptional(
    z.strictObject({
      component: code,
      maximumSpacingNm: lengthNm,
      atEachEnd: z.exactOptional(z.boolean()),
      /** What lies and stands on them along the gang: planks and guardrails by the catalogue's lengths. */
      platform: z.exactOptional(
        z.strictObject({
          /** Planks side by side. */
          planksWide: count,
          post: z.exactOptional(code),
          postsPerBracket: z.exactOptional(count),
          /** Guardrails one above another. */
          guardrailRows: z.exactOptional(count),
        }),
      ),
    }),
  ),
  braces: z.exactOptional(
    z.strictObject({
      component: code,
      maximumSpacingNm: lengthNm,
      atEachEnd: z.exactOptional(z.boolean()),
      shoe: z.exactOptional(code),
      /** Which sides of a wall are braced; absent: one. */
      sides: z.exactOptional(z.enum(['one', 'both'])),
    }),
  ),
  ties: z.exactOptional(z.strictObject({ holes: z.boolean() })),
  stopEnds: z.exactOptional(madeUp),
  /** Closures wider than any lock spans. */
  closures: z.exactOptional(madeUp),
  /** Where a number comes from, by its place: {"hooks.capacityKg": "maker's sheet 4"}; others are defaults. */
  sources: z.exactOptional(z.record(z.string().max(120), z.string().max(400))),
});

export type RuleTables = z.output<typeof ruleTables>;
export type RuleName = Exclude<keyof RuleTables, 'sources'>;
export type RailTable = z.output<typeof railTable>;
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

/** Tables that a system may do without: nothing is said of them where they are absent. */
export const furtherRuleNames = [
  'placingRails',
  'stopEnds',
  'closures',
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
