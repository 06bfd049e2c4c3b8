// The command palette: Ctrl+K (Cmd+K), then part of the name of a screen, pour, design, component or action.
import { type ReactNode, useMemo, useState } from 'react';
import {
  Autocomplete,
  Button,
  Dialog,
  Input,
  Menu,
  MenuItem,
  Modal,
  ModalOverlay,
  SearchField,
} from 'react-aria-components';
import { useLocation } from 'wouter';
import { useCore } from '../client/core.tsx';
import type { Job } from './job.tsx';
import { useActions } from './palette-actions.ts';
import { finds, type PaletteItem } from './palette-items.ts';
import { paperSheetAddress, paperSheets } from './paper-sheets.ts';
import { screens, screensBeside } from './screens.ts';
import { sheetAddress, sheetKinds, sheetName } from './sheet-address.ts';
import { useWindowKeys } from './window-keys.ts';

export function Palette(props: { readonly job: Job | null }): ReactNode {
  const [open, setOpen] = useState(false);
  useWindowKeys((event) => {
    if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'k') return;
    event.preventDefault();
    setOpen((was) => !was);
  });
  const keys = navigator.userAgent.includes('Mac') ? '⌘K' : 'Ctrl+K';
  return (
    <>
      <Button className="find-button" onPress={() => setOpen(true)} aria-keyshortcuts="Control+K Meta+K">
        Find or do <kbd>{keys}</kbd>
      </Button>
      <ModalOverlay className="overlay" isDismissable isOpen={open} onOpenChange={setOpen}>
        <Modal>
          <Dialog className="dialog palette" aria-label="Find or do">
            <PaletteList job={props.job} onDone={() => setOpen(false)} />
          </Dialog>
        </Modal>
      </ModalOverlay>
    </>
  );
}

/** The sheets of the job that are asked for by its name alone. */
function sheetsOf(job: Job | null) {
  if (job === null) return [];
  return (['week', 'day'] as const).map((kind) => {
    const path = paperSheetAddress(kind, job.code);
    return { id: path, path, name: paperSheets[kind].name, what: 'sheet' };
  });
}

function PaletteList(props: { readonly job: Job | null; readonly onDone: () => void }): ReactNode {
  const [, navigate] = useLocation();
  const [typed, setTyped] = useState('');
  const found = useFound(props.job);
  const actions = useActions();
  const items = useMemo<readonly PaletteItem[]>(
    () => [
      ...[...screens, ...screensBeside].map((screen) => ({
        id: screen.path,
        name: screen.name,
        what: 'screen',
        run: () => navigate(screen.path),
      })),
      ...sheetsOf(props.job).map((one) => ({ ...one, run: () => navigate(one.path) })),
      ...actions,
      ...found.map((one) => ({ ...one, run: () => navigate(one.path) })),
    ],
    [actions, found, navigate, props.job],
  );
  const shown = useMemo(() => items.filter((item) => finds(typed, item)).slice(0, 60), [items, typed]);
  return (
    <Autocomplete inputValue={typed} onInputChange={setTyped}>
      {/* oxlint-disable-next-line jsx-a11y/no-autofocus -- the palette opens to be typed in */}
      <SearchField aria-label="Name of a screen, pour, design, component or action" autoFocus>
        <Input placeholder="A screen, pour, design, component or action" />
      </SearchField>
      <Menu
        className="menu"
        aria-label="Found"
        items={shown}
        renderEmptyState={() => <p className="nothing">Nothing has these words.</p>}
        onAction={(key) => {
          props.onDone();
          items.find((item) => item.id === key)?.run();
        }}
      >
        {(item) => (
          <MenuItem className="menu-item" id={item.id} textValue={item.name}>
            <span>{item.name}</span>
            <span className="what">{item.what}</span>
          </MenuItem>
        )}
      </Menu>
    </Autocomplete>
  );
}

interface Found {
  readonly id: string;
  readonly name: string;
  readonly what: string;
  readonly path: string;
}

/** Pours, designs and components by name, with the addresses at which they are shown. */
function useFound(job: Job | null): readonly Found[] {
  const board = useCore('board.read', { job: job?.code ?? '' }, { enabled: job !== null });
  const designs = useCore('design.list', {});
  const components = useCore('component.list', {});
  return useMemo(() => {
    const at = encodeURIComponent;
    return [
      ...(board.data?.pours ?? []).flatMap(({ pour }) => [
        {
          id: `board:${pour.code}`,
          name: `${pour.code} ${pour.name}`,
          what: 'pour on the board',
          path: `/board?pour=${at(pour.code)}&from=${pour.sides[0].setAt.slice(0, 10)}`,
        },
        {
          id: `pour:${pour.code}`,
          name: `${pour.code} ${pour.name}`,
          what: 'pour in Pours',
          path: `/pours/${at(pour.code)}`,
        },
      ]),
      ...(designs.data?.designs ?? []).flatMap((design) => [
        {
          id: `design:${design.code}`,
          name: `${design.code} ${design.name}`,
          what: 'design',
          path: `/designs/${at(design.code)}`,
        },
        ...sheetKinds.map((kind) => ({
          id: `${kind}:${design.code}`,
          name: `${design.code} ${design.name}`,
          what: sheetName(kind).toLowerCase(),
          path: sheetAddress(kind, design.code),
        })),
      ]),
      ...(components.data?.components ?? []).flatMap((component) => [
        {
          id: `curve:${component.code}`,
          name: `${component.code} ${component.name}`,
          what: 'curve on the board',
          path: `/board?curve=${at(component.code)}`,
        },
        {
          id: `yard:${component.code}`,
          name: `${component.code} ${component.name}`,
          what: 'in the yard',
          path: `/yard?component=${at(component.code)}`,
        },
      ]),
    ];
  }, [board.data, designs.data, components.data]);
}
