// What each mark of the board means, in a small sheet behind a button, in the order in which a pour goes through them.
import type { ReactNode } from 'react';
import { Button, Dialog, DialogTrigger, Popover } from 'react-aria-components';
import { Signs } from './choice-signs.tsx';

export function Legend(): ReactNode {
  return (
    <DialogTrigger>
      <Button className="quiet">Marks</Button>
      <Popover className="popover" placement="bottom end">
        <Dialog className="board-marks-sheet" aria-label="What the marks mean">
          <Marks />
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}

function Marks(): ReactNode {
  return (
    <ul className="board-marks">
      <Mark name="setting">
        <rect className="bar-set" x="1" y="2" width="20" height="10" />
      </Mark>
      <Mark name="steel, waiting">
        <path className="bar-wait" d="M1 7h20" />
      </Mark>
      <Mark name="closed">
        <rect className="bar-closed" x="1.5" y="2.5" width="19" height="9" />
      </Mark>
      <Mark name="pour ends">
        <rect className="pour-mark" x="9" y="0" width="5" height="14" />
      </Mark>
      <Mark name="curing">
        <rect className="bar-cure" x="1" y="2" width="20" height="10" />
      </Mark>
      <Mark name="strength met, waits for a shift">
        <path className="bar-stand" d="M1 2.5h20M1 11.5h20" />
      </Mark>
      <Mark name="stripping">
        <rect className="bar-strip" x="1" y="2" width="20" height="10" />
      </Mark>
      <Mark name="flies on">
        <path className="legend-link" d="M1 2.5h10v9h10" />
      </Mark>
      <Mark name="re-gang">
        <path className="legend-link regang" d="M1 7h20" />
        <path className="legend-link" d="M9.5 3.5v7M12.5 3.5v7" />
      </Mark>
      <Mark name="told to the crew">
        <Signs mark={{ told: 'followed', fixed: false }} x={7} y={3} size={8} />
      </Mark>
      <Mark name="told otherwise than this plan has it">
        <Signs mark={{ told: 'changed', fixed: false }} x={7} y={3} size={8} />
      </Mark>
      <Mark name="fixed by a person">
        <Signs mark={{ told: null, fixed: true }} x={7} y={3} size={8} />
      </Mark>
      <Mark name="pieces short, a day over its hours">
        <rect className="mark-short" x="1" y="2" width="20" height="10" />
      </Mark>
      <li className="soft">Upper track side A, lower track side B.</li>
    </ul>
  );
}

function Mark(props: { readonly name: string; readonly children: ReactNode }): ReactNode {
  return (
    <li>
      <svg width="22" height="14" aria-hidden="true">
        {props.children}
      </svg>
      {props.name}
    </li>
  );
}
