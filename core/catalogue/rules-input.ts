// Rule tables as a person or a script writes them: lengths as numbers of millimetres or texts with units,
// weights in kilograms, rows of limits in any order. Same tables as rules.ts, which keeps them in whole nanometres
// and grams, limits rising.
import { z } from 'zod';
import type { LengthReader } from '../units/length-reader.ts';
import { edgeKinds } from './edges.ts';
import type { RuleTables } from './rules.ts';

export const lengthInput = z
  .union([z.number(), z.string().max(60)])
  .describe('a number of millimetres, or a text with its unit such as 9\'-6 1/2", 18 in or 2.7 m');
export const codeInput = z.string().min(1).max(40);
const count = z.int().min(0).max(1_000_000);
const bandsInput = z.array(z.strictObject({ upTo: lengthInput, count })).max(200);

export const rulesInput = z.strictObject({
  locks: z.exactOptional(
    z.strictObject({
      component: codeInput,
      bands: bandsInput,
      minimumStretch: z.exactOptional(lengthInput),
      extra: z.exactOptional(z.partialRecord(z.enum(edgeKinds), count)),
    }),
  ),
  fillerLocks: z.exactOptional(
    z.strictObject({
      component: codeInput,
      maximumWidth: lengthInput,
      bands: z.exactOptional(bandsInput),
    }),
  ),
  rails: z.exactOptional(
    z.strictObject({
      across: z.enum(['horizontal-joints', 'vertical-joints']),
      cover: z.enum(['each-joint', 'full-length']).default('each-joint'),
      maximumAverageSpacing: lengthInput,
      lengths: z.array(z.strictObject({ gangUpTo: lengthInput, minimum: lengthInput })).max(200),
      bolt: z.exactOptional(codeInput),
      boltsPerPanelCrossed: z.exactOptional(count),
      boltClearance: z.exactOptional(lengthInput),
    }),
  ),
  hooks: z.exactOptional(
    z.strictObject({
      component: codeInput,
      capacityKg: z.number(),
      ratedFor: z.enum(['sling-tension', 'gang-weight']).default('sling-tension'),
      minimum: count,
      minimumAngleDeg: z.exactOptional(z.number()),
      maximumHeight: z.exactOptional(lengthInput),
    }),
  ),
  onSide: z.exactOptional(
    z.strictObject({ narrowerThan: lengthInput, onlyAt: z.array(z.enum(['top', 'bottom'])).max(2) }),
  ),
  brackets: z.exactOptional(
    z.strictObject({
      component: codeInput,
      maximumSpacing: lengthInput,
      atEachEnd: z.exactOptional(z.boolean()),
    }),
  ),
  braces: z.exactOptional(
    z.strictObject({
      component: codeInput,
      maximumSpacing: lengthInput,
      atEachEnd: z.exactOptional(z.boolean()),
      shoe: z.exactOptional(codeInput),
    }),
  ),
  ties: z.exactOptional(z.strictObject({ holes: z.boolean() })),
  sources: z.exactOptional(z.record(z.string().max(120), z.string().max(400))),
});

export type RulesInput = z.output<typeof rulesInput>;

/** To internal units. `at` is the place of the tables in the document; the reader keeps the first refusal. */
export function rulesFromInput(input: RulesInput, reader: LengthReader, at: string): RuleTables {
  const { locks, fillerLocks, rails, hooks, onSide, brackets, braces, ties, sources } = input;
  return {
    ...(locks && { locks: locksFrom(locks, reader, `${at}.locks`) }),
    ...(fillerLocks && { fillerLocks: fillerLocksFrom(fillerLocks, reader, `${at}.fillerLocks`) }),
    ...(rails && { rails: railsFrom(rails, reader, `${at}.rails`) }),
    ...(hooks && { hooks: hooksFrom(hooks, reader, `${at}.hooks`) }),
    ...(onSide && {
      onSide: {
        narrowerThanNm: reader.notNegative(onSide.narrowerThan, `${at}.onSide.narrowerThan`),
        onlyAt: onSide.onlyAt,
      },
    }),
    ...(brackets && { brackets: spacingFrom(brackets, reader, `${at}.brackets`) }),
    ...(braces && { braces: spacingFrom(braces, reader, `${at}.braces`) }),
    ...(ties && { ties }),
    ...(sources && { sources }),
  };
}

type Of<Name extends keyof RulesInput> = NonNullable<RulesInput[Name]>;
type To<Name extends keyof RuleTables> = NonNullable<RuleTables[Name]>;

function bandsFrom(bands: Of<'locks'>['bands'], reader: LengthReader, at: string): To<'locks'>['bands'] {
  const read = bands.map((band, row) => ({
    upToNm: reader.positive(band.upTo, `${at}[${row}].upTo`),
    count: band.count,
  }));
  return read.sort((one, other) => one.upToNm - other.upToNm);
}

function locksFrom(locks: Of<'locks'>, reader: LengthReader, at: string): To<'locks'> {
  const { component, bands, minimumStretch, extra } = locks;
  return {
    component,
    bands: bandsFrom(bands, reader, `${at}.bands`),
    ...(minimumStretch !== undefined && {
      minimumStretchNm: reader.notNegative(minimumStretch, `${at}.minimumStretch`),
    }),
    ...(extra !== undefined && { extra }),
  };
}

function fillerLocksFrom(
  { component, maximumWidth, bands }: Of<'fillerLocks'>,
  reader: LengthReader,
  at: string,
): To<'fillerLocks'> {
  return {
    component,
    maximumWidthNm: reader.positive(maximumWidth, `${at}.maximumWidth`),
    ...(bands && { bands: bandsFrom(bands, reader, `${at}.bands`) }),
  };
}

function railsFrom(rails: Of<'rails'>, reader: LengthReader, at: string): To<'rails'> {
  const { maximumAverageSpacing, lengths, boltClearance, ...rest } = rails;
  return {
    ...rest,
    maximumAverageSpacingNm: reader.positive(maximumAverageSpacing, `${at}.maximumAverageSpacing`),
    lengths: lengths
      .map((row, index) => ({
        gangUpToNm: reader.positive(row.gangUpTo, `${at}.lengths[${index}].gangUpTo`),
        minimumNm: reader.notNegative(row.minimum, `${at}.lengths[${index}].minimum`),
      }))
      .sort((one, other) => one.gangUpToNm - other.gangUpToNm),
    ...(boltClearance !== undefined && {
      boltClearanceNm: reader.notNegative(boltClearance, `${at}.boltClearance`),
    }),
  };
}

function hooksFrom(hooks: Of<'hooks'>, reader: LengthReader, at: string): To<'hooks'> {
  const { capacityKg, maximumHeight, ...rest } = hooks;
  return {
    ...rest,
    capacityGrams: reader.weight(capacityKg, `${at}.capacityKg`),
    ...(maximumHeight !== undefined && {
      maximumHeightNm: reader.positive(maximumHeight, `${at}.maximumHeight`),
    }),
  };
}

function spacingFrom<Rest extends object>(
  { maximumSpacing, ...rest }: { maximumSpacing: string | number } & Rest,
  reader: LengthReader,
  at: string,
): Omit<{ maximumSpacing: string | number } & Rest, 'maximumSpacing'> & { maximumSpacingNm: number } {
  return { ...rest, maximumSpacingNm: reader.positive(maximumSpacing, `${at}.maximumSpacing`) };
}
