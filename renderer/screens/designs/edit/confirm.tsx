// A question with two answers over the sheet, before something is lost.
import type { ReactNode } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';

export function Confirm(props: {
  readonly title: string;
  readonly words: ReactNode;
  /** What goes on. */
  readonly action: string;
  /** What stays as it is. */
  readonly stay: string;
  readonly busy?: boolean;
  readonly onAction: () => void;
  readonly onStay: () => void;
}): ReactNode {
  return (
    <ModalOverlay className="overlay" isOpen onOpenChange={(open) => (open ? undefined : props.onStay())}>
      <Modal>
        <Dialog className="dialog confirm" role="alertdialog">
          <Heading slot="title" level={2}>
            {props.title}
          </Heading>
          <div className="confirm-words">{props.words}</div>
          <div className="confirm-answers">
            {/* oxlint-disable-next-line jsx-a11y/no-autofocus -- the answer that loses nothing is the first */}
            <Button className="primary" autoFocus onPress={props.onStay}>
              {props.stay}
            </Button>
            <Button isDisabled={props.busy === true} onPress={props.onAction}>
              {props.action}
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
