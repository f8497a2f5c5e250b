import type { PureName } from '../pure-names.ts'
import { beginBench, finishBench, giveUpBench, listBench, readBench, reckonBench } from './bench.ts'
import { listStandings } from './colourway-standings.ts'
import { removeColourway, saveColourway } from './colourways.ts'
import { readDrawing } from './design-drawing.ts'
import { exportDesign } from './design-export.ts'
import { archiveDesign, readDesignWhole, saveDesign } from './designs.ts'
import { listDesigns } from './designs-list.ts'
import { readDraftStock } from './draft-stock.ts'
import { readDraftState, readDraftStrokes } from './drafts.ts'
import type { ActHandler, ActName, LaterHandler, QueryHandler, QueryName } from './handler.ts'
import { listHistory } from './history.ts'
import { addWeighing, countLot, receiveLot, saveOffer } from './lots.ts'
import { finishMake, planMakeCall } from './makes.ts'
import { listMaterialViews, readMaterial, saveMaterial } from './materials.ts'
import { listOrderViews, readOrder, saveOrder, setOrderState } from './orders.ts'
import { coverAllOrders, coverOrder } from './orders-cover.ts'
import { readOwnTables } from './own-tables.ts'
import { leaveOutOfPace, readPace } from './pace.ts'
import { makeSheet, readSheetPage } from './pattern-sheet.ts'
import { endPiece, movePieces, sellPiece } from './piece-acts.ts'
import { listPieces, readPiece } from './pieces.ts'
import { readPriceSheet, setPrice } from './prices.ts'
import { readWorkshop } from './read-workshop.ts'
import { importStockFile, previewStockFile } from './stock-file.ts'
import { listAllTables } from './tables.ts'
import { removeForm, removeThread } from './tables-remove.ts'
import { saveForm, saveThread } from './tables-save.ts'
import { takeTables } from './tables-take.ts'
import { printTags } from './tags.ts'
import { readTakings } from './takings.ts'
import { readToday } from './today.ts'
import { saveChannel, savePlace, saveSupplier, saveWorkshop } from './workshop.ts'

type ReadingName = Exclude<QueryName, PureName>

/** A handler for every call that reads the store; the compiler misses none. */
export const queryHandlers: {
  readonly [N in ReadingName]: QueryHandler<N> | LaterHandler<N>
} = {
  'workshop.read': readWorkshop,
  'history.list': listHistory,
  'tables.list': listAllTables,
  'tables.own': readOwnTables,
  'materials.list': listMaterialViews,
  'materials.read': readMaterial,
  'stockFile.preview': previewStockFile,
  'designs.list': listDesigns,
  'designs.read': readDesignWhole,
  'designs.drawing': readDrawing,
  'colourways.list': listStandings,
  'designs.sheet': makeSheet,
  'designs.sheetPage': readSheetPage,
  'designs.export': exportDesign,
  'drafts.state': readDraftState,
  'drafts.strokes': readDraftStrokes,
  'drafts.stock': readDraftStock,
  'orders.list': listOrderViews,
  'orders.read': readOrder,
  'orders.cover': coverOrder,
  'orders.coverAll': coverAllOrders,
  'prices.sheet': readPriceSheet,
  'makes.plan': planMakeCall,
  'bench.list': listBench,
  'bench.read': readBench,
  'bench.reckon': reckonBench,
  'workshop.pace': readPace,
  'pieces.list': listPieces,
  'pieces.read': readPiece,
  'tags.print': printTags,
  'today.read': readToday,
  'takings.read': readTakings,
}

/** A handler for every call that is a step of the history. */
export const actHandlers: { readonly [N in ActName]: ActHandler<N> } = {
  'workshop.save': saveWorkshop,
  'channel.save': saveChannel,
  'place.save': savePlace,
  'supplier.save': saveSupplier,
  'tables.saveForm': saveForm,
  'tables.saveThread': saveThread,
  'tables.removeForm': removeForm,
  'tables.removeThread': removeThread,
  'tables.take': takeTables,
  'materials.save': saveMaterial,
  'lots.receive': receiveLot,
  'lots.count': countLot,
  'weighings.add': addWeighing,
  'offers.save': saveOffer,
  'stockFile.import': importStockFile,
  'designs.save': saveDesign,
  'designs.archive': archiveDesign,
  'colourways.save': saveColourway,
  'colourways.remove': removeColourway,
  'orders.save': saveOrder,
  'orders.setState': setOrderState,
  'prices.set': setPrice,
  'makes.finish': finishMake,
  'bench.begin': beginBench,
  'bench.finish': finishBench,
  'bench.giveUp': giveUpBench,
  'pace.leaveOut': leaveOutOfPace,
  'pieces.move': movePieces,
  'pieces.sell': sellPiece,
  'pieces.end': endPiece,
}
