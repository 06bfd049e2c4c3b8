// Photos and scans of a paper: added from files or pasted, shown small, opened large. They are kept beside the book.
import { type ReactNode, useRef, useState } from 'react';
import { type Output, useCommand, useCore } from '../../../client/core.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { RefusalNote } from '../../../parts/notes.tsx';
import { asBase64, useKeptFile } from './kept-file.ts';

type Attachment = Output<'attachment.list'>['attachments'][number];
export type Occasion = Attachment['occasion'];

const occasionWords: Readonly<Record<Occasion, string>> = {
  'damage-at-delivery': 'damage at delivery',
  'load-before-leaving': 'load before leaving',
  'damage-at-strip': 'damage at the strip',
  other: 'other',
};
const occasionList = Object.entries(occasionWords) as [Occasion, string][];

/** @param occasion the one that is usual here; another can be chosen */
export function Attachments(props: { readonly paper: string; readonly occasion: Occasion }): ReactNode {
  const { paper } = props;
  const list = useCore('attachment.list', { paper });
  const [occasion, setOccasion] = useState(props.occasion);
  const [remark, setRemark] = useState('');
  const add = useAdding(paper, occasion, remark, () => setRemark(''));
  const picker = useRef<HTMLInputElement>(null);
  return (
    <section
      className="attachments"
      aria-label="Photos and scans"
      onPaste={(event) => {
        const files = [...event.clipboardData.files];
        if (files.length === 0) return;
        event.preventDefault();
        void add.take(files);
      }}
    >
      <h2>Photos and scans</h2>
      {list.error === null ? null : <RefusalNote error={list.error} />}
      <ul className="thumbs">
        {(list.data?.attachments ?? []).map((each) => (
          <Thumb key={each.id} attachment={each} />
        ))}
      </ul>
      <div className="add-photo">
        <label className="field">
          <span className="field-label">Taken of</span>
          <select
            value={occasion}
            onChange={(event) => {
              const chosen = occasionList.find(([each]) => each === event.target.value);
              if (chosen !== undefined) setOccasion(chosen[0]);
            }}
          >
            {occasionList.map(([each, words]) => (
              <option key={each} value={each}>
                {words}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span className="field-label">Remark</span>
          <input value={remark} maxLength={400} onChange={(event) => setRemark(event.target.value)} />
        </label>
        <input
          ref={picker}
          className="visually-hidden"
          type="file"
          tabIndex={-1}
          aria-label="Files of photos or scans"
          accept="image/jpeg,image/png,image/webp,application/pdf"
          multiple
          onChange={(event) => {
            const files = [...(event.target.files ?? [])];
            // The same file may be chosen again after a refusal.
            event.target.value = '';
            void add.take(files);
          }}
        />
        <button type="button" aria-disabled={add.busy} onClick={() => picker.current?.click()}>
          Add files
        </button>
      </div>
      <p className="soft">Or paste a picture here. JPEG, PNG, WebP or PDF, up to 12 MiB each.</p>
      <output>{add.busy ? 'Keeping it beside the book …' : ''}</output>
      {add.errors.map((error, index) => (
        <RefusalNote key={index} error={error} />
      ))}
    </section>
  );
}

interface Adding {
  readonly busy: boolean;
  readonly errors: readonly unknown[];
  readonly take: (files: readonly File[]) => Promise<void>;
}

/** One file after another; those that are refused say why, the others are kept. */
function useAdding(paper: string, occasion: Occasion, remark: string, onDone: () => void): Adding {
  const { mutateAsync, isPending } = useCommand('attachment.add');
  const [errors, setErrors] = useState<readonly unknown[]>([]);
  const take = async (files: readonly File[]): Promise<void> => {
    if (files.length === 0 || isPending) return;
    const refused: unknown[] = [];
    for (const file of files)
      try {
        // oxlint-disable-next-line no-await-in-loop -- commands go one after another
        const base64 = await asBase64(file);
        // oxlint-disable-next-line no-await-in-loop -- commands go one after another
        await mutateAsync({
          id: crypto.randomUUID(),
          paper,
          occasion,
          fileName: file.name === '' ? 'pasted picture' : file.name,
          base64,
          component: null,
          remark: remark.trim() === '' ? null : remark.trim(),
        });
      } catch (error) {
        refused.push(error);
      }
    setErrors(refused);
    if (refused.length === 0) onDone();
  };
  return { busy: isPending, errors, take };
}

function Thumb(props: { readonly attachment: Attachment }): ReactNode {
  const { attachment } = props;
  const { fileName, occasion, remark, mediaType, who, at } = attachment;
  const [large, setLarge] = useState(false);
  const words = useTimeWords();
  const { url, error } = useKeptFile(attachment.id);
  const about = `${occasionWords[occasion]}${remark === null ? '' : `: ${remark}`}`;
  return (
    <li className={large ? 'thumb large' : 'thumb'}>
      {error === null ? null : <RefusalNote error={error} />}
      {url === null || mediaType === 'application/pdf' ? null : (
        <button
          type="button"
          className="thumb-picture"
          aria-expanded={large}
          aria-label={`${fileName}, ${about}: ${large ? 'smaller' : 'larger'}`}
          onClick={() => setLarge(!large)}
        >
          <img src={url} alt="" />
        </button>
      )}
      <span>
        {url === null ? (
          fileName
        ) : (
          <a href={url} download={fileName}>
            {fileName}
          </a>
        )}
        <span className="soft">
          {' '}
          {about} · {words.full(at)} · {who}
        </span>
      </span>
    </li>
  );
}
