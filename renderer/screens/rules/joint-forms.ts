// Tables of what holds panels together: locks of joints and fillers, stiffening rails and their bolts.
import { edgeKinds } from '../../../core/catalogue/edges.ts';
import type { RuleName } from '../../../core/catalogue/rules.ts';
import type { Word } from './cell-kinds.ts';
import { type FieldForm, fieldsOf, type RowsForm, type TableForm } from './table-forms.ts';

const [locks, fillerLocks] = [fieldsOf('locks'), fieldsOf('fillerLocks')];

function bands(table: RuleName, words: string, about: string, optional: boolean): RowsForm {
  return {
    place: `${table}.bands`,
    path: [table, 'bands'],
    words,
    about,
    columns: [
      { key: 'upToNm', name: 'upTo', words: 'Joint up to', kind: { as: 'length' } },
      { key: 'count', name: 'count', words: 'Locks', kind: { as: 'whole' } },
    ],
    optional,
  };
}

export const lockForm: TableForm = {
  name: 'locks',
  words: 'Locks',
  about: 'Every stretch over which two panels touch takes the locks of the first row that is long enough.',
  fields: [
    locks.code('component', 'Lock', ['lock', 'adjustable-lock'], { needed: true }),
    locks.number('minimumStretchNm', 'Shorter stretches take none', 'length', {
      otherwise: 'every stretch counts',
    }),
    ...edgeKinds.map((edge) =>
      locks.number(`extra.${edge}`, edgeWords(edge), 'whole', {
        otherwise: 'none more',
        group: 'More locks by what stands at the edge of the gang',
      }),
    ),
  ],
  rows: [
    bands(
      'locks',
      'Locks by length of the joint',
      'Longer joints than the last row take its locks again for what is over.',
      false,
    ),
  ],
};

function edgeWords(edge: (typeof edgeKinds)[number]): string {
  return edge.replaceAll('-', ' ').replace('t junction', 'T-junction');
}

export const fillerLockForm: TableForm = {
  name: 'fillerLocks',
  words: 'Locks at fillers',
  about: 'Where a filler stands between two panels, an adjustable lock spans it.',
  fields: [
    fillerLocks.code('component', 'Adjustable lock', ['adjustable-lock', 'lock'], { needed: true }),
    fillerLocks.number('maximumWidthNm', 'Widest filler it spans', 'length', { needed: true }),
  ],
  rows: [
    bands('fillerLocks', 'Locks by length of the filler', 'Without rows, those of the locks hold.', true),
  ],
};

const across: readonly Word[] = [
  ['vertical-joints', 'level, over upright joints'],
  ['horizontal-joints', 'upright, over level joints'],
];
const cover: readonly Word[] = [
  ['each-joint', 'one at each joint'],
  ['full-length', 'end to end over the gang'],
];
const neededFor: readonly Word[] = [
  ['picking', 'picking'],
  ['placing', 'placing concrete'],
];

function railFields(table: 'rails' | 'placingRails'): readonly FieldForm[] {
  const rails = fieldsOf(table);
  return [
    rails.word('across', 'Rails stand', across, { needed: true }),
    rails.word('cover', 'Rails cover', cover, { needed: true }),
    rails.number('maximumAverageSpacingNm', 'Greatest average spacing', 'length', { needed: true }),
    ...(table === 'rails'
      ? [rails.word('neededFor', 'Needed only for', neededFor, { otherwise: 'picking and placing' })]
      : []),
    rails.code('bolt', 'Bolt', ['rail-bolt'], { otherwise: 'no bolts' }),
    rails.number('boltsPerPanelCrossed', 'Bolts on each panel crossed', 'whole', { otherwise: 'none' }),
    rails.number('boltClearanceNm', 'Bolt at least from the joint', 'length', { otherwise: 'any distance' }),
    rails.yesNo('reachCrossMember', 'Reach the next cross member', { otherwise: 'no' }),
    rails.yesNo('mergeMeeting', 'Rails that meet on a line become one', { otherwise: 'no' }),
  ];
}

function railLengths(table: 'rails' | 'placingRails'): RowsForm {
  return {
    place: `${table}.lengths`,
    path: [table, 'lengths'],
    words: 'Rail length by height of the gang',
    about: 'The shortest rail of the catalogue that is long enough is taken; taller gangs are a stop.',
    columns: [
      { key: 'gangUpToNm', name: 'gangUpTo', words: 'Gang up to', kind: { as: 'length' } },
      { key: 'minimumNm', name: 'minimum', words: 'Rail at least', kind: { as: 'length' } },
    ],
    optional: false,
  };
}

export const railForm: TableForm = {
  name: 'rails',
  words: 'Stiffening rails',
  about: 'Rails lie across the joints of panels so that the gang stays flat when it is picked and poured.',
  fields: railFields('rails'),
  rows: [railLengths('rails')],
};

export const placingRailForm: TableForm = {
  name: 'placingRails',
  words: 'Rails for placing',
  about: 'Further rails that only the pressure of fresh concrete asks for.',
  fields: railFields('placingRails'),
  rows: [railLengths('placingRails')],
};
