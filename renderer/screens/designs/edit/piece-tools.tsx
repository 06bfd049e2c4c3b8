// What can be done with the chosen pieces, and where the one chosen piece stands, to be typed exactly.
import type { ReactNode } from 'react';
import { useUnits } from '../../../parts/units.tsx';
import { LayerChoice } from '../layer-choice.tsx';
import { LengthField } from './length-field.tsx';
import { chosenWords, pieceName } from './piece-words.ts';
import type { Editor } from './use-editor.ts';

export function PieceTools(props: { readonly editor: Editor }): ReactNode {
  const { editor } = props;
  const { pieces } = editor;
  const { chosen } = editor.state;
  const units = useUnits();
  const none = chosen.length === 0;
  const one = chosen.length === 1 ? pieces.find(({ id }) => id === chosen[0]) : undefined;
  const tool = (words: string, key: string, run: () => void, off = none): ReactNode => (
    <button type="button" disabled={off} onClick={run} aria-keyshortcuts={key.replace('Ctrl', 'Control')}>
      {words} <kbd>{key}</kbd>
    </button>
  );
  return (
    <div className="piece-tools" role="toolbar" aria-label="Pieces">
      {tool('Turn', 'T', editor.turn)}
      {tool(none ? 'Mirror the gang' : 'Mirror', 'M', editor.mirror, pieces.length === 0)}
      {tool('Double', 'Ctrl+D', editor.double)}
      {tool('Take out', 'Delete', editor.remove)}
      {one === undefined ? (
        <span className="soft piece-tools-words">
          {none ? 'Nothing chosen: click a piece, draw a box, or Enter.' : chosenWords(pieces, chosen, units)}
        </span>
      ) : (
        // Another piece has other numbers: what was half typed for the one is not for the other.
        <span key={one.id} className="piece-place">
          <strong>{pieceName(one)}</strong>
          <LengthField
            label="along"
            valueNm={one.xNm}
            system={units.system}
            onValue={(xNm) => editor.move({ xNm: xNm - one.xNm, yNm: 0 })}
          />
          <LengthField
            label="up"
            valueNm={one.yNm}
            system={units.system}
            onValue={(yNm) => editor.move({ xNm: 0, yNm: yNm - one.yNm })}
          />
          {one.panel === null ? (
            <>
              <LengthField
                label="wide"
                positive
                valueNm={one.widthNm}
                system={units.system}
                onValue={(widthNm) => editor.resizeFiller(one.id, { widthNm, heightNm: one.heightNm })}
              />
              <LengthField
                label="high"
                positive
                valueNm={one.heightNm}
                system={units.system}
                onValue={(heightNm) => editor.resizeFiller(one.id, { widthNm: one.widthNm, heightNm })}
              />
            </>
          ) : null}
        </span>
      )}
      <LayerChoice />
    </div>
  );
}
