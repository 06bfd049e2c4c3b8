import { describe, expect, test } from 'vitest';
import { componentKinds } from '../../../core/catalogue/component.ts';
import { bookComponent } from '../../../core/procedures/component-shape.ts';
import { footNm, inchNm } from '../../../core/units/length.ts';
import { catalogueColumns, changedComponents } from '../../../renderer/screens/rules/catalogue-draft.ts';
import {
  addComponent,
  pasteComponents,
  removeComponent,
  writeComponent,
} from '../../../renderer/screens/rules/draft-edits.ts';
import type { RulesDraft } from '../../../renderer/screens/rules/rules-draft.ts';
import { components, draftOf, fullRules } from './sample-rules.ts';

const good = draftOf(fullRules);
const changed = (draft: RulesDraft) => changedComponents('OMB', draft.catalogue);
const rowOf = (code: string) => components.findIndex((each) => each.code === code);

function written(draft: RulesDraft, id: number, cells: Readonly<Record<string, string>>): RulesDraft {
  return Object.entries(cells).reduce((so, [name, text]) => writeComponent(so, id, name, text, 'us'), draft);
}

describe('the catalogue', () => {
  test('is unchanged while nothing is written, also when the same is typed again', () => {
    expect(changed(good)).toEqual({ components: [], problems: [] });
    expect(changed(written(good, rowOf('P36'), { width: '36', crossMembers: '6; 48' })).components).toEqual(
      [],
    );
  });

  test('has a column for all that the core knows of a component but what the hire desk keeps', () => {
    const kept = ['hirePerDayCents', 'regangPerPieceH', 'remark'];
    expect([...catalogueColumns.map(({ key }) => key as string), ...kept].sort()).toEqual(
      Object.keys(bookComponent.shape).sort(),
    );
  });

  test('hands on what was changed with all else as it was', () => {
    const { components: now } = changed(written(good, rowOf('P36'), { weight: '210 lb', pressure: '' }));
    const { pressurePa: _, ...before } = components[rowOf('P36')]!;
    expect(now).toEqual([{ ...before, weightGrams: 95_254 }]);
  });

  test('a new component is whole with code, name, kind and weight, and belongs to the system', () => {
    const added = addComponent(good);
    const id = added.catalogue.at(-1)!.id;
    expect(changed(added)).toEqual({ components: [], problems: [] });
    const half = written(added, id, { code: 'P30' });
    expect(changed(half).problems.map(({ place }) => place)).toEqual([
      `components#${id}.name`,
      `components#${id}.kind`,
      `components#${id}.weight`,
    ]);
    const whole = written(half, id, {
      name: 'Panel 30 in x 8 ft',
      kind: 'panel',
      weight: '172',
      width: '30',
      height: '8 ft',
      tieHoles: '15 x 24; 15 x 72',
      canShrink: 'no',
    });
    expect(changed(whole)).toEqual({
      components: [
        {
          code: 'P30',
          name: 'Panel 30 in x 8 ft',
          kind: 'panel',
          weightGrams: 78_018,
          widthNm: 30 * inchNm,
          heightNm: 8 * footNm,
          tieHolesNm: [
            [15 * inchNm, 2 * footNm],
            [15 * inchNm, 6 * footNm],
          ],
          canShrink: false,
          system: 'OMB',
          hirePerDayCents: null,
          regangPerPieceH: 0,
          remark: null,
        },
      ],
      problems: [],
    });
    expect(changed(written(whole, id, { system: 'every system' })).components[0]?.system).toBeNull();
    expect(removeComponent(whole, id).catalogue).toEqual(good.catalogue);
  });

  test('a code that stands there twice is refused at the second; what the book has is not taken out', () => {
    const added = addComponent(good);
    const id = added.catalogue.at(-1)!.id;
    const twin = written(added, id, { code: 'P36', name: 'again', kind: 'panel', weight: '1 lb' });
    expect(changed(twin)).toEqual({
      components: [],
      problems: [{ place: `components#${id}.code`, message: expect.stringContaining('P36') }],
    });
    expect(removeComponent(good, rowOf('P36')).catalogue).toEqual(good.catalogue);
  });

  test('every kind of component can be typed as it is shown', () => {
    const id = rowOf('LK');
    const read = componentKinds.map((kind) => {
      const draft = written(good, id, { kind: kind.replaceAll('-', ' ') });
      return changed(draft).components[0]?.kind ?? components[id]!.kind;
    });
    expect(read).toEqual(componentKinds);
  });

  test('rows of a spreadsheet are laid over those shown, the rest become new ones; codes stay', () => {
    const grid = [
      ['XX', 'Panel 36 in', 'panel', '201'],
      ['P12', 'Panel 12 in', 'panel', '84'],
    ];
    const draft = pasteComponents(good, [rowOf('P36')], 0, grid, 'us');
    const found = changed(draft);
    expect(found.problems).toEqual([]);
    expect(found.components.map(({ code, name, weightGrams }) => [code, name, weightGrams])).toEqual([
      ['P36', 'Panel 36 in', 91_172],
      ['P12', 'Panel 12 in', 38_102],
    ]);
  });
});
