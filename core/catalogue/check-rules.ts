// Do rule tables make sense, for the components they name? Checked when they are saved and before a take-off,
// so that no take-off meets a table that goes down, a spacing of zero or a lock that is a hook. Places are
// named as the contract writes them: locks.bands[1].upTo.
import { type Answer, answer, refuse, type Refusal } from '../answer.ts';
import { formatLengthMetric } from '../units/length.ts';
import type { Component, ComponentKind } from './component.ts';
import type { Band, RuleTables } from './rules.ts';
import { furtherRuleNames, ruleNames } from './rules.ts';

type Problem = { readonly ok: false; readonly error: Refusal } | undefined;

/** The rules as given, or the first place that makes no sense: one code a reason, checked in a fixed order. */
export function checkRules(rules: RuleTables, components: readonly Component[]): Answer<RuleTables> {
  const problem =
    checkLocks(rules) ??
    checkRails(rules, components) ??
    checkHooks(rules) ??
    checkSpacings(rules) ??
    checkNamed(rules, components) ??
    checkSources(rules);
  return problem ?? answer(rules);
}

function checkLocks({ locks, fillerLocks }: RuleTables): Problem {
  if (locks !== undefined) {
    const problem =
      checkBands('locks.bands', locks.bands) ?? notNegative('locks.minimumStretch', locks.minimumStretchNm);
    if (problem !== undefined) return problem;
  }
  if (fillerLocks === undefined) return undefined;
  if (fillerLocks.bands === undefined && locks === undefined) {
    return refuse(
      'rule-bands-missing',
      'fillerLocks has no bands, and there is no table locks whose bands it could take.',
      {
        field: 'fillerLocks.bands',
        hint: 'Maybe give fillerLocks its own bands.',
      },
    );
  }
  return (
    positive('fillerLocks.maximumWidth', fillerLocks.maximumWidthNm) ??
    (fillerLocks.bands === undefined ? undefined : checkBands('fillerLocks.bands', fillerLocks.bands))
  );
}

function checkBands(place: string, bands: readonly Band[]): Problem {
  return rising(
    place,
    'upTo',
    bands.map((band) => band.upToNm),
  );
}

/** A table whose limits rise from row to row; rows that go down or repeat would never be reached. */
function rising(place: string, key: string, limits: readonly number[]): Problem {
  if (limits.length === 0) return refuse('rule-table-empty', `${place} has no rows.`, { field: place });
  for (const [row, limit] of limits.entries()) {
    const field = `${place}[${row}].${key}`;
    const before = limits[row - 1];
    const problem = positive(field, limit);
    if (problem !== undefined) return problem;
    if (before !== undefined && limit <= before) {
      const shown = `${formatLengthMetric(limit)} after ${formatLengthMetric(before)}`;
      return refuse('rule-bands-not-rising', `${field} must rise from row to row, it is ${shown}.`, {
        field,
        hint: 'Maybe two rows were swapped or typed twice.',
      });
    }
  }
  return undefined;
}

function checkRails({ rails }: RuleTables, components: readonly Component[]): Problem {
  if (rails === undefined) return undefined;
  const problem =
    positive('rails.maximumAverageSpacing', rails.maximumAverageSpacingNm) ??
    rising(
      'rails.lengths',
      'gangUpTo',
      rails.lengths.map((row) => row.gangUpToNm),
    ) ??
    rails.lengths
      .map((row, index) => notNegative(`rails.lengths[${index}].minimum`, row.minimumNm))
      .find((found) => found !== undefined) ??
    notNegative('rails.boltClearance', rails.boltClearanceNm);
  if (problem !== undefined) return problem;
  const short = components.find((item) => item.kind === 'stiffening-rail' && (item.lengthNm ?? 0) <= 0);
  if (short === undefined) return undefined;
  return refuse(
    'rail-without-length',
    `The stiffening rail ${short.code} has no length, so rails cannot be chosen.`,
    {
      field: `components.${short.code}.length`,
    },
  );
}

