// The procedures of the yard: its papers, things, counts and quantities. A part of all.ts.
import { attachmentAdd } from './attachment-add.ts';
import { attachmentList } from './attachment-list.ts';
import { attachmentRead } from './attachment-read.ts';
import { containerCount } from './container-count.ts';
import { containerList } from './container-list.ts';
import { containerMake } from './container-make.ts';
import { containerStep } from './container-step.ts';
import { countBook } from './count-book.ts';
import { countClassesQuery } from './count-classes.ts';
import { countDifferences } from './count-differences.ts';
import { countDrop } from './count-drop.ts';
import { countEnter } from './count-enter.ts';
import { countLines } from './count-lines.ts';
import { countList } from './count-list.ts';
import { countRead } from './count-read.ts';
import { countStart } from './count-start.ts';
import { figureAdd } from './figure-add.ts';
import { figureList } from './figure-list.ts';
import { gangBreak } from './gang-break.ts';
import { gangBuild } from './gang-build.ts';
import { gangLines } from './gang-lines.ts';
import { gangList } from './gang-list.ts';
import { gangRead } from './gang-read.ts';
import { gangRegang } from './gang-regang.ts';
import { gangStep } from './gang-step.ts';
import { gearInspect } from './gear-inspect.ts';
import { gearList } from './gear-list.ts';
import { gearSave } from './gear-save.ts';
import { loadList } from './load-list.ts';
import { loadPropose } from './load-propose.ts';
import { loadRead } from './load-read.ts';
import { loadSave } from './load-save.ts';
import { lookalikeList } from './lookalike-list.ts';
import { lookalikeRemove } from './lookalike-remove.ts';
import { lookalikeSave } from './lookalike-save.ts';
import { noteBook } from './note-book.ts';
import { noteDrop } from './note-drop.ts';
import { noteList } from './note-list.ts';
import { noteRead } from './note-read.ts';
import { noteReverse } from './note-reverse.ts';
import { noteSave } from './note-save.ts';
import { noteTold } from './note-told.ts';
import { picklistGiven } from './picklist-given.ts';
import { picklistRead } from './picklist-read.ts';
import { repairDrop } from './repair-drop.ts';
import { repairFinish } from './repair-finish.ts';
import { repairList } from './repair-list.ts';
import { repairSave } from './repair-save.ts';
import { ticketBook } from './ticket-book.ts';
import { ticketTrial } from './ticket-book.ts';
import { ticketDrop } from './ticket-drop.ts';
import { ticketEnter } from './ticket-enter.ts';
import { ticketLate } from './ticket-late.ts';
import { ticketList } from './ticket-list.ts';
import { ticketExpect } from './ticket-make.ts';
import { ticketMake } from './ticket-make.ts';
import { ticketNext } from './ticket-next.ts';
import { ticketRead } from './ticket-read.ts';
import { ticketSave } from './ticket-save.ts';
import { ticketStrip } from './ticket-strip.ts';
import { truckList } from './truck-list.ts';
import { truckSave } from './truck-save.ts';
import { yardCare } from './yard-care.ts';
import { yardClean } from './yard-clean.ts';
import { yardForeign } from './yard-foreign.ts';
import { yardMove } from './yard-move.ts';
import { yardMovements } from './yard-movements.ts';
import { yardOwed } from './yard-owed.ts';
import { yardPlaceSave } from './yard-place-save.ts';
import { yardPlaces } from './yard-places.ts';
import { yardQuantities } from './yard-quantities.ts';
import { yardQuarantine } from './yard-quarantine.ts';
import { yardRates } from './yard-rates.ts';
import { yardReverse } from './yard-reverse.ts';
import { yardSettingsRead } from './yard-settings-read.ts';
import { yardSettingsSave } from './yard-settings-save.ts';
import { yardSummaryQuery } from './yard-summary.ts';
import { yardSwap } from './yard-swap.ts';

export const yardProcedures = {
  'attachment.add': attachmentAdd,
  'attachment.list': attachmentList,
  'attachment.read': attachmentRead,
  'container.count': containerCount,
  'container.list': containerList,
  'container.make': containerMake,
  'container.step': containerStep,
  'count.book': countBook,
  'count.classes': countClassesQuery,
  'count.differences': countDifferences,
  'count.drop': countDrop,
  'count.enter': countEnter,
  'count.lines': countLines,
  'count.list': countList,
  'count.read': countRead,
  'count.start': countStart,
  'figure.add': figureAdd,
  'figure.list': figureList,
  'gang.break': gangBreak,
  'gang.build': gangBuild,
  'gang.lines': gangLines,
  'gang.list': gangList,
  'gang.read': gangRead,
  'gang.regang': gangRegang,
  'gang.step': gangStep,
  'gear.inspect': gearInspect,
  'gear.list': gearList,
  'gear.save': gearSave,
  'load.list': loadList,
  'load.propose': loadPropose,
  'load.read': loadRead,
  'load.save': loadSave,
  'lookalike.list': lookalikeList,
  'lookalike.remove': lookalikeRemove,
  'lookalike.save': lookalikeSave,
  'note.book': noteBook,
  'note.drop': noteDrop,
  'note.list': noteList,
  'note.read': noteRead,
  'note.reverse': noteReverse,
  'note.save': noteSave,
  'note.told': noteTold,
  'picklist.given': picklistGiven,
  'picklist.read': picklistRead,
  'repair.drop': repairDrop,
  'repair.finish': repairFinish,
  'repair.list': repairList,
  'repair.save': repairSave,
  'ticket.book': ticketBook,
  'ticket.drop': ticketDrop,
  'ticket.enter': ticketEnter,
  'ticket.expect': ticketExpect,
  'ticket.late': ticketLate,
  'ticket.list': ticketList,
  'ticket.make': ticketMake,
  'ticket.next': ticketNext,
  'ticket.read': ticketRead,
  'ticket.save': ticketSave,
  'ticket.strip': ticketStrip,
  'ticket.trial': ticketTrial,
  'truck.list': truckList,
  'truck.save': truckSave,
  'yard.care': yardCare,
  'yard.clean': yardClean,
  'yard.foreign': yardForeign,
  'yard.move': yardMove,
  'yard.movements': yardMovements,
  'yard.owed': yardOwed,
  'yard.placeSave': yardPlaceSave,
  'yard.places': yardPlaces,
  'yard.quantities': yardQuantities,
  'yard.quarantine': yardQuarantine,
  'yard.rates': yardRates,
  'yard.reverse': yardReverse,
  'yard.settings.read': yardSettingsRead,
  'yard.settings.save': yardSettingsSave,
  'yard.summary': yardSummaryQuery,
  'yard.swap': yardSwap,
} as const;
