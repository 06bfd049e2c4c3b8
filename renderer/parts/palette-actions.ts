// What can be done from anywhere: undo, redo, units, theme, moving a pour, printing, the book's file.
import { useMemo } from 'react';
import { useLocation } from 'wouter';
import type { PaletteItem } from './palette-items.ts';
import { printScreen } from './printing.ts';
import { useTheme } from './theme.tsx';
import { useUndo } from './undo.tsx';
import { useUnits } from './units.tsx';

export function useActions(): readonly PaletteItem[] {
  const units = useUnits();
  const theme = useTheme();
  const undo = useUndo();
  const [, navigate] = useLocation();
  return useMemo(() => {
    const other = units.system === 'us' ? 'metric' : 'us';
    const action = (id: string, name: string, run: () => void): PaletteItem => ({
      id: `do:${id}`,
      name,
      what: 'action',
      run,
    });
    return [
      ...(undo.undoWords === null ? [] : [action('undo', `Undo: ${undo.undoWords}`, undo.undo)]),
      ...(undo.redoWords === null ? [] : [action('redo', `Redo: ${undo.redoWords}`, undo.redo)]),
      action('units', other === 'us' ? 'Show feet and inches' : 'Show metric', () => units.setSystem(other)),
      action('light', 'Light theme', () => theme.setChoice('light')),
      action('dark', 'Dark theme', () => theme.setChoice('dark')),
      action('system', 'Theme as the system has it', () => theme.setChoice('system')),
      action('wall', 'Board on the wall', () => navigate('/board?wall=1')),
      action('better', 'Look for a better plan', () => navigate('/board?pane=better')),
      action('told', 'Mark the next shifts as told', () => navigate('/board?pane=told')),
      action('undated', 'Pours without a date', () => navigate('/board?pane=undated')),
      action('what-if', 'What if: two plans side by side', () => navigate('/board/what-if')),
      action('day-end', 'End the day', () => navigate('/board/day-end')),
      action('print', 'Print this screen', printScreen),
      action('design', 'New design', () => navigate('/designs/new')),
      action('fill', 'Fill a wall', () => navigate('/fill')),
      action('new-delivery', 'New delivery note', () => navigate('/yard/papers/new?kind=delivery')),
      action('new-return', 'New return note', () => navigate('/yard/papers/new?kind=return')),
      action('owed', 'Owed to suppliers', () => navigate('/yard/papers?show=owed')),
      action('phone', 'Count on a phone', () => navigate('/yard/phone')),
      action('import', 'Import a file', () => navigate('/book')),
      action('check', 'Check the book', () => navigate('/book')),
      action('copy', 'Write a copy of the book', () => navigate('/book')),
    ];
  }, [units, theme, undo, navigate]);
}
