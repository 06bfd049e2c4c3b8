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

const railsInput = z.strictObject({
  across: z.enum(['horizontal-joints', 'vertical-joints']),
  cover: z.enum(['each-joint', 'full-length']).default('each-joint'),
  maximumAverageSpacing: lengthInput,
  lengths: z.array(z.strictObject({ gangUpTo: lengthInput, minimum: lengthInput })).max(200),
  bolt: z.exactOptional(codeInput),
  boltsPerPanelCrossed: z.exactOptional(count),
  boltClearance: z.exactOptional(lengthInput),
  reachCrossMember: z.exactOptional(z.boolean()),
  mergeMeeting: z.exactOptional(z.boolean()),
});

const madeUpInput = z.strictObject({
  backing: z.exactOptional(codeInput),
  backingSpacing: z.exactOptional(lengthInput),
  hoursPerM2: z.number().min(0).max(1000),
});

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
  rails: z.exactOptional(railsInput.extend({ neededFor: z.exactOptional(z.enum(['picking', 'placing'])) })),
  placingRails: z.exactOptional(railsInput),
  hooks: z.exactOptional(
    z.strictObject({
      component: codeInput,
      capacityKg: z.number(),
      ratedFor: z.enum(['sling-tension', 'gang-weight']).default('sling-tension'),
      minimum: count,
      minimumAngleDeg: z.exactOptional(z.number()),
      maximumHeight: z.exactOptional(lengthInput),
      places: z.exactOptional(
        z
          .array(z.enum(['panel-joint', 'cross-member', 'top-member']))
          .min(1)
          .max(3),
      ),
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
      platform: z.exactOptional(
        z.strictObject({
          planksWide: count,
          post: z.exactOptional(codeInput),
          postsPerBracket: z.exactOptional(count),
          guardrailRows: z.exactOptional(count),
        }),
      ),
    }),
  ),
  braces: z.exactOptional(
    z.strictObject({
      component: codeInput,
      maximumSpacing: lengthInput,
      atEachEnd: z.exactOptional(z.boolean()),
      shoe: z.exactOptional(codeInput),
      sides: z.exactOptional(z.enum(['one', 'both'])),
    }),
  ),
  ties: z.exactOptional(z.strictObject({ holes: z.boolean() })),
  stopEnds: z.exactOptional(madeUpInput),
  closures: z.exactOptional(madeUpInput),
  sources: z.exactOptional(z.record(z.string().max(120), z.string().max(400))),
});

export type RulesInput = z.output<typeof rulesInput>;

/** To internal units. `at` is the place of the tables in the document; the reader keeps the first refusal. */
export function rulesFromInput(input: RulesInput, reader: LengthReader, at: string): RuleTables {
  const { locks, fillerLocks, rails, placingRails, hooks, onSide, brackets, braces, ties } = input;
  const { stopEnds, closures, sources } = input;
  return {
    ...(locks && { locks: locksFrom(locks, reader, `${at}.locks`) }),
    ...(fillerLocks && { fillerLocks: fillerLocksFrom(fillerLocks, reader, `${at}.fillerLocks`) }),
    ...(rails && { rails: railsFrom(rails, reader, `${at}.rails`) }),
    ...(placingRails && { placingRails: railsFrom(placingRails, reader, `${at}.placingRails`) }),
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
    ...(stopEnds && { stopEnds: madeUpFrom(stopEnds, reader, `${at}.stopEnds`) }),
    ...(closures && { closures: madeUpFrom(closures, reader, `${at}.closures`) }),
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

function railsFrom<Table extends Of<'placingRails'>>(
  rails: Table,
  reader: LengthReader,
  at: string,
): Omit<Table, keyof RailLengths> & RailLengthsNm {
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

type RailLengths = Pick<Of<'placingRails'>, 'maximumAverageSpacing' | 'lengths' | 'boltClearance'>;
type RailLengthsNm = Pick<To<'placingRails'>, 'maximumAverageSpacingNm' | 'lengths' | 'boltClearanceNm'>;

function madeUpFrom(table: Of<'closures'>, reader: LengthReader, at: string): To<'closures'> {
  const { backingSpacing, ...rest } = table;
  return {
    ...rest,
    ...(backingSpacing !== undefined && {
      backingSpacingNm: reader.positive(backingSpacing, `${at}.backingSpacing`),
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
