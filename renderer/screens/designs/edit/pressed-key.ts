// Keys that change the chosen pieces.
import type { UnitSystem } from '../../../../core/units/length.ts';
import type { EditorKey } from './editor-keys.ts';
import { fineStepNm, stepNm } from './steps.ts';
import { toNextEdge } from './to-place.ts';
import type { Editor } from './use-editor.ts';

export function pressedKey(key: EditorKey, editor: Editor, units: UnitSystem): void {
  switch (key.does) {
    case 'move':
      move(key, editor, units);
      break;
    case 'turn':
    case 'mirror':
    case 'copy':
    case 'cut':
    case 'paste':
    case 'double':
    case 'remove':
      editor[key.does]();
      break;
    case 'step':
    case 'all':
    case 'leave':
      break;
    default:
      break;
  }
}

function move(key: Extract<EditorKey, { does: 'move' }>, editor: Editor, units: UnitSystem): void {
  const { chosen } = editor.state;
  if (key.how !== 'edge') {
    const step = key.how === 'fine' ? fineStepNm(units) : stepNm(units);
    // Arrows held down are taken back together.
    editor.move({ xNm: key.right * step, yNm: key.up * step }, `arrow ${key.right} ${key.up}`);
    return;
  }
  const moving = editor.pieces.filter(({ id }) => chosen.includes(id));
  const still = editor.pieces.filter(({ id }) => !chosen.includes(id));
  const level = key.up === 0;
  const direction = level ? (key.right < 0 ? 'left' : 'right') : key.up < 0 ? 'down' : 'up';
  const by = toNextEdge(moving, still, direction);
  if (by !== 0) editor.move(level ? { xNm: by, yNm: 0 } : { xNm: 0, yNm: by });
}
