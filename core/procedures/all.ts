// Every procedure that needs a book, by name. A door offers exactly these; a name missing here is
// unknown to all of them.
import { attachmentAdd } from './attachment-add.ts';
import { attachmentList } from './attachment-list.ts';
import { attachmentRead } from './attachment-read.ts';
import { boardRead } from './board-read.ts';
import { bookCheck } from './book-check.ts';
import { bookState } from './book-state.ts';
import { calendarList } from './calendar-list.ts';
import { calendarRemove } from './calendar-remove.ts';
import { calendarSet } from './calendar-set.ts';
import { changeList } from './change-list.ts';
import { componentList } from './component-list.ts';
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
import { craneBook } from './crane-book.ts';
import { craneBookings } from './crane-bookings.ts';
import { craneList } from './crane-list.ts';
import { craneSave } from './crane-save.ts';
import { craneUnbook } from './crane-unbook.ts';
import { curveRead } from './curve-read.ts';
import { dayendMisses } from './dayend-misses.ts';
import { dayendPreview } from './dayend-preview.ts';
import { dayendRates } from './dayend-rates.ts';
import { dayendRead } from './dayend-read.ts';
import { dayendSave } from './dayend-save.ts';
import { dayendTakeback } from './dayend-takeback.ts';
import { designCompare } from './design-compare.ts';
import { designDraft } from './design-draft.ts';
import { designList } from './design-list.ts';
import { designRead } from './design-read.ts';
import { designRemove } from './design-remove.ts';
import { designRevisions } from './design-revisions.ts';
import { designRow } from './design-row.ts';
import { designSave } from './design-save.ts';
import { figureAdd } from './figure-add.ts';
import { figureList } from './figure-list.ts';
import { fillKeep } from './fill-keep.ts';
import { fillPropose } from './fill-propose.ts';
import { fixedDrop } from './fixed-drop.ts';
import { fixedList } from './fixed-list.ts';
import { fixedSet } from './fixed-set.ts';
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
import { importFile } from './import-file.ts';
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
import { overloadClear } from './overload-clear.ts';
import { overloadList } from './overload-list.ts';
import { pickCheck } from './pick-check.ts';
import { pickRead } from './pick-read.ts';
import { pickSave } from './pick-save.ts';
import { picklistGiven } from './picklist-given.ts';
import { picklistRead } from './picklist-read.ts';
import { planApply } from './plan-apply.ts';
import { planKeep } from './plan-keep.ts';
import { planMake } from './plan-make.ts';
import { planTakeback } from './plan-takeback.ts';
import { planWhatif } from './plan-whatif.ts';
import { planWhy } from './plan-why.ts';
import { planningRead } from './planning-read.ts';
import { planningSave } from './planning-save.ts';
import { pourFacts } from './pour-facts.ts';
import { pourFactsSave } from './pour-facts-save.ts';
import { pourIssue } from './pour-issue.ts';
import { pourList } from './pour-list.ts';
import { pourDates } from './pour-dates.ts';
import { pourMove } from './pour-move.ts';
import { pourOpen } from './pour-open.ts';
import { pourPlace } from './pour-place.ts';
import { pourRemove } from './pour-remove.ts';
import { pourSave } from './pour-save.ts';
import { repairDrop } from './repair-drop.ts';
import { repairFinish } from './repair-finish.ts';
import { repairList } from './repair-list.ts';
import { repairSave } from './repair-save.ts';
import { rulesCheck } from './rules-check.ts';
import { rulesRead } from './rules-read.ts';
import { rulesSave } from './rules-save.ts';
import { sheetAssembly } from './sheet-assembly.ts';
import { sheetCount } from './sheet-count.ts';
import { sheetDay } from './sheet-day.ts';
import { sheetDelivery } from './sheet-delivery.ts';
import { sheetLoading } from './sheet-loading.ts';
import { sheetPick } from './sheet-pick.ts';
import { sheetPicklist } from './sheet-picklist.ts';
import { sheetPrinted } from './sheet-printed.ts';
import { sheetPrints } from './sheet-prints.ts';
import { sheetReturn } from './sheet-return.ts';
import { sheetShortfalls } from './sheet-shortfalls.ts';
import { sheetStrip } from './sheet-strip.ts';
import { sheetTags } from './sheet-tags.ts';
import { sheetWeek } from './sheet-week.ts';
import { shortfallDecide } from './shortfall-decide.ts';
import { shortfallList } from './shortfall-list.ts';
import { shortfallUndecide } from './shortfall-undecide.ts';
import { shortfallWays } from './shortfall-ways.ts';
import { shortfallWhy } from './shortfall-why.ts';
import { ticketBook, ticketTrial } from './ticket-book.ts';
import { ticketDrop } from './ticket-drop.ts';
import { ticketEnter } from './ticket-enter.ts';
import { ticketLate } from './ticket-late.ts';
import { ticketList } from './ticket-list.ts';
import { ticketExpect, ticketMake } from './ticket-make.ts';
import { ticketNext } from './ticket-next.ts';
import { ticketRead } from './ticket-read.ts';
import { ticketSave } from './ticket-save.ts';
import { ticketStrip } from './ticket-strip.ts';
import { toldList } from './told-list.ts';
import { toldMark } from './told-mark.ts';
import { toldRelease } from './told-release.ts';
import { truckList } from './truck-list.ts';
import { truckSave } from './truck-save.ts';
import { whatifCompare } from './whatif-compare.ts';
import { whatifDrop } from './whatif-drop.ts';
import { whatifKeep } from './whatif-keep.ts';
import { whatifList } from './whatif-list.ts';
import { workRead } from './work-read.ts';
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

