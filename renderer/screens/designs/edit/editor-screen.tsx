// The editor at its addresses: /designs/new for a new design (also ?copy=GA and ?mirror=GBL, made from another
// one), /designs/GA/edit for one that is there.
import { type ReactNode, useMemo, useState } from 'react';
import { useParams, useSearch } from 'wouter';
import { mirrorDesign } from '../../../../core/gang/mirror.ts';
import { useCore } from '../../../client/core.tsx';
import { RefusalNote, Waiting } from '../../../parts/notes.tsx';
import '../designs.css';
import '../elevation.css';
import {
  copyStart,
  type DesignStart,
  newStart,
  otherHand,
  savedOf,
  startOf,
  textsOf,
} from './design-draft.ts';
import './editor.css';
import { EditorOf } from './editor.tsx';
import { firstFree, otherHandCode } from './other-hand-code.ts';
import { type SystemRead, useSystem } from './use-system.ts';

export function EditScreen(): ReactNode {
  const { code } = useParams<{ code: string }>();
  return <Existing key={code} code={decodeURIComponent(code)} as="edit" />;
}

export function NewScreen(): ReactNode {
  const asked = new URLSearchParams(useSearch());
  for (const as of ['copy', 'mirror'] as const) {
    const code = asked.get(as);
    if (code !== null) return <Existing key={`${as} ${code}`} code={code} as={as} />;
  }
  return <Fresh />;
}

function Fresh(): ReactNode {
  const [code, setCode] = useState<string | null>(null);
  const read = useSystem(code);
  if (read.error !== null) return <RefusalNote error={read.error} />;
  if (read.data === undefined) return <Waiting what="Reading the panel system …" />;
  return <Opened read={read.data} start={newStart(read.data.code)} back="/designs" onSystem={setCode} />;
}

/** The start is made once: what is read anew later must not undo what was typed. */
function Opened(props: {
  readonly read: SystemRead;
  readonly start: DesignStart;
  readonly back: string;
  readonly onSystem: (code: string) => void;
}): ReactNode {
  const [start] = useState(props.start);
  const { system, systems } = props.read;
  return (
    <div className="screen designs editing">
      <EditorOf start={start} system={system} systems={systems} back={props.back} onSystem={props.onSystem} />
    </div>
  );
}

function Existing(props: { readonly code: string; readonly as: 'edit' | 'copy' | 'mirror' }): ReactNode {
  const { code, as } = props;
  const design = useCore('design.read', { design: code });
  const list = useCore('design.list', {});
  const system = useSystem(design.data?.summary.system ?? null);
  const start = useMemo<DesignStart | undefined>(() => {
    if (design.data === undefined || list.data === undefined || system.data === undefined) return undefined;
    const saved = savedOf(design.data);
    if (as === 'edit') return startOf(saved);
    const taken = new Set(list.data.designs.map((each) => each.code));
    if (as === 'copy') return copyStart(saved, firstFree(`${code}-2`, taken), saved.geometry);
    const { hand } = textsOf(saved);
    const image = mirrorDesign(system.data.system, saved.geometry);
    const made = copyStart(saved, otherHandCode(code, hand, taken), image.ok ? image.value : saved.geometry);
    return { ...made, mirrorOf: code, texts: { ...made.texts, hand: otherHand(hand) } };
  }, [design.data, list.data, system.data, as, code]);
  const error = design.error ?? system.error ?? list.error;
  if (error !== null) return <RefusalNote error={error} />;
  if (start === undefined || system.data === undefined || system.data.code !== design.data?.summary.system)
    return <Waiting what={`Opening ${code} …`} />;
  return (
    <Opened
      read={system.data}
      start={start}
      back={`/designs/${encodeURIComponent(code)}`}
      onSystem={() => undefined}
    />
  );
}
