import { describe, expect, test } from 'vitest';
import { editorKey } from '../../../../renderer/screens/designs/edit/editor-keys.ts';

const press = (text: string, chosen = 1) => {
  const parts = text.split('+');
  return editorKey(
    {
      key: parts.at(-1) ?? '',
      ctrlKey: parts.includes('Ctrl'),
      metaKey: parts.includes('Meta'),
      shiftKey: parts.includes('Shift'),
      altKey: parts.includes('Alt'),
    },
    chosen,
  );
};

describe('keys on the drawing of an open design', () => {
  test('an arrow moves what is chosen by a step, with Shift by a fine one, with Ctrl to the next edge', () => {
    expect(press('ArrowRight')).toEqual({ does: 'move', right: 1, up: 0, how: 'step' });
    expect(press('Shift+ArrowDown')).toEqual({ does: 'move', right: 0, up: -1, how: 'fine' });
    expect(press('Ctrl+ArrowUp')).toEqual({ does: 'move', right: 0, up: 1, how: 'edge' });
  });
  test('with nothing chosen arrows, signs and 0 are left to the drawing', () => {
    expect(['ArrowRight', '+', '-', '0'].map((key) => press(key, 0))).toEqual(Array(4).fill(undefined));
  });
  test('Enter goes on, with Shift back, with Ctrl choosing one more', () => {
    expect(press('Enter', 0)).toEqual({ does: 'step', by: 1, adds: false });
    expect(press('Shift+Enter')).toEqual({ does: 'step', by: -1, adds: false });
    expect(press('Ctrl+Enter')).toEqual({ does: 'step', by: 1, adds: true });
  });
  test.each([
    ['t', 'turn'],
    ['T', 'turn'],
    ['m', 'mirror'],
    ['Delete', 'remove'],
    ['Backspace', 'remove'],
    ['Escape', 'leave'],
    ['Ctrl+c', 'copy'],
    ['Ctrl+x', 'cut'],
    ['Meta+v', 'paste'],
    ['Ctrl+d', 'double'],
    ['Ctrl+a', 'all'],
  ])('%s: %s', (key, does) => expect(press(key)).toEqual({ does }));
  test("undo, redo, the palette and the browser's own keys are not taken", () => {
    for (const key of [
      'Ctrl+z',
      'Ctrl+y',
      'Ctrl+Shift+z',
      'Ctrl+k',
      'Ctrl+Shift+c',
      'Alt+ArrowLeft',
      'Tab',
      'x',
    ])
      expect(press(key), key).toBeUndefined();
  });
});