function checkHooks({ hooks }: RuleTables): Problem {
  if (hooks === undefined) return undefined;
  if (hooks.capacityGrams <= 0) return tooSmall('hooks.capacityKg', `${hooks.capacityGrams / 1000} kg`);
  const angle = hooks.minimumAngleDeg;
  if (angle === undefined && hooks.ratedFor === 'sling-tension') {
    return refuse(
      'rule-angle-missing',
      'Hooks rated by the pull along the sling need the flattest angle of a sling.',
      {
        field: 'hooks.minimumAngleDeg',
      },
    );
  }
  if (angle !== undefined && !(angle > 0 && angle <= 90)) {
    return refuse(
      'rule-angle-out-of-range',
      `hooks.minimumAngleDeg is ${angle}, it must be over 0 and at most 90.`,
      {
        field: 'hooks.minimumAngleDeg',
        hint: 'Maybe it was measured from the vertical; here it is from the horizontal.',
      },
    );
  }
  const leastGrams = hooks.capacityGrams * Math.sin(((angle ?? 90) * Math.PI) / 180);
  if (hooks.ratedFor === 'sling-tension' && leastGrams < 1) {
    return refuse(
      'rule-angle-out-of-range',
      `With slings at ${angle} degrees a hook of ${hooks.capacityGrams / 1000} kg carries less than a gram of the gang.`,
      { field: 'hooks.minimumAngleDeg' },
    );
  }
  return hooks.maximumHeightNm === undefined
    ? undefined
    : positive('hooks.maximumHeight', hooks.maximumHeightNm);
}

function checkSpacings({ onSide, brackets, braces }: RuleTables): Problem {
  if (onSide !== undefined && onSide.onlyAt.length === 0) {
    return refuse('rule-table-empty', 'onSide.onlyAt names neither top nor bottom.', {
      field: 'onSide.onlyAt',
    });
  }
  return (
    notNegative('onSide.narrowerThan', onSide?.narrowerThanNm) ??
    (brackets === undefined ? undefined : positive('brackets.maximumSpacing', brackets.maximumSpacingNm)) ??
    (braces === undefined ? undefined : positive('braces.maximumSpacing', braces.maximumSpacingNm))
  );
}

/** Every component a rule names is in the catalogue, and is none of a kind that cannot do that work. */
function checkNamed(rules: RuleTables, components: readonly Component[]): Problem {
  const named: readonly (readonly [string, string | undefined, readonly ComponentKind[]])[] = [
    ['locks.component', rules.locks?.component, ['lock', 'adjustable-lock']],
    ['fillerLocks.component', rules.fillerLocks?.component, ['adjustable-lock', 'lock']],
    ['rails.bolt', rules.rails?.bolt, ['rail-bolt']],
    ['hooks.component', rules.hooks?.component, ['hook']],
    ['brackets.component', rules.brackets?.component, ['bracket']],
    ['braces.component', rules.braces?.component, ['brace']],
    ['braces.shoe', rules.braces?.shoe, ['brace-shoe']],
  ];
  const kinds = new Map(components.map((item) => [item.code, item.kind]));
  for (const [field, code, wanted] of named) {
    if (code === undefined) continue;
    const kind = kinds.get(code);
    if (kind === undefined) {
      return refuse('rule-component-unknown', `${field} names ${code}, which is not in the catalogue.`, {
        field,
        hint: 'Maybe the code is spelled in another way there.',
      });
    }
    if (kind !== 'other' && !wanted.includes(kind)) {
      return refuse(
        'rule-component-kind',
        `${field} names ${code}, which is a ${kind} and no ${wanted[0]}.`,
        { field },
      );
    }
  }
  return undefined;
}

/** A source that belongs to no number would never be shown. */
function checkSources(rules: RuleTables): Problem {
  const stray = Object.keys(rules.sources ?? {}).find(
    (place) =>
      ![...ruleNames, ...furtherRuleNames].some((name) => place === name || place.startsWith(`${name}.`)),
  );
  if (stray === undefined) return undefined;
  return refuse('rule-source-stray', `A source is given for ${stray}, which is no number of a rule table.`, {
    field: `sources.${stray}`,
  });
}

function positive(field: string, lengthNm: number): Problem {
  return lengthNm > 0 ? undefined : tooSmall(field, formatLengthMetric(lengthNm));
}

function notNegative(field: string, lengthNm: number | undefined): Problem {
  if (lengthNm === undefined || lengthNm >= 0) return undefined;
  return refuse(
    'rule-number-negative',
    `${field} is ${formatLengthMetric(lengthNm)}, it cannot be negative.`,
    { field },
  );
}

function tooSmall(field: string, shown: string): Problem {
  return refuse('rule-number-not-positive', `${field} is ${shown}, it must be over zero.`, { field });
}
