import { DossierReadersResolver } from './dossier/dossierReaders.resolver.js';
import { ReadTokenResolver } from './readTokens/readToken.resolver.js';
import { WaysOutResolver } from './waysOut/waysOut.resolver.js';
import { AcquisitionResolver, ExtraCostResolver } from './acquisitions/acquisition.resolver.js';
import { AcquisitionOfItemResolver, LotLineResolver } from './acquisitions/lotLine.resolver.js';
import {
  AttachmentsOfRecordResolver,
  CoverPictureResolver,
  AttachmentResolver,
} from './attachments/attachment.resolver.js';
import { StoredFileResolver } from './attachments/storedFile.resolver.js';
import { BooksResolver } from './books/books.resolver.js';
import { CeilingsResolver } from './ceilings/ceilings.resolver.js';
import { PlannedCostResolver, CostsOfProjectResolver } from './costToCome/costToCome.resolver.js';
import { DossierOfItemResolver, TheftReportResolver } from './dossier/dossier.resolver.js';
import { ExpenseResolver, ExpensesOfItemResolver } from './expenses/expense.resolver.js';
import { InquiryResolver, GoingOnOfProjectResolver } from './goingOn/goingOn.resolver.js';
import { InsuranceResolver, InsuredItemResolver } from './insurance/insurance.resolver.js';
import { ObjectIdOfItemResolver } from './objectId/objectId.resolver.js';
import {
  OutOfHandOfItemResolver,
  WhereaboutsResolver,
  LoanResolver,
  ItemLossResolver,
  DisposalResolver,
  DisposalLineResolver,
  DisposalCostResolver,
} from './outOfHand/outOfHand.resolver.js';
import { OutOfHandChangesResolver } from './outOfHand/outOfHandChanges.resolver.js';
import { PriceIndexResolver } from './priceIndex/priceIndex.resolver.js';
import {
  PriceNoteResolver,
  PricesOfModelResolver,
  PricesOfPartTypeResolver,
} from './prices/price.resolver.js';
import { ProvOfProvenanceResolver } from './provExport/prov.resolver.js';
import {
  ChainOfProvenanceResolver,
  ProvenanceChainResolver,
  CustodyResolver,
  HoldingOverlapResolver,
  HoldingResolver,
} from './provenance/chain.resolver.js';
import { ClaimResolver, ClaimsOfItemResolver } from './provenance/claim.resolver.js';
import { DatedSerialResolver } from './provenance/datedSerial.resolver.js';
import { EventPartyResolver, PartiesOfEventResolver } from './provenance/eventParty.resolver.js';
import {
  EvidenceOfEventResolver,
  EvidenceOfClaimResolver,
} from './provenance/evidence.resolver.js';
import {
  ContradictionResolver,
  ProvenanceOfItemResolver,
  ProvenanceResolver,
} from './provenance/provenance.resolver.js';
import { ProvenanceEventResolver } from './provenance/provenanceEvent.resolver.js';
import { WrittenDatesResolver } from './provenance/writtenDates.resolver.js';
import { RatesResolver } from './rates/rates.resolver.js';
import {
  FittedSparesOfItemResolver,
  FittedSparesOfProjectResolver,
} from './stock/fittedSpares.resolver.js';
import { StockLotResolver } from './stock/stockLot.resolver.js';
import {
  StockReservationResolver,
  StockDrawResolver,
  ReservationsOfTaskResolver,
  DrawsOfFittingResolver,
} from './stock/stockMoves.resolver.js';
import { StockMutationsResolver } from './stock/stockMutations.resolver.js';
import { StockOfPartTypeResolver } from './stock/stockTotal.resolver.js';
import { FindResolver } from './wants/find.resolver.js';
import { WantResolver, WantedListResolver } from './wants/want.resolver.js';
import {
  ValueNoteResolver,
  ItemOutlookResolver,
  WorthTermsResolver,
  WorthOfItemResolver,
  ValuesOfModelResolver,
} from './worth/worth.resolver.js';

/** What is paid, what is worth something, where it came from, and the papers about it. */
export const resolversOfMoneyAndPapers = [
  PriceNoteResolver,
  PricesOfModelResolver,
  PricesOfPartTypeResolver,
  AttachmentsOfRecordResolver,
  CoverPictureResolver,
  AttachmentResolver,
  StoredFileResolver,
  FittedSparesOfItemResolver,
  FittedSparesOfProjectResolver,
  StockOfPartTypeResolver,
  AcquisitionResolver,
  ExtraCostResolver,
  AcquisitionOfItemResolver,
  LotLineResolver,
  ExpenseResolver,
  ExpensesOfItemResolver,
  ClaimResolver,
  ClaimsOfItemResolver,
  ContradictionResolver,
  ProvenanceOfItemResolver,
  ProvenanceResolver,
  ProvenanceEventResolver,
  ProvOfProvenanceResolver,
  OutOfHandOfItemResolver,
  WhereaboutsResolver,
  LoanResolver,
  ItemLossResolver,
  DisposalResolver,
  DisposalLineResolver,
  DisposalCostResolver,
  OutOfHandChangesResolver,
  ChainOfProvenanceResolver,
  ProvenanceChainResolver,
  CustodyResolver,
  HoldingOverlapResolver,
  HoldingResolver,
  EvidenceOfEventResolver,
  EvidenceOfClaimResolver,
  EventPartyResolver,
  PartiesOfEventResolver,
  DatedSerialResolver,
  WrittenDatesResolver,
  ObjectIdOfItemResolver,
  StockLotResolver,
  WantResolver,
  WantedListResolver,
  FindResolver,
  StockReservationResolver,
  StockDrawResolver,
  ReservationsOfTaskResolver,
  DrawsOfFittingResolver,
  StockMutationsResolver,
  DossierReadersResolver,
  DossierOfItemResolver,
  TheftReportResolver,
  RatesResolver,
  PriceIndexResolver,
  ValueNoteResolver,
  ItemOutlookResolver,
  WorthTermsResolver,
  WorthOfItemResolver,
  ValuesOfModelResolver,
  PlannedCostResolver,
  CostsOfProjectResolver,
  InquiryResolver,
  GoingOnOfProjectResolver,
  CeilingsResolver,
  BooksResolver,
  InsuranceResolver,
  InsuredItemResolver,
  ReadTokenResolver,
  WaysOutResolver,
] as const;
