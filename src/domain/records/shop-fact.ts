import type { ElementDefinition } from '../shop/element-definition';
import type { ShiftCalendar } from '../shop/shift-calendar';
import type { LedgerCategory } from '../turn/ledger-category';
import type { ReviewFact } from './review-fact';
import type { StandardFact } from './standard-fact';
import type { Tapping, TargetSource } from './turn-fact';

/** Facts about the shop itself: what it makes, how, at what pace, and why work stops. */
export type ShopFact =
  | { readonly kind: 'part-defined'; readonly code: string; readonly name: string }
  | { readonly kind: 'part-described'; readonly part: string; readonly code: string; readonly name: string }
  | { readonly kind: 'part-retired'; readonly part: string; readonly retired: boolean }
  | {
      readonly kind: 'target-set';
      readonly part: string;
      /** Milliseconds a part; null takes the target away. */
      readonly targetMs: number | null;
      readonly source: TargetSource;
      /** The study whose standard time the target is. */
      readonly study?: string;
    }
  /** How the part is tapped at the station. */
  | { readonly kind: 'tapping-set'; readonly part: string; readonly tapping: Tapping }
  | {
      readonly kind: 'method-revised';
      readonly part: string;
      readonly elements: readonly ElementDefinition[];
      readonly partsPerCycle: number;
      /** Material, tooling, feed …: the standard holds only under these. */
      readonly conditions: string;
      /** The newest revision was never used: this stands in its place, under its number. */
      readonly inPlace?: true;
    }
  | { readonly kind: 'person-added'; readonly code: string }
  | { readonly kind: 'person-removed'; readonly code: string }
  /** So many parts of this person from here on are made while learning; 0 ends it. */
  | { readonly kind: 'learning-set'; readonly code: string; readonly parts: number }
  | { readonly kind: 'reasons-set'; readonly reasons: readonly StopReason[] }
  /** When the shop works. The whole calendar: a later one replaces it. */
  | { readonly kind: 'calendar-set'; readonly calendar: ShiftCalendar }
  | {
      readonly kind: 'copy-made-outside';
      /** Written to a chosen folder and read back; handed to the share sheet; offered as a download. */
      readonly how: 'folder' | 'shared' | 'downloaded';
      /** Records of the log that the copy holds. */
      readonly records: number;
      /** This tablet's own number up to which it certainly holds them; older releases left it out. */
      readonly upTo?: number;
    }
  /** How the cell is fed, emptied and asked for. The whole setting: a later one replaces it. */
  | { readonly kind: 'cell-set'; readonly cell: CellSettings }
  | StandardFact
  | LatchFact
  | ReviewFact;

/** What the cell is reckoned with beside its studies. */
export interface CellSettings {
  /** Parts that arrive together, parts left when they do, and parts that leave together. */
  readonly arrivalLot: number;
  readonly refillAt: number;
  readonly trolley: number;
  /** Parts wanted a working day; null when nobody said. */
  readonly partsPerDay: number | null;
  /** Names of the elements that add value to the part: what process cycle efficiency counts. */
  readonly valueAdding: readonly string[];
  /** The element with which a part leaves the operator's hands; empty for the last one of its cycle. */
  readonly putDownWith: string;
  /** Names of the elements that another person does, an inspector for one. */
  readonly byOther: readonly string[];
  /** Ids of the reasons for stopping that hold the machine; left out while it is its own faults alone. */
  readonly machineReasons?: readonly string[];
  /** What an hour of the operator and of one machine costs, in the shop's currency; left out or 0 while nobody said. */
  readonly operatorCost?: number;
  readonly machineCost?: number;
}

/** The supervisor's PIN: what was made of it, never the PIN itself. */
export type LatchFact =
  | {
      readonly kind: 'pin-set';
      /** Hexadecimal. */
      readonly salt: string;
      readonly iterations: number;
      /** PBKDF2 with SHA-256 of the PIN, 32 bytes in hexadecimal. */
      readonly hash: string;
    }
  | { readonly kind: 'pin-removed' }
  | { readonly kind: 'pin-refused' }
  | { readonly kind: 'pin-accepted' };

/** Why work stands still, as the shop words it. */
export interface StopReason {
  readonly id: string;
  /** Empty for the reasons every shop starts with: those are worded in the tablet's language. */
  readonly label: string;
  readonly category: Exclude<LedgerCategory, 'cycle' | 'unaccounted'>;
}
