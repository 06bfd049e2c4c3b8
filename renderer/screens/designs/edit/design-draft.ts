// A design as it stands in the editor: texts as they were typed, so that nothing typed is lost, and what they mean
// when it is saved.
import type { z } from 'zod';
import type { DesignGeometry } from '../../../../core/gang/design.ts';
import type { designSave } from '../../../../core/procedures/design-save.ts';
import type { DesignDetail } from '../design-shapes.ts';
import { readHours } from '../../pours/hours-text.ts';

export type SavedDesign = z.input<typeof designSave.input>['design'];

export interface DraftTexts {
  readonly code: string;
  readonly name: string;
  readonly system: string;
  readonly revision: string;
  /** Said by a person; a gang that is its own mirror image has none. */
  readonly hand: 'left' | 'right' | '';
  readonly assemble: string;
  readonly breakDown: string;
}

/** What the editor opens with. */
export interface DesignStart {
  /** Null for a new one: then its code may be typed. */
  readonly saved: SavedDesign | null;
  readonly texts: DraftTexts;
  readonly geometry: DesignGeometry;
  /** The design whose other hand this is. */
  readonly mirrorOf?: string;
}

/** What is wrong with a field, by its name: those of DraftTexts, and `row` for the pieces. */
export interface FieldProblem {
  readonly field: string;
  readonly message: string;
  readonly hint?: string | undefined;
}

export const emptyGeometry: DesignGeometry = {
  panels: [],
  fillers: [],
  edges: { left: 'next-gang', right: 'next-gang' },
  equalised: false,
};

export function savedOf(design: DesignDetail): SavedDesign {
  const { code, name, system, revision, hand } = design.summary;
  const { geometry, assembleH, breakDownH } = design;
  return { code, name, system, revision, hand, geometry, assembleH, breakDownH };
}

export function textsOf(design: SavedDesign): DraftTexts {
  const { code, name, system, revision, hand } = design;
  return {
    code,
    name,
    system,
    revision,
    hand: hand === 'symmetrical' ? '' : hand,
    assemble: String(design.assembleH),
    breakDown: String(design.breakDownH),
  };
}

export function startOf(design: SavedDesign): DesignStart {
  return { saved: design, texts: textsOf(design), geometry: design.geometry };
}

export function newStart(system: string): DesignStart {
  return {
    saved: null,
    texts: { code: '', name: '', system, revision: 'A', hand: '', assemble: '1.5', breakDown: '0.75' },
    geometry: emptyGeometry,
  };
}

/** A design made from another one, under a code of its own. */
export function copyStart(design: SavedDesign, code: string, geometry: DesignGeometry): DesignStart {
  return { saved: null, texts: { ...textsOf(design), code, revision: 'A' }, geometry };
}

/** The other hand of one that has a hand. */
export function otherHand(hand: DraftTexts['hand']): DraftTexts['hand'] {
  return hand === '' ? '' : hand === 'left' ? 'right' : 'left';
}

/** As it is sent to the core, or the fields that cannot be read. Whether it may be kept the core says. */
export function readDraft(
  texts: DraftTexts,
  geometry: DesignGeometry,
  symmetrical: boolean,
): { readonly design: SavedDesign } | { readonly problems: readonly FieldProblem[] } {
  const [assemble, breakDown] = [readHours(texts.assemble), readHours(texts.breakDown)];
  const empty = (field: 'code' | 'name' | 'revision', words: string): FieldProblem[] =>
    texts[field].trim() === '' ? [{ field, message: `A design needs ${words}.` }] : [];
  const problems: FieldProblem[] = [
    ...empty('code', 'a code'),
    ...empty('name', 'a name'),
    ...empty('revision', 'a revision'),
    ...(assemble.ok ? [] : [{ field: 'assemble', ...assemble.error }]),
    ...(breakDown.ok ? [] : [{ field: 'breakDown', ...breakDown.error }]),
    ...(geometry.panels.length === 0
      ? [{ field: 'row', message: 'A design needs a panel.', hint: 'Maybe type a row, as 36 36 | 8.' }]
      : []),
    ...(!symmetrical && texts.hand === ''
      ? [
          {
            field: 'hand',
            message: 'Its mirror image is another gang, so it has a hand.',
            hint: 'Maybe left, where the odd panel is at the left.',
          },
        ]
      : []),
  ];
  if (problems.length > 0 || !assemble.ok || !breakDown.ok) return { problems };
  return {
    design: {
      code: texts.code.trim(),
      name: texts.name.trim(),
      system: texts.system,
      revision: texts.revision.trim(),
      hand: symmetrical || texts.hand === '' ? 'symmetrical' : texts.hand,
      geometry,
      assembleH: assemble.value,
      breakDownH: breakDown.value,
    },
  };
}

const fieldNames: Readonly<Record<string, string>> = {
  assembleH: 'assemble',
  breakDownH: 'breakDown',
  text: 'row',
  geometry: 'row',
  panels: 'row',
  fillers: 'row',
};

/** The field of the editor to which a field of a refusal belongs ("design.hand" to "hand"). */
export function fieldOf(refused: string | undefined): string {
  const parts = (refused ?? '').split(/[.[\]]+/u).filter((part) => part !== '' && part !== 'design');
  const first = parts[0] ?? '';
  return fieldNames[first] ?? first;
}

export function isChanged(start: DesignStart, texts: DraftTexts, geometry: DesignGeometry): boolean {
  return geometry !== start.geometry && JSON.stringify(geometry) !== JSON.stringify(start.geometry)
    ? true
    : JSON.stringify(texts) !== JSON.stringify(start.texts);
}
