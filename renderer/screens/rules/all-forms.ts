// Every rule table in the order in which the screen lists them.
import type { Word } from './cell-kinds.ts';
import { fillerLockForm, lockForm, placingRailForm, railForm } from './joint-forms.ts';
import { fieldsOf, type TableForm } from './table-forms.ts';

const hooks = fieldsOf('hooks');
const onSide = fieldsOf('onSide');
const brackets = fieldsOf('brackets');
const braces = fieldsOf('braces');
const ties = fieldsOf('ties');

const ratedFor: readonly Word[] = [
  ['sling-tension', 'the pull along the sling'],
  ['gang-weight', 'its share of the weight'],
];
const hookPlaces: readonly Word[] = [
  ['panel-joint', 'panel joint'],
  ['cross-member', 'cross member'],
  ['top-member', 'top member'],
];
const ends: readonly Word[] = [
  ['top', 'top'],
  ['bottom', 'bottom'],
];
const sides: readonly Word[] = [
  ['one', 'one side of a wall'],
  ['both', 'both sides'],
];
const platform = { group: 'Platform on the brackets' };

const hookForm: TableForm = {
  name: 'hooks',
  words: 'Lifting hooks',
  about: 'As many hooks as the weight of the gang asks for, at places where the system allows them.',
  fields: [
    hooks.code('component', 'Hook', ['hook'], { needed: true }),
    hooks.number('capacityGrams', 'Capacity of one hook', 'weight', { needed: true, name: 'capacityKg' }),
    hooks.word('ratedFor', 'Capacity is for', ratedFor, { needed: true }),
    hooks.number('minimum', 'At least', 'whole', { needed: true }),
    hooks.number('minimumAngleDeg', 'Flattest sling, degrees from level', 'decimal', {
      otherwise: 'not limited',
    }),
    hooks.number('maximumHeightNm', 'Tallest gang in one pick', 'length', { otherwise: 'not limited' }),
    hooks.words('places', 'Hooks may stand at', hookPlaces, {
      otherwise: 'panel joint, cross member of a panel on its side',
    }),
  ],
  rows: [],
};

const onSideForm: TableForm = {
  name: 'onSide',
  words: 'Panels on their side',
  about: 'Narrow panels may lie on their side only where this table allows it.',
  fields: [
    onSide.number('narrowerThanNm', 'Panels narrower than', 'length', { needed: true }),
    onSide.words('onlyAt', 'Only at the gang’s', ends, { needed: true }),
  ],
  rows: [],
};

const bracketForm: TableForm = {
  name: 'brackets',
  words: 'Walkway brackets',
  about: 'Brackets along the gang, and the planks, posts and guardrails that make them a platform.',
  fields: [
    brackets.code('component', 'Bracket', ['bracket'], { needed: true }),
    brackets.number('maximumSpacingNm', 'Greatest spacing', 'length', { needed: true }),
    brackets.yesNo('atEachEnd', 'One more, so that each end has one', { otherwise: 'no' }),
    brackets.number('platform.planksWide', 'Planks side by side', 'whole', {
      ...platform,
      needed: { part: 'brackets.platform' },
      otherwise: 'no platform',
    }),
    brackets.code('platform.post', 'Guardrail post', ['post'], { ...platform, otherwise: 'no posts' }),
    brackets.number('platform.postsPerBracket', 'Posts on a bracket', 'whole', {
      ...platform,
      otherwise: '1',
    }),
    brackets.number('platform.guardrailRows', 'Guardrails one above another', 'whole', {
      ...platform,
      otherwise: 'none',
    }),
  ],
  rows: [],
};

const braceForm: TableForm = {
  name: 'braces',
  words: 'Braces',
  about: 'Braces along the gang with their shoes. How they are anchored is a designer’s matter.',
  fields: [
    braces.code('component', 'Brace', ['brace'], { needed: true }),
    braces.number('maximumSpacingNm', 'Greatest spacing', 'length', { needed: true }),
    braces.yesNo('atEachEnd', 'One more, so that each end has one', { otherwise: 'no' }),
    braces.code('shoe', 'Brace shoe', ['brace-shoe'], { otherwise: 'no shoe' }),
    braces.word('sides', 'Braced are', sides, { otherwise: 'one side of a wall' }),
  ],
  rows: [],
};

const tieForm: TableForm = {
  name: 'ties',
  words: 'Ties',
  about: 'The tie holes of panels are kept with the gang; ties themselves are counted at the pour.',
  fields: [ties.yesNo('holes', 'Keep the holes of every gang', { needed: true })],
  rows: [],
};

function madeUpForm(name: 'stopEnds' | 'closures', words: string, about: string): TableForm {
  const made = fieldsOf(name);
  return {
    name,
    words,
    about,
    fields: [
      made.code('backing', 'Backing', ['stiffening-rail', 'stop-end', 'closure', 'plank'], {
        otherwise: 'no backing',
      }),
      made.number('backingSpacingNm', 'Backing at most apart', 'length', {
        otherwise: 'needed with a backing',
      }),
      made.number('hoursPerM2', 'Hours of work on a square metre', 'decimal', { needed: true }),
    ],
    rows: [],
  };
}

export const tableForms: readonly TableForm[] = [
  lockForm,
  fillerLockForm,
  railForm,
  placingRailForm,
  hookForm,
  onSideForm,
  bracketForm,
  braceForm,
  tieForm,
  madeUpForm(
    'stopEnds',
    'Stop-ends',
    'A stop-end is built on site: backing across it, and hours by its area.',
  ),
  madeUpForm(
    'closures',
    'Made-up closures',
    'A gap wider than any lock spans is closed on site, by its area.',
  ),
];
