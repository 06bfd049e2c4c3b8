// Which layers of the drawing are shown, in a small menu of words; says how many are off.
import type { ReactNode } from 'react';
import { Button, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import { type Layer, layers, showLayers, useHiddenLayers } from './layers.ts';

export function LayerChoice(): ReactNode {
  const hidden = useHiddenLayers();
  const shown = layers.map(([layer]) => layer).filter((layer) => !hidden.has(layer));
  return (
    <MenuTrigger>
      <Button className="quiet layer-choice">Layers{hidden.size === 0 ? '' : `, ${hidden.size} off`}</Button>
      <Popover className="popover" placement="top end">
        <Menu
          className="menu"
          aria-label="Layers of the drawing"
          selectionMode="multiple"
          selectedKeys={shown}
          onSelectionChange={(keys) =>
            showLayers(
              new Set(layers.map(([layer]) => layer).filter((layer) => keys === 'all' || keys.has(layer))),
            )
          }
        >
          {layers.map(([layer, words]: readonly [Layer, string]) => (
            <MenuItem key={layer} id={layer} className="menu-item">
              {words}
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
