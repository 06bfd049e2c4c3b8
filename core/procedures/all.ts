// Every procedure that needs a book, by name. A door offers exactly these; a name missing here is
// unknown to all of them.
import { yardProcedures } from './all-yard.ts';
import { boardRead } from './board-read.ts';
import { bookCheck } from './book-check.ts';
import { bookState } from './book-state.ts';
import { calendarList } from './calendar-list.ts';
import { calendarRemove } from './calendar-remove.ts';
import { calendarSet } from './calendar-set.ts';
import { changeList } from './change-list.ts';
import { componentList } from './component-list.ts';
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
import { fillKeep } from './fill-keep.ts';
import { fillPropose } from './fill-propose.ts';
import { fixedDrop } from './fixed-drop.ts';
import { fixedList } from './fixed-list.ts';
import { fixedSet } from './fixed-set.ts';
import { importFile } from './import-file.ts';
import { overloadClear } from './overload-clear.ts';
import { overloadList } from './overload-list.ts';
import { pickCheck } from './pick-check.ts';
import { pickRead } from './pick-read.ts';
import { pickSave } from './pick-save.ts';
import { planApply } from './plan-apply.ts';
import { planKeep } from './plan-keep.ts';
import { planMake } from './plan-make.ts';
import { planTakeback } from './plan-takeback.ts';
import { planWhatif } from './plan-whatif.ts';
import { planWhy } from './plan-why.ts';
import { planningRead } from './planning-read.ts';
import { planningSave } from './planning-save.ts';
import { pourDates } from './pour-dates.ts';
import { pourFactsSave } from './pour-facts-save.ts';
import { pourFacts } from './pour-facts.ts';
import { pourIssue } from './pour-issue.ts';
import { pourList } from './pour-list.ts';
import { pourMove } from './pour-move.ts';
import { pourOpen } from './pour-open.ts';
import { pourPlace } from './pour-place.ts';
import { pourRemove } from './pour-remove.ts';
import { pourSave } from './pour-save.ts';
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
import { toldList } from './told-list.ts';
import { toldMark } from './told-mark.ts';
import { toldRelease } from './told-release.ts';
import { whatifCompare } from './whatif-compare.ts';
import { whatifDrop } from './whatif-drop.ts';
import { whatifKeep } from './whatif-keep.ts';
import { whatifList } from './whatif-list.ts';
import { workRead } from './work-read.ts';

export const procedures = {
  'board.read': boardRead,
  'book.check': bookCheck,
  'book.state': bookState,
  'calendar.list': calendarList,
  'calendar.remove': calendarRemove,
  'calendar.set': calendarSet,
  'change.list': changeList,
  'component.list': componentList,
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
  'fill.keep': fillKeep,
  'fill.propose': fillPropose,
  'fixed.drop': fixedDrop,
  'fixed.list': fixedList,
  'fixed.set': fixedSet,
  'import.file': importFile,
  'overload.clear': overloadClear,
  'overload.list': overloadList,
  'pick.check': pickCheck,
  'pick.read': pickRead,
  'pick.save': pickSave,
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
  'told.list': toldList,
  'told.mark': toldMark,
  'told.release': toldRelease,
  'whatif.compare': whatifCompare,
  'whatif.drop': whatifDrop,
  'whatif.keep': whatifKeep,
  'whatif.list': whatifList,
  'work.read': workRead,
  ...yardProcedures,
} as const;

export type Procedures = typeof procedures;
export type ProcedureName = keyof Procedures;