export const procedures = {
  'attachment.add': attachmentAdd,
  'attachment.list': attachmentList,
  'attachment.read': attachmentRead,
  'board.read': boardRead,
  'book.check': bookCheck,
  'book.state': bookState,
  'calendar.list': calendarList,
  'calendar.remove': calendarRemove,
  'calendar.set': calendarSet,
  'change.list': changeList,
  'component.list': componentList,
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
  'crane.book': craneBook,
  'crane.bookings': craneBookings,
  'crane.list': craneList,
  'crane.save': craneSave,
  'crane.unbook': craneUnbook,
  'curve.read': curveRead,
  'dayend.misses': dayendMisses,
  'dayend.preview': dayendPreview,
  'dayend.rates': dayendRates,
  'dayend.read': dayendRead,
  'dayend.save': dayendSave,
  'dayend.takeback': dayendTakeback,
  'design.compare': designCompare,
  'design.draft': designDraft,
  'design.list': designList,
  'design.read': designRead,
  'design.remove': designRemove,
  'design.revisions': designRevisions,
  'design.row': designRow,
  'design.save': designSave,
  'figure.add': figureAdd,
  'figure.list': figureList,
  'fill.keep': fillKeep,
  'fill.propose': fillPropose,
  'fixed.drop': fixedDrop,
  'fixed.list': fixedList,
  'fixed.set': fixedSet,
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
  'import.file': importFile,
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
  'overload.clear': overloadClear,
  'overload.list': overloadList,
  'pick.check': pickCheck,
  'pick.read': pickRead,
  'pick.save': pickSave,
  'picklist.given': picklistGiven,
  'picklist.read': picklistRead,
  'plan.apply': planApply,
  'plan.keep': planKeep,
  'plan.make': planMake,
  'plan.takeback': planTakeback,
  'plan.whatif': planWhatif,
  'plan.why': planWhy,
  'planning.read': planningRead,
  'planning.save': planningSave,
  'pour.facts': pourFacts,
  'pour.facts.save': pourFactsSave,
  'pour.issue': pourIssue,
  'pour.list': pourList,
  'pour.dates': pourDates,
  'pour.move': pourMove,
  'pour.open': pourOpen,
  'pour.place': pourPlace,
  'pour.remove': pourRemove,
  'pour.save': pourSave,
  'repair.drop': repairDrop,
  'repair.finish': repairFinish,
  'repair.list': repairList,
  'repair.save': repairSave,
  'rules.check': rulesCheck,
  'rules.read': rulesRead,
  'rules.save': rulesSave,
  'sheet.assembly': sheetAssembly,
  'sheet.count': sheetCount,
  'sheet.day': sheetDay,
  'sheet.delivery': sheetDelivery,
  'sheet.loading': sheetLoading,
  'sheet.pick': sheetPick,
  'sheet.picklist': sheetPicklist,
  'sheet.printed': sheetPrinted,
  'sheet.prints': sheetPrints,
  'sheet.return': sheetReturn,
  'sheet.shortfalls': sheetShortfalls,
  'sheet.strip': sheetStrip,
  'sheet.tags': sheetTags,
  'sheet.week': sheetWeek,
  'shortfall.decide': shortfallDecide,
  'shortfall.list': shortfallList,
  'shortfall.undecide': shortfallUndecide,
  'shortfall.ways': shortfallWays,
  'shortfall.why': shortfallWhy,
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
  'told.list': toldList,
  'told.mark': toldMark,
  'told.release': toldRelease,
  'truck.list': truckList,
  'truck.save': truckSave,
  'whatif.compare': whatifCompare,
  'whatif.drop': whatifDrop,
  'whatif.keep': whatifKeep,
  'whatif.list': whatifList,
  'work.read': workRead,
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

export type Procedures = typeof procedures;
export type ProcedureName = keyof Procedures;
