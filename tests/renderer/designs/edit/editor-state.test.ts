import { describe, expect, test } from 'vitest';
import type { DesignGeometry } from '../../../../core/gang/design.ts';
import {
  edited,
  type EditorAction,
  type EditorState,
  openEditor,
} from '../../../../renderer/screens/designs/edit/editor-state.ts';

/** A gang of as many panels side by side, one nanometre apart so that they can be told apart. */
const gang = (panels: number): DesignGeometry => ({
  panels: Array.from({ length: panels }, (_, index) => ({ panel: 'P', xNm: index, yNm: 0, onSide: false })),
  fillers: [],
  edges: { left: 'open', right: 'open' },
  equalised: false,
});
const after = (state: EditorState, ...actions: readonly EditorAction[]): EditorState =>
  actions.reduce(edited, state);
const edit = (panels: number, joins?: string): EditorAction => ({
  kind: 'edit',
  words: `${panels} panels`,
  change: () => ({ geometry: gang(panels) }),
  ...(joins === undefined ? {} : { joins }),
});
const count = (state: EditorState): number => state.geometry.panels.length;

describe('the history of an editor', () => {
  test('two edits, taken back one by one and done again: 1, 2, 3, 2, 1, 2', () => {
    const three = after(openEditor(gang(1)), edit(2), edit(3));
    const two = after(three, { kind: 'undo' });
    const one = after(two, { kind: 'undo' });
    expect([three, two, one, after(one, { kind: 'redo' })].map(count)).toEqual([3, 2, 1, 2]);
  });
  test('says what would be taken back and what done again', () => {
    const state = after(openEditor(gang(1)), edit(2), edit(3), { kind: 'undo' });
    expect([state.past.at(-1)?.words, state.future.at(-1)?.words]).toEqual(['2 panels', '3 panels']);
  });
  test('a new edit ends what could be done again', () => {
    expect(after(openEditor(gang(1)), edit(2), { kind: 'undo' }, edit(5)).future).toEqual([]);
  });
  test('letters typed one after another are one step', () => {
    const state = after(openEditor(gang(1)), edit(2, 'row'), edit(3, 'row'), edit(4, 'row'));
    expect([state.past.length, count(after(state, { kind: 'undo' }))]).toEqual([1, 1]);
  });
  test('choosing something between two moves makes them two steps', () => {
    const state = after(
      openEditor(gang(1)),
      edit(2, 'move'),
      { kind: 'choose', chosen: ['panel-0'] },
      edit(3, 'move'),
    );
    expect(state.past.length).toBe(2);
  });
  test('an edit that has nothing to do is no step', () => {
    const state = openEditor(gang(1));
    expect(after(state, { kind: 'edit', words: 'nothing', change: () => undefined })).toBe(state);
  });
  test('nothing to take back, nothing changes', () => {
    const state = openEditor(gang(1));
    expect(after(state, { kind: 'undo' }, { kind: 'redo' })).toBe(state);
  });
});

describe('what is chosen', () => {
  test('comes back with what is taken back', () => {
    const state = after(
      openEditor(gang(3)),
      { kind: 'choose', chosen: ['panel-2'] },
      { kind: 'edit', words: 'remove', change: () => ({ geometry: gang(2), chosen: [] }) },
      { kind: 'undo' },
    );
    expect(state.chosen).toEqual(['panel-2']);
  });
  test('a piece that is gone is no longer chosen, and none is chosen twice', () => {
    const state = after(
      openEditor(gang(3)),
      { kind: 'choose', chosen: ['panel-0', 'panel-0', 'panel-2', 'filler-0'] },
      edit(1),
    );
    expect(state.chosen).toEqual(['panel-0']);
  });
});
