// Do rule tables make sense, for the components they name? Checked before a take-off, so that none meets a table
// that goes down, a spacing of zero or a lock that is a hook; and when they are saved, all problems at once. Places
// are named as the contract writes them: locks.bands[1].upTo.
import { type Answer, answer, refuse, type Refusal } from '../answer.ts';
import { namedProblems } from './check-named.ts';
import { negative, notPositive, rising } from './check-numbers.ts';
import type { Component } from './component.ts';
import { ruleGaps } from './rule-gaps.ts';
import { strayTables } from './rule-sources.ts';
import type { Band, RailTable, RuleTables } from './rules.ts';

/** The rules as given, or the first place that makes no sense: one code a reason, checked in a fixed order. */
export function checkRules(rules: RuleTables, components: readonly Component[]): Answer<RuleTables> {
  const [first] = senseless(rules, components);
  return first === undefined ? answer(rules) : { ok: false, error: first };
}

/**
 * Everything for which tables are not saved: what no take-off can use, and gaps (rule-gaps.ts), with which a
 * take-off can be made but says a stop or a caution for every gang that falls into one.
 */
export function rulesProblems(rules: RuleTables, components: readonly Component[]): readonly Refusal[] {
  const found = senseless(rules, components);
  const places = new Set(found.map(({ field }) => field));
  return [...found, ...ruleGaps(rules, components).filter(({ field }) => !places.has(field))];
}

function senseless(rules: RuleTables, components: readonly Component[]): readonly Refusal[] {
  return [
    ...lockProblems(rules),
    ...railProblems('rails', rules.rails, components),
    ...railProblems('placingRails', rules.placingRails, components),
    ...twiceForPlacing(rules),
    ...hookProblems(rules),
    ...spacingProblems(rules),
    ...namedProblems(rules, components),
    ...strayTables(rules),
  ];
}

function lockProblems({ locks, fillerLocks }: RuleTables): readonly Refusal[] {
  const problems =
    locks === undefined
      ? []
      : [
          ...rising('locks.bands', 'upTo', limitsOf(locks.bands)),
          ...negative('locks.minimumStretch', locks.minimumStretchNm),
        ];
  if (fillerLocks === undefined) return problems;
  if (fillerLocks.bands === undefined && locks === undefined) {
    const { error } = refuse(
      'rule-bands-missing',
      'fillerLocks has no bands, and there is no table locks whose bands it could take.',
      { field: 'fillerLocks.bands', hint: 'Maybe give fillerLocks its own bands.' },
    );
    return [...problems, error];
  }
  return [
    ...problems,
    ...notPositive('fillerLocks.maximumWidth', fillerLocks.maximumWidthNm),
    ...(fillerLocks.bands === undefined
      ? []
      : rising('fillerLocks.bands', 'upTo', limitsOf(fillerLocks.bands))),
  ];
}

function limitsOf(bands: readonly Band[]): readonly number[] {
  return bands.map(({ upToNm }) => upToNm);
}

function railProblems(
  name: 'rails' | 'placingRails',
  table: RailTable | undefined,
  components: readonly Component[],
): readonly Refusal[] {
  if (table === undefined) return [];
  const short = components.filter((item) => item.kind === 'stiffening-rail' && (item.lengthNm ?? 0) <= 0);
  return [
    ...notPositive(`${name}.maximumAverageSpacing`, table.maximumAverageSpacingNm),
    ...rising(
      `${name}.lengths`,
      'gangUpTo',
      table.lengths.map((row) => row.gangUpToNm),
    ),
    ...table.lengths.flatMap((row, index) => negative(`${name}.lengths[${index}].minimum`, row.minimumNm)),
    ...negative(`${name}.boltClearance`, table.boltClearanceNm),
    ...short.map(
      ({ code }) =>
        refuse(
          'rail-without-length',
          `The stiffening rail ${code} has no length, so rails cannot be chosen.`,
          {
            field: `components.${code}.length`,
          },
        ).error,
    ),
  ];
}

function twiceForPlacing({ rails, placingRails }: RuleTables): readonly Refusal[] {
  if (placingRails === undefined || rails?.neededFor !== 'placing') return [];
  return [
    refuse(
      'rule-rails-twice',
      'rails are said to be for placing, and placingRails are there too: two tables for one need.',
      { field: 'rails.neededFor', hint: 'Maybe rails are those that picking needs.' },
    ).error,
  ];
}

function hookProblems({ hooks }: RuleTables): readonly Refusal[] {
  if (hooks === undefined) return [];
  const problems = [
    ...(hooks.maximumHeightNm === undefined ? [] : notPositive('hooks.maximumHeight', hooks.maximumHeightNm)),
  ];
  if (hooks.capacityGrams <= 0) {
    const message = `hooks.capacityKg is ${hooks.capacityGrams / 1000} kg, it must be over zero.`;
    return [refuse('rule-number-not-positive', message, { field: 'hooks.capacityKg' }).error, ...problems];
  }
  const field = 'hooks.minimumAngleDeg';
  const angle = hooks.minimumAngleDeg;
  if (angle === undefined && hooks.ratedFor === 'sling-tension') {
    const message = 'Hooks rated by the pull along the sling need the flattest angle of a sling.';
    return [refuse('rule-angle-missing', message, { field }).error, ...problems];
  }
  if (angle !== undefined && !(angle > 0 && angle <= 90)) {
    const message = `hooks.minimumAngleDeg is ${angle}, it must be over 0 and at most 90.`;
    const hint = 'Maybe it was measured from the vertical; here it is from the horizontal.';
    return [refuse('rule-angle-out-of-range', message, { field, hint }).error, ...problems];
  }
  const leastGrams = hooks.capacityGrams * Math.sin(((angle ?? 90) * Math.PI) / 180);
  if (hooks.ratedFor === 'sling-tension' && leastGrams < 1) {
    const message = `With slings at ${angle} degrees a hook of ${hooks.capacityGrams / 1000} kg carries less than a gram of the gang.`;
    return [refuse('rule-angle-out-of-range', message, { field }).error, ...problems];
  }
  return problems;
}

function spacingProblems({ onSide, brackets, braces, stopEnds, closures }: RuleTables): readonly Refusal[] {
  const nowhere = onSide !== undefined && onSide.onlyAt.length === 0;
  return [
    ...(nowhere
      ? [
          refuse('rule-table-empty', 'onSide.onlyAt names neither top nor bottom.', {
            field: 'onSide.onlyAt',
          }).error,
        ]
      : []),
    ...negative('onSide.narrowerThan', onSide?.narrowerThanNm),
    ...(brackets === undefined ? [] : notPositive('brackets.maximumSpacing', brackets.maximumSpacingNm)),
    ...(braces === undefined ? [] : notPositive('braces.maximumSpacing', braces.maximumSpacingNm)),
    ...backingProblems('stopEnds', stopEnds),
    ...backingProblems('closures', closures),
  ];
}

function backingProblems(name: 'stopEnds' | 'closures', table: RuleTables['closures']): readonly Refusal[] {
  if (table === undefined) return [];
  const field = `${name}.backingSpacing`;
  if (table.backingSpacingNm !== undefined) return notPositive(field, table.backingSpacingNm);
  if (table.backing === undefined) return [];
  const message = `${name}.backing names ${table.backing}, and how far apart it stands is not told.`;
  return [refuse('rule-spacing-missing', message, { field }).error];
}
